// Pasted text: every form of a number by itself, and ten thousand blocks made at random, of which no wrong number is ever taken unasked.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meaningOf } from '../../../addon/workbook/pasted/numberText';
import { readPasted, type PasteAnswers } from '../../../addon/workbook/pasted/readPasted';

describe('one cell', () => {
  it.each([
    ['1250', 1250],
    ['1 250', 1250],
    ['1\u00a0250', 1250],
    ["1'250", 1250],
    ['1\u2019250', 1250],
    ['1,250,000', 1250000],
    ['1,250.5', 1250.5],
    ['1.250,5', 1250.5],
    ['12,5', 12.5],
    ['12.5', 12.5],
    ['0.250', 0.25],
    ['0,250', 0.25],
    ['1234.567', 1234.567],
    ['\u221220', -20],
    ['\u201320', -20],
    ['- 20', -20],
    ['+20', 20],
    ['20 \u00b0C', 20],
    ['20\u00b0C', 20],
    ['68 \u00b0F', 68],
    ['445*', 445],
    ['445\u00b9', 445],
    ['445 (1)', 445],
    ['2,300.0 lb', 2300],
    ['100 %', 100],
  ])('%s is %d', (text, value) => expect(meaningOf(text)).toMatchObject({ kind: 'number', value }));
  it.each([
    ['1,250', 1250, 1.25],
    ['2.300', 2300, 2.3],
    ['\u22121.250', -1250, -1.25],
  ])('%s can be %d and %d', (text, thousands, decimals) => expect(meaningOf(text)).toMatchObject({ kind: 'open', thousands, decimals }));
  it.each(['', '-', '\u2014', 'n/a', '...'])('"%s" is a hole', (text) => expect(meaningOf(text)).toEqual({ kind: 'hole' }));
  it.each(['445 1', '1O0', '10 - 20', '(10)', '0445', '12.34.5', '1,25,000', '1,250 300', 'ground roll'])('"%s" is no number', (text) =>
    expect(meaningOf(text).kind).toBe('words'),
  );
});

interface Style {
  readonly group: string;
  readonly decimal: string;
  readonly separator: string;
  readonly minus: string;
  readonly hole: string;
  readonly unit: string;
  readonly mark: string;
}
const style: fc.Arbitrary<Style> = fc
  .record({
    group: fc.constantFrom('', '', ' ', '\u00a0', '\u202f', ',', '.', '\u2019'),
    decimal: fc.constantFrom('.', ','),
    separator: fc.constantFrom('\t', ';', '|', '  ', '   ', ' '),
    minus: fc.constantFrom('-', '\u2212', '\u2013'),
    hole: fc.constantFrom('', '-', '\u2014', 'n/a'),
    unit: fc.constantFrom('', '', ' \u00b0C', ' ft', ' m'),
    mark: fc.constantFrom('', '', '*', '\u2020', '\u00b2', ' (1)'),
  })
  .filter(({ group, decimal }) => group !== decimal);

/** In tenths, so that parts are exact; undefined is a hole. */
const value = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -60, max: 9999 }).map((n) => n * 10) },
  { weight: 1, arbitrary: fc.integer({ min: -600, max: 60000 }) },
  { weight: 1, arbitrary: fc.constant(undefined) },
);
const block = fc
  .integer({ min: 2, max: 6 })
  .chain((width) => fc.array(fc.array(value, { minLength: width, maxLength: width }), { minLength: 2, maxLength: 7 }));

function written(tenths: number | undefined, { group, decimal, minus, hole, unit, mark }: Style, noisy: boolean): string {
  if (tenths === undefined) return hole;
  const [whole, part] = [Math.floor(Math.abs(tenths) / 10), Math.abs(tenths) % 10];
  const grouped = String(whole).replace(/\B(?=(\d{3})+$)/g, group);
  return `${tenths < 0 ? minus : ''}${grouped}${part === 0 ? '' : `${decimal}${part}`}${noisy ? unit + mark : ''}`;
}

describe('blocks made at random', () => {
  const textOf = (rows: readonly (readonly (number | undefined)[])[], how: Style): string =>
    rows.map((row, down) => row.map((cell, across) => written(cell, how, (down + across) % 3 === 0)).join(how.separator)).join('\n');

  /** Every number taken stands in its place and is the one that was written. */
  function wrong(rows: readonly (readonly (number | undefined)[])[], how: Style, answers: PasteAnswers): string | undefined {
    const text = textOf(rows, how);
    const { rows: read } = readPasted(text, answers);
    for (const { line, cells } of read) {
      for (const [column, cell] of cells.entries()) {
        if (cell.kind !== 'number') continue;
        const meant = rows[line - 1]?.[column];
        if (meant === undefined || Math.abs(cell.value - meant / 10) > 1e-9)
          return `${JSON.stringify(text)}: line ${line}, column ${column + 1} taken as ${cell.value}`;
      }
    }
    return undefined;
  }
  const truth = ({ group }: Style): PasteAnswers => ({
    commas: group === ',' ? 'thousands' : 'decimals',
    points: group === '.' ? 'thousands' : 'decimals',
    spaces: [' ', '\u00a0', '\u202f'].includes(group) ? 'thousands' : 'columns',
  });

  it('never take a wrong number without a question, in 10,000', () => {
    fc.assert(
      fc.property(block, style, (rows, how) => {
        // A hole that leaves no trace between blanks is told by the width of its row; a block in which most rows lack one cannot be told.
        fc.pre(how.hole !== '' || ['\t', ';', '|'].includes(how.separator) || rows.every((row) => !row.includes(undefined)));
        expect(wrong(rows, how, {})).toBeUndefined();
      }),
      { numRuns: 10_000, seed: 31 },
    );
  });

  it('nor after true answers; and then hold everything back only where blanks leave it open', () => {
    fc.assert(
      fc.property(block, style, (rows, how) => {
        fc.pre(how.hole !== '' || ['\t', ';', '|'].includes(how.separator) || rows.every((row) => !row.includes(undefined)));
        expect(wrong(rows, how, truth(how))).toBeUndefined();
        if (!['\t', ';', '|'].includes(how.separator)) return;
        const { rows: read, questions } = readPasted(textOf(rows, how), truth(how));
        expect(questions).toEqual([]);
        const taken = read.flatMap(({ cells }) => cells.filter(({ kind }) => kind === 'number')).length;
        expect(taken).toBe(rows.flat().filter((cell) => cell !== undefined).length);
      }),
      { numRuns: 2000, seed: 32 },
    );
  });
});

describe('what is asked', () => {
  it('once for a sign, with both readings', () => {
    expect(readPasted('0\t1,075\n2500\t1,135').questions).toEqual([
      { kind: 'sign', sign: ',', text: '1,075', thousands: 1075, decimals: 1.075, cells: 2 },
    ]);
    expect(readPasted('0\t1,075\n2500\t1,135', { commas: 'thousands' }).rows.map(({ cells }) => cells[1])).toMatchObject([
      { value: 1075 },
      { value: 1135 },
    ]);
  });
  it('for a blank that can be a sign of thousands or the edge of a column', () => {
    const { rows, questions } = readPasted('0 445 1 075\n2500 470 1 135');
    expect(questions).toEqual([{ kind: 'spaces', text: '0 445 1 075', rows: [1, 2] }]);
    expect(rows.flatMap(({ cells }) => cells.map(({ kind }) => kind))).not.toContain('number');
    expect(readPasted('0  445  1 075\n2500  470  1 135', { spaces: 'thousands' }).rows[0]?.cells).toMatchObject([
      { value: 0 },
      { value: 445 },
      { value: 1075 },
    ]);
  });
  it('for rows of another width, and cells that cannot be read', () => {
    expect(readPasted('0 10 20\n1 11 21\n2 12\n3 13 23').questions).toEqual([{ kind: 'width', rows: [3], usual: 3 }]);
    expect(readPasted('0\t445 1\n1\t446\t7').questions).toEqual([]);
    expect(readPasted('0\t10\t44S5\n1\t11\t446').questions).toEqual([{ kind: 'unreadable', row: 1, column: 3, text: '44S5' }]);
  });
});
