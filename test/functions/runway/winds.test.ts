// RUNWAY_WINDS and RUNWAY_FACTOR as a sheet calls them.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const winds = (...given: unknown[]): unknown[][] => call('RUNWAY_WINDS', ...given) as unknown[][];

describe('RUNWAY_WINDS', () => {
  it('agrees with WIND_COMPONENTS, judges the gust, and keeps blank rows', () => {
    const got = winds(column(90, '', 270, 180), 240, 12, 20, 12);
    const alone = answer('WIND_COMPONENTS', 270, 240, 12, 20);
    expect(got[2]?.slice(0, 3)).toEqual([alone.headwind, alone.crosswind, alone.gust_crosswind]);
    expect(got[1]).toEqual(['', '', '', '', '']);
    expect(got.map((row) => row.slice(3))).toEqual([
      ['CHECK', 2],
      ['', ''],
      ['OK', 1],
      ['NO', ''],
    ]);
  });

  it('takes an exact limit for within it', () => {
    // The sine of 30 degrees is exactly a half.
    expect(winds(column(0, 60), 30, 20, '', 10).map((row) => row[3])).toEqual(['OK', 'OK']);
    expect(winds(column(0, 60), 30, 20, '', 9.99).map((row) => row[3])).toEqual(['NO', 'NO']);
  });

  it('orders by headwind, and lets equal runways share a place', () => {
    expect(winds(column(180, 150, 210, 0), 180, 10, '', 20).map((row) => row[4])).toEqual([1, 2, 2, 4]);
    expect(winds(column(180, 0), 90, 0, '', 20).map((row) => row.slice(3))).toEqual([
      ['OK', 1],
      ['OK', 1],
    ]);
  });

  it('proves nothing without a limit', () => {
    expect(winds(column(180, 0), 180, 10).map((row) => row.slice(3))).toEqual([
      ['UNKNOWN', 1],
      ['UNKNOWN', 2],
    ]);
  });

  it.each([
    { given: [column(180, 'N/A'), 180, 10], says: 'runway_deg must be 0 to 360 degrees; got "N/A" (row 2)' },
    { given: [column(180), 180, 10, 8], says: 'gust_kt must be 10 to 300 knots, no less than the wind; got 8' },
    { given: [column(180), '', 10], says: 'wind_from_deg must be 0 to 360 degrees; got a blank' },
  ])('says $says', ({ given, says }) => expect(sentenceOf('RUNWAY_WINDS', ...given)).toBe(`RUNWAY_WINDS: ${says}.`));
});

describe('RUNWAY_FACTOR', () => {
  it.each([
    {
      given: ['takeoff', 'paved_wet'],
      says: /^RUNWAY_FACTOR: condition must have a published factor for takeoff: grass_dry, .+safety; got paved_wet\.$/,
    },
    { given: ['takeoff', 'grass_wet_very_short'], says: /published factor for takeoff: .+; got grass_wet_very_short\.$/ },
    { given: ['landing', 'slush'], says: /^RUNWAY_FACTOR: condition must be one of grass_dry, .+; got "slush"\.$/ },
    { given: ['takeoff', 'slope', 2.5], says: /^RUNWAY_FACTOR: amount must be 0 to 2 percent of slope, all that is published; got 2\.5\.$/ },
    { given: ['takeoff', 'grass_dry', 1], says: /^RUNWAY_FACTOR: amount must be left out with grass_dry, which is there or not; got 1\.$/ },
    { given: ['go-around', 'slope'], says: /^RUNWAY_FACTOR: operation must be one of takeoff, landing; got "go-around"\.$/ },
  ])('refuses $given', ({ given, says }) => expect(sentenceOf('RUNWAY_FACTOR', ...given)).toMatch(says));

  it('maps a column of conditions', () => {
    expect(call('RUNWAY_FACTOR', 'Take-off', column('Dry grass', '', 'wet grass', 'snow'))).toEqual([[1.2], [''], [1.3], [1.25]]);
  });
});
