// The scatter chart: columns paired row by row, everything inside its edges, series told apart without colour, the selected point ringed.
import { describe, expect, it } from 'vitest';
import { keyPlaces, runsOf, scalesOf, scatterPicture, type ScatterRequest } from '../../addon/pictures/scatterPicture';
import { widthOfText } from '../../addon/pictures/svg';
import { numbersIn, textSizes } from '../support/svgText';

const size = { width: 276, height: 318 };
const request: ScatterRequest = {
  title: 'Loading in the envelope',
  description: 'Invented.',
  xTitle: 'arm',
  yTitle: 'weight',
  series: [
    {
      title: 'envelope',
      drawn: 'line',
      runs: [
        [
          { x: 80, y: 1500 },
          { x: 80, y: 2000 },
          { x: 90, y: 2600 },
          { x: 80, y: 1500 },
        ],
      ],
    },
    { title: 'take-off', drawn: 'points', runs: [[{ x: 84.25, y: 2300 }]] },
    { title: 'landing', drawn: 'points', runs: [[{ x: 83, y: 2100 }]] },
  ],
};

describe('columns of numbers', () => {
  it('breaks a line at a row without two numbers', () => {
    expect(runsOf([1, 2, undefined, 4], [10, 20, 30, 40])).toEqual([
      [
        { x: 1, y: 10 },
        { x: 2, y: 20 },
      ],
      [{ x: 4, y: 40 }],
    ]);
    expect(runsOf([1, 2, 3], [1])).toEqual([[{ x: 1, y: 1 }]]);
    expect(runsOf([], [])).toEqual([]);
  });

  it('keeps every point inside its area, larger values up and to the right, with room round a single value', () => {
    const area = { left: 60, right: 260, top: 40, bottom: 240 };
    const { x, y } = scalesOf(
      [
        { x: -5, y: 100 },
        { x: 15, y: 900 },
      ],
      area,
    );
    expect([x(-5), x(15), y(900), y(100)]).toEqual([...[x(-5), x(15)].sort((a, b) => a - b), ...[y(900), y(100)].sort((a, b) => a - b)]);
    expect(Math.min(x(-5), x(15))).toBeGreaterThanOrEqual(area.left);
    expect(Math.max(y(100), y(900))).toBeLessThanOrEqual(area.bottom);
    expect(scalesOf([{ x: 7, y: 7 }], area).x(7)).toBeGreaterThan(area.left);
    expect(scalesOf([{ x: 7, y: 7 }], area).x(7)).toBeLessThan(area.right);
  });
});

describe('the chart', () => {
  it('says its points in words, and what is selected', () => {
    const svg = scatterPicture({ ...request, selected: { x: 84.25, y: 2300, words: 'take-off' } }, size);
    expect(svg).toContain(
      '<title>Loading in the envelope</title><desc>Invented. take-off at arm 84.25, weight 2300. landing at arm 83, weight 2100. selected: take-off, at arm 84.25, weight 2300.</desc>',
    );
    expect(svg).toContain('>selected: take-off</text>');
  });

  it('rings the selected point where it is drawn, and nothing where none is selected', () => {
    const ringed = scatterPicture({ ...request, selected: { x: 84.25, y: 2300, words: 'take-off' } }, size);
    const rings = [...ringed.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="9"/g)].map(
      ([, x, y]) => `translate(${Number(x).toFixed(1)},${Number(y).toFixed(1)})`,
    );
    expect(rings).toHaveLength(1);
    // The second path of this outline is the point in the plot or its sample in the key.
    const squares = [...ringed.matchAll(/d="M-4,-4H4V4H-4Z" transform="([^"]+)"/g)].map(([, at]) => at);
    expect(squares).toContain(rings[0]);
    expect(scatterPicture(request, size)).not.toContain('<circle');
  });

  it('tells series apart by shape and by dash', () => {
    const lines = scatterPicture({ ...request, series: request.series.map((one) => ({ ...one, drawn: 'line' as const })) }, size);
    expect(new Set([...lines.matchAll(/stroke-dasharray="([^"]*)"/g)].map(([, dash]) => dash)).size).toBe(3);
    const points = scatterPicture({ ...request, series: request.series.map((one) => ({ ...one, drawn: 'points' as const })) }, size);
    expect(new Set([...points.matchAll(/<path d="([^"]*)" transform/g)].map(([, shape]) => shape)).size).toBe(3);
  });

  it.each([276, 505])('draws inside its edges at %i pixels, in text of 12', (width) => {
    const svg = scatterPicture({ ...request, selected: { x: 83, y: 2100, words: 'landing' } }, { width, height: 318 });
    expect(textSizes(svg)).toEqual([12]);
    for (const { x, y } of numbersIn(svg)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(318);
    }
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('puts the names of its series on as many lines as they need', () => {
    const words = ['envelope', 'burn', 'zero fuel', 'take-off', 'landing'];
    const places = keyPlaces(words, 248);
    places.forEach(({ x }, index) => expect(x + 24 + widthOfText(words[index] ?? '')).toBeLessThanOrEqual(248));
    expect(places[places.length - 1]?.line).toBe(1);
  });

  it('escapes the names it is given', () => expect(scatterPicture({ ...request, title: '<b>', xTitle: '"a"&' }, size)).not.toMatch(/<b>|"a"&[^aq]/));

  it('says so where there is nothing to draw', () =>
    expect(scatterPicture({ ...request, series: [] }, size)).toContain('Nothing to draw yet: the cells hold no'));
});
