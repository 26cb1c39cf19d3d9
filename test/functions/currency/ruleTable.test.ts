// Rules as a table: those of docs/rules-as-a-table.md, what is said of a line that is none, and how the lists and the trip take them.
import { describe, expect, it } from 'vitest';
import { readRuleFile } from '../../../addon/build/ruleTables';
import { call, plain, sentenceOf } from '../../support/call';

const heads = ['rule', 'what', 'at least', 'within', 'of', 'in', 'needed for', 'night', 'full stop', 'set by'];
/** As on the page. */
const five: readonly (readonly unknown[])[] = [
  ['club recency', 'landings', 3, 60, 'days', 'same class', '', '', '', 'club'],
  ['night with guests', 'landings', 3, 45, 'days', 'same class', 'passengers at night', 'yes', 'yes', 'pilot'],
  ['insurer, hours', 'hours', 10, 12, 'months', 'Quillon Four', '', '', '', 'insurer'],
  ['yearly check', 'flights with instructor', 1, 12, 'calendar months', 'same category', '', '', '', 'club'],
  ['since the overhaul', 'flights', 2, '2026-06-01', 'since', 'Brindle Two', 'passengers', '', '', 'pilot'],
];
const fleet = [
  ['aircraft', 'category', 'class', 'tailwheel'],
  ['Quillon Four', 'airplane', 'SEL', ''],
  ['Brindle Two', 'airplane', 'SEL', 'yes'],
  ['Sable Twin', 'airplane', 'MEL', ''],
];
const log = [
  ['date', 'aircraft', 'day landings', 'night landings', 'night full stop', 'hours', 'with instructor'],
  ['2025-11-30', 'Quillon Four', 2, '', '', 8, 1],
  ['2026-10-20', 'Quillon Four', 2, 3, 3, 2, ''],
  ['2026-11-20', 'Brindle Two', 1, '', '', 1.5, ''],
];
const papers = [
  ['flight review', '2026-05-01', ''],
  ['medical examination', '2026-05-12', ''],
  ['birth date', '1990-01-01', ''],
  ['medical class', 3, ''],
];
const list = (rows: readonly (readonly unknown[])[], asOf = '2026-11-25'): unknown[][] =>
  (call('PILOT_STATUS', log, fleet, papers, asOf, 'FAA', '', [heads, ...rows]) as unknown[][]).map((row) => row.map(plain));
const row = (rows: readonly unknown[][], item: string): unknown[] => rows.find(([name]) => name === item)?.slice(1) ?? [];

describe('the five rules of the page', () => {
  const rows = list(five);
  it.each([
    // 60 days to 25 November begin on 27 September; the third landing back from 20 November is on 20 October: + 59 days.
    ['club recency, SEL', [6, 3, 'OK', '2026-12-18', 23, 'club; 3 landings in 60 days']],
    ['club recency, MEL', [0, 3, 'NO', '', '', 'to do: 3 more landings; club; 3 landings in 60 days']],
    // 20 October + 44 days.
    [
      'night with guests, SEL',
      [
        3,
        3,
        'CHECK',
        '2026-12-03',
        8,
        'to do: 3 more landings to a full stop at night by 3 December 2026; pilot; 3 landings to a full stop at night in 45 days',
      ],
    ],
    // 8 h on 30 November 2025 count through 29 November 2026.
    ['insurer, hours, Quillon Four', [10, 10, 'CHECK', '2026-11-29', 4, 'to do: 8 more hours by 29 November 2026; insurer; 10 hours in 12 months']],
    // Done in November 2025: through November 2026.
    [
      'yearly check, airplane',
      [
        1,
        1,
        'CHECK',
        '2026-11-30',
        5,
        'to do: 1 more flight with an instructor by 30 November 2026; club; 1 flight with an instructor in 12 calendar months',
      ],
    ],
    ['since the overhaul, Brindle Two', [1, 2, 'NO', '', '', 'to do: 1 more flight; pilot; 2 flights']],
  ])('%s', (item, expected) => expect(row(rows, item)).toEqual(expected));

  it('what has lapsed says what is missing on the day', () => {
    expect(row(list(five, '2026-12-19'), 'club recency, SEL')).toEqual([
      1,
      3,
      'NO',
      '2026-12-18',
      -1,
      'to do: 2 more landings; club; 3 landings in 60 days',
    ]);
  });
});

describe('a flight', () => {
  const flight = (flown: string, last: string, passengers: string, night: string, rows = five): unknown[][] =>
    (
      call('PILOT_FOR_FLIGHT', log, fleet, papers, flown, last, '2026-11-25', 'FAA', passengers, night, 'no', '2026-11-25', [
        heads,
        ...rows,
      ]) as unknown[][]
    ).map((one) => one.map(plain));
  const items = (rows: unknown[][]): unknown[] =>
    rows.slice(1).flatMap(([item]) => (five.some(([name]) => String(item).startsWith(String(name))) ? [item] : []));
  it('is asked for the rules of its aircraft and its need', () => {
    expect(items(flight('Quillon Four', '2026-11-26', 'no', 'no'))).toEqual([
      'club recency, SEL',
      'insurer, hours, Quillon Four',
      'yearly check, airplane',
    ]);
    expect(items(flight('Brindle Two', '2026-11-26', 'yes', 'yes'))).toEqual([
      'club recency, SEL',
      'night with guests, SEL',
      'yearly check, airplane',
      'since the overhaul, Brindle Two',
    ]);
  });
  it('is NO where one of them is', () => {
    expect(flight('Quillon Four', '2026-11-29', 'no', 'no')[0]?.slice(1, 3)).toEqual(['OK', '2026-11-29']);
    expect(flight('Quillon Four', '2026-11-30', 'no', 'no')[0]?.slice(1)).toEqual([
      'NO',
      '2026-11-29',
      'insurer, hours, Quillon Four: lapses during the trip, valid through 29 November 2026, 2 of 10 hours in the 12 months to 30 November 2026, to do: 8 more hours by 29 November 2026',
    ]);
    expect(flight('Sable Twin', '2026-11-26', 'no', 'no')[0]?.[1]).toBe('NO');
  });
  it('is UNKNOWN where one of them cannot be read', () => {
    const found = flight('Quillon Four', '2026-11-26', 'no', 'no', [...five, ['odd', 'landings', 'three', 60, 'days', '', '', '', '', '']]);
    expect(found[0]?.[1]).toBe('UNKNOWN');
    expect(found.find(([item]) => item === 'odd')?.slice(1)).toEqual([
      'UNKNOWN',
      '',
      'this row is not a rule; "at least" must be a whole number above 0, up to 1,000; got "three"',
    ]);
  });
});

describe('a line that is no rule', () => {
  const said = (changes: Readonly<Record<string, unknown>>): unknown => {
    const line = heads.map((head) =>
      head in changes
        ? changes[head]
        : (({ rule: 'odd', what: 'landings', 'at least': 3, within: 60, of: 'days' } as Record<string, unknown>)[head] ?? ''),
    );
    return row(list([line]), String(changes['rule'] ?? 'odd'))[5];
  };
  it.each([
    [
      { what: 'loops' },
      '"what" must be one of landings, take-offs, hours, hours in command, hours with instructor, hours at night, instrument hours, flights, flights with instructor, approaches, holds, tracking, paper, medical; got "loops"',
    ],
    [{ 'at least': '' }, '"at least" must be how many landings; got a blank'],
    [{ 'at least': -1 }, '"at least" must be a whole number above 0, up to 1,000; got -1'],
    [{ within: '' }, '"within" must be how many days; got a blank'],
    [{ of: 'weeks' }, '"of" must be one of days, months, calendar months, since; got "weeks"'],
    [{ of: 'since' }, '"within" must be a date, such as 2026-11-30; got 60'],
    [{ night: 'sometimes' }, '"night" must be yes or no (or a tick box); got "sometimes"'],
    [
      { 'needed for': 'guests' },
      '"needed for" must be one of every flight, passengers, passengers at night, night, instrument flight, no flight; got "guests"',
    ],
    [{ what: 'paper', of: 'days', 'at least': '' }, '"of" must be months or calendar months for a paper; got "days"'],
  ])('%o', (changes, sentence) => expect(said(changes)).toBe(`this row is not a rule; ${sentence}`));

  it('names nothing in the list of the aircraft', () =>
    expect(row(list([['odd', 'landings', 3, 60, 'days', 'SELL', '', '', '', 'club']]), 'odd, SELL').slice(2)).toEqual([
      'UNKNOWN',
      '',
      '',
      'nothing in the list of the aircraft is so named; club; 3 landings in 60 days',
    ]));
  it('differs from another of its name', () => {
    const rows = [
      ['odd', 'landings', 3, 60, 'days'],
      ['odd', 'hours', 3, 90, 'days'],
    ].map((line) => [...line, ...Array<string>(5).fill('')]);
    expect(row(list(rows), 'odd')[5]).toMatch(
      /^this row is not a rule; "rule" must be a name of its own, since the rows of one rule differ in "what" and "at least" only; got "odd"$/,
    );
  });
  it('has a heading that nobody knows', () => {
    expect(
      sentenceOf('PILOT_STATUS', log, fleet, papers, '2026-11-25', 'FAA', '', [
        ['rule', 'what', 'how often'],
        ['odd', 'landings', 3],
      ]),
    ).toMatch(/^PILOT_STATUS: own_rules must be a table of rules under one header row .*got "how often"/);
  });
});

describe('the file of an authority', () => {
  const file = (...lines: readonly string[]): ReturnType<typeof readRuleFile> =>
    readRuleFile('Freeland', ['# Invented.', 'rule,what,at least,within,of,in,paragraph,until', ...lines].join('\n'));
  it('is read like rules of one’s own', () => {
    const { authority, mistakes } = file(
      'passengers,landings,4,3,months,same class,"Act 1, part 2",2026-12-31',
      'passengers,take-offs,4,3,months,same class,"Act 1, part 2",2026-12-31',
      'talk,paper,,12,calendar months,,Act 3,',
    );
    expect(mistakes).toEqual([]);
    expect(authority.pilot.map(({ kind, item, paragraph, inForce }) => [kind, item, paragraph, inForce])).toEqual([
      ['days', 'passengers', 'Act 1, part 2', { until: '2026-12-31' }],
      ['paper', 'talk', 'Act 3', undefined],
    ]);
    expect(authority.pilot[0]).toMatchObject({
      within: { months: 3 },
      same: 'class',
      tasks: [
        { counts: { of: 'landings' }, needed: 4 },
        { counts: { of: 'takeoffs' }, needed: 4 },
      ],
    });
  });
  it('has each mistake named with its line', () => {
    expect(file('passengers,landings,4,3,weeks,,,', '', 'talk,paper,2,12,months,,,', 'x,hours,1,1,days,,,31.12.2026').mistakes).toEqual([
      'Freeland.csv, line 3: "of" must be one of days, months, calendar months, since; got "weeks"',
      'Freeland.csv, line 5: "at least" must be blank for a paper; got "2"',
      'Freeland.csv, line 6: "until" must be a date such as 2026-11-30, as text; got "31.12.2026"',
    ]);
  });
});
