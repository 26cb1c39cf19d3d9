// The geometry of the descent profile: bands where the plan puts them, names that no thread runs through, nothing beyond the edges.
import { describe, expect, it } from 'vitest';
import { bandPlaces, namePlaces, pathOf, thousands, type DescentProfile, type ProfileCrossing } from '../../addon/pictures/descentProfile';
import { descentPicture } from '../../addon/pictures/descentPicture';
import { descentPictureOfCells } from '../../addon/pictures/sheetPictures';
import { widthOfText } from '../../addon/pictures/svg';
import { call } from '../support/call';
import { numbersIn, textSizes } from '../support/svgText';

const profile: DescentProfile = {
  bands: [
    { fromFeet: 15000, toFeet: 10000, groundspeedKnots: 180, nauticalMiles: 20 },
    { fromFeet: 10000, toFeet: 7000, groundspeedKnots: 150, nauticalMiles: 12 },
  ],
  endNauticalMiles: 50,
  crossings: [
    { name: 'SORREL', atNauticalMiles: 44, altitudeFeet: 9000, kind: 'at or above' },
    { name: 'TANSY', atNauticalMiles: 50, altitudeFeet: 7000, kind: 'at' },
  ],
};
const size = { width: 300, height: 240 };

describe('the descent profile', () => {
  it('ends its bands where the crossing point is, and starts them the plan before it', () => {
    expect(bandPlaces(profile).map(({ startsAt, endsAt }) => [startsAt, endsAt])).toEqual([
      [18, 38],
      [38, 50],
    ]);
  });

  it('is level before the start and after the end', () => {
    expect(pathOf({ ...profile, crossings: [{ name: 'LAST', atNauticalMiles: 61, altitudeFeet: 7000, kind: 'at' }] })).toEqual([
      { miles: 0, feet: 15000 },
      { miles: 18, feet: 15000 },
      { miles: 38, feet: 10000 },
      { miles: 50, feet: 7000 },
      { miles: 61, feet: 7000 },
    ]);
  });

  it('has no level part where the start lies behind, and says so', () => {
    const late = { ...profile, endNauticalMiles: 30 };
    expect(pathOf(late)[0]).toEqual({ miles: -2, feet: 15000 });
    expect(descentPicture(late, size)).toContain('start 2.0 NM behind');
  });

  it('keeps names clear of each other and of the threads of others', () => {
    const crossings = [3, 8, 9, 20, 24, 25, 26, 60].map((atNauticalMiles, index): ProfileCrossing => ({
      name: `FIX${'ABCDEFGH'[index]}`,
      atNauticalMiles,
      altitudeFeet: 5000,
      kind: 'at',
    }));
    const x = (miles: number): number => 52 + miles * 3.6;
    const places = namePlaces(crossings, x);
    for (const one of places) {
      const [left, right] = [one.x - widthOfText(one.crossing.name), one.x];
      expect(left).toBeGreaterThanOrEqual(52);
      for (const other of places) {
        if (other === one) continue;
        if (other.row === one.row) expect(other.x <= left || other.x - widthOfText(other.crossing.name) >= right).toBe(true);
        const thread = x(other.crossing.atNauticalMiles);
        // A name pushed off the left edge may have its thread beneath it, never another name's.
        if (other.row > one.row && thread >= 52 + widthOfText(other.crossing.name)) expect(thread <= left || thread >= right).toBe(true);
      }
    }
  });

  it('draws inside its edges, in text of 12 pixels, with a title and a description', () => {
    const svg = descentPicture(profile, size);
    expect(svg).toMatch(
      /<title>Descent profile<\/title><desc>From 15,000 to 7,000 feet, start in 18\.0 NM, down at 50\.0 NM\. Crossing: SORREL at or above 9,000 feet at 44\.0 NM; TANSY at 7,000 feet at 50\.0 NM\.<\/desc>/,
    );
    expect(textSizes(svg)).toEqual([12]);
    for (const { x, y } of numbersIn(svg)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(size.width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(size.height);
    }
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('escapes the names of fixes', () => {
    const svg = descentPicture({ ...profile, crossings: [{ name: '<A&"B">', atNauticalMiles: 50, altitudeFeet: 7000, kind: 'at' }] }, size);
    expect(svg).toContain('&lt;A&amp;&quot;B&quot;&gt;');
    expect(svg).not.toContain('<A&');
  });

  it('gives way to numbers where the names would need too many rows', () => {
    const crossings = Array.from({ length: 8 }, (_, index): ProfileCrossing => ({
      name: `NAMED${index}`,
      atNauticalMiles: 20 + 4 * index,
      altitudeFeet: 14000 - 900 * index,
      kind: 'at',
    }));
    const svg = descentPicture({ ...profile, crossings }, size);
    expect(svg).toContain('crossings by their row');
    expect(svg.replace(/<desc>.*<\/desc>/, '')).not.toContain('NAMED');
  });

  it('writes feet with a comma for the thousands', () => expect([500, 7000, 12345].map(thousands)).toEqual(['500', '7,000', '12,345']));
});

describe('from the cells of a sheet', () => {
  const schedule = [
    [15000, 180, 1200],
    [10000, 150, 900],
  ];
  const winds = [
    [0, 270, 10],
    [18000, 290, 45],
  ];
  const plan = call('DESCENT_PLAN', 15000, 7000, schedule, winds, 90, 0, 0) as unknown[][];
  const crossings = [
    ['TANSY', 58, 8, 7000, 'at'],
    ['', '', '', '', ''],
    ['MARROW', 70, '', 5000, 'at or below'],
  ];

  it('takes the bands of DESCENT_PLAN without its last row, and the crossing points before their fixes', () => {
    const svg = descentPictureOfCells({ plan, endsAt: [[50]], crossings }, size);
    expect(svg).toContain('8 NM before TANSY at 7,000 feet at 50.0 NM; MARROW at or below 5,000 feet at 70.0 NM');
    expect(svg).toContain(`start in ${(50 - Number(plan[2]?.[7])).toFixed(1)} NM`);
  });

  it('reads the crossings as the sheet functions do: numbers pasted as text, other spellings of the words', () => {
    const pasted = [
      ['TANSY', '58,0', '8,0', '7000', 'At '],
      ['MARROW', 70, '', 5000, 'below'],
    ];
    expect(descentPictureOfCells({ plan, endsAt: [['50']], crossings: pasted }, size)).toContain(
      '8 NM before TANSY at 7,000 feet at 50.0 NM; MARROW at or below 5,000 feet at 70.0 NM',
    );
  });

  it.each([
    [['TANSY', 58, 8, '', 'at'], 'no altitude for the crossing "TANSY" yet'],
    [['TANSY', 58, 'eight', 7000, 'at'], 'no readable miles before the fix for the crossing "TANSY" yet'],
    [['', 58, 8, 7000, ''], 'no word (at, at or below, at or above) for the crossing "1" yet'],
    [['TANSY', '', '', '', ''], 'no distance for the crossing "TANSY" yet'],
  ])('never leaves a crossing out unseen: %j', (row, why) =>
    expect(descentPictureOfCells({ plan, endsAt: [[50]], crossings: [row] }, size)).toContain(`Nothing to draw: ${why}`.replace(/"/g, '&quot;')),
  );

  it.each([
    ['an error in place of the plan', { plan: [['#ERROR!']], endsAt: [[50]], crossings }, 'Nothing to draw: no descent plan yet.'],
    ['no place for its end', { plan, endsAt: [['']], crossings }, 'Nothing to draw: no crossing to plan for yet.'],
    ['nothing to lose', { plan: [[7000, 7000, '', '', '', '', 0, 8]], endsAt: [[50]], crossings }, 'Nothing to draw: no descent plan yet.'],
  ])('says why nothing is drawn: %s', (_, cells, why) => expect(descentPictureOfCells(cells, size)).toContain(why));
});
