// The sentences of shift, ballast and burn track; and their answers weighed again by BALANCE_CG.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

describe('an answer fed back', () => {
  it('is where BALANCE_CG finds the centre of gravity', () => {
    const moved = Number(call('BALANCE_SHIFT', 2400, 41, 42.5, 37, 95));
    expect(call('BALANCE_CG', [[2400], [-moved], [moved]], [[41], [37], [95]])).toBeCloseTo(42.5, 9);
    const added = Number(call('BALANCE_ADD', 2400, 41, 42.5, 95));
    expect(call('BALANCE_CG', [[2400], [added]], [[41], [95]])).toBeCloseTo(42.5, 9);
  });
});

describe('sentences', () => {
  it.each([
    [['BALANCE_SHIFT', 2000, 40, 41, 30, 30], 'BALANCE_SHIFT: to_arm must be another arm than from_arm, or nothing is shifted; got 30 for both.'],
    [
      ['BALANCE_SHIFT', 2000, 40, 80, 30, 50],
      'BALANCE_SHIFT: target_arm must be within reach of the weight there is; got 80, for which 4,000 would have to be moved of a whole of 2,000.',
    ],
    [
      ['BALANCE_ADD', 2000, 40, 42, 42],
      'BALANCE_ADD: at_arm must be away from target_arm, since weight there cannot bring the centre of gravity to it; got 42 for both.',
    ],
    [
      ['BALANCE_ADD', 2000, 40, 42, 41],
      'BALANCE_ADD: target_arm must be within reach of the weight there is; got 42, for which 4,000 would have to be taken out of a whole of 2,000.',
    ],
    [
      [
        'BALANCE_TRACK',
        2000,
        40,
        [
          [10, 47],
          [40, 49],
        ],
        50,
        20,
        3,
      ],
      'BALANCE_TRACK: fuel_table must reach every quantity from fuel_start to fuel_end; got rows for 10 to 40 and a quantity of 50, and nothing is extrapolated.',
    ],
    [
      [
        'BALANCE_TRACK',
        2000,
        40,
        [
          [10, 47],
          [40, 49],
        ],
        20,
        30,
        3,
      ],
      'BALANCE_TRACK: fuel_end must be 0 to 20 of fuel, no more than fuel_start; got 30.',
    ],
    [
      [
        'BALANCE_TRACK',
        2000,
        40,
        [
          [10, 47],
          [10, 49],
        ],
        10,
        10,
        3,
      ],
      'BALANCE_TRACK: fuel_table must give each quantity once, none below zero; got 10 more than once.',
    ],
    [
      [
        'BALANCE_TRACK',
        2000,
        40,
        [
          ['', ''],
          ['', ''],
        ],
        10,
        10,
        3,
      ],
      'BALANCE_TRACK: fuel_table must have at least one filled row; got none.',
    ],
  ] as const)('%j', ([name, ...given], sentence) => expect(sentenceOf(name, ...given)).toBe(sentence));
});
