// Loadings and envelopes as a sheet gives them: blanks, columns, and the sentences.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

const box = [
  [78, 2100],
  [78, 3400],
  [86, 3400],
  [86, 2100],
];

describe('BALANCE_TOTAL and BALANCE_CG', () => {
  it('leaves blank rows out, and takes columns that lie down', () => {
    expect(call('BALANCE_TOTAL', [[100], [''], [300]], [[10], [''], [30]])).toEqual([[400, 10000, 25]]);
    expect(call('BALANCE_CG', [[100, 300]], [[10, 30]])).toBe(25);
    expect(call('BALANCE_CG', 100, 10)).toBe(10);
  });

  it('names the row where a station has an arm and no weight, for a blank is not zero', () => {
    expect(sentenceOf('BALANCE_TOTAL', [[100], ['']], [[10], [20]])).toBe(
      'BALANCE_TOTAL: weights must be -10,000,000 to 10,000,000; got a blank (row 2).',
    );
    expect(sentenceOf('BALANCE_CG', [[100], [50]], [[10], ['']])).toBe('BALANCE_CG: arms must be -1,000,000 to 1,000,000; got a blank (row 2).');
  });

  it('refuses sizes that differ', () => {
    expect(sentenceOf('BALANCE_TOTAL', [[1], [2], [3]], [[1], [2]])).toBe(
      'BALANCE_TOTAL: arms must be a single cell or the same size as weights (3 rows x 1 column); got 2 rows x 1 column.',
    );
  });

  it('gives no centre of gravity to nothing, nor to what rounding leaves of nothing', () => {
    expect(sentenceOf('BALANCE_CG', [[100], [-100]], [[10], [20]])).toBe('BALANCE_CG: weights must add up to more than zero; got a total of 0.');
    expect(sentenceOf('BALANCE_CG', [[0.1], [0.2], [-0.3]], [[10], [20], [30]])).toMatch(
      /^BALANCE_CG: weights must add up to more than zero; got a total of /,
    );
    expect(sentenceOf('BALANCE_TOTAL', [[100], [-150]], [[10], [20]])).toBe(
      'BALANCE_TOTAL: weights must add up to more than zero; got a total of -50.',
    );
    expect(sentenceOf('BALANCE_TOTAL', [[''], ['']], 20)).toBe('BALANCE_TOTAL: weights must have at least one filled row; got none.');
  });
});

describe('BALANCE_CHECK', () => {
  it('maps rows of loadings over one envelope', () => {
    expect(call('BALANCE_CHECK', [[3000], [''], [3450], [3000]], [[80], [''], [80], [90]], box)).toEqual([
      ['OK', 2, 6, 400],
      ['', '', '', ''],
      ['NO', '', '', -50],
      ['NO', 12, -4, ''],
    ]);
  });

  it('never gives OK to a loading that is not there', () => {
    expect(call('BALANCE_CHECK', [[3000], [3000]], [[''], ['#N/A']], box)).toEqual([
      ['BALANCE_CHECK: arm must be -1,000,000 to 1,000,000; got a blank (row 1).', '', '', ''],
      ['BALANCE_CHECK: arm must be -1,000,000 to 1,000,000; got "#N/A" (row 2).', '', '', ''],
    ]);
    expect(
      sentenceOf('BALANCE_CHECK', 3000, 80, [
        ['', ''],
        ['', ''],
      ]),
    ).toBe('BALANCE_CHECK: envelope must be at least 3 points in order round the limits; got 0 points, which do not make an area.');
  });

  it('says what is wrong with an envelope', () => {
    expect(
      sentenceOf('BALANCE_CHECK', 3000, 80, [
        [78, 2100],
        [86, 3400],
        [86, 2100],
        [78, 3400],
      ]),
    ).toBe(
      'BALANCE_CHECK: envelope must be at least 3 points in order round the limits; got 4 points whose outline crosses itself, so they are out of order.',
    );
    expect(
      sentenceOf('BALANCE_CHECK', 3000, 80, [
        [78, 2100],
        [78, 'x'],
        [86, 3400],
      ]),
    ).toBe('BALANCE_CHECK: envelope must be rows of 2 numbers: arm, weight; got "x" (row 2, column 2 of envelope).');
    expect(
      sentenceOf(
        'BALANCE_CHECK',
        [[3000], [3100]],
        [[80], [80]],
        [
          [78, 2100],
          [78, 3400],
        ],
      ),
    ).toMatch(/^BALANCE_CHECK: envelope must be at least 3 points/);
  });
});
