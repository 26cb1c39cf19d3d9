// DUES_STATEMENT at its own door: what it does with slips, other currencies and hours as people write them.
import { describe, expect, it } from 'vitest';
import { call, plain, sentenceOf } from '../../support/call';

type Rows = readonly (readonly unknown[])[];
const hangar = ['hangar', 100, 'EUR', '2026-01-01', 1, '', 'equal'];
const two: Rows = [
  ['Ada', '', '', 1, 10, ''],
  ['Bo', '', '', 1, 5, ''],
];
const statement = (members: Rows, costs: Rows, payments: unknown = '', rates: unknown = ''): unknown[][] =>
  (call('DUES_STATEMENT', members, costs, payments, '2026-01-01', '2026-03-31', 'EUR', rates) as unknown[][]).map((row) => row.map(plain));
const of = (who: string, rows: unknown[][]): unknown[][] => rows.filter(([member]) => member === who).map((row) => row.slice(1));
const refused = (members: Rows): string => sentenceOf('DUES_STATEMENT', members, [hangar], '', '2026-01-01', '2026-03-31', 'EUR');

describe('DUES_STATEMENT', () => {
  it('tells a cost that cannot be read, and leaves every other one as it is', () => {
    const rows = statement(two, [hangar, ['data', 'n/a', 'EUR', '', 'once', '', 'equal'], ['tax', 5, '€', '', '', '', 'all']]);
    expect(of('Ada', rows)).toEqual([
      ['hangar', '3 times, equal', 150, '', ''],
      ['balance', '', 150, 0, 150],
    ]);
    expect(of('unknown', rows)).toEqual([
      ['data (row 2 of the costs)', 'no amount up to 1,000,000; months is no whole number from 1 to 600, so not in these sums', '', '', ''],
      [
        'tax (row 3 of the costs)',
        'no currency in three letters; shared by is none of equal, share, hours, per hour, so not in these sums',
        '',
        '',
        '',
      ],
    ]);
  });

  it('takes another currency at the latest rate of the day or before it, and none at all without one', () => {
    const cost = ['data', 100, 'CHF', '2026-02-10', '', '', 'equal'];
    const rates = [
      ['CHF', 1.07, '2026-02-11', 'later'],
      ['CHF', 1.05, '2026-02-01', 'bank'],
      ['CHF', 1.01, '2026-01-01', 'older'],
    ];
    expect(of('Ada', statement(two, [cost], '', rates))[0]).toEqual(['data (100.00 CHF at 1.05 of 2026-02-01, bank)', 'once, equal', 52.5, '', '']);
    expect(of('unknown', statement(two, [cost], '', rates.slice(0, 1)))).toEqual([
      ['data (row 1 of the costs)', 'no rate of CHF of 2026-02-10 or before, so not in these sums', '', '', ''],
    ]);
  });

  it('reads hours as a number and as hours and minutes, and refuses what is neither', () => {
    const fuel = ['fuel', 60, 'EUR', '', '', '', 'per hour'];
    const hours = (cell: unknown): unknown => of('Ada', statement([['Ada', '', '', '', cell, '']], [fuel]))[0]?.[2];
    expect(['12:30', 12.5, '0:01', 0.333].map(hours)).toEqual([750, 750, 1, 19.98]);
    expect(refused([['Ada', '', '', 1, '12.30 h', '']])).toMatch(/hours 0 to 1,000,000.*row 1/);
    expect(refused([['Ada', '31.12.2025', '', 1, 1, '']])).toMatch(/joined and left are dates.*row 1/);
    expect(refused([...two, ['bo', '', '', 1, 1, '']])).toMatch(/one row a member.*row 3/);
    expect(refused([['All', '', '', 1, 1, '']])).toMatch(/not called all/);
  });

  it('counts how often a cost fell on each member, and tells what falls on nobody', () => {
    const rows = statement([['Ada', '2026-02-15', '2026-03-20', 1, '', '']], [hangar], [['2026-03-01', 'Gus', 5, 'EUR', '']]);
    expect(of('Ada', rows)[0]).toEqual(['hangar', 'once, equal', 100, '', '']);
    expect(of('nobody', rows)).toEqual([
      ['hangar', '2 times, when nobody has a part in it', 200, '', ''],
      ['payment of Gus 2026-03-01', '', '', 5, ''],
    ]);
  });

  it('keeps the word of the last line for itself', () => {
    expect(of('Ada', statement(two, [['Balance', 10, 'EUR', '', '', '', 'equal']])).map(([what]) => what)).toEqual(['Balance (a cost)', 'balance']);
  });
});
