// The envelope against constructions that share nothing with it: the angle an outline turns through about a point, and a
// search along the line for where inside ends.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { envelopeFromPoints, placeInEnvelope, type Envelope } from '../../../core/loading/balance';
import { polygonFromPoints, sectionAt, type PlanePoint } from '../../../core/loading/envelope';
import { CoreError } from '../../../core/basics/errors';

const points = (...pairs: readonly (readonly [number, number])[]): PlanePoint[] => pairs.map(([x, y]) => ({ x, y }));

const envelopeOf = (corners: readonly PlanePoint[]): Envelope => envelopeFromPoints(corners.map(({ x, y }) => ({ arm: x, weight: y })));

/** Winding number by the angles between neighbouring corners as seen from the point; a whole turn, or none. */
function windsAround(polygon: readonly PlanePoint[], x: number, y: number): boolean {
  let turned = 0;
  for (const [index, corner] of polygon.entries()) {
    const next = polygon[(index + 1) % polygon.length] ?? corner;
    const change = Math.atan2(next.y - y, next.x - x) - Math.atan2(corner.y - y, corner.x - x);
    turned += Math.atan2(Math.sin(change), Math.cos(change));
  }
  return Math.abs(turned) > Math.PI;
}

/** Corners at rising angles about a middle, at any distances: never crossing, seldom convex. Widths as in a real envelope. */
const starShaped = fc
  .array(fc.record({ share: fc.double({ min: 0.15, max: 1, noNaN: true }), gap: fc.double({ min: 0.2, max: 1, noNaN: true }) }), {
    minLength: 5,
    maxLength: 14,
  })
  .map((corners) => {
    const whole = corners.reduce((sum, { gap }) => sum + gap, 0);
    let angle = 0;
    return corners.map(({ share, gap }) => {
      angle += (gap / whole) * 2 * Math.PI;
      return { x: 90 + 8 * share * Math.cos(angle), y: 2000 + 600 * share * Math.sin(angle) };
    });
  });
const somewhere = fc.record({ arm: fc.double({ min: 81, max: 99, noNaN: true }), weight: fc.double({ min: 1350, max: 2650, noNaN: true }) });

describe('place in an envelope', () => {
  it('agrees with the winding number, notches and all', () => {
    let inside = 0;
    let outside = 0;
    fc.assert(
      fc.property(starShaped, somewhere, (outline, { arm, weight }) => {
        const place = placeInEnvelope(envelopeOf(outline), weight, arm);
        expect(place.inside).toBe(windsAround(outline, arm, weight));
        if (place.inside) inside++;
        else outside++;
        const margins = [place.forwardMargin, place.aftMargin];
        if (place.inside) for (const margin of [...margins, place.weightMargin]) expect(margin).toBeGreaterThanOrEqual(0);
        else expect(margins.some((margin) => margin === undefined || margin < 0)).toBe(true);
      }),
      { numRuns: 5000, seed: 7 },
    );
    expect(Math.min(inside, outside)).toBeGreaterThan(300);
  });

  it('gives as margins the distances at which inside ends', () => {
    fc.assert(
      fc.property(starShaped, somewhere, (outline, { arm, weight }) => {
        fc.pre(windsAround(outline, arm, weight));
        const place = placeInEnvelope(envelopeOf(outline), weight, arm);
        const step = (x: number, y: number): boolean => windsAround(outline, x, y);
        for (const share of [0.001, 0.25, 0.5, 0.75, 0.999]) {
          expect(step(arm - share * (place.forwardMargin ?? 0), weight)).toBe(true);
          expect(step(arm + share * (place.aftMargin ?? 0), weight)).toBe(true);
          expect(step(arm, weight + share * (place.weightMargin ?? 0))).toBe(true);
        }
        expect(step(arm - (place.forwardMargin ?? 0) - 1e-6, weight)).toBe(false);
        expect(step(arm + (place.aftMargin ?? 0) + 1e-6, weight)).toBe(false);
        expect(step(arm, weight + (place.weightMargin ?? 0) + 1e-5)).toBe(false);
      }),
      { numRuns: 1500, seed: 11 },
    );
  });

  it('counts every point of the outline as inside, wherever rounding puts it, and what is clear of it as outside', () => {
    fc.assert(
      fc.property(starShaped, fc.nat(), fc.double({ min: 0, max: 1, noNaN: true }), (outline, pick, share) => {
        const from = outline[pick % outline.length] ?? { x: 0, y: 0 };
        const to = outline[(pick + 1) % outline.length] ?? from;
        const arm = from.x + share * (to.x - from.x);
        const weight = from.y + share * (to.y - from.y);
        expect(placeInEnvelope(envelopeOf(outline), weight, arm).inside).toBe(true);
      }),
      { numRuns: 3000, seed: 13 },
    );
    const box = envelopeOf(points([78, 2100], [78, 3400], [86, 3400], [86, 2100]));
    expect(placeInEnvelope(box, 3400 + 1e-7, 80).inside).toBe(true);
    expect(placeInEnvelope(box, 3400 + 1e-5, 80).inside).toBe(false);
    expect(placeInEnvelope(box, 3000, 86 + 1e-9).inside).toBe(true);
    expect(placeInEnvelope(box, 3000, 86 + 1e-6).inside).toBe(false);
    expect(placeInEnvelope(box, 3400, 86)).toEqual({ inside: true, forwardMargin: 8, aftMargin: 0, weightMargin: 0 });
  });

  it('takes the part of a notched envelope that holds the loading', () => {
    // A tray with a notch from above: at 2,500 there are two parts, 70 to 75 and 85 to 90.
    const notched = envelopeOf(points([70, 2000], [70, 2600], [75, 2600], [75, 2300], [85, 2300], [85, 2600], [90, 2600], [90, 2000]));
    expect(sectionAt(notched.byWeight, 2500)).toEqual([
      { low: 70, high: 75 },
      { low: 85, high: 90 },
    ]);
    expect(sectionAt(notched.byWeight, 2300)).toEqual([{ low: 70, high: 90 }]);
    expect(placeInEnvelope(notched, 2500, 73)).toEqual({ inside: true, forwardMargin: 3, aftMargin: 2, weightMargin: 100 });
    expect(placeInEnvelope(notched, 2500, 86)).toEqual({ inside: true, forwardMargin: 1, aftMargin: 4, weightMargin: 100 });
    expect(placeInEnvelope(notched, 2500, 77)).toEqual({ inside: false, forwardMargin: 7, aftMargin: -2, weightMargin: -200 });
    expect(placeInEnvelope(notched, 2500, 84)).toEqual({ inside: false, forwardMargin: -1, aftMargin: 6, weightMargin: -200 });
  });

  it('says nothing of limits that the envelope does not have', () => {
    const box = envelopeOf(points([78, 2100], [78, 3400], [86, 3400], [86, 2100]));
    expect(placeInEnvelope(box, 3500, 80)).toEqual({ inside: false, forwardMargin: undefined, aftMargin: undefined, weightMargin: -100 });
    expect(placeInEnvelope(box, 2000, 80)).toEqual({ inside: false, forwardMargin: undefined, aftMargin: undefined, weightMargin: 1400 });
    expect(placeInEnvelope(box, 3000, 90)).toEqual({ inside: false, forwardMargin: 12, aftMargin: -4, weightMargin: undefined });
    expect(placeInEnvelope(box, 3500, 90)).toEqual({ inside: false, forwardMargin: undefined, aftMargin: undefined, weightMargin: undefined });
  });

  it('does not mind where the outline begins, which way it runs, or that it is closed', () => {
    fc.assert(
      fc.property(starShaped, somewhere, fc.nat(), (outline, { arm, weight }, turn) => {
        const place = (corners: readonly PlanePoint[]): unknown[] =>
          Object.values(placeInEnvelope(envelopeOf(corners), weight, arm)).map((value: unknown) =>
            typeof value === 'number' ? Number(value.toFixed(6)) + 0 : value,
          );
        const first = turn % outline.length;
        const rotated = [...outline.slice(first), ...outline.slice(0, first)];
        const wanted = place(outline);
        expect(place(rotated)).toEqual(wanted);
        expect(place([...outline].reverse())).toEqual(wanted);
        expect(place([...rotated, ...rotated.slice(0, 1)])).toEqual(wanted);
      }),
      { numRuns: 1000, seed: 17 },
    );
  });
});

const reasonOf = (corners: readonly PlanePoint[]): unknown => {
  try {
    polygonFromPoints(corners);
    return 'good';
  } catch (thrown) {
    return thrown instanceof CoreError ? (thrown as CoreError<'envelope-bad'>).detail.reason : thrown;
  }
};

describe('what is no envelope', () => {
  it.each([
    ['nothing', points(), 'too-few-points'],
    ['two corners', points([78, 2100], [78, 3400]), 'too-few-points'],
    ['two corners and the closing point', points([78, 2100], [78, 3400], [78, 2100]), 'too-few-points'],
    ['one corner three times', points([78, 2100], [78, 2100], [78, 2100]), 'too-few-points'],
    ['a line', points([70, 2000], [80, 3000], [75, 2500]), 'no-area'],
    ['a bow tie', points([78, 2100], [86, 3400], [86, 2100], [78, 3400]), 'self-crossing'],
    ['a spike', points([78, 2100], [78, 3400], [86, 3400], [90, 3400], [86, 3400], [86, 2100]), 'self-crossing'],
    ['a spike at the first corner', points([78, 2100], [78, 3400], [86, 3400], [86, 2100], [78, 2100], [70, 2100]), 'self-crossing'],
    ['two areas that touch at a corner', points([78, 2100], [82, 2700], [78, 3400], [86, 3400], [82, 2700], [86, 2100]), 'self-crossing'],
    ['a corner on another edge', points([78, 2100], [78, 3400], [86, 3400], [78, 3000], [86, 2100]), 'self-crossing'],
    ['one corner doubled', points([78, 2100], [78, 3400], [78, 3400], [86, 3400], [86, 2100]), 'good'],
    ['a corner in the middle of a side', points([78, 2100], [78, 3000], [78, 3400], [86, 3400], [86, 2100]), 'good'],
    ['a triangle', points([78, 2100], [78, 3400], [86, 3400]), 'good'],
  ])('%s', (_, corners, reason) => expect(reasonOf(corners)).toBe(reason));

  it('finds each crossing of a shuffled outline, as the solved crossing of two lines does', () => {
    /** Parameters of the crossing of two lines, both between 0 and 1 where the segments cross. */
    const cross = (a: PlanePoint, b: PlanePoint, c: PlanePoint, d: PlanePoint): boolean => {
      const denominator = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
      const t = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / denominator;
      const u = ((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / denominator;
      return t > 0 && t < 1 && u > 0 && u < 1;
    };
    let crossing = 0;
    let plain = 0;
    const anyCorner = fc.record({ x: fc.double({ min: 70, max: 90, noNaN: true }), y: fc.double({ min: 1500, max: 2600, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(anyCorner, { minLength: 4, maxLength: 6 }), (corners) => {
        const unlike = new Set(corners.flatMap(({ x, y }) => [x, y]));
        fc.pre(unlike.size === 2 * corners.length);
        const edge = (index: number): [PlanePoint, PlanePoint] => [
          corners[index] ?? { x: 0, y: 0 },
          corners[(index + 1) % corners.length] ?? { x: 0, y: 0 },
        ];
        let expected = false;
        for (let first = 0; first < corners.length; first++) {
          for (let second = first + 2; second < corners.length; second++) {
            if (first === 0 && second === corners.length - 1) continue;
            expected ||= cross(...edge(first), ...edge(second));
          }
        }
        expect(reasonOf(corners)).toBe(expected ? 'self-crossing' : 'good');
        if (expected) crossing++;
        else plain++;
      }),
      { numRuns: 3000, seed: 19 },
    );
    expect(Math.min(crossing, plain)).toBeGreaterThan(300);
  });
});
