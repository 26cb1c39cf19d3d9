// The money functions as a sheet calls them: blank rows, bad cells, costs that nobody bears, currencies apart.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

const statement = (...costs: readonly (readonly [string, number | string, string, string])[]) =>
  call('COST_STATEMENT', ...[0, 1, 2, 3].map((column) => costs.map((row) => [row[column]])), [
    ['Ada', 'North', 10, 60],
    ['Bo', 'North', '', 40],
    ['', '', '', ''],
  ]);

describe('COST_SPLIT', () => {
  it('splits a refund and a currency without cents', () => {
    expect(call('COST_SPLIT', -100, [[1], [1], [1]])).toEqual([[-33.34], [-33.33], [-33.33]]);
    expect(call('COST_SPLIT', 100, [[1], [1], [1]], 0)).toEqual([[34], [33], [33]]);
  });

  it('says what it cannot split', () => {
    expect(sentenceOf('COST_SPLIT', 10.005, [[1], [1]])).toBe(
      'COST_SPLIT: amount must be an amount of at most 2 decimals, or it cannot be shared to the last coin; got 10.005.',
    );
    expect(sentenceOf('COST_SPLIT', 10, [[0], [0]])).toBe('COST_SPLIT: parts must have at least one above 0; got 2 of 0.');
    expect(sentenceOf('COST_SPLIT', 10, [[1], ['some']])).toBe('COST_SPLIT: parts must be 0 to 1,000,000; got "some" (row 2).');
  });
});

describe('COST_STATEMENT', () => {
  it('shares by agreed shares, and keeps currencies apart', () => {
    expect(statement(['North', 100, 'EUR', 'share'], ['North', 50, 'chf', 'equal parts'])).toEqual([
      ['member', 'Ada', 'EUR', 60, 'North 60.00'],
      ['member', 'Ada', 'CHF', 25, 'North 25.00'],
      ['member', 'Bo', 'EUR', 40, 'North 40.00'],
      ['member', 'Bo', 'CHF', 25, 'North 25.00'],
      ['aircraft', 'North', 'EUR', 100, ''],
      ['aircraft', 'North', 'CHF', 50, ''],
      ['total', 'all costs', 'EUR', 100, ''],
      ['total', 'all costs', 'CHF', 50, ''],
    ]);
  });

  it('never loses a cost that nobody bears, nor one without an amount', () => {
    expect(statement(['South', 80, 'EUR', 'hours'], ['North', '', 'EUR', 'hours'])).toEqual([
      ['aircraft', 'South', 'EUR', 80, ''],
      ['nobody', 'South', 'EUR', 80, 'no member has hours in it'],
      ['total', 'all costs', 'EUR', 80, ''],
      ['unknown', 'North', '', '', 'no cost written down, so not in these sums'],
    ]);
  });

  it('leaves a cost that cannot be read out of the sums, says why, and shares the others', () => {
    const good = ['North', 10, 'EUR', 'equal'] as const;
    const why = (...bad: readonly [string, number | string, string, string]): unknown => {
      const rows = statement(good, bad) as unknown[][];
      expect(rows[0]).toEqual(['member', 'Ada', 'EUR', 5, 'North 5.00']);
      expect(rows.find(([by]) => by === 'total')).toEqual(['total', 'all costs', 'EUR', 10, '']);
      return rows[rows.length - 1];
    };
    expect(why('South', 'n/a', 'EUR', 'equal')).toEqual(['unknown', 'South', '', '', 'no cost written down, so not in these sums']);
    expect(why('South', 1, '\u20ac', 'equal')).toEqual(['unknown', 'South', '', '', 'no currency that can be read, so not in these sums']);
    expect(why('South', 1, 'EUR', 'as usual')).toEqual(['unknown', 'South', '', '', 'not written down how it is shared, so not in these sums']);
    expect(why('South', 1.001, 'EUR', 'equal')).toEqual([
      'unknown',
      'South',
      '',
      '',
      'the cost has more decimals than its currency, so not in these sums',
    ]);
    expect(why('', 1, 'EUR', 'equal')).toEqual([
      'unknown',
      'no aircraft (row 2 of the list)',
      '',
      '',
      'not written down for which aircraft, so not in these sums',
    ]);
  });
});
