// The sheet function of a variable wind: what it takes for one, and what it refuses.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

describe('WIND_WORST', () => {
  it('takes VRB, a range alone, and the 0 to 360 of a report for every direction', () => {
    const every = { headwind: -8, crosswind: 8, gust_headwind: -14, gust_crosswind: 14 };
    expect(answer('WIND_WORST', 200, 'vrb', 8, 14)).toEqual(every);
    expect(answer('WIND_WORST', 200, '', 8, 14, 0, 360)).toEqual(every);
    expect(answer('WIND_WORST', 20, '', 8, '', 110, 200).headwind).toBeCloseTo(-8, 9);
  });

  it('maps down rows, blank rows staying blank', () => {
    expect(call('WIND_WORST', [[200], [''], [20]], [['VRB'], [''], [20]], [[6], [''], [5]])).toEqual([
      [-6, 6, '', ''],
      ['', '', '', ''],
      [5, 0, '', ''],
    ]);
  });

  it.each<[unknown[], string]>([
    [[200, '', 8], 'wind_from_deg must be 0 to 360 degrees, or VRB; got a blank'],
    [[200, 'east', 8], 'wind_from_deg must be 0 to 360 degrees, or VRB; got "east"'],
    [[200, 220, 8, 14, 140], 'variable_to_deg must be given with its other end; got a blank'],
    [[200, 220, 8, 14, '', 300], 'variable_from_deg must be given with its other end; got a blank'],
    [[200, 220, 8, 5], 'gust_kt must be'],
  ])('refuses %j', (given, sentence) => expect(sentenceOf('WIND_WORST', ...given)).toContain(sentence));
});
