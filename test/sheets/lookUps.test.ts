// Look-ups in columns of answers, edited again and again: what is found must be where the answer stands now, never where it
// stood in an earlier round or under an earlier entry.
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { EngineModule } from '../../addon/local/engine/engineValues';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { patchEngine } from '../../addon/local/engine/patchEngine';
import { tinyTemplate } from '../support/tinyTemplate';
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';

const engine = createRequire(import.meta.url)('@univerjs/engine-formula') as EngineModule;
patchEngine(engine);

describe("the engine's notes of a column", () => {
  it('hold each row under its last value alone', () => {
    const note = fc.record({
      row: fc.nat({ max: 12 }),
      value: fc.constantFrom<string | number | null>('', null, 0, 1, 2, 2.5, 'OK', 'ok', 'NO'),
      cleared: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(note, { maxLength: 60 }), (notes) => {
        const index = engine.CELL_INVERTED_INDEX_CACHE;
        index.clear();
        const last = new Map<number, unknown>();
        for (const { row, value, cleared } of notes) {
          if (cleared && row === 0) {
            index.clear();
            last.clear();
          }
          index.set('book', 'sheet', 3, value, row, true);
          last.set(row, value === null || value === '' ? 0 : typeof value === 'string' ? value.toLowerCase() : value);
        }
        for (const asked of [0, 1, 2, 2.5, 'ok', 'no']) {
          const found = index.getCellPositions('book', 'sheet', 3, asked, [[0, 12]])?.matchingRows ?? [];
          const expected = [...last].filter(([, value]) => value === asked).map(([row]) => row);
          // A blank and a zero are found together, as the engine looks them up.
          expect([...found].sort((one, other) => one - other)).toEqual(expected.sort((one, other) => one - other));
        }
        index.clear();
      }),
      { numRuns: 500 },
    );
  });
});

describe('a sheet with look-ups over a spilled and a filled-down column', () => {
  const rows = 40;
  const cell = (row: number, column: number, content: Omit<TemplateCell, 'row' | 'column' | 'style'>): TemplateCell => ({
    row,
    column,
    style: 'computed',
    ...content,
  });
  const line = Array.from({ length: rows }, (_, index) => index + 1);
  const template: SheetTemplate = {
    ...tinyTemplate,
    name: 'Look-ups',
    names: [],
    charts: [],
    merges: [],
    validations: [],
    verdictRanges: [],
    cells: [
      ...line.map((row) => cell(row, 1, { value: row * 100 })),
      cell(1, 2, { formula: `=ISA_TEMPERATURE(A1:A${rows})` }),
      ...line.map((row) => cell(row, 3, { formula: `=A${row}*2` })),
      cell(1, 5, { value: 400 }),
      cell(2, 5, { formula: `=MATCH(E1,C1:C${rows},0)` }),
      cell(3, 5, { formula: `=MATCH(ISA_TEMPERATURE(E1),B1:B${rows},0)` }),
      cell(4, 5, { formula: `=COUNTIF(C1:C${rows},E1)` }),
      cell(5, 5, { formula: `=COUNTIF(B1:B${rows},ISA_TEMPERATURE(E1))` }),
    ],
  };
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless([template]);
  });
  afterAll(() => workbook.dispose());
  const found = () => workbook.values('Look-ups', 'E2:E5').flat();

  it('finds answers where they stand now', async () => {
    expect(found()).toEqual([2, 4, 1, 1]);
    await workbook.set('Look-ups', { A2: 900 });
    expect(found()).toEqual(['#N/A', 4, 0, 1]);
    await workbook.set('Look-ups', { A30: 200, A31: 400 });
    expect(found()).toEqual([30, 4, 1, 2]);
    await workbook.set('Look-ups', { A4: '', E1: 1800 });
    expect(found()).toEqual([2, 18, 2, 1]);
    await workbook.set('Look-ups', { A9: 5000, A2: 200, E1: 400 });
    expect(found()).toEqual([2, 31, 2, 1]);
  });
});
