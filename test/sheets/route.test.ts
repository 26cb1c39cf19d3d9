// The Route sheet in the engine: the demonstration worked out, single cells changed, and the trip that takes its way from it.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { typed, typedRow } from '../support/tripCells';
import { openTrip, type OpenTrip } from '../support/openTrip';
import { answer } from '../../sheets-templates/route/rows';
import { routeCells } from '../../sheets-templates/places';
import { tripRows } from '../../sheets-templates/trip/rows';

const name = 'Route';
let trip: OpenTrip;
beforeAll(async () => {
  trip = await openTrip();
});
afterAll(() => trip.dispose());

const at = (cell: string): unknown => trip.workbook.value(name, cell);
const rows = (): unknown[][] =>
  trip.workbook.values(name, `A${answer.first}:T${answer.last}`).filter(([leg]) => leg !== '' && leg !== undefined && leg !== null) as unknown[][];
const row = (leg: unknown): unknown[] => rows().find(([first]) => first === leg) ?? [];
const verdict = (): [unknown, unknown] => [at(routeCells.verdict), at(routeCells.reason)];
const byRoute = typed('trip', { timesFrom: 'route' });

describe('the demonstration', () => {
  it('is worked out, and the trip still goes by what is typed', async () => {
    const seen = await trip.seenWith([]);
    expect(verdict()).toEqual(['OK', 'every leg has its fuel']);
    expect(rows().map(([leg, part]) => [leg, part])).toEqual([
      [1, 'climb'],
      [1, 'cruise'],
      [2, 'cruise'],
      [3, 'step down'],
      [3, 'cruise'],
      [3, 'descent'],
      ['total', ''],
      ['alternate', 'cruise'],
      ['equal time', ''],
      ['safe return', ''],
    ]);
    expect(seen.verdict).toBe('OK');
    expect(Number(at(routeCells.distance))).toBeCloseTo(Number(row('total')[11]), 9);
    expect([at(routeCells.from), at(routeCells.to)]).toEqual(['Marrowfield', 'Tansy Ridge']);
  });

  it('takes fuel, reserve, alternate and date from the trip', async () => {
    await trip.seenWith(typed('trip', { reserve: 60 }));
    expect(Number(row('alternate')[17])).toBeCloseTo(10.5, 6);
    await trip.seenWith(typed('trip', { 'field.alternate': '' }));
    expect(row('alternate')).toEqual([]);
  });

  it('tells the sun of the three places', async () => {
    await trip.seenWith([]);
    expect(String(at('L36'))).toMatch(
      /^dawn \d{4}Z, sunrise \d{4}Z, sunset \d{4}Z, dusk \d{4}Z; at 1430Z day by civil twilight, day by the hour after sunset$/,
    );
    await trip.seenWith(typed('trip', { takeoffTime: 2200 }));
    expect(String(at('L36'))).toContain('at 2200Z night by civil twilight, night by the hour after sunset');
    await trip.seenWith(typed('trip', { takeoffTime: 'soon' }));
    expect(String(at('L36'))).toContain('not known');
  });
});

describe('a slip on it', () => {
  it.each([
    ['a place that nobody knows', typedRow('route', 'legs', { from: 'Marrowfield' }, { to: 'Fenel Weir' }), 'UNKNOWN', 'Fenel Weir'],
    ['a level above the winds', typedRow('route', 'legs', { from: 'Marrowfield' }, { altitude: 9500 }), 'UNKNOWN', 'winds must reach'],
    [
      'a leg that begins elsewhere',
      typedRow('route', 'legs', { to: 'Quince Bend' }, { from: 'Marrowfield' }),
      'UNKNOWN',
      'each leg must begin where the one before it ends',
    ],
    [
      'a true airspeed of a digit less',
      typedRow('route', 'legs', { from: 'Marrowfield' }, { trueAirspeed: 12 }),
      'UNKNOWN',
      'true airspeed must be 20 to 600 knots',
    ],
  ])('%s', async (_, cells, word, reason) => {
    await trip.seenWith(cells);
    expect(verdict()[0]).toBe(word);
    expect(String(verdict()[1])).toContain(reason);
    expect(at(routeCells.minutes)).toBe('');
  });
});

describe('a trip by its route', () => {
  it('takes distance and time from it, and hears its verdict with the fuel', async () => {
    const seen = await trip.seenWith(byRoute);
    expect(seen.verdict).toBe('OK');
    expect(trip.workbook.value('Trip sheet', `B${tripRows.timeEnRoute}`)).toBe(at(routeCells.minutes));
    expect(trip.workbook.value('Trip sheet', `B${tripRows.distance}`)).toBe(at(routeCells.distance));
    expect(seen.items.get('Fuel')?.reason).toContain('route: every leg has its fuel');
  });

  it('is UNKNOWN where the route is, and where it goes elsewhere', async () => {
    const broken = await trip.seenWith([...byRoute, ...typedRow('route', 'legs', { from: 'Marrowfield' }, { to: 'Fenel Weir' })]);
    expect(broken.verdict).toBe('UNKNOWN');
    expect(broken.items.get('Fuel')?.word).toBe('UNKNOWN');
    const elsewhere = await trip.seenWith([...byRoute, ...typed('trip', { 'field.destination': 'Sorrel Plain' })]);
    expect(elsewhere.items.get('Entries')).toMatchObject({ word: 'UNKNOWN' });
    expect(elsewhere.items.get('Entries')?.reason).toContain('a route from the departure to the destination');
  });

  it('hears of a difference only where it goes by the route', async () => {
    const seen = await trip.seenWith([...byRoute, ...typed('trip', { 'minutesTyped.departure': 90 })]);
    expect(seen.items.get('Entries')).toMatchObject({ word: 'CHECK' });
    expect(seen.items.get('Entries')?.reason).toContain('minutes, what is typed 90');
    const straight = await trip.seenWith(typed('trip', { 'minutesTyped.departure': 60 }));
    expect(straight.items.get('Entries')?.reason).not.toContain('the route takes');
  });
});
