// The tracer against charts drawn from known formulas: never half a small printed step beside the curve, and where it cannot follow, it stops.
import { describe, expect, it } from 'vitest';
import type { Drawing, DrawnCurve, Spoilt } from './support/drawnChart';
import { clicked, readyChart, traced } from './support/traced';

/** Take-off distances by temperature, a curve for each altitude. Invented. */
const distance =
  (altitude: number) =>
  (temperature: number): number =>
    600 * (1 + altitude / 7000) ** 1.5 * (1 + 0.006 * (temperature + 20) + 0.00008 * (temperature + 20) ** 2);

const chartOf = (curves: readonly DrawnCurve[], gridInk = 0.35): Drawing => ({
  across: [-20, 40],
  up: [0, 3000],
  size: [600, 480],
  minor: { across: 5, up: 100 },
  grid: { ink: gridInk, width: 1 },
  curves,
});
const curveOf = (formula: DrawnCurve['formula'], more: Partial<DrawnCurve> = {}): DrawnCurve => ({
  formula,
  from: -20,
  to: 40,
  width: 2.2,
  ink: 0.9,
  ...more,
});
const family = (more: Partial<DrawnCurve> = {}): DrawnCurve[] => [0, 2000, 4000, 6000].map((altitude) => curveOf(distance(altitude), more));

const spoilts: readonly (readonly [string, Spoilt])[] = [
  ['as it is drawn', {}],
  ['turned by 20 degrees', { turned: 20 }],
  ['turned back by 20 degrees and skewed', { turned: -20, skewed: 0.2 }],
  ['blurred', { turned: 5, blurred: 1.5 }],
  ['with noise', { turned: 3, noise: 18 }],
  ['with spots of dirt', { turned: 2, spots: 120 }],
  ['in blocks', { turned: 7, blocks: 14, noise: 5 }],
  ['with all of it, and a shadow', { turned: -17, skewed: 0.2, blurred: 1, noise: 10, spots: 60, blocks: 10, shadow: 0.4 }],
];

/** Of the whole width of a chart, how much was followed at all. */
const part = ({ from, to }: { readonly from: number; readonly to: number }): number => (to - from) / 60;

describe.each(spoilts)('a picture %s', (_, spoilt) => {
  it('is followed along every dark curve of a family, across a lighter grid', { timeout: 60_000 }, () => {
    const ready = readyChart(chartOf(family()), spoilt);
    const all = ready.drawing.curves.map((curve) => traced(ready, curve, 11.7));
    for (const one of all) expect(one?.error).toBeLessThan(0.5);
    // Where the formula runs nearly level beside a grid line, it may stop; it follows by far the most.
    expect(all.reduce((sum, one) => sum + (one === undefined ? 0 : part(one)), 0) / all.length).toBeGreaterThan(0.85);
  });

  // In the worst picture a click follows less than half of dashed curves; further clicks go on.
  it('is followed along dashes', { timeout: 60_000 }, () => {
    const ready = readyChart(chartOf(family({ dash: [12, 6] })), spoilt);
    const all = ready.drawing.curves.map((curve) => traced(ready, curve, 11.7));
    for (const one of all) if (one !== undefined) expect(one.error).toBeLessThan(0.5);
    expect(all.reduce((sum, one) => sum + (one === undefined ? 0 : part(one)), 0) / all.length).toBeGreaterThan(0.4);
  });

  it('is never left for a grid line as dark as the curve', { timeout: 60_000 }, () => {
    const ready = readyChart(chartOf(family({ ink: 0.8 }), 0.8), spoilt);
    const all = ready.drawing.curves.map((curve) => traced(ready, curve, 12.4));
    for (const one of all) if (one !== undefined) expect(one.error).toBeLessThan(0.5);
    expect(all.filter((one) => one !== undefined && part(one) > 0.3).length).toBeGreaterThanOrEqual(2);
  });
});

describe('a line that cannot be followed further', () => {
  const straight =
    (slope: number, at: number) =>
    (across: number): number =>
      at + slope * (across - 10);

  it('ends where it ends, though another one begins beside it', () => {
    const one = curveOf(straight(25, 1500), { to: 10 });
    const other = curveOf(straight(25, 1590), { from: 11 });
    const ready = readyChart(chartOf([one, other]), { turned: 4 });
    const found = traced(ready, one, -6.3);
    expect(found?.to).toBeLessThan(10.5);
    expect(found?.to).toBeGreaterThan(8.5);
    expect(found?.ends).toContain('lost');
    expect(found?.error).toBeLessThan(0.5);
  });

  it('stops where another one runs into it by a small angle, since either could be it behind that', () => {
    // Four degrees between them in the picture: they cross at 15.
    const [one, other] = [curveOf(straight(32, 1500)), curveOf((across) => straight(32, 1500)(15) + 27.5 * (across - 15))];
    const ready = readyChart(chartOf([one, other]), { turned: 3 });
    for (const curve of [one, other])
      for (const [from, least, most] of [
        [-7.7, -21, 17],
        [33.4, 13, 41],
      ] as const) {
        const found = traced(ready, curve, from);
        expect(found?.error).toBeLessThan(0.5);
        expect(found?.from).toBeGreaterThan(least);
        expect(found?.to).toBeLessThan(most);
        expect(found?.ends).toContain('crowded');
      }
  });

  it('stops where it parts into two', () => {
    const stem = curveOf(straight(10, 1500), { to: 10 });
    const [up, down] = [curveOf((across) => 1500 + 45 * (across - 10), { from: 10 }), curveOf((across) => 1500 - 25 * (across - 10), { from: 10 })];
    const ready = readyChart(chartOf([stem, up, down]));
    const found = traced(ready, stem, -3.1);
    expect(found?.to).toBeLessThan(13);
    expect(found?.error).toBeLessThan(0.5);
  });

  it('goes straight through one that crosses it steeply', () => {
    const one = curveOf(straight(30, 1500));
    const other = curveOf(straight(-60, 1550));
    const ready = readyChart(chartOf([one, other]), { turned: -6 });
    for (const curve of [one, other]) {
      const found = traced(ready, curve, -8.2);
      expect(found?.error).toBeLessThan(0.5);
      expect(found === undefined ? 0 : part(found)).toBeGreaterThan(0.75);
    }
  });

  it('says that it is hidden where it runs along a grid line', () => {
    const one = curveOf((across) => (across < 5 ? 1500 + 40 * (across - 5) : 1500), { ink: 0.8 });
    const ready = readyChart(chartOf([one], 0.8));
    const found = traced(ready, one, -8.2);
    expect(found?.error).toBeLessThan(0.5);
    expect(found?.to).toBeLessThan(7);
    expect(found?.ends.some((end) => end === 'hidden' || end === 'lost')).toBe(true);
  });

  it('does not take one of its close neighbours, ten pixels away, for it', { timeout: 60_000 }, () => {
    const close = Array.from({ length: 9 }, (_, index) => curveOf(straight(28, 1100 + 62 * index), { dash: [14, 7] }));
    const ready = readyChart(chartOf(close), { turned: 6, noise: 8, blurred: 0.8 });
    for (const curve of close) {
      const found = traced(ready, curve, 8.4);
      // Half of the way to the neighbour.
      if (found !== undefined) expect(found.error).toBeLessThan(0.3);
    }
  });

  it('does not begin where nothing is, nor where two lines cross', () => {
    const [one, other] = [curveOf(straight(30, 1500)), curveOf(straight(-60, 1500))];
    const ready = readyChart(chartOf([one, other]));
    expect(clicked(ready, one, 10)).toEqual({ problem: 'twoLines' });
    expect(
      clicked(
        ready,
        curveOf(() => 350),
        7.5,
      ),
    ).toEqual({ problem: 'noLine' });
  });
});
