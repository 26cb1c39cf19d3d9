// What a lost heading or a blank class would hide: a reworded heading drops its column, and with it an interval, a tailwheel or a class.
import { describe, expect, it } from 'vitest';
import { logHeadings, passedOverHeadings, undividedHeadings } from '../../../core/currency/flightLog';
import { plainWords } from '../../../functions/registry/readText';
import { call, plain, sentenceOf } from '../../support/call';

const fleetHeads = ['aircraft', 'category', 'class', 'type rating', 'tailwheel', 'device', 'hours now'];
const fleet = [fleetHeads, ['North', 'airplane', 'single-engine land', '', '', '', 1200]];
const rows = (log: unknown, aircraft: unknown = fleet): unknown[][] =>
  (call('PILOT_STATUS', log, aircraft, [['', '']], '2026-11-25', 'FAA') as unknown[][]).map((row) => row.map(plain));
const named = (list: readonly unknown[][], name: string): unknown[] => list.find((row) => row[0] === name)?.slice(1, 6) ?? [];
const passengers = 'passengers, single-engine land';

describe('an aircraft without its class', () => {
  const flown = [
    ['date', 'aircraft', 'day landings'],
    ['2026-11-01', 'North', 3],
    ['2026-11-02', 'South', 1],
  ];
  const without = (category: string) => [fleetHeads, ['North', category, '', '', '', '', ''], ['South', category, '', '', '', '', '']];
  const carried = (category: string) =>
    rows(flown, without(category))
      .filter(([item]) => /^passengers(,|$)/.test(String(item)))
      .map((row) => [row[0], row[1], row[3], String(row[6]).split(';')[0]]);

  it('is UNKNOWN, and merged with no other', () =>
    expect(carried('airplane')).toEqual([
      ['passengers, North, South', '', 'UNKNOWN', 'no class in the list of the aircraft, so nobody can say what it counts with'],
    ]));

  it('counts by its category where there are no classes', () =>
    expect(carried('glider')).toEqual([['passengers, glider', 4, 'OK', '14 CFR 61.57(a)(1)']]));

  it('leaves the others as they are', () => {
    const mixed = [fleetHeads, ['North', 'airplane', 'SEL', '', '', '', ''], ['South', 'airplane', '', '', '', '', '']];
    const list = rows(flown, mixed);
    expect(named(list, 'passengers, SEL')).toEqual([3, 3, 'OK', '2027-01-29', 65]);
    expect(named(list, 'passengers, South')).toEqual(['', '', 'UNKNOWN', '', '']);
  });
});

describe('a heading that nobody knows', () => {
  const log = [
    ['date', 'aircraft', 'day landings'],
    ['2026-11-01', 'North', 3],
  ];
  /** Every known heading reworded: a letter more, a letter less, another word before it. */
  const reworded = (heading: string): string[] => [`${heading}s`, heading.slice(0, -1), `my ${heading}`, `${heading} x`];
  const known = (heading: string, all: readonly string[]): boolean => all.includes(heading);

  it('never turns its column into nothing: the interval of a propeller', () => {
    const items = (heading: string) => [
      ['aircraft', 'item', 'done on', heading],
      ['North', 'propeller', '2020-01-31', 12],
    ];
    const status = (heading: string) => call('AIRCRAFT_STATUS', items(heading), fleet, '2020-02-01') as unknown[][];
    expect(status('every months')[0]?.[0]).toBe('OK');
    expect(sentenceOf('AIRCRAFT_STATUS', items('every month'), fleet, '2020-02-01')).toBe(
      'AIRCRAFT_STATUS: items must be a table of items under one header row (values only under headings that are known; one of your own in brackets); got "every month", perhaps for "every months" (row 1, column 4 of items).',
    );
  });

  it.each([
    ['log', Object.values(logHeadings).flat()],
    [
      'aircraft',
      [
        'aircraft',
        'registration',
        'category',
        'class',
        'type rating',
        'type',
        'tailwheel',
        'tail wheel',
        'device',
        'training device',
        'hours now',
        'hours',
      ],
    ],
    [
      'items',
      [
        'item',
        'inspection',
        'done on',
        'done',
        'date',
        'done at hours',
        'done at',
        'was due at',
        'every months',
        'months',
        'every days',
        'days',
        'every hours',
        'hours',
      ],
    ],
  ] as const)('is refused in the %s, whatever it was meant for', (table, headings) => {
    const passed = [...headings, ...passedOverHeadings, ...undividedHeadings.flatMap(({ words }) => words)];
    const wrong = headings
      .flatMap(reworded)
      .map(plainWords)
      .filter((heading) => !known(heading, passed));
    expect(wrong.length).toBeGreaterThan(30);
    for (const heading of wrong) {
      const extra = (rowsOf: readonly (readonly unknown[])[]) => rowsOf.map((row, index) => [...row, index === 0 ? heading : 1]);
      const said =
        table === 'log'
          ? sentenceOf('PILOT_STATUS', extra(log), fleet, [['', '']], '2026-11-25')
          : table === 'aircraft'
            ? sentenceOf(
                'PILOT_STATUS',
                log,
                extra([
                  ['aircraft', 'category'],
                  ['North', 'airplane'],
                ]),
                [['', '']],
                '2026-11-25',
              )
            : sentenceOf(
                'AIRCRAFT_STATUS',
                extra([
                  ['aircraft', 'item'],
                  ['North', 'propeller'],
                ]),
                fleet,
                '2026-11-25',
              );
      expect(said).toContain(`got "${heading}"`);
    }
  });

  it('is passed over in brackets, as a note, or with nothing below it; values under no heading are not', () => {
    const withColumn = (heading: unknown, value: unknown) => log.map((row, index) => [...row, index === 0 ? heading : value]);
    for (const heading of ['(my rating)', '[score]', 'Note', 'notes of mine', 'remarks'])
      expect(named(rows(withColumn(heading, 5)), passengers)[2]).toBe('OK');
    expect(named(rows(withColumn('my rating', '')), passengers)[2]).toBe('OK');
    expect(sentenceOf('PILOT_STATUS', withColumn('', 5), fleet, [['', '']], '2026-11-25')).toMatch(
      /got values under a blank \(row 1, column 4 of log\)\.$/,
    );
    expect(sentenceOf('PILOT_STATUS', withColumn('#REF!', 5), fleet, [['', '']], '2026-11-25')).toMatch(
      /got values under "#REF!" \(row 1, column 4 of log\)\.$/,
    );
  });
});
