// RUNWAY_CORRECTIONS: which rows apply, where each comes from, and what is doubted; and that a brief takes them as they are.
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';

const rows = (...given: readonly unknown[]): unknown[][] => call('RUNWAY_CORRECTIONS', ...given) as unknown[][];
const manual = [
  ['headwind', -10, 9, ''],
  ['tailwind', 10, 2, ''],
  ['dry grass', 15, 1, ''],
  ['slope, up', 5, 1, ''],
];

describe('RUNWAY_CORRECTIONS', () => {
  it("takes the manual's own before a published factor, and only what applies", () => {
    expect(rows('takeoff', 'grass, dry', 2, manual).map(([name, percent, each, amount, verdict]) => [name, percent, each, amount, verdict])).toEqual([
      ['headwind', -10, 9, '', 'OK'],
      ['tailwind', 10, 2, '', 'OK'],
      ['dry grass', 15, 1, 1, 'OK'],
      ['slope, up', 5, 1, 2, 'OK'],
    ]);
    expect(rows('takeoff', 'paved, dry', 0, manual).map(([name]) => name)).toEqual(['headwind', 'tailwind']);
    expect(rows('takeoff', 'grass, wet', 0, manual)[2]).toEqual(['grass wet', 30, 1, 1, 'OK', 'UK CAA Safety Sense Leaflet 7']);
  });

  it('credits no slope that helps, and takes the slope that lengthens: up for take-off, down for landing', () => {
    expect(rows('takeoff', 'paved, dry', -2)).toEqual([['']]);
    expect(rows('landing', 'paved, dry', 2)).toEqual([['']]);
    expect(rows('landing', 'paved, dry', -2)).toEqual([['slope', 10, 2, 2, 'OK', 'UK CAA Safety Sense Leaflet 7']]);
  });

  it.each([
    [['headwind', -10, 1.2, ''], 'CHECK', 'headwind: -8.33 % for each one, usually -2.5 to -0.4 %: a typing error?'],
    [['tailwind', 1, 2, ''], 'CHECK', 'tailwind: 0.5 % for each one, usually 1.5 to 10 %: a typing error?'],
    [['dry grass', -20, 1, ''], 'NO', 'dry grass lengthens a distance and cannot shorten it by 20 %'],
    [['dry grass', 0.2, 1, ''], 'CHECK', 'dry grass: 0.2 % for each one, usually 5 to 50 %: a typing error?'],
  ])('doubts %j', (row, verdict, reason) => {
    const found = rows('takeoff', 'grass, dry', 0, [row]).find(([name]) => name === row[0]);
    expect(found?.slice(4)).toEqual([verdict, reason]);
  });

  it.each([
    [
      'a slope beyond what is published',
      ['takeoff', 'paved, dry', 2.5],
      'UNKNOWN',
      'slope of 2.5 % is beyond the 2 % that a factor is published for',
    ],
    ['a surface that is missing', ['takeoff', '', 0], 'UNKNOWN', 'the surface of the runway is missing'],
    ['a slope that is missing', ['takeoff', 'paved, dry', ''], 'UNKNOWN', 'the slope of the runway is missing: type 0 where it is level'],
    ['a wet paved take-off', ['takeoff', 'paved, wet', 0], 'CHECK', 'no factor is published for take-off on paved wet: the dry distance is used'],
  ])('says %s', (_, given, verdict, reason) => expect(rows(...given)[0]?.slice(4)).toEqual([verdict, reason]));

  it('tells a surface that nobody publishes anything for, and works nothing out', () => {
    const told =
      'no factor is published for a surface of "ice": choose paved, dry; paved, wet; grass, dry; grass, wet; grass, very short and wet; soft ground or snow, or keep off it';
    expect(rows('takeoff', 'ice', 0)).toEqual([['surface', '', 1, '', 'UNKNOWN', told]]);
  });

  it.each([
    [
      'headwind',
      10,
      12,
      '',
      '"headwind" of the aircraft\'s corrections cannot be read: percent of a headwind -1,000 to 0, since it shortens; got 10',
    ],
    [
      'tailwind',
      -10,
      2,
      '',
      '"tailwind" of the aircraft\'s corrections cannot be read: percent of a tailwind 0 to 1,000, since it lengthens; got -10',
    ],
    [
      'headwind',
      '',
      12,
      '',
      '"headwind" of the aircraft\'s corrections cannot be read: percent of a headwind -1,000 to 0, since it shortens; got a blank',
    ],
    ['dry grass', 15, 'one', 1, '"dry grass" of the aircraft\'s corrections cannot be read: per amount more than 0 and at most 1,000,000; got "one"'],
    [
      'haedwind',
      -10,
      12,
      '',
      '"haedwind" of the aircraft\'s corrections cannot be read: amount 0 to 1,000,000, blank only for headwind, tailwind and above standard; got a blank',
    ],
  ])('tells the correction %s, %s for each %s, that cannot be read', (name, percent, each, amount, reason) =>
    expect(rows('takeoff', 'paved, dry', 0, [[name, percent, each, amount]])).toEqual([['corrections', '', 1, '', 'UNKNOWN', reason]]),
  );

  it('hands a brief what it reads: 300 x 1.2 x 1.05', () => {
    const corrections = rows('takeoff', 'grass, dry', 1).map((row) => row.slice(0, 4));
    const table = [
      ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
      [1000, 0, 15, 300],
    ];
    const brief = call('TAKEOFF_BRIEF', table, 'over 50 ft', 1000, 270, 800, 0, 1013.25, 15, 270, 0, 1, corrections) as unknown[][];
    expect(brief.find(([item]) => item === 'corrected distance')?.[1]).toBeCloseTo(378, 6);
  });
});
