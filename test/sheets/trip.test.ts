// The whole workbook as its users meet it: the demo trip, then one thing wrong at a time; the verdict, every item that it reaches, and what
// is read off the sheets on the way.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openTrip, type OpenTrip, type TripSeen } from '../support/openTrip';
import {
  corner,
  metar,
  onCard,
  plane,
  runway,
  seat,
  sheetName,
  start,
  tank,
  trip,
  tripCell,
  typed,
  typedRow,
  workingCell,
  type Typed,
} from '../support/tripCells';
import { reported } from './slips/slip';

interface Case {
  readonly what: string;
  readonly change: readonly Typed[];
  readonly verdict: string;
  /** Items that must not be OK any more. */
  readonly items: readonly string[];
}

const date = (iso: string) => ({ date: iso });
const cases: readonly Case[] = [
  { what: 'a report with a stronger wind from the side', change: reported('25016KT'), verdict: 'NO', items: ['Wind limits', 'Weather, departure'] },
  {
    what: 'a report that cannot be read',
    change: metar('departure', 'windy and warm'),
    verdict: 'UNKNOWN',
    items: ['Weather, departure', 'Take-off runway', 'Climb'],
  },
  {
    what: 'a temperature beyond the tables',
    change: reported('22012KT', undefined, '48/09'),
    verdict: 'UNKNOWN',
    items: ['Take-off runway', 'Climb'],
  },
  {
    what: 'an altimeter setting in no unit',
    change: trip({ 'altimeter.departure': 500 }),
    verdict: 'UNKNOWN',
    items: ['Take-off runway', 'Climb'],
  },
  {
    what: 'no fuel flow anywhere',
    change: plane({ cruiseFuelFlow: '' }),
    verdict: 'UNKNOWN',
    items: ['Entries', 'Fuel', 'Loading, landing', 'Landing runway'],
  },
  {
    what: 'a trip that begins before as_of',
    change: trip({ firstDay: date('2026-11-20') }),
    verdict: 'UNKNOWN',
    items: ['Dates', 'Weather, departure'],
  },
  {
    what: 'too much baggage, too far aft',
    change: seat('baggage', { weight: 400 }),
    verdict: 'NO',
    items: ['Loading, take-off', 'Loading, zero fuel', 'Loading, whole burn'],
  },
  {
    what: 'an empty weight that its weighing record does not lead to',
    change: seat('empty aircraft, oil', { weight: 1690 }),
    verdict: 'CHECK',
    items: ['Loading, entries'],
  },
  {
    what: 'equipment put in since, of which the empty aircraft does not know',
    change: typedRow('balance', 'weighings', {}, { aircraft: 'Quillon Four', day: date('2026-02-01'), what: 'change', weight: 12, arm: 40 }),
    verdict: 'CHECK',
    items: ['Loading, entries'],
  },
  {
    what: 'a weighing without its day',
    change: typedRow('balance', 'weighings', { what: 'weighing' }, { day: '' }),
    verdict: 'CHECK',
    items: ['Loading, entries'],
  },
  {
    what: 'a weighing of no aircraft',
    change: typedRow('balance', 'weighings', { what: 'change' }, { aircraft: 'Quilon Four' }),
    verdict: 'UNKNOWN',
    items: ['Loading, take-off', 'Loading, whole burn'],
  },
  { what: 'a seat left blank', change: seat('front seats', { weight: '' }), verdict: 'UNKNOWN', items: ['Loading, take-off', 'Take-off runway'] },
  {
    what: 'corners out of order',
    change: [...corner(82, 2150, { arm: 92, weight: 2650 }), ...corner(92, 2650, { arm: 82, weight: 2150 })],
    verdict: 'UNKNOWN',
    items: ['Loading, take-off', 'Loading, entries'],
  },
  {
    what: 'less fuel than the trip takes',
    change: [...tank('left wing', { onBoard: 3 }), ...tank('right wing', { onBoard: 3 })],
    verdict: 'NO',
    items: ['Fuel', 'Loading, landing'],
  },
  {
    what: 'more fuel in a tank than its arms reach',
    change: tank('left wing', { onBoard: 31 }),
    verdict: 'UNKNOWN',
    items: ['Loading, take-off', 'Loading, whole burn'],
  },
  {
    what: 'an aircraft that is not there',
    change: start({ aircraftInUse: 'Nobody' }),
    verdict: 'UNKNOWN',
    items: ['Loading, take-off', 'Take-off runway', 'Fuel', 'Aircraft tables', 'Pilot'],
  },
];

let book: OpenTrip;
beforeAll(async () => {
  book = await openTrip();
}, 300_000);
afterAll(() => book.dispose());

const notOk = ({ items }: TripSeen): string[] => [...items].filter(([, { word }]) => word !== 'OK').map(([item]) => item);
const onSheet = (sheet: Parameters<typeof sheetName>[0], cell: string): unknown => book.workbook.value(sheetName(sheet), cell);

describe('the trip of the invented aircraft', () => {
  it('is OK as it comes', async () => {
    const seen = await book.seenWith([]);
    expect(notOk(seen)).toEqual([]);
    expect(seen.verdict).toBe('OK');
    expect(seen.said).toBe('Every item below is OK.');
  });

  it.each(cases)('$what: $verdict', async ({ change, verdict, items }) => {
    const seen = await book.seenWith(change);
    expect({ verdict: seen.verdict, stillOk: items.filter((item) => !notOk(seen).includes(item)) }).toEqual({ verdict, stillOk: [] });
    expect([...seen.items.values()].filter(({ reason }) => reason === '' || reason.startsWith('#'))).toEqual([]);
  });

  it('takes a side to hold on for degrees also where the cell keeps it as text', async () => {
    const inbound = async (side: string | number): Promise<unknown> => {
      await book.seenWith(onCard({ 'hold.side': side }));
      return onSheet('card', 'B55');
    };
    expect([await inbound('225'), await inbound('045'), await inbound(225)]).toEqual([45, 225, 45]);
  });

  it('never shows more minutes of fuel than are left', async () => {
    const seen = await book.seenWith(trip({ 'minutesTyped.departure': 61 }));
    const said = Number(/(\d+) min left at landing/.exec(seen.items.get('Fuel')?.reason ?? '')?.[1]);
    // By hand: 48 US gal on board less 1.4 for taxi, 0.8 for the climb and 61 minutes at 10.5 an hour.
    const left = ((48 - 1.4 - 0.8) / 10.5) * 60 - 61;
    expect(left % 1).toBeGreaterThan(0.5);
    expect(said).toBe(Math.floor(left));
  });

  it('says what a switched off item leaves unjudged, beside the verdict', async () => {
    const seen = await book.seenWith([...trip({ judgeHold: 'no', 'field.alternate': '', 'runwayName.alternate': '' }), ...start({ keepsLog: 'no' })]);
    expect([seen.verdict, seen.said]).toEqual([
      'OK',
      'OK for what is judged. Not judged: Landing, alternate, Weather, alternate, Hold, Pilot, Aircraft. ',
    ]);
  });
});

/** The second aircraft on the same trip; its two cards differ as they come, so the ledger is left out. */
const brindle: readonly Typed[] = [
  ...start({ aircraftInUse: 'Brindle Two', keepsLedger: 'no' }),
  ...trip({ 'groundspeed.departure': 95, 'groundspeed.alternate': 92 }),
];
const ofBrindle = (list: string, holds: Readonly<Record<string, string>>, entries: Parameters<typeof typedRow>[3]): readonly Typed[] =>
  typedRow('balance', list, { aircraft: 'Brindle Two', ...holds }, entries);

describe('the second aircraft, in other units, on the same sheets', () => {
  it('is judged in its own units', async () => {
    const seen = await book.seenWith(brindle);
    expect(notOk(seen)).toEqual(['Navigation data']);
    expect(seen.verdict).toBe('OK');
    // By hand: 445 + 78 + 70 + 9 = 602 kg of stations, 70 less 2.5 litres of fuel at 0.72 kg.
    expect(onSheet('balance', 'D39')).toBe('kg');
    expect(onSheet('balance', 'C39')).toBeCloseTo(602 + (70 - 2.5) * 0.72, 6);
  });

  it('reads a length of the field in feet as metres of its tables', async () => {
    await book.seenWith(brindle);
    // By hand: 3,400 ft and 3,600 ft at 0.3048 m.
    expect(onSheet('working', workingCell('available', 'departure'))).toBeCloseTo(1036.32, 6);
    expect(onSheet('working', workingCell('available', 'destination'))).toBeCloseTo(1097.28, 6);
    expect(onSheet('trip', `E${tripCell('available').slice(1)}`)).toBe('m');
    expect(onSheet('trip', `E${tripCell('fuelFlow').slice(1)}`)).toBe('L an hour');
  });

  it('finds a runway of 1,200 feet too short that would be long enough in metres', async () => {
    const seen = await book.seenWith([...brindle, ...runway('Marrowfield', '21', { takeoffAvailable: 1200 })]);
    expect(seen.items.get('Take-off runway')?.word).toBe('NO');
  });

  const gaps: readonly (readonly [what: string, gap: readonly Typed[], verdict: string, reason: RegExp])[] = [
    ['no arm of a tank', ofBrindle('tanks', { tank: 'main' }, { lateralArm: '' }), 'UNKNOWN', /^lateral: tank "main" has no lateral arm/],
    [
      'no arm of a station',
      ofBrindle('stations', { station: 'left seat' }, { lateralArm: '' }),
      'UNKNOWN',
      /^lateral: station "left seat" has no lateral arm/,
    ],
    [
      'no arm of a tank, and baggage too far aft',
      [...ofBrindle('tanks', { tank: 'main' }, { lateralArm: '' }), ...ofBrindle('stations', { station: 'baggage' }, { weight: 60, arm: 2500 })],
      'NO',
      /^during the flight: worst of the burn, .+ behind the aft limit; burning into the reserve: worst beyond landing, .+ behind the aft limit; lateral: tank "main" has no lateral arm/,
    ],
    ['a seat far out to one side', ofBrindle('stations', { station: 'left seat' }, { lateralArm: 900 }), 'NO', /^lateral: .*limits -60 to 60/],
    [
      'too heavy at take-off alone',
      typedRow('tables', 'aircraft', { aircraft: 'Brindle Two' }, { mostTakeoffWeight: 600 }),
      'NO',
      /^take-off, landing or zero fuel is not OK/,
    ],
  ];
  it.each(gaps)('with lateral limits, %s', async (_what, gap, verdict, reason) => {
    const seen = await book.seenWith([...brindle, ...gap]);
    expect([seen.verdict, seen.items.get('Loading, whole burn')]).toEqual([
      verdict,
      { word: verdict, reason: expect.stringMatching(reason) as string },
    ]);
  });
});

describe('Weight and balance', () => {
  it('tells what is not whole, where its points stay UNKNOWN', async () => {
    await book.seenWith([...seat('front seats', { aircraft: 'Quilon Four' }), ...corner(92, 2650, { aircraft: '' })]);
    expect(onSheet('balance', 'A25')).toMatch(/^A station lacks a weight, an arm \(or its moment\), or a station or a weighing its aircraft of Manual tables/);
    expect(onSheet('balance', 'A41')).toMatch(/^A corner lacks its arm.*no aircraft of Manual tables in row 71/);
    await book.seenWith(typed('balance', { category: 'normal' }));
    expect(onSheet('balance', 'A41')).toMatch(/^Every/);
  });

  it('leaves a descent without a schedule to its restrictions', async () => {
    const blank = [12000, 8000, 4000].flatMap((altitude) => typedRow('card', 'schedule', { altitude }, { altitude: '', speed: '', rate: '' }));
    const seen = await book.seenWith(blank);
    expect(seen.items.get('Descent')).toEqual({ word: 'OK', reason: expect.stringMatching(/^3 of 3 met/) as string });
    expect((await book.seenWith([])).verdict).toBe('OK');
  });
});
