// PILOT_FOR_FLIGHT at its own door: which items a flight needs, boundary days, and the list for all flights as its judge.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../../core/basics/civilDate';
import { worstVerdict, type Verdict } from '../../../core/basics/verdict';
import { pilotForFlight } from '../../../core/currency/pilotForFlight';
import { authorities } from '../../../core/currency/rules';
import { plainWords } from '../../../functions/registry/readText';
import { call, plain, sentenceOf } from '../../support/call';

type Row = readonly unknown[];
const fleet = [
  ['aircraft', 'category', 'class', 'tailwheel', 'device'],
  ['North', 'airplane', 'SEL', '', ''],
  ['South', 'airplane', 'MEL', '', ''],
  ['Tail', 'airplane', 'SEL', 'yes', ''],
  ['Trainer', 'airplane', 'SEL', '', 'ATD'],
];
const heads = ['date', 'aircraft', 'day landings', 'day full stop', 'night landings', 'night full stop', 'approaches', 'holds', 'tracking'];
const papers: readonly Row[] = [
  ['flight review', '2026-06-27', ''],
  ['medical examination', '2026-05-12', ''],
  ['medical class', 3, ''],
  ['birth date', '1990-06-01', ''],
];
const landings = (date: string, count: number, aircraft = 'North'): Row => [date, aircraft, count, count];

interface Asked {
  readonly flights?: readonly Row[];
  readonly log?: readonly Row[];
  readonly papers?: readonly Row[];
  readonly flown?: string;
  readonly last?: string;
  readonly asOf?: string;
  readonly rules?: string;
  /** passengers, night, instrument. */
  readonly needs?: readonly [string, string, string];
  readonly first?: string;
}
function judged(asked: Asked): unknown[][] {
  const { flights = [landings('2026-11-01', 3)], flown = 'North', asOf = '2026-11-25', rules = 'FAA', needs = ['yes', 'no', 'no'] } = asked;
  const log = asked.log ?? [heads, ...flights.map((row) => heads.map((_, index) => row[index] ?? ''))];
  const given = [log, fleet, asked.papers ?? papers, flown, asked.last ?? asOf, asOf, rules, ...needs, asked.first ?? ''];
  return (call('PILOT_FOR_FLIGHT', ...given) as unknown[][]).map((row) => row.map(plain));
}
const items = (rows: readonly Row[]): unknown[] => rows.slice(1).map(([item]) => item);
const row = (rows: readonly Row[], item: string): Row => rows.find(([name]) => name === item) ?? [];
const whole = (asked: Asked): Row => judged(asked)[0] ?? [];

describe('what a flight needs', () => {
  it('asks for landings with passengers, at night with passengers at night, for instrument recency on instrument flight', () => {
    const always = ['flight review', 'medical, private'];
    expect(items(judged({ needs: ['no', 'no', 'no'] }))).toEqual(always);
    expect(items(judged({ needs: ['no', 'yes', 'no'] }))).toEqual(always);
    expect(items(judged({ needs: ['yes', 'no', 'no'] }))).toEqual(['passengers, SEL', ...always]);
    expect(items(judged({ needs: ['yes', 'yes', 'no'] }))).toEqual(['passengers, SEL', 'passengers at night, SEL', ...always]);
    expect(items(judged({ needs: ['no', 'no', 'yes'] }))).toEqual(['instrument flight, airplane', ...always]);
  });

  it('asks for full stops in a tailwheel aircraft only in one, also of a log that does not tell', () => {
    const flights = [landings('2026-11-01', 3), ['2026-11-02', 'Tail', 3, 2]];
    expect(row(judged({ flights, flown: 'Tail' }), 'passengers, tailwheel, SEL').slice(1, 3)).toEqual(['NO', '']);
    expect(items(judged({ flights }))).not.toContain('passengers, tailwheel, SEL');
    const log = [
      ['date', 'aircraft', 'day landings'],
      ['2026-11-02', 'Tail', 3],
    ];
    expect(judged({ log, flown: 'Tail' })[0]?.slice(1)).toEqual(['UNKNOWN', '', 'passengers, tailwheel: the log has no column for this']);
  });

  it('counts the group of the aircraft flown and no other', () => {
    const flights = [landings('2026-11-01', 3, 'South')];
    expect(whole({ flights })[3]).toBe(
      'passengers, SEL: never enough in this log, 0 of 3 landings in the 90 days to 25 November 2026, to do: 3 more landings',
    );
    expect(whole({ flights, flown: 'south' })[1]).toBe('OK');
  });

  it('takes the least privilege of the medical that serves', () => {
    const first = [['flight review', '2026-06-27', ''], ['medical examination', '2025-01-12', ''], ['medical class', 1, ''], papers[3] ?? []];
    expect(row(judged({ papers: first }), 'medical, private').slice(1, 3)).toEqual(['OK', '2030-01-31']);
    expect(items(judged({ papers: first }))).not.toContain('medical, commercial');
    const basic = [papers[0] ?? [], ['BasicMed course', '2025-03-01', ''], ['BasicMed examination', '2025-03-01', '']];
    expect(row(judged({ papers: basic }), 'medical, private, by BasicMed').slice(1, 3)).toEqual(['OK', '2027-03-31']);
    expect(whole({ papers: basic, last: '2027-04-01', needs: ['no', 'no', 'no'] }).slice(1)).toEqual([
      'NO',
      '2027-03-31',
      'medical, private, by BasicMed: lapses during the trip, valid through 31 March 2027',
    ]);
  });

  it('always asks for papers of the owner’s own', () => {
    const own = [...papers, ['club checkout', '2026-11-30', ''], ['tow check', '2026-11-26', 12]];
    expect(row(judged({ papers: own, last: '2026-11-30' }), 'club checkout').slice(1, 3)).toEqual(['OK', '2026-11-30']);
    expect(row(judged({ papers: own, last: '2026-12-01' }), 'club checkout')).toEqual([
      'club checkout',
      'NO',
      '2026-11-30',
      'lapses during the trip, valid through 30 November 2026, your own item, its date taken as the last good day, to do: club checkout by 30 November 2026',
    ]);
    expect(row(judged({ papers: own, last: '2026-12-01' }), 'tow check').slice(1)).toEqual(['UNKNOWN', '', 'done on a day still to come']);
  });

  it('asks an EASA pilot for class rating and medical always, for the instrument rating on instrument flight even if none is written down', () => {
    const easa = [['class rating valid to', '2027-03-31', ''], ...papers.slice(1, 2), ['medical class', 2, ''], ...papers.slice(3)];
    expect(whole({ papers: easa, rules: 'EASA' }).slice(1, 3)).toEqual(['OK', '2027-01-29']);
    const instrument = judged({ papers: easa, rules: 'EASA', needs: ['no', 'no', 'yes'] });
    expect(instrument[0]?.slice(1)).toEqual(['UNKNOWN', '', 'instrument rating: not written down in the papers: instrument rating valid to']);
    const rated = [...easa, ['instrument rating valid to', '2026-11-30', '']];
    expect(whole({ papers: rated, rules: 'EASA', needs: ['yes', 'yes', 'yes'] })[1]).toBe('OK');
    expect(whole({ papers: rated, rules: 'EASA', needs: ['no', 'no', 'yes'], last: '2026-12-01' })[1]).toBe('NO');
    expect(items(judged({ papers: easa, rules: 'EASA' }))).toEqual(['passengers, SEL', 'class rating', 'medical, private']);
  });

  it('names whose rule it is where several authorities are asked', () => {
    expect(items(judged({ rules: 'FAA, EASA' })).slice(0, 3)).toEqual(['FAA passengers, SEL', 'FAA flight review', 'FAA medical, private']);
  });
});

describe('the last day', () => {
  const early = [
    ['flight review', '2023-02-10', ''],
    ['medical examination', '2023-05-12', ''],
    ['medical class', 3, ''],
    ['birth date', '1990-06-01', ''],
  ];
  const reviewed = (date: string): readonly Row[] => [['flight review', date, ''], ...early.slice(1)];
  const alone = ['no', 'no', 'no'] as const;
  const since = '2024-01-01';
  it.each<[string, Asked, string, string]>([
    // Day of the flight among the 90: 1 January is day 1, 31 March day 90 (59 days to the end of February), 30 March in a leap year.
    ['landings', { flights: [landings('2025-01-01', 3)], papers: reviewed('2024-06-01'), asOf: '2025-03-01' }, '2025-03-31', '2025-04-01'],
    ['landings in a leap year', { flights: [landings('2024-01-01', 3)], papers: early, asOf: '2024-03-01' }, '2024-03-30', '2024-03-31'],
    // 24 calendar months, to the end of the month (14 CFR 61.56(c)).
    ['a review to a leap day', { papers: reviewed('2022-02-01'), asOf: since, needs: alone }, '2024-02-29', '2024-03-01'],
    ['a review to an end of year', { papers: reviewed('2022-12-31'), asOf: since, needs: alone }, '2024-12-31', '2025-01-01'],
  ])('of %s is good, the day after is not', (_, asked, lastGood, after) => {
    expect(whole({ ...asked, last: lastGood }).slice(1, 3)).toEqual(['OK', lastGood]);
    expect(whole({ ...asked, last: after }).slice(1, 3)).toEqual(['NO', lastGood]);
  });

  it('is good however soon after it something lapses, and the first to lapse is named', () => {
    expect(whole({ last: '2027-01-29' })).toEqual([
      'all',
      'OK',
      '2027-01-29',
      '3 items good through the last day of the trip; the first to lapse: passengers, SEL, 29 January 2027',
    ]);
  });

  it('counts no flight after as_of, and takes no paper of a later day for done', () => {
    expect(whole({ flights: [landings('2026-11-26', 3)], last: '2026-11-30' })[1]).toBe('NO');
    expect(whole({ papers: [['flight review', '2026-11-26', ''], ...papers.slice(1)], last: '2026-11-30' }).slice(1)).toEqual([
      'UNKNOWN',
      '',
      'flight review: done on a day still to come: flight review',
    ]);
  });

  it('before as_of is UNKNOWN, and what was done after it does not count', () => {
    const rows = judged({ last: '2026-11-10', flights: [landings('2026-11-20', 3)] });
    expect(rows[0]?.[1]).toBe('NO');
    expect(rows[1]).toEqual(['dates', 'UNKNOWN', '', 'the last day of the trip, 10 November 2026, is before as_of, 25 November 2026']);
    expect(whole({ last: '2026-11-24' })[1]).toBe('UNKNOWN');
  });

  it('shows everything that is not OK, the worst first', () => {
    const found = whole({
      papers: [
        ['flight review', '2020-05-01', ''],
        ['medical examination', '2026-05-12', ''],
      ],
      needs: ['yes', 'yes', 'no'],
      last: '2026-11-30',
    });
    expect(found).toEqual([
      'all',
      'NO',
      '',
      'passengers at night, SEL: never enough in this log, 0 of 3 landings to a full stop at night in the 90 days to 30 November 2026, to do: 3 more landings to a full stop at night; ' +
        'flight review: lapsed, valid through 31 May 2022, to do: flight review; medical: not written down in the papers: birth date, medical class',
    ]);
  });
});

describe('calendar months', () => {
  const ifr = { needs: ['no', 'no', 'yes'] as const };
  const approaches = (date: string, count: number): Row => [date, 'North', 1, 1, '', '', count, 1, 1];
  it('are CHECK where only the month itself makes them enough, on the first day of the trip too', () => {
    const flights = [approaches('2026-11-10', 6)];
    expect(whole({ ...ifr, flights })).toEqual([
      'all',
      'CHECK',
      '2027-05-31',
      'instrument flight, airplane: holds in one reading only, 0 of 6 approaches, 0 of 1 holding, 0 of 1 tracking in the 6 calendar months before November 2026',
    ]);
    expect(whole({ ...ifr, flights, first: '2026-12-01', last: '2026-12-02' })[1]).toBe('OK');
    expect(whole({ ...ifr, flights, first: '2026-11-30', last: '2026-12-02' })[1]).toBe('CHECK');
    expect(whole({ ...ifr, flights, last: '2026-12-02' })[1]).toBe('CHECK');
    expect(whole({ ...ifr, flights, first: '2027-05-31', last: '2027-05-31' })[1]).toBe('OK');
    expect(whole({ ...ifr, flights, first: '2027-05-31', last: '2027-06-01' })[1]).toBe('NO');
  });

  it('say which tasks fall short', () => {
    const flights = [approaches('2026-09-10', 4)];
    expect(whole({ ...ifr, flights })[3]).toBe(
      'instrument flight, airplane: never enough in this log, 4 of 6 approaches in the 6 calendar months before November 2026, to do: 2 more approaches, or instrument proficiency check',
    );
  });

  it('take a check that was passed by as_of, and none after it', () => {
    const flights = [approaches('2026-09-10', 1)];
    const checked = (date: string) =>
      whole({ ...ifr, flights, papers: [...papers, ['instrument proficiency check', date, '']], last: '2026-12-01' })[1];
    expect(checked('2026-11-25')).toBe('OK');
    expect(checked('2026-11-26')).toBe('NO');
  });
});

describe('what is not known', () => {
  it('is UNKNOWN for an aircraft that the list does not know, or that is none', () => {
    const none = judged({ flown: 'Kestrel' });
    expect(none[0]?.slice(1)).toEqual(['UNKNOWN', '', 'aircraft, Kestrel: not in the list of the aircraft, or without a category there']);
    expect(whole({ flown: 'Kestrel', needs: ['no', 'no', 'no'] })[1]).toBe('UNKNOWN');
    expect(whole({ flown: 'Trainer' })[3]).toBe('aircraft, Trainer: a training device in the list of the aircraft');
  });

  it('is UNKNOWN for an authority without rules, or without one for this flight', () => {
    const day = dayNumber({ year: 2026, month: 11, day: 25 });
    const flight = {
      flown: { name: 'North', key: 'north' },
      firstDay: day,
      lastDay: day,
      asOfDay: day,
      passengers: true,
      night: true,
      instrument: false,
    };
    const records = { log: { flights: [], columns: new Set<never>() }, fleet: [], papers: [] };
    const rows = pilotForFlight([{ name: 'INV', pilot: [], aircraft: [] }], authorities, records, flight, plainWords);
    expect(rows.map(({ listed, verdict }) => [listed.item, listed.about, verdict])).toEqual([
      ['aircraft', 'North', 'UNKNOWN'],
      ['INV rules', 'every flight, passengers, passengers at night', 'UNKNOWN'],
    ]);
  });

  it('is said in one sentence where an argument is bad', () => {
    const log = [heads, heads.map((_, index) => landings('2026-11-01', 3)[index] ?? '')];
    const with_ = (...end: unknown[]) => sentenceOf('PILOT_FOR_FLIGHT', log, fleet, papers, 'North', ...end);
    expect(with_('2026-11-30', '2026-11-25', 'FAA', '', 'no', 'no')).toBe(
      'PILOT_FOR_FLIGHT: passengers must be yes or no (or a tick box); got a blank.',
    );
    expect(with_('2026-11-30', '2026-11-25', 'moon', 'yes', 'no', 'no')).toMatch(/^PILOT_FOR_FLIGHT: rules must be FAA/);
    expect(with_('2026-11-30', '2026-11-25', 'FAA', 'yes', 'no', 'no', '2026-12-01')).toMatch(/^PILOT_FOR_FLIGHT: .*first_day/);
  });
});

describe('random logs, judged by PILOT_STATUS on the last day', () => {
  const base = dayNumber({ year: 2026, month: 11, day: 25 });
  const iso = (day: number): string => isoDate(civilDateFromDayNumber(day));
  const small = fc.integer({ min: 0, max: 4 });
  const flight = fc
    .record({
      ago: fc.integer({ min: -30, max: 400 }),
      aircraft: fc.constantFrom('North', 'South', 'Tail', 'Trainer'),
      day: small,
      night: small,
      approaches: fc.integer({ min: 0, max: 6 }),
      holds: fc.integer({ min: 0, max: 1 }),
    })
    .map(({ ago, aircraft, day, night, approaches, holds }) => ({
      ago,
      row: [iso(base - ago), aircraft, day, Math.floor(day / 2), night, night, approaches, holds, holds],
    }));
  const ago = fc.integer({ min: 0, max: 800 });
  const when = fc.record({
    flights: fc.array(flight, { minLength: 1, maxLength: 25 }),
    review: ago,
    exam: fc.integer({ min: 0, max: 2000 }),
    check: ago,
    days: fc.integer({ min: 0, max: 70 }),
    flown: fc.constantFrom('North', 'South', 'Tail'),
    rules: fc.constantFrom('FAA', 'EASA'),
    needs: fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()),
  });

  it('every row agrees, and the whole is the worst of them', () => {
    fc.assert(
      fc.property(when, ({ flights, review, exam, check, days, flown, rules, needs }) => {
        const log = [heads, ...flights.map(({ row: one }) => one)];
        const done = [
          heads,
          ...flights.filter(({ ago: since }) => since >= 0).map(({ row: one }) => one),
          [iso(base - 900), flown, ...Array<number>(7).fill(0)],
        ];
        const written = [
          ...[
            ['flight review', iso(base - review), ''],
            ['instrument proficiency check', iso(base - check), ''],
          ],
          ...[
            ['medical examination', iso(base - exam), ''],
            ['medical class', 1, ''],
            ['birth date', '1980-02-29', ''],
          ],
          ...[
            ['class rating valid to', iso(base + 400 - review), ''],
            ['instrument rating valid to', iso(base + 400 - check), ''],
            ['club', iso(base + 300 - review), ''],
          ],
        ];
        const last = iso(base + days);
        const rows = (call('PILOT_FOR_FLIGHT', log, fleet, written, flown, last, iso(base), rules, ...needs, last) as unknown[][]).map((one) =>
          one.map(plain),
        );
        const status = (call('PILOT_STATUS', done, fleet, written, last, rules) as unknown[][]).map((one) => one.map(plain));
        for (const [item, verdict, through] of rows.slice(1)) {
          const [, counted, needed, word, until, left] = status.find(([name]) => name === item) ?? [];
          expect([item, through]).toEqual([item, until]);
          if (verdict === 'OK') expect(word === 'OK' || (word === 'CHECK' && Number(left) <= 60)).toBe(true);
          else expect([item, verdict]).toEqual([item, word]);
          if (verdict === 'OK' && String(item).startsWith('instrument flight') && counted !== needed) expect(check).toBeLessThan(300);
        }
        const words = rows.slice(1).map(([, word]) => word as Verdict);
        expect(rows[0]?.[1]).toBe(worstVerdict(words));
        if (rows[0]?.[1] === 'OK')
          expect(rows[0]?.[2]).toBe(
            rows
              .slice(1)
              .map(([, , through]) => String(through))
              .sort()[0],
          );
      }),
      { numRuns: 300 },
    );
  });
});
