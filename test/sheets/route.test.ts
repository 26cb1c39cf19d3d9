// The Route sheet in the engine: the demonstration worked out, single cells changed, and the trip that takes its way from it.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { typed, typedRow } from '../support/tripCells';
import { openTrip, type OpenTrip } from '../support/openTrip';
import { answer, legList, sunRows } from '../../sheets-templates/route/rows';
import { routeCells } from '../../sheets-templates/places';
import { tripRows } from '../../sheets-templates/trip/rows';
import { workingRows } from '../../sheets-templates/working/rows';

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
    expect(verdict()).toEqual(['OK', 'every leg has its fuel; every level clears the ground']);
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
    expect(String(at(`I${sunRows.first}`))).toMatch(
      /^dawn \d{4}Z, sunrise \d{4}Z, sunset \d{4}Z, dusk \d{4}Z; at 1430Z day by civil twilight, day by the hour after sunset$/,
    );
    await trip.seenWith(typed('trip', { takeoffTime: 2200 }));
    expect(String(at(`I${sunRows.first}`))).toContain('at 2200Z night by civil twilight, night by the hour after sunset');
    await trip.seenWith(typed('trip', { takeoffTime: 'soon' }));
    expect(String(at(`I${sunRows.first}`))).toContain('not known');
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

const level = (row: number): unknown[] => trip.workbook.values(name, `J${row}:O${row}`)[0] ?? [];
const first = typedRow.bind(undefined, 'route', 'legs', { from: 'Marrowfield' });

describe('what a leg is flown at', () => {
  it('is read in the cruise table of the aircraft at the power of the route, and a typed figure goes first', async () => {
    await trip.seenWith([]);
    // By hand: between 4,000 and 6,000 ft and 0 and 20 degrees above standard, at 65 per cent of the invented table.
    const [one, , third] = [legList.first, legList.first + 1, legList.first + 2].map(level);
    expect(one?.[0]).toBeCloseTo(trip.workbook.value(name, `F${answer.first + 1}`) as number, 9);
    expect(String(one?.[5])).toContain('speed and flow of the cruise table at power 65');
    expect(third?.[0]).toBe(118);
    expect(String(third?.[5])).toContain('speed typed, flow of the cruise table at power 65');
  });

  it('is that of the aircraft list where no power is given, and never that of another power', async () => {
    await trip.seenWith(typed('route', { power: '' }));
    expect(level(legList.first).slice(0, 2)).toEqual([124, 10.5]);
    expect(String(level(legList.first)[5])).toContain('speed and flow of the aircraft list');
    await trip.seenWith(typed('route', { power: 85 }));
    expect(verdict()[0]).toBe('UNKNOWN');
    expect(String(verdict()[1])).toContain('nothing is extrapolated');
    await trip.seenWith([...typed('route', { power: '' }), ...first({ power: 75 })]);
    expect(Number(level(legList.first)[0])).toBeGreaterThan(120);
    expect(String(level(legList.first)[5])).toContain('at power 75');
    expect(String(level(legList.first + 1)[5])).toContain('of the aircraft list');
  });

  it('is in knots and in the fuel unit of the aircraft list, whatever its table is printed in', async () => {
    await trip.seenWith([...typed('start', { aircraftInUse: 'Brindle Two' }), ...typed('route', { power: 5200 })]);
    const [knots, flow] = level(legList.first).map(Number);
    // 183 to 190 km/h and 16 to 19 L an hour at that height in the table.
    expect(knots).toBeGreaterThan(183 / 1.852);
    expect(knots).toBeLessThan(193 / 1.852);
    expect(flow).toBeGreaterThan(16);
    expect(flow).toBeLessThan(19);
  });
});

describe('the ground under a leg', () => {
  it.each([
    ['too high for the level', first({ highestGround: 4700 }), 'NO', '200 ft too low: ground 4,700 + clearance 1,000'],
    ['not typed', first({ highestGround: '' }), 'UNKNOWN', 'the highest ground is not typed'],
    ['a word', first({ highestGround: 'hills' }), 'UNKNOWN', 'highest ground must be -1,500 to 30,000 feet; got "hills"'],
    ['below the field', first({ highestGround: 185 }), 'CHECK', 'highest ground of 185 ft lies below Marrowfield, 420 ft'],
    ['cleared by little', first({ clearance: 300 }), 'CHECK', 'a clearance of 300 ft, less than 500'],
    ['without a clearance', typed('route', { clearance: '' }), 'UNKNOWN', 'no clearance is typed'],
    ['with the question left open', typed('route', { judgeGround: '' }), 'UNKNOWN', 'judge the ground: yes or no'],
  ])('%s', async (_, cells, word, reason) => {
    const seen = await trip.seenWith([...byRoute, ...cells]);
    expect(verdict()[0]).toBe(word);
    expect(String(verdict()[1])).toContain(reason);
    expect(seen.items.get('Fuel')).toMatchObject({ word });
    expect(seen.items.get('Fuel')?.reason).toContain(reason);
  });

  it('counts cold air, which takes what warm air leaves', async () => {
    const cold = [0, 3000, 6000, 9000].flatMap((altitude, index) => typedRow('route', 'air', { altitude }, { temperature: -3 - 6 * index }));
    const ground = typedRow('route', 'legs', { to: 'Quince Bend' }, { highestGround: 4200 });
    await trip.seenWith(ground);
    expect(verdict()[0]).toBe('OK');
    await trip.seenWith([...ground, ...cold]);
    expect(verdict()[0]).toBe('NO');
    expect(String(verdict()[1])).toMatch(/leg 2: \d+ ft too low: ground 4,200 \+ clearance 1,000 \+ \d+ for cold air/);
  });

  it('is not judged where that is switched off, and the verdict says so', async () => {
    await trip.seenWith([...typed('route', { judgeGround: 'no' }), ...first({ highestGround: 4700 })]);
    expect(verdict()).toEqual(['OK', 'every leg has its fuel; the ground is not judged']);
    expect(level(legList.first)[4]).toBe('not judged');
  });
});

const cardAsRoute = typed('card', { groundspeedNow: '', trueCourse: '' });
const noWindsTyped = [3000, 6000, 9000, 12000].flatMap((altitude) => typedRow('card', 'winds', { altitude }, { altitude: '', from: '', speed: '' }));
const onTrip = (cell: string): unknown => trip.workbook.value('Trip sheet', cell);
const ofFuel = (item: string): unknown =>
  trip.workbook.values('Trip working', `A${workingRows.fuelBrief.first}:B${workingRows.fuelBrief.last}`).find(([name]) => name === item)?.[1];

describe('a trip by its route', () => {
  it('takes distance, time and fuel from it, and hears its verdict with the fuel', async () => {
    const seen = await trip.seenWith([...byRoute, ...typed('trip', { judgeDescent: 'no' })]);
    expect(seen.verdict).toBe('OK');
    expect(onTrip(`B${tripRows.timeEnRoute}`)).toBe(at(routeCells.minutes));
    expect(onTrip(`B${tripRows.distance}`)).toBe(at(routeCells.distance));
    expect(onTrip(`H${tripRows.tripFuel}`)).toBe(at(routeCells.fuel));
    expect(ofFuel('trip')).toBe(at(routeCells.fuel));
    // The climb is in the fuel of the route.
    expect(ofFuel('climb')).toBe(0);
    expect(trip.workbook.value('Weight and balance', 'C36')).toBe(at(routeCells.fuel));
    expect(seen.items.get('Fuel')?.reason).toContain('trip fuel and time by the route: every leg has its fuel');
    await trip.seenWith([]);
    expect(ofFuel('climb')).toBe(0.8);
    expect(Number(ofFuel('trip'))).toBeCloseTo((Number(onTrip(`B${tripRows.timeEnRoute}`)) / 60) * 10.5, 9);
  });

  it('hands the card its groundspeed, course and winds, and says so', async () => {
    const below = typed('card', { altitudeNow: 8500 });
    await trip.seenWith([...byRoute, ...cardAsRoute, ...noWindsTyped, ...below]);
    const card = (cell: string): unknown => trip.workbook.value('Descent and hold card', cell);
    const last = row('alternate');
    expect(last.length).toBeGreaterThan(0);
    const cruise =
      rows()
        .filter(([leg, part]) => typeof leg === 'number' && part === 'cruise')
        .pop() ?? [];
    expect(card('H7')).toBe(`groundspeed ${Math.round(Number(cruise[12]))} kt, before the descent on the Route`);
    expect(String(card('H8'))).toMatch(/^course \d{3} true, last leg of the Route$/);
    expect(card('H9')).toBe('winds of the Route');
    expect(Number(card('B32'))).toBeGreaterThan(-100);
    expect(Number(card('B33'))).toBeCloseTo((Number(card('B32')) / Number(cruise[12])) * 60, 6);
  });

  it('looks at what is typed on the card where it differs from the route', async () => {
    const seen = await trip.seenWith(byRoute);
    expect(seen.items.get('Descent')).toMatchObject({ word: 'CHECK' });
    expect(seen.items.get('Descent')?.reason).toMatch(/groundspeed typed 165 kt, the Route has \d+; course typed 080, the last leg has \d{3}/);
    expect(seen.items.get('Descent')?.reason).toContain('winds are typed here that are not those of the Route');
    const straight = await trip.seenWith([]);
    expect(straight.items.get('Descent')?.word).toBe('OK');
    expect(trip.workbook.value('Descent and hold card', 'H7')).toBe('groundspeed 165 kt, typed');
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
