// The drawn hold: its track closes at the fix whatever the wind, its angles and lengths are true, its words are those of the brief.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asClock, asHeading, frameOf } from '../../addon/pictures/holdPicture';
import { holdPath, type HoldBriefing } from '../../addon/pictures/holdPath';
import { holdPictureOfCells, type HoldCells } from '../../addon/pictures/sheetPictures';
import { widthOfText, type Point } from '../../addon/pictures/svg';
import { call } from '../support/call';
import { numbersIn, textSizes } from '../support/svgText';

type HoldArguments = readonly [
  heading: number,
  inbound: number,
  turns: 'right' | 'left',
  altitude: number,
  indicated: number,
  leg: string,
  windFrom: number,
  wind: number,
];

const cellsOf = (given: HoldArguments): HoldCells => ({
  heading: [[given[0]]],
  inbound: [[given[1]]],
  turns: [[given[2]]],
  windFrom: [[given[6]]],
  wind: [[given[7]]],
  brief: call('HOLD_BRIEF', ...given) as unknown[][],
});

const valueOf = (brief: HoldCells['brief'], item: string): unknown => brief.find(([name]) => name === item)?.[1];

/** The briefing as the pictures read it. */
function briefingOf(given: HoldArguments): HoldBriefing {
  const { brief } = cellsOf(given);
  const number = (item: string): number => Number(valueOf(brief, item));
  return {
    headingAtFixDegrees: given[0],
    inboundDegrees: given[1],
    turns: given[2],
    windFromDegrees: given[6],
    windKnots: given[7],
    entry: String(valueOf(brief, 'entry')).split(' ')[0] as HoldBriefing['entry'],
    firstHeadingDegrees: number('first heading'),
    firstTurn: valueOf(brief, 'first turn') as HoldBriefing['firstTurn'],
    secondHeadingDegrees: number('second heading'),
    secondTurn: valueOf(brief, 'second turn') as HoldBriefing['secondTurn'],
    outboundHeadingDegrees: number('outbound heading'),
    outboundSeconds: number('outbound time'),
    outboundEndNauticalMiles: number('outbound end from fix'),
    inboundHeadingDegrees: number('inbound heading'),
    inboundSeconds: number('inbound time'),
    trueAirspeedKnots: number('true airspeed'),
    turnRadiusNauticalMiles: number('turn radius'),
  };
}

/** Along the inbound course past the fix, and across it on the holding side. */
function seenFromCourse({ x, y }: Point, { inboundDegrees, turns }: HoldBriefing): { readonly along: number; readonly across: number } {
  const course = (inboundDegrees * Math.PI) / 180;
  const right = x * Math.cos(course) - y * Math.sin(course);
  return { along: x * Math.sin(course) + y * Math.cos(course), across: turns === 'right' ? right : -right };
}

const holds = fc.tuple(
  fc.integer({ min: 1, max: 360 }),
  fc.integer({ min: 1, max: 360 }),
  fc.constantFrom<'right' | 'left'>('right', 'left'),
  fc.constantFrom(4000, 12000),
  fc.integer({ min: 90, max: 200 }),
  fc.constantFrom('1 min', '5 NM'),
  fc.integer({ min: 1, max: 360 }),
  fc.integer({ min: 0, max: 30 }),
);

describe('the drawn lap', () => {
  it('comes back to the fix along the inbound course, in 500 winds', () => {
    fc.assert(
      fc.property(holds, (given) => {
        const briefing = briefingOf(given);
        const { lap, marks } = holdPath(briefing);
        const end = lap[lap.length - 1] ?? { x: 9, y: 9 };
        expect(Math.hypot(end.x, end.y)).toBeLessThan(0.01);
        const inbound = seenFromCourse(marks.inboundFrom, briefing);
        expect(Math.abs(inbound.across)).toBeLessThan(0.01);
        expect(inbound.along).toBeCloseTo(-Number(valueOf(cellsOf(given).brief, 'inbound length')), 1);
      }),
      { numRuns: 500, seed: 11 },
    );
  });

  it('is as wide as the brief says, on the holding side', () => {
    fc.assert(
      fc.property(holds, (given) => {
        const briefing = briefingOf(given);
        const across = holdPath(briefing).lap.map((point) => seenFromCourse(point, briefing).across);
        expect(Math.max(...across)).toBeCloseTo(Number(valueOf(cellsOf(given).brief, 'width')), 1);
      }),
      { numRuns: 200, seed: 12 },
    );
  });

  it('turns a whole circle also where there is no outbound leg to speak of', () => {
    const { lap } = holdPath(briefingOf([100, 90, 'right', 5000, 110, '1 min', 90, 40]));
    expect(Math.min(...lap.map(({ y }) => y))).toBeLessThan(-1);
  });
});

describe('the drawn entry', () => {
  it('ends at the fix, in 500 winds', () => {
    fc.assert(
      fc.property(holds, (given) => {
        const { entry, arrival } = holdPath(briefingOf(given));
        expect(entry[entry.length - 1]).toEqual({ x: 0, y: 0 });
        expect(arrival[arrival.length - 1]).toEqual({ x: 0, y: 0 });
        expect(entry.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
      }),
      { numRuns: 500, seed: 13 },
    );
  });

  it.each([
    ['teardrop: on the holding side', [160, 5, 'right', 5000, 110, '1 min', 5, 0], (across: number[]) => Math.min(...across) > -0.2],
    ['parallel: comes back from the holding side', [200, 360, 'right', 5000, 110, '1 min', 5, 0], (across: number[]) => Math.max(...across) > 0.5],
    ['teardrop, left turns: on the holding side', [60, 225, 'left', 5000, 110, '1 min', 5, 0], (across: number[]) => Math.min(...across) > -0.2],
    ['direct: round the pattern itself', [90, 90, 'right', 5000, 110, '1 min', 5, 0], (across: number[]) => Math.min(...across) > -0.01],
  ] as const)('%s', (_, given, holdsTrue) => {
    const briefing = briefingOf(given);
    expect(holdsTrue(holdPath(briefing).entry.map((point) => seenFromCourse(point, briefing).across))).toBe(true);
  });
});

describe('the frame', () => {
  const area = { left: 40, right: 260, top: 30, bottom: 300 };
  const points = [
    { x: 0, y: 0 },
    { x: 3, y: 4 },
    { x: -2, y: 1 },
  ];

  it('keeps lengths true and everything inside', () => {
    for (const up of [0, 37, 225, 359]) {
      const { place, pixelsPerMile } = frameOf(points, up, area);
      const [fix, far] = [place({ x: 0, y: 0 }), place({ x: 3, y: 4 })];
      expect(Math.hypot(far.x - fix.x, far.y - fix.y)).toBeCloseTo(5 * pixelsPerMile, 6);
      for (const { x, y } of points.map(place)) {
        expect(x).toBeGreaterThanOrEqual(area.left - 1e-6);
        expect(x).toBeLessThanOrEqual(area.right + 1e-6);
        expect(y).toBeGreaterThanOrEqual(area.top - 1e-6);
        expect(y).toBeLessThanOrEqual(area.bottom + 1e-6);
      }
    }
  });

  it('has north up, or the inbound course', () => {
    const north = frameOf(points, 0, area).place;
    expect(north({ x: 0, y: 1 }).y).toBeLessThan(north({ x: 0, y: 0 }).y);
    expect(north({ x: 1, y: 0 }).x).toBeGreaterThan(north({ x: 0, y: 0 }).x);
    const eastUp = frameOf(points, 90, area).place;
    expect(eastUp({ x: 1, y: 0 }).y).toBeLessThan(eastUp({ x: 0, y: 0 }).y);
    expect(eastUp({ x: 0, y: 1 }).x).toBeLessThan(eastUp({ x: 0, y: 0 }).x);
  });
});

describe('the picture', () => {
  const size = { width: 300, height: 400 };

  it.each([
    [[100, 90, 'right', 5000, 110, '1 min', 0, 0], 'north', 'entry direct'],
    [[140, 358, 'left', 8000, 150, '1 min', 310, 30], 'inbound course', 'entry parallel'],
    [[182, 2, 'right', 8000, 150, '1 min', 310, 30], 'north', 'entry teardrop (or parallel)'],
    [[280, 90, 'right', 5000, 110, '1 min', 360, 40], 'north', 'entry parallel'],
    [[20, 270, 'right', 5000, 110, '4 NM', 60, 60], 'inbound course', 'entry direct (or teardrop)'],
  ] as const)('of %j, %s up, is whole', (given, up, words) => {
    const svg = holdPictureOfCells(cellsOf(given), up, size);
    expect(svg).toContain(`>${words}</text>`);
    expect(svg).toMatch(/<title>Hold, (right|left) turns<\/title><desc>Holding pattern with /);
    expect(textSizes(svg)).toEqual([12]);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    for (const { x, y } of numbersIn(svg)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(size.width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(size.height);
    }
  });

  it('says plainly where the wind is too strong for a racetrack', () => {
    expect(holdPictureOfCells(cellsOf([100, 90, 'right', 5000, 110, '1 min', 90, 40]), 'north', size)).toContain(
      'NO: wind too strong for a racetrack',
    );
    expect(holdPictureOfCells(cellsOf([100, 90, 'right', 5000, 110, '1 min', 90, 10]), 'north', size)).not.toContain('NO:');
  });

  it('breaks the lines of its key where the picture is too narrow for them', () => {
    const narrow = holdPictureOfCells(cellsOf([100, 90, 'right', 5000, 110, '1 min', 90, 40]), 'north', { width: 268, height: 348 });
    for (const [, x, text = ''] of narrow.matchAll(/<text x="([\d.]+)" y="[\d.]+" text-anchor="start"[^>]*>([^<]*)</g))
      expect(Number(x) + widthOfText(text), text).toBeLessThanOrEqual(268);
    expect([...narrow.matchAll(/>([^<]*)<\/text>/g)].map(([, text]) => text).join(' ')).toContain('NO: wind too strong for a racetrack');
  });

  it('says and draws where an outbound leg in miles ends', () => {
    const given: HoldArguments = [62, 225, 'left', 7000, 110, '6-mile legs', 260, 22];
    expect(holdPictureOfCells(cellsOf(given), 'north', size)).toContain(', to 6.0 NM from the fix');
    const { x, y } = holdPath(briefingOf(given)).marks.outboundTo;
    expect(Math.hypot(x, y)).toBeCloseTo(6, 3);
  });

  it('reads its cells as HOLD_BRIEF does', () => {
    const cells = cellsOf([62, 225, 'left', 7000, 110, '4 NM', 260, 22]);
    expect(holdPictureOfCells({ ...cells, heading: [['062']], inbound: [['225,0']], turns: [['L']], windFrom: [['260']] }, 'north', size)).toBe(
      holdPictureOfCells(cells, 'north', size),
    );
  });

  it('says what is missing where nothing can be drawn', () => {
    const cells = cellsOf([100, 90, 'right', 5000, 110, '1 min', 0, 0]);
    expect(holdPictureOfCells({ ...cells, heading: [['']] }, 'north', size)).toContain('Nothing to draw: no heading at the fix yet.');
    expect(holdPictureOfCells({ ...cells, brief: [['#ERROR!']] }, 'north', size)).toContain('Nothing to draw: no entry yet.');
  });

  it('writes headings with three digits, north as 360, and times as minutes and seconds', () => {
    expect([0, 359.6, 5.4, 90, 359.4].map(asHeading)).toEqual(['360', '360', '005', '090', '359']);
    expect([5, 59.6, 60, 107.2].map(asClock)).toEqual(['0:05', '1:00', '1:00', '1:47']);
  });
});
