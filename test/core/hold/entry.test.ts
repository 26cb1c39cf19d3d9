// The entry sectors against the published figure, drawn with vectors: AIM figure 5-3-4 and CNATRA P-821 figure 3-8.
// A line through the fix at 70 degrees to the outbound leg, on the holding side, and the inbound course carried on beyond the
// fix, divide the plane in three; the sector is the one from which the aircraft comes.
import { describe, expect, it } from 'vitest';
import { asCourse, holdSpeedLimit, inboundCourseOfSide, sideOnRadial } from '../../../core/hold/entry';
import { call } from '../../support/call';

interface Vector {
  readonly east: number;
  readonly north: number;
}

const toward = (degrees: number): Vector => ({ east: Math.sin((degrees * Math.PI) / 180), north: Math.cos((degrees * Math.PI) / 180) });
const cross = (a: Vector, b: Vector): number => a.east * b.north - a.north * b.east;
const dot = (a: Vector, b: Vector): number => a.east * b.east + a.north * b.north;
const scaled = (a: Vector, by: number): Vector => ({ east: a.east * by, north: a.north * by });
const sum = (a: Vector, b: Vector): Vector => ({ east: a.east + b.east, north: a.north + b.north });

const onLine = 1e-9;
const fiveDegrees = Math.cos((5 * Math.PI) / 180) - 1e-12;

/** The figure for one hold, as vectors from the fix. */
function figureOf(inbound: number, turns: 'right' | 'left') {
  const ahead = toward(inbound);
  const outbound = scaled(ahead, -1);
  const right: Vector = { east: ahead.north, north: -ahead.east };
  const holdingSide = turns === 'right' ? right : scaled(right, -1);
  const seventy = (70 * Math.PI) / 180;
  const lineOnHoldingSide = sum(scaled(outbound, Math.cos(seventy)), scaled(holdingSide, Math.sin(seventy)));
  return { ahead, outbound, holdingSide, lineOnHoldingSide, lineAcross: scaled(lineOnHoldingSide, -1) };
}

function entryByFigure(heading: number, figure: ReturnType<typeof figureOf>): string {
  const from = scaled(toward(heading), -1);
  const sideOfLine = cross(figure.lineOnHoldingSide, from) * Math.sign(cross(figure.lineOnHoldingSide, figure.outbound));
  const holdingSide = dot(from, figure.holdingSide);
  // On the line counts as direct; straight down the course from beyond the fix counts as teardrop.
  const entry = sideOfLine >= -onLine ? 'direct' : holdingSide > onLine ? 'parallel' : 'teardrop';
  const near = (ray: Vector): boolean => dot(from, ray) >= fiveDegrees;
  let other = '';
  if (near(figure.ahead)) other = entry === 'parallel' ? 'teardrop' : 'parallel';
  if (near(figure.lineOnHoldingSide)) other = entry === 'direct' ? 'parallel' : 'direct';
  if (near(figure.lineAcross)) other = entry === 'direct' ? 'teardrop' : 'direct';
  return other === '' ? entry : `${entry} (or ${other})`;
}

const circle = Array.from({ length: 360 }, (_, degrees) => degrees);

describe('entry, every whole degree of heading and course', () => {
  it.each(['right', 'left'] as const)('%s turns, 129,600 pairs', (turns) => {
    const headings = circle.map(() => circle);
    const courses = circle.map((course) => circle.map(() => course));
    const answers = call('HOLD_ENTRY', headings, courses, turns) as string[][];
    const differing: string[] = [];
    const seen = new Map<string, number>();
    for (const course of circle) {
      const figure = figureOf(course, turns);
      for (const heading of circle) {
        const got = answers[course]?.[heading] ?? '';
        const wanted = entryByFigure(heading, figure);
        seen.set(got, (seen.get(got) ?? 0) + 1);
        if (got !== wanted) differing.push(`${heading} to ${course}: ${got}, by the figure ${wanted}`);
      }
    }
    expect(differing).toEqual([]);
    // Whole degrees of one course. On the lines: both ends of the 70-degree line direct, the course itself teardrop.
    expect(Object.fromEntries([...seen].map(([entry, count]) => [entry, count / 360]))).toEqual({
      direct: 169,
      'direct (or teardrop)': 6,
      'direct (or parallel)': 6,
      teardrop: 59,
      'teardrop (or parallel)': 6,
      'teardrop (or direct)': 5,
      parallel: 99,
      'parallel (or teardrop)': 5,
      'parallel (or direct)': 5,
    });
  });

  it('takes 360 for 0', () => {
    expect(call('HOLD_ENTRY', 360, 45)).toBe(call('HOLD_ENTRY', 0, 45));
    expect(call('HOLD_ENTRY', 45, 360, 'L')).toBe(call('HOLD_ENTRY', 45, 0, 'L'));
  });

  it('is not moved across a line by binary rounding', () => {
    // 0.1 + 0.2 is not 0.3; the heading is the outbound course all the same.
    expect(call('HOLD_ENTRY', 180.3, 0.1 + 0.2)).toBe('teardrop (or parallel)');
    expect(call('HOLD_ENTRY', 0.1 + 0.2, 180.3)).toBe('teardrop (or parallel)');
    expect(call('HOLD_ENTRY', 109.7 + 0.3, 360)).toBe('direct (or teardrop)');
  });
});

describe('inbound course', () => {
  it('is the reciprocal, north being 360', () => {
    for (const side of circle) {
      const course = inboundCourseOfSide(side);
      expect(course).toBeGreaterThan(0);
      expect(course).toBeLessThanOrEqual(360);
      expect(Math.abs(course - side)).toBe(180);
    }
    expect(asCourse(-0)).toBe(360);
    expect(asCourse(720)).toBe(360);
  });

  it('takes the end of the line that lies toward the compass point', () => {
    expect(sideOnRadial(270, 86)).toBe(266);
    expect(sideOnRadial(90, 86)).toBe(86);
    expect(sideOnRadial(0, 315)).toBe(315);
    expect(sideOnRadial(0, 135)).toBe(315);
    expect(() => sideOnRadial(0, 90)).toThrow('hold-side-off-radial');
  });
});

describe('speed limit', () => {
  it('leaves no gap between the printed bands, and never gives a higher limit than is printed', () => {
    expect([6000, 6000.5, 6000.999, 6001].map((altitude) => holdSpeedLimit(altitude, 'FAA'))).toEqual(
      [200, 200, 200, 230].map((knots) => ({ kind: 'indicated', knots })),
    );
    expect([14000, 14000.5, 14001].map((altitude) => holdSpeedLimit(altitude, 'FAA'))).toEqual(
      [230, 230, 265].map((knots) => ({ kind: 'indicated', knots })),
    );
  });

  it('is a Mach number above 34,000 ft under the ICAO rules', () => {
    // ICAO Doc 8168 by way of AFMAN 11-217V1, table 18.4.
    expect(holdSpeedLimit(34000.5, 'ICAO')).toEqual({ kind: 'mach', mach: 0.83 });
    expect(holdSpeedLimit(41000, 'ICAO_AB')).toEqual({ kind: 'mach', mach: 0.83 });
  });
});
