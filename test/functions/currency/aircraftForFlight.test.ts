// AIRCRAFT_FOR_FLIGHT at its own door: the rows of the aircraft flown, boundary days and hours, what must be listed, and the list for all flights as its judge.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../../core/basics/civilDate';
import { missingRules } from '../../../core/currency/aircraftForFlight';
import { authorities } from '../../../core/currency/rules';
import { plainWords } from '../../../functions/registry/readText';
import { call, plain } from '../../support/call';

type Row = readonly unknown[];
const heads = ['aircraft', 'item', 'done on', 'done at hours', 'was due at hours', 'every months', 'every days', 'every hours'];
const fleet = [
  ['aircraft', 'hours now'],
  ['Quillon Four', 1200],
  ['Brindle Two', ''],
];
const annual: Row = ['Quillon Four', 'annual inspection', '2026-03-12'];
const padded = (items: readonly Row[]): Row[] => [heads, ...items.map((row) => heads.map((_, index) => row[index] ?? ''))];

interface Asked {
  readonly flown?: string;
  readonly last?: string;
  readonly asOf?: string;
  readonly rules?: string;
  readonly hours?: unknown;
  readonly instrument?: unknown;
}
function judged(items: readonly Row[], asked: Asked = {}): unknown[][] {
  const { flown = 'Quillon Four', asOf = '2026-11-25', rules = 'FAA', hours = '', instrument = '' } = asked;
  const rows = call('AIRCRAFT_FOR_FLIGHT', padded(items), fleet, flown, asked.last ?? asOf, asOf, rules, hours, instrument) as unknown[][];
  return rows.map((row) => row.map(plain));
}
const whole = (items: readonly Row[], asked: Asked = {}): Row => judged(items, asked)[0]?.slice(1) ?? [];

describe('the last day', () => {
  it.each([
    ['annual inspection', '2026-03-12', '2027-03-31', '2027-04-01'],
    ['annual inspection', '2023-02-28', '2024-02-29', '2024-03-01'],
    ['transponder', '2025-02-10', '2027-02-28', '2027-03-01'],
    // Done on day 1, the thirtieth day is 29 days later (14 CFR 91.171, stricter reading).
    ['VOR check', '2026-11-03', '2026-12-02', '2026-12-03'],
    ['VOR check', '2024-02-01', '2024-03-01', '2024-03-02'],
    ['oxygen bottle 3AA', '2024-02-29', '2029-02-28', '2029-03-01'],
    ['ELT battery', '2027-08-31', '2027-08-31', '2027-09-01'],
  ])('of %s done on %s is %s', (item, done, lastGood, after) => {
    const other = item === 'annual inspection' ? [] : [['Quillon Four', 'condition inspection', '2030-12-31']];
    const items = [...other, ['Quillon Four', item, done]];
    expect(whole(items, { asOf: done, last: lastGood }).slice(0, 2)).toEqual(['OK', lastGood]);
    expect(whole(items, { asOf: lastGood, last: after })).toEqual([
      'NO',
      lastGood,
      expect.stringMatching(new RegExp(`^${item}: lapses during the trip, valid through \\d+ \\w+ \\d{4}$`)),
    ]);
  });

  it('tells what has lapsed from what will, the worst first', () => {
    const items = [['Quillon Four', 'transponder', ''], annual, ['Quillon Four', 'ELT inspection', '2025-10-05']];
    expect(whole(items)).toEqual(['NO', '', 'ELT inspection: lapsed, valid through 31 October 2026; transponder: no date written down']);
  });

  it('before as_of is UNKNOWN', () => expect(whole([annual], { last: '2026-11-24' })[0]).toBe('UNKNOWN'));
  it('takes nothing for done after as_of', () =>
    expect(whole([['Quillon Four', 'annual inspection', '2026-11-26']], { last: '2026-11-30' })[2]).toBe(
      'annual inspection: done on a day still to come',
    ));
});

describe('hours', () => {
  const hundred: Row = ['Quillon Four', '100 hour inspection', '', 1102.5];
  it('left are enough to the last tenth, and no further', () => {
    expect(whole([annual, hundred], { hours: 2.5 })[0]).toBe('OK');
    expect(whole([annual, hundred], { hours: 2.6 })).toEqual(['NO', '', '100 hour inspection: 2.5 h left, the flight takes 2.6 h']);
    expect(whole([annual, ['Quillon Four', '100 hour inspection', '', 1096]], { hours: 1 })[2]).toBe('100 hour inspection: overrun by 4 h');
  });
  it('of a flight that nobody has given are CHECK with few left, NO with none', () => {
    for (const hours of ['', 0])
      expect(whole([annual, hundred], { hours })).toEqual([
        'CHECK',
        '2027-03-31',
        '100 hour inspection: 2.5 h left, the hours of the flight are not given',
      ]);
    expect(whole([annual, ['Quillon Four', '100 hour inspection', '', 1110.1]])[0]).toBe('OK');
    expect(whole([annual, ['Quillon Four', '100 hour inspection', '', 1100]])[0]).toBe('NO');
  });
  it('of the aircraft that are missing are UNKNOWN where an item needs them', () => {
    const items = [
      ['Brindle Two', 'annual inspection', '2026-03-12'],
      ['Brindle Two', 'oil change', '', 20, '', '', '', 50],
    ];
    expect(whole(items.slice(0, 1), { flown: 'Brindle Two' })[0]).toBe('OK');
    expect(
      whole(items, { flown: 'Brindle Two', hours: 1 })
        .slice(0, 1)
        .concat(whole(items, { flown: 'Brindle Two' })[2]),
    ).toEqual(['UNKNOWN', 'oil change: no hours now of this aircraft, your own item']);
  });
});

describe('the rows', () => {
  it('are those of the aircraft flown', () => {
    expect(judged([annual, ['Brindle Two', 'annual inspection', '2020-01-01']], { flown: 'QUILLON four' }).map(([item]) => item)).toEqual([
      'all',
      'annual inspection',
    ]);
  });

  it('for IFR only are passed over where there is none, and that is said', () => {
    const items = [annual, ['Quillon Four', 'VOR check', '2020-01-01'], ['Quillon Four', 'altimeter', 'long ago']];
    expect(whole(items, { instrument: 'no' })).toEqual([
      'OK',
      '2027-03-31',
      '1 item good through the last day of the trip; the first to lapse: annual inspection, 31 March 2027; not needed for this flight: VOR check, altimeter',
    ]);
    expect(
      judged(items, { instrument: 'no' })
        .slice(2)
        .map((row) => [row[1], String(row[3]).split(';')[0]]),
    ).toEqual([
      ['', 'not needed: for IFR only'],
      ['', 'not needed: for IFR only'],
    ]);
    expect(whole(items, { instrument: 'yes' })[0]).toBe('NO');
    expect(whole(items)[0]).toBe('NO');
  });

  it('that are missing altogether, or without what every aircraft must have, are UNKNOWN', () => {
    expect(judged([annual], { flown: 'Brindle Two' })).toEqual([
      ['all', 'UNKNOWN', '', 'list: nothing is listed for Brindle Two'],
      ['list', 'UNKNOWN', '', 'nothing is listed for Brindle Two'],
    ]);
    const transponder = ['Quillon Four', 'transponder', '2026-01-05'];
    const missing = 'not in the list of Quillon Four, and every aircraft must have it';
    expect(whole([transponder])).toEqual(['UNKNOWN', '', `annual inspection: ${missing}`]);
    expect(whole([annual, transponder], { rules: 'EASA' })[2]).toContain(`airworthiness review certificate: ${missing}`);
    expect(whole([['Quillon Four', 'ARC', '2027-01-31']], { rules: 'EASA' })[0]).toBe('OK');
    for (const instead of ['condition inspection', 'Progressive inspection', 'inspection program'])
      expect(whole([['Quillon Four', instead, '2026-03-12', '', '', 12]])[0]).toBe('OK');
    expect(whole([['Quillon Four', 'annual inspection', 'spring']])[2]).toBe('annual inspection: done on cannot be read: "spring"');
  });

  it('of nobody, or of a name nearly that of the aircraft, are not left out unseen', () => {
    expect(whole([annual, ['', 'propeller', '2020-01-01']])).toEqual(['UNKNOWN', '', 'propeller: aircraft missing']);
    expect(whole([annual, ['Quilon Four', 'propeller', '2020-01-01']])).toEqual([
      'CHECK',
      '2027-03-31',
      'propeller: listed for "Quilon Four", which is not in the list of the aircraft: Quillon Four?',
    ]);
    expect(whole([annual, ['Sandpiper', 'propeller', '2020-01-01']])[0]).toBe('OK');
  });

  it('every authority known says what every aircraft must have', () => {
    // One written as a table says nothing of aircraft, and that is said ("no rule for an aircraft is known here").
    for (const authority of authorities.filter(({ aircraft }) => aircraft.length > 0))
      expect(missingRules([], authority, plainWords).length).toBeGreaterThan(0);
  });
});

describe('random lists, judged by AIRCRAFT_STATUS', () => {
  const base = dayNumber({ year: 2026, month: 11, day: 25 });
  const iso = (day: number): string => isoDate(civilDateFromDayNumber(day));
  const item = fc.constantFrom('annual inspection', '100 hour inspection', 'transponder', 'VOR check', 'altimeter', 'ELT battery', 'own');
  const line = fc
    .tuple(
      item,
      fc.option(fc.integer({ min: -20, max: 900 })),
      fc.option(fc.integer({ min: 1000, max: 1210 })),
      fc.option(fc.integer({ min: 1, max: 24 })),
    )
    .map(([name, ago, at, every]): Row => ['Quillon Four', name, ago === null ? '' : iso(base - ago), at ?? '', '', every ?? '']);

  it('NO and UNKNOWN there on the last day are never OK here, and good days agree', () => {
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 1, max: 8 }),
        (items, days, hours) => {
          const last = iso(base + days);
          const rows = judged(items, { asOf: iso(base), last, hours }).filter(([, , , why]) => !String(why).startsWith('not in the list'));
          const status = (call('AIRCRAFT_STATUS', padded(items), fleet, last) as unknown[][]).map((row) => row.map(plain));
          rows.slice(1).forEach(([name, verdict, through], index) => {
            const [word, until, , left] = status[index] ?? [];
            const ahead = String(items[index]?.[2]) > iso(base) && through === '';
            if (word === 'NO') expect(ahead ? ['NO', 'UNKNOWN'] : ['NO']).toContain(verdict);
            if (word === 'UNKNOWN') expect(['UNKNOWN', 'NO']).toContain(verdict);
            if (verdict === 'OK') expect(left === '' || Number(left) >= hours).toBe(true);
            if (!ahead) expect([name, through]).toEqual([items[index]?.[1], until]);
          });
          if (status.some(([word]) => word === 'NO' || word === 'UNKNOWN')) expect(rows[0]?.[1]).not.toBe('OK');
        },
      ),
      { numRuns: 300 },
    );
  });
});
