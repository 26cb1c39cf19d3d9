// From the columns of numbers behind a chart to what is drawn: scales, ticks, lines and points in pixels.
import { scaleLinear, type ScaleLinear } from 'd3-scale';

export interface ChartPoint {
  readonly x: number;
  readonly y: number;
}

export interface DrawnSeries {
  readonly title: string;
  readonly drawn: 'line' | 'points';
  /** Unbroken runs of points; a row without two numbers breaks a line. */
  readonly runs: readonly (readonly ChartPoint[])[];
}

export interface PlotArea {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Pairs the two columns row by row. */
export function runsOf(xs: readonly (number | undefined)[], ys: readonly (number | undefined)[]): ChartPoint[][] {
  const runs: ChartPoint[][] = [[]];
  for (let row = 0; row < Math.min(xs.length, ys.length); row += 1) {
    const [x, y] = [xs[row], ys[row]];
    if (x === undefined || y === undefined) runs.push([]);
    else runs.at(-1)?.push({ x, y });
  }
  return runs.filter((run) => run.length > 0);
}

/** The extent with a little room round it; a single value gets room of its own. */
function domain(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = high > low ? (high - low) * 0.05 : Math.max(1, Math.abs(high) * 0.05);
  return [low - room, high + room];
}

/** Undefined where there is nothing to draw. */
export function scalesOf(series: readonly DrawnSeries[], area: PlotArea): Scales | undefined {
  const points = series.flatMap(({ runs }) => runs.flat());
  if (points.length === 0) return undefined;
  return {
    x: scaleLinear(domain(points.map(({ x }) => x)), [area.left, area.right]).nice(),
    y: scaleLinear(domain(points.map(({ y }) => y)), [area.bottom, area.top]).nice(),
  };
}

export const pathOf = (run: readonly ChartPoint[], { x, y }: Scales): string =>
  run.map((point, index) => `${index === 0 ? 'M' : 'L'}${x(point.x).toFixed(1)},${y(point.y).toFixed(1)}`).join('');
