// The Excel file, read back cell by cell by a reader of its own and held against the workbook it was made from.
import type { IWorkbookData } from '@univerjs/core';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { openSaved } from '../../addon/local/engine/headless';
import { resourceIn, withResource } from '../../addon/local/engine/workbookData';
import { wordRule } from '../../addon/local/engine/tintRules';
import { resourceNames } from '../../addon/local/engine/workbookResources';
import { fileText } from '../../addon/local/xlsx/fileText';
import { permittedNames } from '../../addon/local/xlsx/sheetNames';
import { xlsxFile } from '../../addon/local/xlsx/xlsxFile';
import { readArea } from '../../addon/workbook/areas';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import { formats, styles, verdictTints, type CellLook } from '../../sheets-templates/look';
import { readXlsx, type ReadCell, type ReadSheet } from '../support/readXlsx';
import { ownSheet, savedAfter, templateOf } from './savedSheets';

const longName = 'My hangar: bills [2026] and what the club still owes';
const own = ownSheet(longName, {
  A1: 'plain text',
  A2: 12.5,
  A3: true,
  A4: { date: '2026-02-28' },
  B1: '=1/0',
  B2: '=NOPE(1)',
  B3: '=DATE(2026,3,4)',
  B4: '=SEQUENCE(3)',
  B5: '=PRESSURE_ALTITUDE("x",1013)',
  B10: '=SEQUENCE(2)',
  B11: 'in the way',
});
/** Texts that a file could take for something else. */
const odd = [
  '=DEMO-1',
  '+1',
  '007',
  '_x0041_',
  ' spaces ',
  'two\r\nlines\nand more',
  'a & b < c > "d"',
  '\u0001bell',
  'half \ud800 a pair, \ud83d\udee9 a whole one',
  '#N/A',
  'TRUE',
];
const tooLong = 'long '.repeat(8000);

const colour = (rgb: string): string => rgb.slice(1).toUpperCase();
const tintOf = (value: unknown): string | undefined => Object.entries(verdictTints).find(([word]) => word === value)?.[1];

describe('the Excel file of a workbook', () => {
  let data: IWorkbookData;
  let snapshot: WorkbookSnapshot;
  let said: string;
  let about: ReadSheet;
  let sheets: ReadSheet[];

  /** What the page would have: the workbook as saved, and its answers. */
  async function opened(saved: IWorkbookData): Promise<void> {
    const workbook = await openSaved(saved);
    data = { ...workbook.saved(), resources: saved.resources ?? [] };
    snapshot = workbook.snapshot();
    workbook.dispose();
  }
  async function made(changed: IWorkbookData = data, values: WorkbookSnapshot = snapshot): Promise<ReadSheet[]> {
    const file = await xlsxFile(changed, values);
    ({ said } = file);
    return readXlsx(file.bytes);
  }
  const linesOf = (sheet: ReadSheet | undefined): string => [...(sheet?.cells.values() ?? [])].map(({ value }) => value).join('\n');
  const of = (key: string): ReadSheet => {
    const found = sheets.find(({ name }) => name === templateOf(key).name);
    if (found === undefined) throw new Error(`the file has no sheet ${key}`);
    return found;
  };
  const cellOf = (sheet: ReadSheet, place: string): ReadCell => {
    const cell = sheet.cells.get(place);
    if (cell === undefined) throw new Error(`${sheet.name} has no ${place}`);
    return cell;
  };

  beforeAll(async () => {
    const saved = await savedAfter([...sheetTemplates, own, ownSheet('About this file', { A1: 'mine' })]);
    const id = Object.values(saved.sheets).find(({ name }) => name === longName)?.id ?? '';
    const cellData = { ...saved.sheets[id]?.cellData, 19: Object.fromEntries([...odd, tooLong].map((v, column) => [column, { v, t: 1 }])) };
    await opened({
      ...saved,
      sheets: { ...saved.sheets, [id]: { ...saved.sheets[id], cellData, rowData: { 2: { hd: 1 } }, columnData: { 3: { hd: 1, w: 140 } } } },
    });
    [about, ...sheets] = (await made()) as [ReadSheet, ...ReadSheet[]];
  });

  it('has every sheet in its order behind the one that says what the file is', () => {
    expect(sheets.map(({ name }) => name)).toEqual([...sheetTemplates.map(({ name }) => name), 'My hangar- bills -2026- and wha', 'About this file']);
    expect(about.name).toBe('About this file 2');
    const renamed = `The sheet "${longName}" is called "My hangar- bills -2026- and wha" here, since Excel does not take that name.`;
    expect(linesOf(about)).toContain(renamed);
    expect(said).toContain(renamed);
  });

  it('says the day, the caution, and that nothing in it calculates', () => {
    expect(linesOf(about)).toContain('Values as of 2026-11-25: the day "as_of"');
    expect(linesOf(about)).toContain('Planning aid only: the approved manual, official data, local rules and the pilot in command decide.');
    expect(linesOf(about)).toContain('No live formulas: every number, date and verdict is the value that stood in the workbook');
    expect([about, ...sheets].map(({ formulas }) => formulas)).toEqual(Array(sheets.length + 1).fill(0));
    for (const { foot } of [about, ...sheets]) expect(foot).toContain('Planning aid only. Rampwright, values as of 2026-11-25');
  });

  it('holds the value of every cell, and nothing where the workbook has nothing', () => {
    let compared = 0;
    for (const [index, { values, name }] of snapshot.sheets.entries()) {
      const cells = new Map(sheets[index]?.cells);
      for (const [row, line] of values.entries()) {
        for (const [column, value] of line.entries()) {
          const place = address(row + 1, column + 1);
          const wanted =
            typeof value === 'string'
              ? value
                  .slice(0, 32_767)
                  .replace(/\r\n/g, '\n')
                  .replace(/\ud800(?! *[\udc00-\udfff])/g, '\ufffd')
              : // A file knows one nought: a calm's component of −0 is read back as 0.
                value === 0
                ? 0
                : value;
          expect(cells.get(place)?.value ?? '', `${name} ${place}`).toStrictEqual(wanted);
          cells.delete(place);
          compared += value === '' ? 0 : 1;
        }
      }
      expect(
        [...cells].filter(([, { value }]) => value !== ''),
        name,
      ).toEqual([]);
    }
    expect(compared).toBeGreaterThan(1500);
  });

  it('keeps text as text, whatever it begins with, and cuts what no cell holds', () => {
    const mine = sheets[sheetTemplates.length] as ReadSheet;
    const written = odd.map((_, column) => cellOf(mine, address(20, column + 1)));
    expect(written.map(({ type }) => type)).toEqual(odd.map((text) => (text === '#N/A' ? 'e' : 's')));
    expect(cellOf(mine, address(20, odd.length + 1)).value).toBe(tooLong.slice(0, 32_767));
    expect(linesOf(about)).toContain(`A text was cut after 32767 characters, the most that a cell of Excel holds, in: "${longName}".`);
  });

  it('shows errors, those of newer programs as text', () => {
    const mine = sheets[sheetTemplates.length] as ReadSheet;
    expect(['B1', 'B2', 'B5', 'B10'].map((place) => [cellOf(mine, place).value, cellOf(mine, place).type])).toEqual([
      ['#DIV/0!', 'e'],
      ['#NAME?', 'e'],
      ['#ERROR!', 'inlineStr'],
      ['#SPILL!', 'inlineStr'],
    ]);
  });

  it('shows dates as dates', () => {
    const mine = sheets[sheetTemplates.length] as ReadSheet;
    const asOf =
      sheetTemplates
        .flatMap(({ names }) => names)
        .find(({ name }) => name === 'as_of')
        ?.range.replace(/\$/g, '') ?? '';
    expect(cellOf(of('start'), asOf)).toMatchObject({ value: 46_351, numberFormat: 'yyyy-mm-dd' });
    // The engine itself gives a typed DATE its format, yyyy/mm/dd.
    expect(cellOf(mine, 'B3')).toMatchObject({ value: 46_085, numberFormat: 'yyyy-mm-dd;@' });
  });

  it('has the look of every cell of ours: format, fill, letters, place, lines', () => {
    let compared = 0;
    for (const template of sheetTemplates) {
      const tinted = template.verdictRanges.map(readArea);
      for (const { row, column, style, format } of template.cells) {
        const read = cellOf(of(template.key), address(row, column));
        const look: CellLook = styles[style];
        const isTinted = tinted.some((area) => row >= area.row && row <= area.lastRow && column >= area.column && column <= area.lastColumn);
        const background = (isTinted ? tintOf(read.value) : undefined) ?? look.background;
        const borders = { box: ['top', 'right', 'bottom', 'left'], bottom: ['bottom'], none: [] }[look.border ?? 'none'];
        expect(read, `${template.name} ${address(row, column)}`).toMatchObject({
          numberFormat: format === undefined ? expect.any(String) : formats[format],
          fill: background === undefined ? undefined : colour(background),
          bold: look.bold === true,
          size: look.size,
          wrap: look.wrap === true,
          across: look.align,
          borders,
        });
        compared += background === look.background ? 0 : 1;
      }
    }
    expect(compared).toBeGreaterThan(40);
  });

  it('has the widths, heights, merges and frozen rows of every sheet of ours', () => {
    for (const template of sheetTemplates) {
      const sheet = of(template.key);
      expect(sheet.merges, template.name).toEqual(template.merges);
      expect(
        sheet.columns.map(({ width }) => Math.round(Number(width) * 7)),
        template.name,
      ).toEqual(template.columnWidths.slice(0, sheet.columns.length));
      for (const { r, ht } of sheet.rows) expect(Number(ht) / 0.75, `${template.name} row ${r}`).toBeCloseTo(template.rowHeights[Number(r)] ?? 21, 6);
      expect(Number(sheet.pane?.['ySplit'] ?? 0), template.name).toBe(template.frozenRows);
      expect(sheet.print, template.name).toMatchObject({
        orientation: template.print.landscape ? 'landscape' : 'portrait',
        fitToWidth: '1',
        fitToHeight: '0',
      });
    }
    const mine = sheets[sheetTemplates.length] as ReadSheet;
    expect(mine.rows.filter(({ hidden }) => hidden !== undefined).map(({ r }) => r)).toEqual(['3']);
    expect(mine.columns.filter(({ hidden }) => hidden !== undefined).map(({ min, width }) => [min, width])).toEqual([['4', '20']]);
  });

  it('has every note, and every link to a sheet', () => {
    for (const template of sheetTemplates) {
      const notes = template.cells.flatMap(({ row, column, note }) => (note === undefined ? [] : [[address(row, column), note]]));
      expect(of(template.key).notes, template.name).toEqual(Object.fromEntries(notes));
      const links = template.cells.flatMap(({ row, column, goesTo }) =>
        goesTo === undefined ? [] : [[address(row, column), `'${templateOf(goesTo).name}'!A1`]],
      );
      expect(of(template.key).links, template.name).toEqual(Object.fromEntries(links));
    }
    expect(Object.keys(of('start').links).length).toBeGreaterThan(3);
  });

  it('draws the envelope by straight lines through the numbers in the cells', () => {
    const [chart = '', ...others] = of('balance').charts;
    expect(others).toEqual([]);
    const references = [...chart.matchAll(/<c:f>'Weight and balance'!(.*?)<\/c:f>/g)].map(([, range = '']) => readArea(range.replace(/\$/g, '')));
    expect(references).toHaveLength(10);
    for (const { row, lastRow, column } of references)
      for (let at = row; at <= lastRow; at += 1) expect(typeof cellOf(of('balance'), address(at, column)).value).toBe('number');
    expect(chart.match(/<c:smooth val="0"\/>/g)).toHaveLength(5);
    expect(chart).not.toContain('<c:smooth val="1"/>');
  });

  it('leaves a chart out, and says so, where a text stands among its numbers', async () => {
    const balance = snapshot.sheets.find(({ name }) => name === templateOf('balance').name);
    const column = readArea(templateOf('balance').charts[0]?.series[0]?.x ?? '');
    const values = balance?.values.map((line, row) => line.map((value, at) => (row === column.row && at === column.column - 1 ? 'about 82' : value)));
    const changed = { ...snapshot, sheets: snapshot.sheets.map((sheet) => (sheet === balance ? { ...sheet, values: values ?? [] } : sheet)) };
    const read = await made(data, changed);
    expect(read.flatMap(({ charts }) => charts)).toEqual([]);
    expect(said).toContain('The chart "Loading in the envelope" is not in this file');
    expect(linesOf(read[0])).toContain('The chart "Loading in the envelope" is not in this file');
  });

  it('leaves out the chart that a copied sheet took along, which shows the cells of another sheet', async () => {
    const drawings = resourceIn<object>(data, resourceNames.drawings);
    const [from = '', to = ''] = [data.sheetOrder[sheetTemplates.findIndex(({ key }) => key === 'balance')], data.sheetOrder[sheetTemplates.length]];
    const read = await made(withResource(data, resourceNames.drawings, { ...drawings, [to]: drawings[from] }));
    expect(read.map(({ charts }) => charts.length)).toEqual([0, ...sheetTemplates.map(({ charts }) => charts.length), 0, 0]);
    expect(said).toContain('The chart "Loading in the envelope" is not in this file');
  });

  it('tints no word by a rule of the user, and none outside the ranges of verdicts', async () => {
    const mine = sheets[sheetTemplates.length] as ReadSheet;
    const id = data.sheetOrder[sheetTemplates.length] ?? '';
    const cellData = { ...data.sheets[id]?.cellData, 0: { 0: { v: 'OK', t: 1 } } };
    const rule = (word: string) => ({
      cfId: word,
      ranges: [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 }],
      rule: { type: 'highlightCell', subType: 'formula', value: word, style: { bg: { rgb: '#ff0000' } } },
    });
    const values = snapshot.sheets.map((sheet, index) => (index === sheetTemplates.length ? { ...sheet, values: [['OK' as const]] } : sheet));
    const fillWith = async (rules: object[]): Promise<string | undefined> => {
      const tints = { ...resourceIn<object[]>(data, resourceNames.tints), [id]: rules };
      const read = await made(
        withResource({ ...data, sheets: { ...data.sheets, [id]: { ...data.sheets[id], cellData } } }, resourceNames.tints, tints),
        { ...snapshot, sheets: values },
      );
      return read.find(({ name }) => name === mine.name)?.cells.get('A1')?.fill;
    };
    expect(await fillWith([])).toBeUndefined();
    expect(await fillWith([rule('=A1>2')])).toBeUndefined();
    expect(await fillWith([{ ...rule('NO'), rule: wordRule('NO', {}) }])).toBe(colour(verdictTints.OK));
  });

  it('says where no day is known', async () => {
    const read = await made(data, { ...snapshot, names: [] });
    expect(linesOf(read[0])).toContain('Values as of: not known');
    expect(read[1]?.foot).not.toContain('as of');
  });
});

describe('names and texts of the file', () => {
  it('gives every sheet a name that Excel takes, and leaves good names alone', () => {
    const good = (name: string): boolean =>
      name.length > 0 && name.length <= 31 && !/[[\]:*?/\\]/.test(name) && !/^'|'$/.test(name) && name.toLowerCase() !== 'history';
    const anyName = fc.oneof(
      fc.string({ maxLength: 45, unit: 'grapheme' }),
      fc.constantFrom('History', "'quoted'", 'a:b', 'a/b', 'A-B', 'sheet', 'Sheet', '[]', `${'x'.repeat(30)}'tail`),
    );
    fc.assert(
      fc.property(fc.uniqueArray(anyName, { maxLength: 12 }), (names) => {
        const permitted = permittedNames(names);
        expect(permitted).toHaveLength(names.length);
        expect(permitted.filter((name) => !good(name))).toEqual([]);
        expect(new Set(permitted.map((name) => name.toLowerCase())).size).toBe(names.length);
      }),
    );
    expect(permittedNames(['a/b', 'a-b', 'History', 'history', ''])).toEqual(['a-b 2', 'a-b', 'History sheet', 'history sheet 2', 'Sheet']);
  });

  it('keeps whatever the format could take for a code', () => {
    expect(fileText('_x0041_ and _X00ff_ and _x41_')).toBe('_x005F_x0041_ and _x005F_X00ff_ and _x41_');
    expect(fileText(`${'x'.repeat(32_766)}\ud83d\udee9`)).toBe('x'.repeat(32_766));
  });
});
