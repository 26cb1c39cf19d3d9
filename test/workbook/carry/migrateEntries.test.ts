// What was typed into older sheets arrives in the sheets of today, each entry in its own cell, or the update is refused.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { openHeadless } from '../../../addon/local/engine/headless';
import { chartBlocks } from '../../../addon/google/chartData';
import { migrateEntries, setsOf, type MigratedEntries } from '../../../addon/workbook/migrateEntries';
import { keysOf } from '../../../addon/workbook/keys';
import type { CellValue, WorkbookSnapshot } from '../../../addon/workbook/snapshot';
import { withEntries } from '../../../addon/workbook/withEntries';
import { sheetTemplates } from '../../../sheets-templates';
import { address } from '../../../sheets-templates/build';
import { fieldList, runwayList } from '../../../sheets-templates/fields/sheet';
import { sheetNames } from '../../../sheets-templates/places';
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import { tripRows } from '../../../sheets-templates/trip/rows';
import { workingRows } from '../../../sheets-templates/working/rows';
import { edited, typedOver } from '../../support/editedWorkbook';
import { headlessSnapshot } from '../../support/headlessSnapshot';
import { withCells } from '../../support/movedTemplates';
import { entryCell } from '../../support/tripCells';
import { carried, isEntry, isSingle, nameOf, selected, templateOf, uniqueBook } from '../../support/uniqueBook';
import { asCellValue } from '../../support/writtenSheet';
import { changedTemplates, everything } from '../../sheets/changedTemplates';

/** A template whose entry comes with a formula. */
const withFormula = (templates: readonly SheetTemplate[], key: SheetKey, row: number, column: number, formula: string): SheetTemplate[] =>
  withCells(templates, key, (cell) => (cell.row === row && cell.column === column ? { row, column, style: cell.style, formula } : cell)).map(
    (template) => (template.key === key ? { ...template, version: template.version - 1 } : template),
  );

let demo: WorkbookSnapshot;
let changed: readonly SheetTemplate[];
beforeAll(async () => {
  // Other entries than the invented ones, that can still be computed.
  const entries: readonly (readonly [SheetKey, Record<string, SheetTemplate['cells'][number]['value'] & (string | number | object)>])[] = [
    ['start', { A6: { date: '2026-11-26' } }],
    [
      'trip',
      {
        [`B${tripRows.pilot}`]: 'Nobody',
        [`B${tripRows.groundspeed}`]: 111,
        [`B${tripRows.minutesTyped}`]: 71,
        [`B${tripRows.windFrom}`]: 190,
        [`A${tripRows.tafs.first}`]: '',
      },
    ],
    ['card', { B7: 9500, D13: 6500, B54: 'SW', B56: '' }],
    ['balance', { C9: 151, C28: 20 }],
    ['ledger', { A11: 'Wren One', E65: 123.45, B37: { date: '2026-12-01' } }],
    ['currency', { A91: 'Brindle Two', C91: 7 }],
    ['fields', { [`E${fieldList.first}`]: 433, [`G${runwayList.first}`]: 'grass, wet' }],
    ['tables', { E22: 777 }],
  ];
  changed = entries.reduce<readonly SheetTemplate[]>(
    (templates, [key, cells]) => changedTemplates(templates, nameOf(key), cells as never),
    sheetTemplates,
  );
  const workbook = await openHeadless(changed);
  demo = headlessSnapshot(changed, workbook, selected);
  workbook.dispose();
});

describe('onto the same version', () => {
  it('gives back every entry of the computed workbook exactly, and nothing else', () => {
    const result = migrateEntries(demo, 'one', sheetTemplates);
    expect(result.refusals).toEqual([]);
    expect(result.notes).toEqual([]);
    const wanted = changed.flatMap(({ key, cells }) =>
      cells.filter(isEntry).flatMap(({ row, column, value, formula }) => {
        const content = formula ?? (value === undefined ? '' : asCellValue(value));
        return content === '' ? [] : [[`${key} ${address(row, column)}`, content] as const];
      }),
    );
    expect(new Map([...carried(result)].sort())).toEqual(new Map([...wanted].sort()));
    expect(wanted.length).toBeGreaterThan(2500);
  });

  it('computes the same again everywhere', async () => {
    const { entries } = migrateEntries(demo, 'one', sheetTemplates);
    const filled = sheetTemplates.map((template) => withEntries(template, entries.find(({ key }) => key === template.key)?.cells ?? []));
    const [again, before] = [await openHeadless(filled), await openHeadless(changed)];
    expect(everything(sheetTemplates, again)).toEqual(everything(sheetTemplates, before));
    again.dispose();
    before.dispose();
  });

  it('gives back an entry of its own in each cell, blank ones blank', () => {
    const { book, filled } = uniqueBook();
    const result = migrateEntries(book, 'one', sheetTemplates);
    expect(result.refusals).toEqual([]);
    expect(carried(result)).toEqual(filled);
  });

  it('carries what stands below the tint of the flights and of the tables', () => {
    const rows = [
      { row: 400, column: 2, content: 46000 },
      { row: 1090, column: 1, content: 'Quillon Four' },
      { row: 1090, column: 15, content: 'a remark' },
    ];
    const book = typedOver(typedOver(demo, nameOf('currency'), rows), nameOf('tables'), [{ row: 320, column: 19, content: 1234 }]);
    const { entries, refusals } = migrateEntries(book, 'one', sheetTemplates);
    expect(refusals).toEqual([]);
    expect(entries.find(({ key }) => key === 'currency')?.cells).toEqual(expect.arrayContaining(rows));
    expect(entries.find(({ key }) => key === 'tables')?.cells).toContainEqual({ row: 320, column: 19, content: 1234 });
    for (const { key, cells } of entries) expect(() => withEntries(templateOf(key), cells)).not.toThrow();
  });

  it('passes over what a host lays beside a sheet for its chart', () => {
    const balance = templateOf('balance');
    const cells = chartBlocks(balance)
      .flatMap((block) => block.cells)
      .map(({ row, column, value, formula }) => ({ row, column, content: formula ?? (value === undefined ? '' : asCellValue(value)) }));
    const { refusals, notes } = migrateEntries(typedOver(demo, balance.name, cells), 'one', sheetTemplates);
    expect([refusals, notes]).toEqual([[], []]);
  });
});

describe('out of sheets that the user changed', () => {
  it.each(sheetTemplates.map(({ name }) => name))(
    'finds every entry of %s after rows were inserted anywhere',
    (sheet) => {
      const all = uniqueBook();
      const template = sheetTemplates.find(({ name }) => name === sheet) ?? templateOf('start');
      // The others are of another set, and are not carried.
      const book = {
        ...all.book,
        sheets: all.book.sheets.map((one) => (one.name === sheet || one.mark === undefined ? one : { ...one, mark: { ...one.mark, set: 'two' } })),
      };
      const filled = new Map([...all.filled].filter(([place]) => place.startsWith(`${template.key} `)));
      const single = new Set(
        template.cells.filter((cell) => isSingle(template, cell)).map((cell) => `${template.key} ${address(cell.row, cell.column)}`),
      );
      const singles = [...filled].filter(([place]) => single.has(place));
      const insertion = fc.record({ at: fc.integer({ min: 1, max: Math.min(template.rows, 330) }), inserted: fc.integer({ min: 1, max: 3 }) });
      let whole = 0;
      fc.assert(
        fc.property(fc.array(insertion, { minLength: 1, maxLength: 3 }), (insertions) => {
          const moved = insertions.reduce<WorkbookSnapshot>((before, one) => edited(before, { sheet, lines: 'row', ...one }), book);
          const result = migrateEntries(moved, 'one', sheetTemplates);
          if (result.refusals.length > 0) return result.refusals.every((refusal) => refusal.includes(`"${sheet}": the list under`));
          whole += 1;
          const found = carried(result);
          expect([...found.values()].sort()).toEqual([...filled.values()].sort());
          for (const [place, content] of singles) expect([place, found.get(place)]).toEqual([place, content]);
          return true;
        }),
        { numRuns: 12 },
      );
      // Not all of them by being refused.
      expect(whole).toBeGreaterThan(3);
    },
    120_000,
  );

  it('finds every entry behind an inserted column', () => {
    const { book, filled } = uniqueBook();
    for (const [sheet, at] of [
      ['Trip sheet', 2],
      ['Descent and hold card', 5],
      ['Data ledger', 4],
      ['Manual tables', 8],
    ] as const) {
      const result = migrateEntries(edited(book, { sheet, lines: 'column', at, inserted: 1 }), 'one', sheetTemplates);
      expect([sheet, result.refusals]).toEqual([sheet, []]);
      expect([sheet, carried(result)]).toEqual([sheet, filled]);
    }
  });

  it.each(sheetTemplates.map(({ name, rows }) => [name, rows] as const))(
    'takes no answer of %s for something of the user, wherever a row is put in',
    (sheet, rows) => {
      for (let at = 2; at <= Math.min(rows, 120); at += 17) {
        // A spreadsheet spills the answer anew; the edit of this test would leave its last line, a "verdict" like that of other answers, apart.
        if (sheet === sheetNames.working && at === workingRows.climbBrief.last) continue;
        const { notes, refusals } = migrateEntries(edited(demo, { sheet, lines: 'row', at, inserted: 1 }), 'one', sheetTemplates);
        expect([at, notes, refusals.filter((one) => !one.includes('the list under'))]).toEqual([at, [], []]);
      }
    },
    60_000,
  );

  it('refuses sheets that lost their keys, or have them twice', () => {
    const { book } = uniqueBook();
    const card = templateOf('card');
    const keys = keysOf(card)?.cell ?? { row: 1, column: 1, text: '' };
    const lost = typedOver(book, card.name, [{ ...keys, content: '' }]);
    const twice = typedOver(book, card.name, [{ row: 2, column: keys.column, content: keys.text }]);
    for (const one of [lost, twice])
      expect(migrateEntries(one, 'one', sheetTemplates)).toMatchObject({
        entries: [],
        refusals: [expect.stringMatching(/^"Descent and hold card" has lost its keys/)],
      });
  });

  it('refuses a list that has outgrown its room, but not its blank rows', () => {
    const { book } = uniqueBook();
    const grown = edited(book, { sheet: nameOf('card'), lines: 'row', at: 14, inserted: 2 });
    expect(migrateEntries(grown, 'one', sheetTemplates).refusals).toEqual([]);
    const filled = typedOver(grown, nameOf('card'), [{ row: 21, column: 2, content: 99 }]);
    expect(migrateEntries(filled, 'one', sheetTemplates)).toMatchObject({
      entries: [],
      refusals: [
        `"Descent and hold card": the list under "Crossing restrictions" has 10 rows, and today's sheet has room for 9. Shorten it, then ask again.`,
      ],
    });
  });

  it('finds an entry whose label the user changed, and tells of texts and formulas of the user', () => {
    const { book, filled } = uniqueBook();
    const renamed = typedOver(book, nameOf('card'), [{ row: 7, column: 1, content: 'level now' }]);
    expect(carried(migrateEntries(renamed, 'one', sheetTemplates))).toEqual(filled);
    const written = typedOver(demo, nameOf('card'), [
      { row: 3, column: 12, content: 'ask Bo' },
      { row: 4, column: 12, content: '=B7*2' },
    ]);
    const { notes, refusals } = migrateEntries(written, 'one', sheetTemplates);
    expect(refusals).toEqual([]);
    expect(notes).toEqual([
      `These texts of "Descent and hold card" have no place in today's sheet and stay in the older one: L3 "ask Bo".`,
      `These formulas of "Descent and hold card" are not in today's sheet and stay in the older one: L4 =B7*2.`,
    ]);
  });

  it.each(['=RANDARRAY(3)', '=SEQUENCE(3)'])('takes no answer of %s for an entry of the user', (formula) => {
    const written = typedOver(demo, nameOf('card'), [
      { row: 4, column: 12, content: formula },
      { row: 5, column: 12, content: 0.2 },
      { row: 6, column: 12, content: 0.3 },
    ]);
    expect(migrateEntries(written, 'one', sheetTemplates)).toMatchObject({
      refusals: [],
      notes: [`These formulas of "Descent and hold card" are not in today's sheet and stay in the older one: L4 ${formula}.`],
    });
  });

  it.each([
    ['a number beside the sheet', 'trip', { row: 6, column: 12 }, 42],
    ['a number typed over a formula', 'trip', { row: tripRows.timeEnRoute, column: 2 }, 31],
    ['a date as text', 'ledger', { row: 30, column: 16 }, '2026-11-30'],
    ['a yes or no', 'start', { row: 30, column: 4 }, true],
    ['a text in the column of entries', 'card', { row: 21, column: 2 }, 'FL'],
  ] as const)('refuses %s that has no place', (_what, key, place, content) => {
    const { refusals, entries } = migrateEntries(typedOver(demo, nameOf(key), [{ ...place, content }]), 'one', sheetTemplates);
    expect(entries).toEqual([]);
    expect(refusals).toEqual([
      `"${nameOf(key)}" holds what has no place in today's sheet: ${address(place.row, place.column)} ${JSON.stringify(content)}. Note it down and empty the cell, then ask again.`,
    ]);
  });
});

describe('formulas', () => {
  const inEntry = (content: string, place = { row: 7, column: 2 }): MigratedEntries =>
    migrateEntries(typedOver(demo, nameOf('card'), [{ ...place, content }]), 'one', sheetTemplates);
  const onCard = (result: MigratedEntries, cell = 'B7'): CellValue | undefined => carried(result).get(`card ${cell}`);

  it.each(['=TODAY()', '=12*3', '=ROUND(9999/2,TRUE)', '=DATE(2026;11;30)'])('%s in an entry stays, for it reads no cell', (formula) => {
    const result = inEntry(formula);
    expect([result.notes, onCard(result)]).toEqual([[], formula]);
  });

  it('that read cells leave their values, and are told', () => {
    const book = typedOver(demo, nameOf('card'), [{ row: 7, column: 2, content: '=B57+2000' }]);
    const shown = {
      ...book,
      sheets: book.sheets.map((sheet) =>
        sheet.name === nameOf('card')
          ? { ...sheet, values: sheet.values.map((line, row) => (row === 6 ? line.map((value, column) => (column === 1 ? 9000 : value)) : line)) }
          : sheet,
      ),
    };
    const result = migrateEntries(shown, 'one', sheetTemplates);
    expect(onCard(result)).toBe(9000);
    expect(result.notes).toEqual([
      'B7 of "Descent and hold card" held the formula =B57+2000, which reads other cells; its value 9000 is in today\'s sheet, without the formula.',
    ]);
    expect(inEntry('=as_of').notes.join()).toContain('held the formula =as_of');
  });

  it("that the sheet itself has in an entry follow the document's names and separators; another in their place is told", () => {
    const renamed = {
      ...demo,
      sheets: demo.sheets.map((sheet) => ({
        ...sheet,
        name: `${sheet.name} 2`,
        formulas: sheet.formulas.map((cell) => ({ ...cell, text: cell.text.replace(/'([^']+)'!/g, "'$1 2'!").replace(/,/g, ';') })),
      })),
    };
    const found = carried(migrateEntries(renamed, 'one', sheetTemplates));
    const lastDay = entryCell('ledger', 'lastDay');
    expect(found.get(`ledger ${lastDay}`)).toBe(`='Trip sheet 2'!$B$${tripRows.lastDay}`);
    const own = migrateEntries(
      typedOver(demo, nameOf('ledger'), [{ row: Number(lastDay.slice(1)), column: 2, content: '=B37+1' }]),
      'one',
      sheetTemplates,
    );
    expect(carried(own).get(`ledger ${lastDay}`)).toBe(`='Trip sheet'!$B$${tripRows.lastDay}`);
    expect(own.notes).toEqual([`${lastDay} of "Data ledger" held the formula =B37+1; the sheet's own formula of today is in its place.`]);
  });

  it("that call or compute with the document's separator are written with it", () => {
    const added = withFormula(sheetTemplates, 'card', 7, 2, '=IF(ISNUMBER(D13),ROUND(D13,0),"")');
    const semicolons = {
      ...demo,
      sheets: demo.sheets.map((sheet) => ({
        ...sheet,
        formulas: [
          ...sheet.formulas.map((cell) => ({ ...cell, text: cell.text.replace(/,/g, ';') })),
          ...(sheet.name === nameOf('card') ? [{ row: 7, column: 2, text: '=IF(ISNUMBER(D13);ROUND(D13;0);"")' }] : []),
        ],
      })),
    };
    expect(carried(migrateEntries(semicolons, 'one', added)).get('card B7')).toBe('=IF(ISNUMBER(D13);ROUND(D13;0);"")');
  });

  it('of the user on other sheets that read these are told', () => {
    const own = {
      name: 'Mine',
      values: [[1]],
      formulas: [
        { row: 1, column: 1, text: "='Trip sheet'!B3" },
        { row: 2, column: 1, text: '=as_of' },
        { row: 3, column: 2, text: '=SUM(A1:A2)&"\'Trip sheet\'!B3"' },
      ],
    };
    expect(migrateEntries({ ...demo, sheets: [...demo.sheets, own] }, 'one', sheetTemplates).notes).toEqual([
      'These formulas of yours read the sheets as they were, and will go on reading the older ones: A1 of "Mine". Set them to the new sheets afterwards.',
    ]);
  });

  it('a text that begins with = is refused, an error is told', () => {
    const book = (content: string): WorkbookSnapshot => ({
      ...demo,
      sheets: demo.sheets.map((sheet) =>
        sheet.name === nameOf('trip')
          ? { ...sheet, values: sheet.values.map((line, row) => (row === tripRows.pilot - 1 ? ['pilot', content, ...line.slice(2)] : line)) }
          : sheet,
      ),
    });
    expect(migrateEntries(book('=Bo'), 'one', sheetTemplates).refusals.join()).toContain(
      `B${tripRows.pilot} of "Trip sheet" holds the text =Bo, which would become a formula.`,
    );
    expect(migrateEntries(book('#N/A'), 'one', sheetTemplates).notes).toEqual([
      `B${tripRows.pilot} of "Trip sheet" shows #N/A; it is blank in today's sheet.`,
    ]);
  });
});

describe('sets', () => {
  const marked = (
    set: (sheet: WorkbookSnapshot['sheets'][number]) => Partial<{ set: string; version: number; key: SheetKey }>,
  ): WorkbookSnapshot => ({
    ...demo,
    sheets: demo.sheets.map((sheet) => (sheet.mark === undefined ? sheet : { ...sheet, mark: { ...sheet.mark, ...set(sheet) } })),
  });

  it('are listed with their versions', () => {
    const two = marked(({ name }) => (name === 'Currency log' ? { set: 'two', version: 0 } : {}));
    expect(setsOf(two, sheetTemplates).map(({ set, sheets, outOfDate }) => [set, sheets.length, outOfDate])).toEqual([
      ['one', sheetTemplates.length - 1, false],
      ['two', 1, true],
    ]);
    expect(setsOf(two, sheetTemplates)[1]?.sheets).toEqual([
      { name: 'Currency log', key: 'currency', version: 0, current: templateOf('currency').version },
    ]);
    expect(migrateEntries(two, 'two', sheetTemplates).entries.map(({ key }) => key)).toEqual(['currency']);
  });

  it('that cannot be carried are refused in a sentence', () => {
    expect(migrateEntries(demo, 'none', sheetTemplates).refusals).toEqual(['These sheets are not in this document any more.']);
    expect(
      migrateEntries(
        marked(({ name }) => (name === 'Start' ? { version: 99 } : {})),
        'one',
        sheetTemplates,
      ).refusals.join(),
    ).toContain('"Start" is of version 99, newer than this add-on');
    expect(
      migrateEntries(
        demo,
        'one',
        sheetTemplates.filter(({ key }) => key !== 'card'),
      ).refusals.join(),
    ).toContain('no sheet of the kind of "Descent and hold card"');
    expect(
      migrateEntries(
        marked(({ name }) => (name === 'Trip sheet' ? { key: 'card' } : {})),
        'one',
        sheetTemplates,
      ).refusals.join(),
    ).toContain('are two of one kind');
  });
});
