// From a followed line to the rows of a table: at the printed steps, within what was seen, and read by the panel as they were meant.
import { describe, expect, it } from 'vitest';
import { disagreement, finestOf, lineValues, readAt, readingsOf, roundedTo, type SeenPoint } from '../../addon/tracing/readings';
import { curveProblems, tableText, type TracedChart } from '../../addon/tracing/tableText';
import type { Straightened } from '../../addon/tracing/straightened';
import { readPasted } from '../../addon/workbook/pasted/readPasted';
import { tableKinds } from '../../addon/workbook/pasted/tableKinds';
import { shapeOf } from '../../addon/workbook/pasted/tableShape';
import { understoodTable } from '../../addon/workbook/pasted/understoodTable';
import { randomFrom } from './support/drawnChart';

const seen = (input: number, figure: number, afterGap = false): SeenPoint => ({ input, figure, afterGap });
const line = Array.from({ length: 39 }, (_, index) => seen(index + 0.6, 1000 + 20 * (index + 0.6)));
const asked = { step: 10, minor: { input: 5, figure: 100 }, ends: true, beneath: 0.2 };

describe('readings', () => {
  it('stand at the printed steps and at the ends, rounded to what a chart can give', () => {
    expect(readingsOf(line, asked)).toEqual([
      { input: 0.6, figure: 1010, how: 'seen' },
      { input: 10, figure: 1200, how: 'seen' },
      { input: 20, figure: 1400, how: 'seen' },
      { input: 30, figure: 1600, how: 'seen' },
      { input: 38.6, figure: 1770, how: 'seen' },
    ]);
  });
  it('never lie beyond what was seen, but below the line of the frame', () => {
    expect(readAt(line, 0.5)).toBeUndefined();
    expect(readAt(line, 38.7)).toBeUndefined();
    const nearly = line.map((point) => ({ ...point, input: point.input + 1.3, figure: point.figure + 26 }));
    expect(readingsOf(nearly, asked).at(-1)).toEqual({ input: 40, figure: 1800, how: 'gap' });
    expect(readingsOf(nearly, { ...asked, beneath: 0.05 }).at(-1)).toEqual({ input: 39.9, figure: 1800, how: 'seen' });
  });
  it('leave out uneven ends where curves may not have points of their own', () => {
    expect(readingsOf(line, { ...asked, ends: false }).map(({ input }) => input)).toEqual([10, 20, 30]);
  });
  it('say where the line was not seen', () => {
    const gap = [seen(0, 1000), seen(8, 1080), seen(13, 1130, true), seen(20, 1200)];
    expect(readingsOf(gap, asked).map(({ input, how }) => [input, how])).toEqual([
      [0, 'seen'],
      [10, 'gap'],
      [20, 'seen'],
    ]);
  });
  it('are as fine as a tenth of a small step, and never have three figures behind the point', () => {
    expect([100, 50, 20, 10, 5, 1, 0.5, 0.1, 0.01].map(finestOf)).toEqual([10, 1, 1, 1, 0.1, 0.1, 0.01, 0.01, 0.01]);
    const random = randomFrom(5);
    for (let run = 0; run < 2000; run += 1) {
      const text = String(roundedTo(random() * 10 ** (4 * random()), finestOf(10 ** (4 * random() - 1))));
      expect(text).not.toMatch(/[.,]\d{3}/);
    }
  });
  it('tell two lines of one curve apart', () => {
    expect(disagreement(line, line)).toBe(0);
    expect(disagreement(line, [seen(10, 1300), seen(20, 1500)])).toBeCloseTo(100);
  });
});

describe('a line as values', () => {
  const flat = {
    valueOf: ({ x, y }) => ({ across: x / 10, up: 100 - y }),
    pixelOf: ({ across, up }) => ({ x: across * 10, y: 100 - up }),
  } as Straightened;
  const through = (places: readonly (readonly [number, number])[]) => ({
    points: places.map(([x, y]) => ({ x, y, afterGap: false })),
    ends: ['edge', 'edge'] as const,
  });
  it('has rising inputs, whichever way it was followed', () => {
    const places = Array.from({ length: 50 }, (_, index) => [index * 2, 80 - index] as const);
    const [one, other] = [lineValues(through(places), flat, 'across'), lineValues(through([...places].reverse()), flat, 'across')];
    expect(one).toEqual(other);
    expect(one.turnsBack).toBe(false);
    expect(lineValues(through(places), flat, 'up').points[0]?.input).toBe(20);
  });
  it('says where it turns back, and keeps the longer part', () => {
    const there = Array.from({ length: 60 }, (_, index) => [index * 2, 80 - index / 2] as const);
    const back = Array.from({ length: 20 }, (_, index) => [118 - index * 2, 45 - index] as const);
    const found = lineValues(through([...there, ...back]), flat, 'across');
    expect(found.turnsBack).toBe(true);
    expect(found.points.length).toBeGreaterThan(55);
    expect(found.points.at(-1)?.input).toBeCloseTo(11.8, 0);
  });
});

describe('the text for the table', () => {
  const chart: TracedChart = {
    curve: { name: 'pressure altitude', unit: 'ft' },
    input: { name: 'temperature', unit: '\u00b0C' },
    figure: { name: 'ground roll', unit: 'ft' },
    curves: [
      {
        value: 2000,
        readings: [
          { input: -10, figure: 1010, how: 'seen' },
          { input: 12.5, figure: 1250, how: 'gap' },
        ],
      },
      {
        value: 0,
        readings: [
          { input: -10, figure: 800, how: 'seen' },
          { input: 20, figure: 1000, how: 'hand' },
        ],
      },
    ],
  };
  it('is read by "Put in a table" with nothing open but the weight', () => {
    const text = tableText(chart);
    const pasted = readPasted(text);
    expect(pasted.questions).toEqual([]);
    const { shape } = shapeOf(pasted, text);
    const [takeoff] = tableKinds;
    if (shape === undefined || takeoff === undefined) throw new Error('no shape');
    expect(
      understoodTable(shape, takeoff, {}, {})
        .questions.filter(({ understood }) => understood === undefined)
        .map(({ id }) => id),
    ).toEqual(['held']);
    const { rows } = understoodTable(shape, takeoff, { held: 'none', points: 'curve' }, {});
    expect(rows).toEqual([
      { weight: 'none', pressureAltitude: 'ft', temperature: '\u00b0C', groundRoll: 'ft, curve' },
      { pressureAltitude: 0, temperature: -10, groundRoll: 800 },
      { pressureAltitude: 0, temperature: 20, groundRoll: 1000 },
      { pressureAltitude: 2000, temperature: -10, groundRoll: 1010 },
      { pressureAltitude: 2000, temperature: 12.5, groundRoll: 1250 },
    ]);
  });
  it('is held back while a curve lacks its value, its points, or has one twice', () => {
    expect(curveProblems(chart)).toEqual([]);
    const [first] = chart.curves;
    if (first === undefined) throw new Error('no curve');
    expect(curveProblems({ ...chart, curves: [] })).toEqual(['No curve is followed yet.']);
    expect(curveProblems({ ...chart, curves: [first, first] })).toEqual(['Two curves have the value 2000.']);
    expect(curveProblems({ ...chart, curves: [{ ...first, value: undefined }] })).toEqual(['A curve has no value yet.']);
    expect(curveProblems({ ...chart, curves: [{ ...first, readings: first.readings.slice(1) }] })).toEqual(['The curve 2000 has one point only.']);
    expect(curveProblems({ ...chart, curves: [{ ...first, readings: [...first.readings, ...first.readings] }] })).toEqual([
      'The curve 2000 has two points at -10. Remove one of them.',
    ]);
  });
});
