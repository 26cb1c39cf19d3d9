// Tables as files of separated values: what is taken out comes back to the very same cells, and what another program made of it is asked about or
// refused, never guessed.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { headingsOf, listNow, manualTables } from '../../../addon/workbook/aircraft/aircraftLists';
import { wholeAircraft } from '../../../addon/workbook/aircraft/wholeAircraft';
import type { PasteAnswers } from '../../../addon/workbook/pasted/readPasted';
import { separatedText, type Separator } from '../../../addon/workbook/pasted/separatedText';
import { ownTable, tableFile, type OwnTable } from '../../../addon/workbook/pasted/tableFile';
import { tableKinds, type TableKind } from '../../../addon/workbook/pasted/tableKinds';
import type { WorkbookSnapshot } from '../../../addon/workbook/snapshot';
import { tableLook } from '../../../addon/panel/tableLook';
import { sheetTemplates } from '../../../sheets-templates';
import { demoSnapshot } from '../../browser/answeredDouble';

const [takeoff, landing] = tableKinds as readonly [TableKind, TableKind];
let demo: WorkbookSnapshot;
beforeAll(async () => {
  demo = await demoSnapshot();
});
const sheet = () => manualTables(demo, sheetTemplates);
const headings = (kind: TableKind) => headingsOf(listNow(sheet(), kind.list));
const textOf = (file: string, chosen?: Separator): string => {
  const read = separatedText(file, chosen);
  if (!('text' in read)) throw new Error(JSON.stringify(read));
  return read.text;
};
const back = (file: string, kind = takeoff, answers: PasteAnswers = {}): OwnTable => {
  const own = ownTable(textOf(file), kind, headings(kind), answers);
  if (own === undefined) throw new Error('not known as a table taken out');
  return own;
};

describe('a table taken out', () => {
  it.each(['Quillon Four', 'Brindle Two'].flatMap((name) => tableKinds.map((kind) => [name, kind.title, kind] as const)))(
    '%s, %s: comes back to the very same cells',
    (name, _, kind) => {
      const rows = wholeAircraft(demo, sheet(), name).lists[kind.list] ?? [];
      expect(rows.length).toBeGreaterThan(5);
      const file = tableFile(kind, headings(kind), rows);
      expect(back(file, kind)).toMatchObject({ rows, problems: [] });
      const text = textOf(file);
      const { plan } = tableLook(sheet(), { aircraft: name, kind, text, paste: {}, split: undefined, answers: {}, existing: 'replace' });
      expect(plan?.changes.map(({ after }) => after)).toEqual(plan?.changes.map(({ before }) => before));
    },
  );

  const word = fc.constantFrom('lb, up to', 'up to 2300 lb', 'ISA deviation, \u00b0C', 'at 10', '-', 'none', 'ft', 'curve', 'm');
  const note = fc.constantFrom('flaps up', 'says "short field"', 'wet; grass', 'a, b', "5 kt more, 'gusty'");
  const size = fc.oneof(
    fc.integer({ min: -50, max: 30_000 }),
    fc.integer({ min: -40_000, max: 40_000 }).map((thousandths) => thousandths / 1000),
    fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((value) => Math.abs(value) > 1e-6 || value === 0),
  );
  const keys = ['weight', 'pressureAltitude', 'temperature', 'groundRoll', 'over50Feet', 'across4'];
  const row = fc
    .tuple(
      fc.array(fc.option(fc.oneof({ weight: 4, arbitrary: size }, word), { nil: undefined }), { minLength: 6, maxLength: 6 }),
      fc.option(note, { nil: undefined }),
    )
    .map(([cells, said]) =>
      Object.fromEntries([
        ...cells.flatMap((cell, at) => (cell === undefined ? [] : [[keys[at] ?? '', Object.is(cell, -0) ? 0 : cell] as const])),
        ...(said === undefined ? [] : [['note', said] as const]),
      ]),
    );
  it('of any numbers and words comes back without a question', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), (rows) => {
        const own = back(tableFile(takeoff, headings(takeoff), rows));
        expect([own.problems, own.pasted.questions, own.rows]).toEqual([[], [], rows]);
      }),
      { numRuns: 300 },
    );
  });

  it('is written as RFC 4180 has it, and has no figure that a comma country takes for thousands', () => {
    const heads = new Map([
      ['weight', 'weight'],
      ['over50Feet', 'over 50 ft, m'],
      ['note', 'note'],
    ]);
    const rows = [{ weight: 'kg, up to' }, { weight: 1.067, over50Feet: 1250, note: 'says "a"' }, { weight: -0.00000012, over50Feet: 12.5 }];
    expect(tableFile(takeoff, heads, rows)).toBe(
      '\ufefftable,weight,"over 50 ft, m",note\r\n' +
        'Take-off distance,"kg, up to",,\r\n' +
        'Take-off distance,1.0670,1250,"says ""a"""\r\n' +
        'Take-off distance,-0.00000012,12.5,\r\n',
    );
  });

  it('saved again by a program with decimal commas: what can be two numbers is asked, and answered once for all', () => {
    const file = tableFile(takeoff, headings(takeoff), [
      { weight: 1.067, groundRoll: 860.5 },
      { weight: 2, groundRoll: 1250 },
    ]);
    const saved = file
      .replace(/,/g, ';')
      .replace(/1\.0670/, '1,067')
      .replace(/860\.5/, '860,5');
    expect(back(saved)).toMatchObject({
      rows: undefined,
      pasted: { questions: [{ kind: 'sign', sign: ',', text: '1,067', thousands: 1067, decimals: 1.067, cells: 1 }] },
    });
    expect(back(saved, takeoff, { commas: 'decimals' }).rows).toEqual([
      { weight: 1.067, groundRoll: 860.5 },
      { weight: 2, groundRoll: 1250 },
    ]);
  });
});

describe('a table taken out is refused', () => {
  const good = () => tableFile(takeoff, headings(takeoff), [{ weight: 2300, pressureAltitude: 0, groundRoll: 860 }]);
  it.each<readonly [string, (file: string) => string]>([
    ['The column "temperature" is missing.', (file) => file.replace(/^(.*?),temperature/, '$1').replace(/,0,,860/, ',0,860')],
    ['The column "slope" is none of this table in Manual tables.', (file) => file.replace('temperature', 'slope')],
    ['The column "temperature" is missing.', (file) => file.replace('temperature', 'slope')],
    ['The column "weight" stands there twice.', (file) => file.replace('temperature', 'weight')],
    ['There are no rows below the headings.', (file) => file.split('\r\n')[0] ?? ''],
    ['Line 2, column 5: "=860" is neither a number nor words that a cell can hold.', (file) => file.replace('860', '=860')],
    ['Line 2, column 5: "86%" is neither a number nor words that a cell can hold.', (file) => file.replace('860', '86%')],
    ['Line 2, column 5: "8e2" is neither a number nor words that a cell can hold.', (file) => file.replace('860', '8e2')],
    ['Line 2, column 5: "8/6/20" is neither a number nor words that a cell can hold.', (file) => file.replace('860', '8/6/20')],
  ])('%s', (sentence, spoil) => {
    const own = back(spoil(good()));
    expect(own.rows).toBeUndefined();
    expect(own.problems).toContain(sentence);
  });

  it('where another table is chosen, though its columns are the same', () => {
    expect(back(good(), landing)).toMatchObject({
      rows: undefined,
      problems: ['Line 2 is of "Take-off distance", and "Landing distance" is chosen above.'],
    });
  });
});

describe('a file of another program', () => {
  const lines = (separator: string) =>
    [
      ['weight', 'altitude', 'temp', 'roll'],
      ['lb', 'ft', '\u00b0C', 'ft'],
      ['2300', '0', '0', '860'],
      ['2300', '1000', '0', '940'],
    ].map((line) => line.join(separator));
  const look = (text: string, paste: PasteAnswers = {}) =>
    tableLook(sheet(), { aircraft: 'Fresh One', kind: takeoff, text, paste, split: undefined, answers: {}, existing: undefined });
  it.each<readonly [string, string]>([
    ['commas', lines(',').join('\n')],
    ['semicolons and CRLF', lines(';').join('\r\n')],
    ['tabs, a mark of UTF-8 and blank lines', `\ufeff${lines('\t').join('\r\n')}\r\n\r\n`],
    [
      'quotes',
      lines('","')
        .map((line) => `"${line}"`)
        .join('\r\n'),
    ],
  ])('by %s goes the way of a pasted table, and is shown whole', (_, file) => {
    const { understood, plan } = look(textOf(file));
    expect(understood?.problems).toEqual([]);
    expect(plan?.shown.slice(1).map((line) => line.slice(1, 5))).toEqual([
      ['lb, up to', 'ft', '\u00b0C', 'ft'],
      [2300, 0, 0, 860],
      [2300, 1000, 0, 940],
    ]);
  });

  it('with thousands or decimals in question is asked about, as a pasted one', () => {
    const text = textOf(lines(';').join('\n').replace('860', '1.860'));
    expect(look(text)).toMatchObject({ plan: undefined, pasted: { questions: [{ kind: 'sign', sign: '.', thousands: 1860, decimals: 1.86 }] } });
    expect(look(text, { points: 'thousands' }).plan?.shown[2]?.[4]).toBe(1860);
  });

  it('whose lines two signs part alike is asked what parts them', () => {
    const file = 'altitude;roll,x\n0;860,5\n1000;940,5';
    expect(separatedText(file)).toEqual({ choices: [';', ','] });
    expect(textOf(file, ';')).toBe('altitude\troll,x\n0\t860,5\n1000\t940,5');
  });

  it.each<readonly [string, string, string]>([
    ['empty', '', 'The file is empty.'],
    ['only its mark and blanks', '\ufeff \r\n', 'The file is empty.'],
    ['another encoding', 'altitude;10 \ufffdC\n0;860', 'The file is no text in UTF-8'],
    ['sixteen bits', 'a\u0000;\u0000b\u0000', 'The file is no text in UTF-8'],
    ['lines of several widths', 'a,b,c\n1,2\n1,2,3', 'No sign parts every line'],
    ['one column', 'a\n1\n2', 'No sign parts every line'],
    ['a quote that never ends', 'a,b\n"1,2\n3,4', 'No sign parts every line'],
    ['a cell of two lines', 'a,b\n"1\n2",3', 'Row 2 of the file has a cell of several lines'],
    ['a cell with a tab', 'a,b\n"1\t2",3', 'Row 2 of the file has a cell of several lines'],
    ['far too large', `a,b\n${'1,2\n'.repeat(300_000)}`, 'The file is larger than any table of a manual.'],
  ])('that is %s is refused', (_, file, sentence) => {
    const read = separatedText(file);
    expect('problem' in read ? read.problem : read).toContain(sentence);
  });
});
