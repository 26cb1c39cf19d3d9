// The picture of a route: true to scale, each leg where its courses and distances put it, a line of words for each, and why nothing is drawn.
import { describe, expect, it } from 'vitest';
import { laidOut, routePicture, type DrawnLeg } from '../../addon/pictures/routePicture';
import { routePictureOfCells } from '../../addon/pictures/routeOfCells';
import { flownLine, laidAlong, routeProfilePicture, type RouteProfile } from '../../addon/pictures/routeProfile';
import { routeProfileOfCells } from '../../addon/pictures/routeProfileOfCells';

const leg = (number: number, courseDegrees: number, ...miles: readonly number[]): DrawnLeg => ({
  number,
  from: `P${number}`,
  to: `P${number + 1}`,
  courseDegrees,
  headingDegrees: 359.6,
  minutes: 12.4,
  parts: miles.map((nauticalMiles) => ({ kind: 'cruise', nauticalMiles })),
});
const size = { width: 566, height: 204 };

/** A row of ROUTE_LEGS: leg, part, from, to, then course in column 9, heading in 11, miles in 12, minutes in 14. */
const row = (number: unknown, part: string, course: unknown, miles: unknown): unknown[] => [
  number,
  part,
  'A',
  'B',
  5500,
  120,
  270,
  20,
  course,
  -3,
  93,
  miles,
  110,
  9.5,
];

describe('the picture of a route', () => {
  it('puts the legs where their courses and distances do', () => {
    const [east, south] = laidOut([leg(1, 90, 10, 30), leg(2, 180, 25)]);
    expect(east?.end.x).toBeCloseTo(40, 9);
    expect(east?.end.y).toBeCloseTo(0, 9);
    expect(east?.changes.map(({ x }) => x)).toEqual([10]);
    expect(south?.end.x).toBeCloseTo(40, 9);
    expect(south?.end.y).toBeCloseTo(25, 9);
  });

  it('has one scale for both directions, and says each leg in words', () => {
    const svg = routePicture([leg(1, 90, 40), leg(2, 180, 40)], size);
    const lines = [...svg.matchAll(/<path d="M([\d.]+),([\d.]+)L([\d.]+),([\d.]+)"[^>]*stroke="#0072b2"/g)].map((found) =>
      found.slice(1).map(Number),
    );
    expect(lines).toHaveLength(2);
    const lengths = lines.map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => Math.hypot(x2 - x1, y2 - y1));
    expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 1))).toBeLessThan(0.3);
    expect(svg).toContain('1  heading 360, 40.0 NM, 12 min to P2');
  });

  it('says how many legs have no room for their words', () => {
    const svg = routePicture(
      Array.from({ length: 20 }, (_, index) => leg(index + 1, index * 18, 10)),
      size,
    );
    expect(svg).toMatch(/and 1\d more legs/);
  });

  it('draws the parts of a leg as one, and none of the rows below the legs', () => {
    const svg = routePictureOfCells({ parts: [row(1, 'climb', 90, 8), row(1, 'cruise', 90, 20), row('total', '', '', 28), ['', '', '']] }, size);
    expect(svg).toContain('1  heading 093, 28.0 NM, 19 min to B');
    expect(svg).not.toContain('2  ');
  });

  it('says why nothing is drawn', () => {
    expect(routePictureOfCells({ parts: [row(1, 'cruise', 90, 20), row(2, '', '', '')] }, size)).toContain(
      'Nothing to draw: leg 2 is not worked out.',
    );
    expect(routePictureOfCells({ parts: [['', '']] }, size)).toContain('Nothing to draw: no leg yet.');
  });
});

const flight = [row(1, 'climb', 90, 8), row(1, 'cruise', 90, 20), row(2, 'cruise', 100, 30), ['total', '', '', '', '', '', '', '', '', '', '', 58]];
/** A leg from its number to the spare height: level in column 4, ground in 8, spare in 13. */
const level = (number: number, feet: unknown, ground: unknown, spare: unknown): unknown[] => [
  number,
  'A',
  'B',
  feet,
  '',
  '',
  '',
  ground,
  '',
  120,
  8,
  0,
  spare,
];

describe('the route from the side', () => {
  const profile: RouteProfile = {
    fromFeet: 400,
    legs: [
      {
        number: 1,
        to: 'B',
        levelFeet: 5500,
        parts: [
          { nauticalMiles: 8, toFeet: 5500 },
          { nauticalMiles: 20, toFeet: 5500 },
        ],
        ground: { highestFeet: 2000, wantedFeet: 3200 },
      },
      { number: 2, to: 'C', levelFeet: 5500, parts: [{ nauticalMiles: 30, toFeet: 5500 }], ground: { highestFeet: 4900, wantedFeet: 5900 } },
      { number: 3, to: 'D', levelFeet: 5500, parts: [{ nauticalMiles: 12, toFeet: 2300 }], ground: undefined },
    ],
  };

  it('lays the parts one behind the other, from the field to where the descent ends', () => {
    expect(flownLine(profile).map(({ x, y }) => [x, y])).toEqual([
      [0, 400],
      [8, 5500],
      [28, 5500],
      [58, 5500],
      [70, 2300],
    ]);
    expect(laidAlong(profile).map(({ startMiles, endMiles }) => [startMiles, endMiles])).toEqual([
      [0, 28],
      [28, 58],
      [58, 70],
    ]);
  });

  it('says which leg is too low, and of which the ground is not judged', () => {
    const svg = routeProfilePicture(profile, { width: 540, height: 270 });
    expect(svg).toContain('2 too low');
    expect(svg).not.toContain('1 too low');
    expect(svg).toContain('leg 3 to D at 5,500 feet, ground not judged');
  });

  it('takes what is wanted from the spare height of the sheet, and draws nothing that is not worked out', () => {
    const levels = [level(1, 5500, 2000, 2300), level(2, 5500, '', ''), ['', '', '']];
    const draw = (parts: unknown[][], departure: unknown): string =>
      routeProfileOfCells({ parts, levels, departure: [[departure]] }, { width: 540, height: 270 });
    expect(draw(flight, 420)).toContain('leg 1 to B at 5,500 feet, ground 2,000, wanted 3,200; leg 2 to B at 5,500 feet, ground not judged');
    expect(draw(flight, '')).toContain('Nothing to draw: the elevation of the departure is not known.');
    expect(draw([['', '']], 420)).toContain('Nothing to draw: no leg yet.');
    expect(draw([row(1, '', '', '')], 420)).toContain('Nothing to draw: leg 1 is not worked out.');
  });
});
