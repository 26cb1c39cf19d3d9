// The words in which a hold is given, and the sentences that answer wrong ones.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

/** Each inbound course is the reciprocal of the side, worked by hand. */
const ways: readonly (readonly [unknown, number])[] = [
  ['S', 360],
  ['s', 360],
  ['south', 360],
  [' South ', 360],
  ['SOUTH', 360],
  [180, 360],
  ['180', 360],
  ['180 radial', 360],
  ['180 degree radial', 360],
  ['180\u00b0 radial', 360],
  ['R-180', 360],
  ['R180', 360],
  ['r 180', 360],
  ['radial 180', 360],
  ['Radial-180', 360],
  ['N', 180],
  ['north', 180],
  [360, 180],
  [0, 180],
  ['360 radial', 180],
  ['000 radial', 180],
  ['NE', 225],
  ['north-east', 225],
  ['northeast', 225],
  ['North East', 225],
  ['N-E', 225],
  ['NNE', 202.5],
  ['north-north-east', 202.5],
  ['north-northeast', 202.5],
  ['WSW', 67.5],
  ['west south west', 67.5],
  ['W', 90],
  ['E', 270],
  ['ENE', 247.5],
  ['ESE', 292.5],
  ['SE', 315],
  ['SSE', 337.5],
  ['SSW', 22.5],
  ['SW', 45],
  ['WNW', 112.5],
  ['NW', 135],
  ['NNW', 157.5],
  [86, 266],
  ['086 radial', 266],
  ['W on 086 radial', 86],
  ['west on the 086 radial', 86],
  ['E on R-086', 266],
  ['north-west on radial 300', 120],
  [112.5, 292.5],
  ['hold west', 90],
  ['Hold North-East', 225],
  ['hold W on the 086 radial', 86],
  ['R270', 90],
  ['270 radial', 90],
];

const wrong: readonly unknown[] = [
  'up',
  'eastnorth',
  'NEN',
  'S radial',
  '400 radial',
  'R-361',
  '180 inbound',
  '180R',
  'W on 086',
  'W on',
  'on 086 radial',
  'radial',
  361,
  -1,
  true,
  '#N/A',
  new Date('2026-03-04T00:00:00Z'),
  '1e2',
  'south of 12',
  'hold',
  'hold here',
];

describe('HOLD_INBOUND', () => {
  it.each(ways)('%s gives %d', (where, course) => expect(call('HOLD_INBOUND', where)).toBe(course));

  it.each(wrong.map((where) => ({ where })))('refuses $where', ({ where }) => {
    expect(sentenceOf('HOLD_INBOUND', where)).toMatch(/^HOLD_INBOUND: where must be a compass point such as .+; got .+\.$/);
  });

  it('refuses a point across the radial', () => {
    expect(sentenceOf('HOLD_INBOUND', 'N on 086 radial')).toBe(
      'HOLD_INBOUND: where must name a compass point within 45 degrees of the radial or its reciprocal; got 0 degrees on the 86 radial.',
    );
  });

  it('maps a column, and a bad row spoils only itself', () => {
    expect(call('HOLD_INBOUND', [['S'], [''], ['up'], [90]])).toEqual([
      [360],
      [''],
      [
        'HOLD_INBOUND: where must be a compass point such as "NE" or "south", a radial such as "180 radial" or "R180", both as "W on 086 radial", or 0 to 360 degrees magnetic; got "up" (row 3).',
      ],
      [270],
    ]);
  });
});

describe('HOLD_ENTRY', () => {
  it('reads the turns in the words people use', () => {
    // Heading 150 to inbound 360: 30 degrees from the outbound course, teardrop to the right, parallel to the left.
    for (const turns of ['right', 'R', 'r', 'Right turns', 'standard', undefined, '']) expect(call('HOLD_ENTRY', 150, 360, turns)).toBe('teardrop');
    for (const turns of ['left', 'L', 'LEFT', 'left turns']) expect(call('HOLD_ENTRY', 150, 360, turns)).toBe('parallel');
  });

  it('words a wrong argument', () => {
    expect(sentenceOf('HOLD_ENTRY', 150, '#N/A')).toBe('HOLD_ENTRY: inbound_course must be 0 to 360 degrees magnetic; got "#N/A".');
    expect(sentenceOf('HOLD_ENTRY', 150, 361)).toBe('HOLD_ENTRY: inbound_course must be 0 to 360 degrees magnetic; got 361.');
    expect(sentenceOf('HOLD_ENTRY', 150, 90, 'up')).toBe('HOLD_ENTRY: turns must be one of right, left; got "up".');
  });
});

describe('HOLD_SPEED_LIMIT', () => {
  it('says so where the published limit is a Mach number, so that no comparison takes text for a limit', () => {
    expect(sentenceOf('HOLD_SPEED_LIMIT', 35000, 'ICAO')).toBe(
      'HOLD_SPEED_LIMIT: altitude_ft must be 34,000 feet or less under these rules, since above it the limit is Mach 0.83 and not an indicated airspeed; got 35,000.',
    );
  });
});
