// What a wrong click at the axes does: it is refused, or seen.
import { describe, expect, it } from 'vitest';
import { chartFrame, type KnownPoint } from '../../addon/tracing/knownPoints';
import { homographyThrough, inverseOf, mapped } from '../../addon/tracing/homography';
import { drawnChart, randomFrom, type Drawing } from './support/drawnChart';
import { cornersOf } from './support/traced';

const point = (x: number, y: number, across: number, up: number): KnownPoint => ({ at: { x, y }, value: { across, up } });
/** A chart a little turned: 0 to 40 across, 0 to 2000 up. */
const [lowLeft, lowRight, highRight, highLeft] = [
  point(100, 700, 0, 0),
  point(900, 720, 40, 0),
  point(910, 120, 40, 2000),
  point(120, 100, 0, 2000),
] as const;
const good = [lowLeft, lowRight, highRight, highLeft];
const problem = (points: readonly KnownPoint[]) => {
  const found = chartFrame(points);
  return 'problem' in found ? found.problem : undefined;
};
const at = ({ at: place }: KnownPoint, { value }: KnownPoint): KnownPoint => ({ at: place, value });

describe('known points', () => {
  it('tell every value of a turned and skewed picture', () => {
    const drawing: Drawing = {
      across: [-20, 40],
      up: [0, 3000],
      size: [300, 200],
      minor: { across: 20, up: 1000 },
      grid: { ink: 1, width: 1 },
      curves: [],
    };
    for (const [turned, skewed] of [
      [0, 0],
      [20, 0.3],
      [-20, 0.25],
    ] as const) {
      const chart = drawnChart(drawing, { turned, skewed });
      const exact = (
        [
          [-20, 0],
          [40, 0],
          [40, 3000],
          [-20, 3000],
        ] as const
      ).map(([x, y]) => ({ at: chart.placeOf(x, y), value: { across: x, up: y } }));
      const found = chartFrame(exact);
      if ('problem' in found) throw new Error(found.problem.kind);
      for (const [across, up] of [
        [-3, 410],
        [12.5, 2999],
        [39, 1500],
      ] as const) {
        const place = found.frame.placeOf({ across, up });
        const truth = chart.placeOf(across, up);
        expect(place?.x).toBeCloseTo(truth.x, 6);
        expect(place?.y).toBeCloseTo(truth.y, 6);
        expect(found.frame.valueAt(truth)?.up).toBeCloseTo(up, 4);
      }
      expect(found.frame.grows).toEqual({ across: 'right', up: 'up' });
    }
  });

  it('are missed by a hand: the error of a value is that of the hand', () => {
    const drawing: Drawing = {
      across: [0, 100],
      up: [0, 100],
      size: [500, 500],
      minor: { across: 50, up: 50 },
      grid: { ink: 1, width: 1 },
      curves: [],
    };
    const chart = drawnChart(drawing, { turned: 12, skewed: 0.2 });
    for (let seed = 1; seed < 40; seed += 1) {
      const found = chartFrame(cornersOf(drawing, chart, seed));
      if ('problem' in found) throw new Error(found.problem.kind);
      const value = found.frame.valueAt(chart.placeOf(60, 30));
      expect(Math.hypot((value?.across ?? 0) - 60, (value?.up ?? 0) - 30)).toBeLessThan(0.5);
    }
  });

  it('are refused where two neighbours were swapped', () => {
    const swapped = [at(lowRight, lowLeft), at(lowLeft, lowRight), highRight, highLeft];
    expect(problem(swapped)).toEqual({ kind: 'crossed' });
    expect(problem([lowLeft, at(highRight, lowRight), at(lowRight, highRight), highLeft])).toEqual({ kind: 'crossed' });
  });

  it('show by the direction of their axes where opposite ones were swapped, or all of them turned', () => {
    const grows = (points: readonly KnownPoint[]) => {
      const found = chartFrame(points);
      return 'frame' in found ? found.frame.grows : undefined;
    };
    expect(grows(good)).toEqual({ across: 'right', up: 'up' });
    expect(grows([at(highRight, lowLeft), lowRight, at(lowLeft, highRight), highLeft])).not.toEqual({ across: 'right', up: 'up' });
    expect(grows([at(lowRight, lowLeft), at(highRight, lowRight), at(highLeft, highRight), at(lowLeft, highLeft)])).toEqual({
      across: 'up',
      up: 'left',
    });
    expect(grows([at(lowRight, lowLeft), at(lowLeft, lowRight), at(highLeft, highRight), at(highRight, highLeft)])).toEqual({
      across: 'left',
      up: 'up',
    });
  });

  it('are refused near to a line, at one place, or with values that settle nothing', () => {
    expect(problem(good.slice(0, 3))).toEqual({ kind: 'few', missing: 1 });
    expect(problem([lowLeft, lowRight, point(910, 690, 40, 2000), point(120, 702, 0, 2000)])).toEqual({ kind: 'nearLine' });
    expect(problem([point(100, 700, 0, 0), point(400, 500, 20, 0), point(700, 300, 40, 2000), point(1000, 100, 0, 2000)])).toEqual({
      kind: 'nearLine',
    });
    expect(problem([lowLeft, lowRight, { ...highRight, at: { x: 901, y: 721 } }, highLeft])).toEqual({ kind: 'samePlace' });
    expect(problem([lowLeft, lowRight, point(910, 120, 40, 0), highLeft])).toEqual({ kind: 'sameValue' });
    expect(problem(good.map(({ at: place, value }) => ({ at: place, value: { ...value, up: 2000 } })))).toEqual({ kind: 'sameUp' });
    expect(problem(good.map(({ at: place, value }) => ({ at: place, value: { ...value, across: 0 } })))).toEqual({ kind: 'sameAcross' });
  });

  it('are refused, with the one that is farthest off, where a fifth disagrees', () => {
    const frame = chartFrame(good);
    const middle = 'frame' in frame ? frame.frame.placeOf({ across: 20, up: 1000 }) : undefined;
    if (middle === undefined) throw new Error('no middle');
    expect(problem([...good, { at: { x: middle.x + 2, y: middle.y - 1 }, value: { across: 20, up: 1000 } }])).toBeUndefined();
    const wrong = problem([...good, { at: middle, value: { across: 20, up: 1200 } }]);
    expect(wrong?.kind).toBe('disagree');
    expect(problem([...good, { at: middle, value: { across: 20, up: 850 } }])?.kind).toBe('disagree');
    expect(problem([at(lowRight, lowLeft), at(lowLeft, lowRight), highRight, highLeft, { at: middle, value: { across: 20, up: 1000 } }])?.kind).toBe(
      'crossed',
    );
    expect(wrong?.kind === 'disagree' && wrong.pixels).toBeGreaterThan(10);
  });

  it('are refused where an axis is not even, such as one by logarithms', () => {
    expect(problem([...good, point(500, 420, 20, 400)])?.kind).toBe('disagree');
  });
});

describe('a homography', () => {
  it('goes there and back through random places', () => {
    const random = randomFrom(3);
    for (let run = 0; run < 200; run += 1) {
      const corners = [
        [0, 0],
        [1000, 0],
        [1000, 800],
        [0, 800],
      ] as const;
      const pairs = corners.map(([x, y]) => ({ from: { x, y }, to: { x: x + 300 * (random() - 0.5), y: y + 300 * (random() - 0.5) } }));
      const there = homographyThrough(pairs);
      const back = there && inverseOf(there);
      if (there === undefined || back === undefined) throw new Error('no map');
      for (const { from, to } of pairs) {
        expect(mapped(there, from)?.x).toBeCloseTo(to.x, 6);
        expect(mapped(there, from)?.y).toBeCloseTo(to.y, 6);
      }
      const place = { x: 1000 * random(), y: 800 * random() };
      const image = mapped(there, place);
      if (image === undefined) throw new Error('no image');
      expect(mapped(back, image)?.x).toBeCloseTo(place.x, 5);
    }
  });
});
