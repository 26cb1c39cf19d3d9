// Ten thousand tables made at random and printed in as many ways: whatever is taken of them is what was printed, in its column and unit, and
// where two readings are left nothing is taken before that is asked.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPasted, type PasteAnswers } from '../../../addon/workbook/pasted/readPasted';
import { shapeOf, type TableShape } from '../../../addon/workbook/pasted/tableShape';
import type { TableAnswers } from '../../../addon/workbook/pasted/tableQuestions';
import { tableKinds, type TableKind } from '../../../addon/workbook/pasted/tableKinds';
import type { TableRow } from '../../../addon/workbook/pasted/tableRows';
import { understoodTable } from '../../../addon/workbook/pasted/understoodTable';

const [takeoff] = tableKinds as readonly [TableKind, ...TableKind[]];

interface Printed {
  readonly form: 'one figure' | 'two figures' | 'list';
  readonly altitudes: readonly number[];
  readonly temperatures: readonly number[];
  /** Kilograms; none where the manual gives none. */
  readonly weights: readonly number[];
  /** By weight, altitude, temperature and figure, in thousandths; undefined is a hole. */
  readonly figures: readonly (number | undefined)[];
  readonly group: string;
  readonly decimal: string;
  readonly separator: string;
  readonly minus: string;
  readonly hole: string;
  readonly degrees: 'each' | 'first' | 'none';
  readonly mark: string;
  readonly seaLevel: boolean;
  readonly corner: string;
}

const rising = (least: number, most: number, steps: readonly number[], longest: number): fc.Arbitrary<number[]> =>
  fc
    .record({ from: fc.integer({ min: least, max: most }), step: fc.constantFrom(...steps), count: fc.integer({ min: 2, max: longest }) })
    .map(({ from, step, count }) => Array.from({ length: count }, (_, index) => from * (steps[0] ?? 1) + index * step));
const figure = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 90, max: 3200 }).map((value) => value * 1000) },
  { weight: 1, arbitrary: fc.integer({ min: 900, max: 32_000 }).map((value) => value * 100) },
  // Kilometres, say: "1.067".
  { weight: 1, arbitrary: fc.integer({ min: 400, max: 3200 }) },
  { weight: 1, arbitrary: fc.constant(undefined) },
);
const printed: fc.Arbitrary<Printed> = fc
  .record({
    form: fc.constantFrom('one figure' as const, 'two figures' as const, 'list' as const),
    altitudes: rising(0, 4, [500, 1000, 2000], 6),
    temperatures: rising(-4, 4, [5, 10, 20], 5),
    weights: fc.uniqueArray(
      fc.integer({ min: 60, max: 140 }).map((tens) => tens * 10),
      { maxLength: 3 },
    ),
    figures: fc.array(figure, { minLength: 180, maxLength: 180 }),
    group: fc.constantFrom('', '', ' ', '\u00a0', '\u202f', ',', '.', '\u2019'),
    decimal: fc.constantFrom('.', ','),
    separator: fc.constantFrom('\t', '\t', ';', '|', '   ', '  ', ' '),
    minus: fc.constantFrom('-', '\u2212', '\u2013'),
    hole: fc.constantFrom('-', '\u2014', 'n/a', ''),
    degrees: fc.constantFrom('each' as const, 'first' as const, 'none' as const),
    mark: fc.constantFrom('', '', '*', '\u2020', '\u00b2', ' (1)'),
    seaLevel: fc.boolean(),
    corner: fc.constantFrom('', 'Pressure altitude', 'Alt', 'ft', 'Height'),
  })
  // A hole that leaves no trace between blanks cannot be told.
  .filter(({ group, decimal, hole, separator }) => group !== decimal && (hole !== '' || ['\t', ';', '|'].includes(separator)));

function digits(thousandths: number, { group, decimal, minus }: Pick<Printed, 'group' | 'decimal' | 'minus'>): string {
  const [whole, part] = [Math.floor(Math.abs(thousandths) / 1000), Math.abs(thousandths) % 1000];
  const places = part % 100 === 0 ? String(part / 100) : String(part).padStart(3, '0');
  return `${thousandths < 0 ? minus : ''}${String(whole).replace(/\B(?=(\d{3})+$)/g, group)}${part === 0 ? '' : `${decimal}${places}`}`;
}

/** Each point with where it is printed: by weight, altitude, temperature and figure. */
const figureAt = (
  { figures, altitudes, temperatures }: Printed,
  weight: number,
  altitude: number,
  temperature: number,
  which: number,
): number | undefined => figures[((weight * altitudes.length + altitude) * temperatures.length + temperature) * 2 + which];

function textOf(table: Printed): string {
  const { form, altitudes, temperatures, weights, separator, hole, degrees, mark, seaLevel, corner } = table;
  const shown = (thousandths: number | undefined, marked: boolean): string =>
    thousandths === undefined ? hole : `${digits(thousandths, table)}${marked ? mark : ''}`;
  const altitudeText = (value: number): string => (seaLevel && value === 0 ? 'S.L.' : digits(value * 1000, table));
  const degreesText = (value: number, index: number): string =>
    `${digits(value * 1000, table)}${degrees === 'each' || (degrees === 'first' && index === 0) ? ' \u00b0C' : ''}`;
  const perValue = form === 'two figures' ? [0, 1] : [0];
  const blocks = (weights.length === 0 ? [0] : weights).map((weight, w) => {
    const rows = altitudes.flatMap((altitude, a) => {
      const point = (t: number, which: number): string => shown(figureAt(table, w, a, t, which), (a + t + which) % 4 === 0);
      if (form !== 'list') return [[altitudeText(altitude), ...temperatures.flatMap((_, t) => perValue.map((which) => point(t, which)))]];
      return temperatures.map((value, t) => [
        ...(weights.length === 0 ? [] : [digits(weight * 1000, table)]),
        altitudeText(altitude),
        degreesText(value, degrees === 'first' ? a + t : t),
        point(t, 0),
        point(t, 1),
      ]);
    });
    if (form === 'list') return rows;
    const clear = ['\t', ';', '|'].includes(separator);
    const gaps = form === 'two figures' && clear;
    const top = [...(corner === '' && !clear ? [] : [corner]), ...temperatures.flatMap((value, t) => [degreesText(value, t), ...(gaps ? [''] : [])])];
    return [...(weights.length === 0 ? [] : [[`Weight ${digits(weight * 1000, table)} kg`]]), top, ...rows];
  });
  return blocks.flatMap((rows) => rows.map((row) => row.join(separator))).join('\n');
}

const truePaste = ({ group }: Printed): PasteAnswers => ({
  commas: group === ',' ? 'thousands' : 'decimals',
  points: group === '.' ? 'thousands' : 'decimals',
  spaces: [' ', '\u00a0', '\u202f'].includes(group) ? 'thousands' : 'columns',
});

function trueAnswers({ form, weights }: Printed): TableAnswers {
  const list = [...(weights.length === 0 ? [] : ['weight']), 'pressure altitude', 'temperature', 'figure: ground roll', 'figure: over 50 ft'];
  const columns = form === 'list' ? list : ['pressure altitude'];
  return {
    ...Object.fromEntries(columns.map((role, index) => [`column.${index + 1}`, role])),
    across: 'temperature',
    ...Object.fromEntries([1, 2, 3].map((block) => [`figure.${block}.1`, 'figure: ground roll'])),
    'figure.1.2': 'figure: over 50 ft',
    held: weights.length === 0 || form === 'list' ? 'none' : 'given',
    ...Object.fromEntries(weights.map((weight, index) => [`held.${index + 1}`, String(weight)])),
    'unit.weight': 'kg',
    'unit.altitude': 'ft',
    'unit.temperature': '\u00b0C',
    'unit.figure': 'm',
  };
}

/** The shape that was printed; anything else must be asked about. */
function isTrueShape({ side, figures, columns, blocks }: TableShape, { form, weights, temperatures }: Printed): boolean {
  if (form === 'list') return side === 0 && columns === (weights.length === 0 ? 4 : 5);
  const perValue = form === 'two figures' ? 2 : 1;
  return side === 1 && figures === perValue && columns === 1 + perValue * temperatures.length && blocks.length === Math.max(1, weights.length);
}

/** Every number of the rows is one that was printed for that point, and every printed one is there. */
function wrong(rows: readonly TableRow[], table: Printed): string | undefined {
  const { weights, altitudes, temperatures, form } = table;
  const expected = new Map<string, number>();
  (weights.length === 0 ? [undefined] : weights).forEach((weight, w) =>
    altitudes.forEach((altitude, a) =>
      temperatures.forEach((temperature, t) =>
        ['groundRoll', 'over50Feet'].forEach((key, which) => {
          const value = form === 'one figure' && which === 1 ? undefined : figureAt(table, w, a, t, which);
          if (value !== undefined) expected.set(`${weight} ${altitude} ${temperature} ${key}`, value / 1000);
        }),
      ),
    ),
  );
  for (const row of rows.filter(({ pressureAltitude }) => typeof pressureAltitude === 'number')) {
    for (const key of ['groundRoll', 'over50Feet']) {
      const place = `${row['weight']} ${row['pressureAltitude']} ${row['temperature']} ${key}`;
      if (row[key] === undefined) continue;
      if (Math.abs((expected.get(place) ?? Infinity) - Number(row[key])) > 1e-9)
        return `${place} taken as ${row[key]}, printed ${expected.get(place)}`;
      expected.delete(place);
    }
  }
  return expected.size === 0 ? undefined : `left out: ${[...expected.keys()].join('; ')}`;
}

describe('tables printed at random', () => {
  it('are never taken wrong without a question, in 10,000', () => {
    let taken = 0;
    let unasked = 0;
    fc.assert(
      fc.property(printed, (table) => {
        const text = textOf(table);
        // What is taken before anything is answered.
        const alone = shapeOf(readPasted(text), text).shape;
        const first = alone === undefined ? undefined : understoodTable(alone, takeoff, {}, {}).rows;
        if (first !== undefined) unasked += 1;
        expect(first === undefined ? undefined : wrong(first, table), text).toBeUndefined();
        const paste = truePaste(table);
        const { shape } = shapeOf(readPasted(text, paste), text);
        if (shape === undefined) return;
        if (!isTrueShape(shape, table)) {
          expect(understoodTable(shape, takeoff, {}, paste).rows, text).toBeUndefined();
          return;
        }
        const { rows } = understoodTable(shape, takeoff, trueAnswers(table), paste);
        if (rows === undefined) return;
        taken += 1;
        expect(wrong(rows, table), text).toBeUndefined();
        expect(rows[0], text).toMatchObject({ pressureAltitude: 'ft', temperature: '\u00b0C', groundRoll: 'm' });
      }),
      { numRuns: 10_000, seed: 20261130 },
    );
    console.log(`of 10,000 tables ${taken} were taken with true answers, ${unasked} without any`);
    expect(taken).toBeGreaterThan(6000);
  });
});
