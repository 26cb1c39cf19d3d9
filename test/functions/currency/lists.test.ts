// The lists of the currency log at their own door: any order of columns, what is missing, rows of one's own, another
// authority as data alone, sentences of errors, and a log of 20,000 flights.
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../core/basics/civilDate';
import type { ListItem } from '../../../core/currency/experience';
import { experienceOf } from '../../../core/currency/groups';
import { nothingDone } from '../../../core/currency/flightLog';
import { pilotList } from '../../../core/currency/pilotList';
import { authorities } from '../../../core/currency/rules';
import type { Authority } from '../../../core/currency/rules/rule';
import { aircraftStanding } from '../../../core/currency/aircraftList';
import { plainWords } from '../../../functions/registry/readText';
import { call, plain, sentenceOf } from '../../support/call';

const fleetHeads = ['aircraft', 'category', 'class', 'type rating', 'tailwheel', 'device', 'hours now'];
const fleet = [fleetHeads, ['North', 'airplane', 'single-engine land', '', '', '', 1200]];
const rows = (log: unknown, papers: unknown = '', rules: unknown = 'FAA', aircraft: unknown = fleet): unknown[][] =>
  (call('PILOT_STATUS', log, aircraft, papers === '' ? [['', '']] : papers, '2026-11-25', rules) as unknown[][]).map((row) => row.map(plain));
const named = (list: readonly unknown[][], name: string): unknown[] => list.find((row) => row[0] === name)?.slice(1, 6) ?? [];
const passengers = 'passengers, single-engine land';

describe('the log', () => {
  it('is read by its headings, in any order, capitals and spaces aside, other columns passed over', () => {
    const log = [
      ['Remarks', 'Landings (Day)', 'REGISTRATION', 'date', 'Crew'],
      ['round the field', 3, 'north', '2026-11-01', 'Ada'],
      ['', '', '', '', ''],
    ];
    expect(named(rows(log), passengers)).toEqual([3, 3, 'OK', '2027-01-29', 65]);
  });

  it('asks for take-offs too where it has a column of them', () => {
    const log = (takeoffs: unknown) => [
      ['date', 'aircraft', 'day landings', 'day take-offs'],
      ['2026-11-01', 'North', 3, takeoffs],
    ];
    expect(named(rows(log(3)), passengers)).toEqual([3, 3, 'OK', '2027-01-29', 65]);
    expect(named(rows(log(2)), passengers)).toEqual([2, 3, 'NO', '', '']);
  });

  it('gives UNKNOWN, never NO, for what it has no column of, and where it is empty', () => {
    expect(
      named(
        rows([
          ['date', 'aircraft', 'hours'],
          ['2026-11-01', 'North', 1],
        ]),
        'passengers',
      ),
    ).toEqual(['', '', 'UNKNOWN', '', '']);
    const empty = rows([
      ['date', 'aircraft', 'day landings'],
      ['', '', ''],
    ]);
    expect(empty.filter((row) => String(row[0]).startsWith('passengers')).map((row) => [row[3], row[6]])).toEqual(
      Array(2).fill(['UNKNOWN', expect.stringMatching(/^the log is empty; 14 CFR/)]),
    );
    expect(
      rows(
        [
          ['date', 'aircraft', 'day landings'],
          ['2026-11-01', 'North', 1],
        ],
        '',
        'FAA',
        [
          ['aircraft', 'category'],
          ['North', ''],
        ],
      ).some((row) => /^no aircraft of a category is listed/.test(String(row[6]))),
    ).toBe(true);
  });

  it('names flights in aircraft that nothing is known of, and counts none of them', () => {
    const list = rows([
      ['date', 'aircraft', 'day landings'],
      ['2026-11-01', 'South', 9],
      ['2026-11-02', '', 9],
      ['2026-11-02', 'North', 1],
    ]);
    expect(named(list, passengers)[0]).toBe(1);
    expect(list[list.length - 1]).toEqual([
      'flights not counted, South, no aircraft',
      '',
      '',
      'CHECK',
      '',
      '',
      'not in the list of the aircraft, or without a category there',
    ]);
  });

  it('does not count flights after the day asked', () => {
    expect(
      named(
        rows([
          ['date', 'aircraft', 'day landings'],
          ['2026-11-26', 'North', 3],
        ]),
        passengers,
      ),
    ).toEqual([0, 3, 'NO', '', '']);
  });

  it('reads hours as numbers, hours and minutes, or a cell of time', () => {
    const log = (hours: unknown) => [
      ['date', 'aircraft', 'day landings', 'hours', 'hours in command', 'hours with instructor'],
      ['2026-11-01', 'North', 1, hours, '', ''],
    ];
    const counted = (hours: unknown) => named(rows(log(hours), [['class rating valid to', '2026-12-31']], 'EASA'), 'hours, single-engine land')[0];
    expect([1.5, '1.5', '1,5', '1:30', new Date('1899-12-30T01:30:00Z')].map(counted)).toEqual([1.5, 1.5, 1.5, 1.5, 1.5]);
  });

  it.each([
    [
      'a bad date',
      [
        ['date', 'aircraft', 'day landings'],
        ['2026-11-01', 'North', 1],
        ['2026-02-30', 'North', 1],
      ],
      'log must be a log of flights under one header row (a date in each row); got "2026-02-30" (row 3, column 1 of log).',
    ],
    [
      'a bad count',
      [
        ['date', 'aircraft', 'day landings'],
        ['2026-11-01', 'North', 'few'],
      ],
      'log must be a log of flights under one header row (whole, 0 to 1,000 under "day landings"); got "few" (row 2, column 3 of log).',
    ],
    [
      'hours among the counts',
      [
        ['date', 'aircraft', 'day landings', 'holds'],
        ['2026-11-01', 'North', 1, 1.4],
      ],
      'log must be a log of flights under one header row (whole, 0 to 1,000 under "holds"); got 1.4 (row 2, column 4 of log).',
    ],
    [
      'too many hours',
      [
        ['date', 'aircraft', 'day landings', 'hours'],
        ['2026-11-01', 'North', 1, -1],
      ],
      'log must be a log of flights under one header row (0 to 1,000 under "hours"); got -1 (row 2, column 4 of log).',
    ],
    [
      'no aircraft',
      [
        ['date', 'day landings'],
        ['2026-11-01', 1],
      ],
      'log must be a log of flights under one header row (with a column "aircraft"); got the headings "date", "day landings" (row 1 of log).',
    ],
    [
      'landings of day and night together',
      [
        ['date', 'aircraft', 'landings', 'night landings'],
        ['2026-11-01', 'North', 3, 1],
      ],
      'log must be a log of flights under one header row ("day landings" beside "night landings"); got "landings", which could be both together (row 1, column 3 of log).',
    ],
    [
      'a heading twice',
      [
        ['date', 'aircraft', 'landings day', 'day landings'],
        ['2026-11-01', 'North', 1, 1],
      ],
      'log must be a log of flights under one header row (one column of "day landings"); got a second one, "day landings" (row 1, column 4 of log).',
    ],
    [
      'full stops that are no landings',
      [
        ['date', 'aircraft', 'day landings', 'day full stop'],
        ['2026-11-01', 'North', 1, 2],
      ],
      'log must be a log of flights under one header row (no more landings to a full stop than landings); got 2 of 1 (row 2, column 4 of log).',
    ],
  ])('says where it has %s', (_, log, sentence) => {
    expect(sentenceOf('PILOT_STATUS', log, fleet, [['', '']], '2026-11-25')).toBe(`PILOT_STATUS: ${sentence}`);
  });
});

describe('papers and rules', () => {
  const log = [
    ['date', 'aircraft', 'day landings'],
    ['2026-11-01', 'North', 3],
  ];
  it('lists rows of one’s own, by their last good day or by months', () => {
    const list = rows(log, [
      ['club checkout', '2027-01-31', ''],
      ['first aid course', '2024-02-29', 36],
      ['swim test', 'passed', ''],
      ['EASA medical valid to', '2027-01-01', ''],
    ]);
    expect(list.slice(-3).map((row) => [row[0], row[3], row[4], row[6]])).toEqual([
      ['club checkout', 'OK', '2027-01-31', 'your own item, its date taken as the last good day'],
      ['first aid course', 'OK', '2027-02-28', 'your own item'],
      ['swim test', 'UNKNOWN', '', 'written down, but not as a date that can be read'],
    ]);
    expect(
      rows(log, [['tow check', '2027-01-31', 12]])
        .slice(-1)
        .map((row) => [row[0], row[3], row[6]]),
    ).toEqual([['tow check', 'UNKNOWN', 'done on a day still to come']]);
    expect(
      rows(log, [['tow check', '', 12]])
        .slice(-1)
        .map((row) => [row[0], row[3], row[6]]),
    ).toEqual([['tow check', 'UNKNOWN', 'not written down in the papers']]);
  });

  it.each([
    ['flight review', '27.6.2026', 'FAA', 'flight review', 'written down, but not as a date that can be read: flight review'],
    ['flight review', '27/06/26', 'FAA', 'flight review', 'written down, but not as a date that can be read: flight review'],
    ['flight review', '2027-06-27', 'FAA', 'flight review', 'done on a day still to come: flight review'],
    ['BasicMed course', '1.1.2026', 'FAA', 'BasicMed course', 'written down, but not as a date that can be read: BasicMed course'],
    [
      'instrument proficiency check',
      'passed',
      'FAA',
      'instrument proficiency check',
      'written down, but not as a date that can be read: instrument proficiency check',
    ],
    ['class rating valid to', '31.3.2027', 'EASA', 'class rating', 'written down, but not as a date that can be read: class rating valid to'],
    ['medical valid to', '#N/A', 'EASA', 'medical, as printed', 'written down, but not as a date that can be read: medical valid to'],
    [
      'instrument rating valid to',
      'next year',
      'EASA',
      'instrument rating',
      'written down, but not as a date that can be read: instrument rating valid to',
    ],
  ])('does not leave out a %s written as "%s", and says what is wrong with it (%s)', (paper, written, rules, item, why) => {
    const instrumentLog = [
      ['date', 'aircraft', 'day landings', 'approaches', 'holds', 'tracking'],
      ['2026-11-01', 'North', 3, 6, 1, 1],
    ];
    const found = rows(instrumentLog, [[paper, written, '']], rules).find((row) => row[0] === item);
    expect([found?.[3], String(found?.[6]).split('; ')[0]]).toEqual(['UNKNOWN', why]);
  });

  it.each([
    [{}, 'not written down in the papers: medical examination, birth date, medical class'],
    [{ 'medical examination': '2026-05-12', 'medical class': 2 }, 'not written down in the papers: birth date'],
    [{ 'medical examination': '12.5.2026', 'medical class': 2 }, 'written down, but not as a date that can be read: medical examination'],
    [
      { 'medical examination': '2026-05-12', 'birth date': '1990-06-01', 'medical class': '2/LAPL' },
      'cannot be read as one of 1, 2, 3, LAPL: medical class',
    ],
    [
      { 'medical examination': '2026-05-12', 'birth date': '2026-06-01', 'medical class': 2 },
      'less than 14 years before the medical examination: birth date',
    ],
  ] as [Record<string, unknown>, string][])('names what keeps the medical from being worked out: %o', (papers, why) => {
    const found = rows(
      log,
      Object.entries(papers).map(([paper, value]) => [paper, value, '']),
    ).find((row) => row[0] === 'medical');
    expect([found?.[3], String(found?.[6]).split('; ')[0]]).toEqual(['UNKNOWN', why]);
  });

  it('takes the paper of an authority before the common one', () => {
    const papers = [
      ['medical examination', '2026-05-12', ''],
      ['FAA medical examination', '2025-05-12', ''],
      ['birth date', '1990-06-01', ''],
      ['medical class', 2, ''],
      ['FAA medical class', 3, ''],
    ];
    const list = rows(log, papers, 'FAA and EASA').filter((row) => row[0] === 'medical, private');
    expect(list.map((row) => row[4])).toEqual(['2030-05-31', '2031-05-12']);
  });

  it('refuses an authority it does not know', () => {
    expect(sentenceOf('PILOT_STATUS', log, fleet, [['', '']], '2026-11-25', 'FAA, moon')).toBe(
      'PILOT_STATUS: rules must be FAA, EASA, UK, Canada, or several of them; got "FAA, moon".',
    );
  });

  it('holds every authority that has a file', () => {
    const namesIn = (folder: string, ending: string): string[] =>
      readdirSync(new URL(`../../../core/currency/rules/${folder}`, import.meta.url)).flatMap((name) =>
        name.endsWith(ending) ? [name.replace(ending, '').toLowerCase()] : [],
      );
    const files = [...namesIn('', '.ts').filter((name) => !['index', 'rule', 'tables.generated'].includes(name)), ...namesIn('tables', '.csv')];
    expect(authorities.map(({ name }) => name.toLowerCase()).sort()).toEqual(files.sort());
  });

  it('works by an authority that is data alone', () => {
    const invented: Authority = {
      name: 'INV',
      pilot: [
        {
          kind: 'days',
          item: 'guests aboard',
          neededFor: 'passengers',
          paragraph: 'Invented 1(a)',
          source: 'common-practice',
          within: { days: 10 },
          tasks: [{ counts: { of: 'landings' }, needed: 2 }],
          same: 'category',
          typesCountForClass: true,
          devices: [],
          warnDays: 3,
        },
        {
          kind: 'paper',
          item: 'yearly talk',
          neededFor: 'every flight',
          paragraph: 'Invented 2',
          source: 'common-practice',
          papers: ['yearly talk'],
          lasts: { months: 12, to: 'day' },
          warnDays: 30,
        },
      ],
      aircraft: [
        { item: 'rope', neededFor: 'every flight', paragraph: 'Invented 3', source: 'common-practice', hours: 50, lasts: { days: 7 }, warnDays: 1 },
      ],
    };
    const day = (number: number): number => dayNumber({ year: 2026, month: 11, day: number });
    const name = (text: string) => ({ name: text, key: plainWords(text) });
    const glider = {
      aircraft: name('Kite'),
      category: name('glider'),
      class: undefined,
      type: undefined,
      tailwheel: false,
      device: undefined,
      hoursNow: undefined,
    };
    const experience = experienceOf(
      { flights: [{ day: day(18), aircraft: name('kite'), done: { ...nothingDone(), dayLandings: 2 } }], columns: new Set(['dayLandings']) },
      [glider],
      day(25),
    );
    const list = pilotList([invented], [invented], experience, [{ item: name('yearly talk'), day: day(1), text: '', months: undefined }], plainWords);
    const seen = list.map(({ item, about, counted, verdict, goodThroughDay, citation }: ListItem) => [
      item,
      about,
      counted,
      verdict,
      goodThroughDay,
      citation?.paragraph,
    ]);
    expect(seen).toEqual([
      ['guests aboard', 'glider', 2, 'CHECK', day(27), 'Invented 1(a)'],
      ['yearly talk', undefined, undefined, 'OK', day(1) + 365, 'Invented 2'],
    ]);
    const rope = {
      aircraft: name('Kite'),
      item: name('Rope'),
      day: day(20),
      doneAtHours: 10,
      wasDueAtHours: undefined,
      everyMonths: undefined,
      everyDays: undefined,
      everyHours: undefined,
    };
    expect(aircraftStanding(rope, { hoursNow: 15 }, day(25), [invented], plainWords)).toMatchObject({
      verdict: 'CHECK',
      goodThroughDay: day(26),
      hoursLeft: 45,
    });
  });
});

it('answers a log of 20,000 flights in one call', () => {
  const heads = [
    'date',
    'aircraft',
    'day landings',
    'day full stop',
    'night landings',
    'night full stop',
    'approaches',
    'holds',
    'tracking',
    'hours',
    'hours in command',
    'hours with instructor',
  ];
  const flights = Array.from({ length: 20_000 }, (_, index) => [
    new Date(Date.UTC(2006, 0, 1) + Math.floor(index / 2.7) * 86_400_000),
    'North',
    1,
    1,
    index % 5 === 0 ? 1 : '',
    index % 5 === 0 ? 1 : '',
    index % 7 === 0 ? 1 : '',
    index % 40 === 0,
    index % 40 === 0,
    1.2,
    1.2,
    '',
  ]);
  const list = rows([heads, ...flights], [['class rating valid to', '2026-12-31', '']], 'FAA, EASA');
  // The last flight is 7,407 days (19,999 / 2.7) after 1 January 2006, 13 April 2026, alone on that day; two more on 12 April, which with its 89 days after ends on 10 July.
  expect(named(list, passengers).slice(2, 4)).toEqual(['NO', '2026-07-10']);
});
