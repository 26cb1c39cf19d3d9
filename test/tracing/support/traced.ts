// A drawn chart as a person would trace it: its corners clicked a pixel beside, then a click near a curve.
import { followLine, type Followed } from '../../../addon/tracing/followLine';
import { chartFrame, type ChartFrame, type KnownPoint } from '../../../addon/tracing/knownPoints';
import { lineValues, type LineValues } from '../../../addon/tracing/readings';
import { straightened, type Straightened } from '../../../addon/tracing/straightened';
import { withoutGrid, type WithoutGrid } from '../../../addon/tracing/withoutGrid';
import { drawnChart, randomFrom, type Drawing, type DrawnChart, type DrawnCurve, type Spoilt } from './drawnChart';

export interface ReadyChart {
  readonly drawing: Drawing;
  readonly chart: DrawnChart;
  readonly frame: ChartFrame;
  readonly flat: Straightened;
  readonly picture: WithoutGrid;
}

/** Pixels by which a hand misses a corner. */
const miss = 1;

export function cornersOf({ across, up }: Drawing, chart: DrawnChart, seed = 7): KnownPoint[] {
  const random = randomFrom(seed);
  const beside = (): number => (2 * random() - 1) * miss;
  return (
    [
      [across[0], up[0]],
      [across[1], up[0]],
      [across[1], up[1]],
      [across[0], up[1]],
    ] as const
  ).map(([x, y]) => {
    const place = chart.placeOf(x, y);
    return { at: { x: place.x + beside(), y: place.y + beside() }, value: { across: x, up: y } };
  });
}

export function readyChart(drawing: Drawing, spoilt: Spoilt = {}): ReadyChart {
  const chart = drawnChart(drawing, spoilt);
  const found = chartFrame(cornersOf(drawing, chart));
  if ('problem' in found) throw new Error(found.problem.kind);
  const flat = straightened(chart.picture, found.frame);
  return { drawing, chart, frame: found.frame, flat, picture: withoutGrid(flat.ink) };
}

/** A click on the picture, two pixels beside the curve. */
export function clicked({ chart, frame, flat, picture }: ReadyChart, curve: DrawnCurve, across: number): Followed {
  const place = chart.placeOf(across, curve.formula(across));
  const value = frame.valueAt({ x: place.x + 1, y: place.y - 1.5 });
  if (value === undefined) throw new Error('clicked beside the chart');
  return followLine(picture, flat.pixelOf(value));
}

export interface TracedCurve extends LineValues {
  readonly from: number;
  readonly to: number;
  /** The greatest error up the page, in small printed steps. */
  readonly error: number;
  readonly ends: readonly string[];
}

/** Undefined where the tracer would not begin. */
export function traced(ready: ReadyChart, curve: DrawnCurve, across: number): TracedCurve | undefined {
  const followed = clicked(ready, curve, across);
  if ('problem' in followed) return undefined;
  const values = lineValues(followed.line, ready.flat, 'across');
  const errors = values.points.map(({ input, figure }) => Math.abs(figure - curve.formula(input)) / ready.drawing.minor.up);
  return {
    ...values,
    from: values.points[0]?.input ?? NaN,
    to: values.points[values.points.length - 1]?.input ?? NaN,
    error: Math.max(...errors),
    ends: followed.line.ends,
  };
}
