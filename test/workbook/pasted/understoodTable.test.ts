// Tables as manuals print them, pasted: what is understood, what is asked, which rows come of it, and what the briefs then read.
import { describe, expect, it } from 'vitest';
import { readTypedTable } from '../../../functions/manual/readTypedTable';
import { tableAnswer } from '../../../functions/manual/tableCheck';
import { figureOf } from '../../../core/manual/figure';
import { arranged } from '../../../core/manual/figure';
import { readFigure } from '../../../core/manual/readFigure';
import { readPasted, type PasteAnswers } from '../../../addon/workbook/pasted/readPasted';
import { shapeOf } from '../../../addon/workbook/pasted/tableShape';
import { answerTo, type TableAnswers } from '../../../addon/workbook/pasted/tableQuestions';
import { tableKinds, type TableKind } from '../../../addon/workbook/pasted/tableKinds';
import { understoodTable, type UnderstoodTable } from '../../../addon/workbook/pasted/understoodTable';

const [takeoff, , climb] = tableKinds as readonly [TableKind, TableKind, TableKind];

function understood(
  text: string,
  answers: TableAnswers = {},
  { paste = {}, kind = takeoff }: { paste?: PasteAnswers; kind?: TableKind } = {},
): UnderstoodTable {
  const { shape, problems } = shapeOf(readPasted(text, paste), text);
  if (shape === undefined) throw new Error(`no shape: ${problems.join(' ')}`);
  return understoodTable(shape, kind, answers, paste);
}
const openIds = ({ questions }: UnderstoodTable, answers: TableAnswers = {}): string[] =>
  questions.filter((question) => question.optional !== true && (answerTo(question, answers) ?? '') === '').map(({ id }) => id);
const problemsOf = (text: string, paste: PasteAnswers = {}): readonly string[] => shapeOf(readPasted(text, paste), text).problems;

describe('a long list with headings and units', () => {
  const text = 'weight\taltitude\ttemp\troll\tover 50 ft\nlb\tft\t\u00b0C\tft\tft\n2300\t0\t0\t860\t1500\n2300\t0\t10\t900\t1600';
  it('asks nothing: everything is said in it', () => {
    const table = understood(text);
    expect([openIds(table), table.problems]).toEqual([[], []]);
    expect(table.rows).toEqual([
      { weight: 'lb, up to', pressureAltitude: 'ft', temperature: '\u00b0C', groundRoll: 'ft', over50Feet: 'ft' },
      { weight: 2300, pressureAltitude: 0, temperature: 0, groundRoll: 860, over50Feet: 1500 },
      { weight: 2300, pressureAltitude: 0, temperature: 10, groundRoll: 900, over50Feet: 1600 },
    ]);
  });
  it('asks for every column without headings', () => {
    expect(openIds(understood('2300\t0\t0\t860\n2300\t0\t10\t900'))).toEqual(['column.1', 'column.2', 'column.3', 'column.4']);
  });
});

describe('a block with values across', () => {
  it('asks which input it is, what the figures are, their unit and the weight', () => {
    const text = '\t0\t10\n0\t860\t900\n1000\t960\t1000';
    const answers = { 'column.1': 'pressure altitude', across: 'temperature', 'figure.1.1': 'figure: ground roll' };
    expect(openIds(understood(text))).toEqual(['column.1', 'across', 'figure.1.1']);
    expect(openIds(understood(text, answers), answers)).toEqual(['held', 'unit.altitude', 'unit.figure', 'unit.temperature']);
  });
  it('of degrees with "deviation" above is not taken for temperatures', () => {
    expect(openIds(understood('Deviation from standard\n\t0 \u00b0C\t10 \u00b0C\n0\t860\t900\n1000\t960\t1000'))).toContain('across');
  });
  it('takes differences from standard, sea level, and two figures for each value', () => {
    const text = 'Alt  ISA -20  ISA  ISA +20\nSL  800  1500  850  1600  900  1700\n2000  900  1700  950  1800  1000  1900';
    const answers = {
      'figure.1.1': 'figure: ground roll',
      'figure.1.2': 'figure: over 50 ft',
      held: 'none',
      'unit.altitude': 'ft',
      'unit.figure': 'ft',
      'unit.temperature': '\u00b0C',
    };
    expect(understood(text, answers).rows?.slice(0, 3)).toEqual([
      { weight: 'none', pressureAltitude: 'ft', temperature: 'ISA deviation, \u00b0C', groundRoll: 'ft', over50Feet: 'ft' },
      { pressureAltitude: 0, temperature: -20, groundRoll: 800, over50Feet: 1500 },
      { pressureAltitude: 0, temperature: 0, groundRoll: 850, over50Feet: 1600 },
    ]);
  });
  it('with a weight above each block, in words, and blocks of two figures under rows of words of their own', () => {
    const block = (what: string) => `${what}, 1000 kg\n;0 \u00b0C;10 \u00b0C\n0;300;320\n1000;350;380`;
    const answers = {
      'column.1': 'density altitude',
      'unit.altitude': 'm',
      'unit.figure': 'm',
      note: 'level hard runway',
    };
    const { rows } = understood(`${block('Ground roll')}\n${block('Over 50 ft')}`, answers);
    expect(rows).toHaveLength(10);
    expect(rows?.[0]).toEqual({
      weight: 'kg, up to',
      pressureAltitude: 'density altitude, m',
      temperature: '\u00b0C',
      groundRoll: 'm',
      note: 'level hard runway',
    });
    expect(rows?.[5]).toMatchObject({ over50Feet: 'm' });
    expect(rows?.[6]).toEqual({ weight: 1000, pressureAltitude: 0, temperature: 0, over50Feet: 300 });
  });
  it('keeps what a mark says beside its figure, and holes blank', () => {
    const { rows } = understood(
      'altitude, ft;0 \u00b0C;10 \u00b0C\n0;700*;-\n1000;650;600',
      { held: 'none', 'unit.figure': 'ft/min', 'note.*': 'flaps up' },
      { kind: climb },
    );
    expect(rows).toEqual([
      { weight: 'none', pressureAltitude: 'ft', temperature: '\u00b0C', rateOfClimb: 'ft/min' },
      { pressureAltitude: 0, temperature: 0, rateOfClimb: 700, note: 'flaps up' },
      { pressureAltitude: 1000, temperature: 0, rateOfClimb: 650 },
      { pressureAltitude: 1000, temperature: 10, rateOfClimb: 600 },
    ]);
  });
  it('a weight in words that can be two numbers is asked for', () => {
    const answers = { 'column.1': 'pressure altitude', across: 'temperature', 'figure.1.1': 'figure: ground roll' };
    const text = 'Weight 2,300 lb\n;0;10\n0;860;900\n1000;960;1000';
    expect(openIds(understood(text, answers), answers)).toContain('held.1');
    const typed = { ...answers, 'held.1': '2,300', 'unit.altitude': 'ft', 'unit.temperature': '\u00b0C', 'unit.figure': 'ft' };
    expect(understood(text, typed)).toMatchObject({
      rows: undefined,
      problems: ['"2,300" can be read in several ways, or is no number. Type it with figures only, such as 2300.'],
    });
    expect(understood(text, { ...typed, 'held.1': '2300' }).rows?.[1]).toMatchObject({ weight: 2300 });
  });
});

describe('what does not fit is said and not taken', () => {
  it.each([
    [';0;10;20\n0;1;2\n1000;3;4', 'The values across the top (line 1) do not fit the 3 columns below them. Put a dash where one is blank.'],
    ['0;10;20\n0;1;2', ''],
    ['a line\nanother', 'No table is seen in this text: it needs lines of two numbers or more.'],
  ])('%j', (text, sentence) => expect(problemsOf(text).join(' ')).toContain(sentence));
  it('a value printed once for several lines', () => {
    const answers = { 'column.1': 'weight', 'column.2': 'pressure altitude', 'column.3': 'figure: ground roll', 'column.4': 'figure: over 50 ft' };
    expect(understood('2300;0;860;900\n;1000;960;1000\n;2000;990;1100', answers)).toMatchObject({
      rows: undefined,
      problems: [
        'The weight is blank in line 2. Where the manual prints a value once for several lines, write it on each of them.',
        'The weight is blank in line 3. Where the manual prints a value once for several lines, write it on each of them.',
      ],
    });
    expect(problemsOf('2300;0;860\n;1000;960')).toEqual([]);
  });
  it('units that differ within a column, sea level that is no altitude, two columns of one kind', () => {
    const answers = { 'column.1': 'pressure altitude', 'figure.1.1': 'figure: ground roll', across: 'temperature' };
    expect(understood(';0 \u00b0C;10 \u00b0F\n0;1;2\n1000;3;4', answers).problems).toEqual([
      'The temperature has numbers in several units: \u00b0C, \u00b0F.',
    ]);
    expect(understood(';0 \u00b0C;10 \u00b0C\n0;1;SL\n1000;3;4', answers).problems).toEqual(['The figures cannot be "SL".']);
    expect(understood(';0 \u00b0C;10 \u00b0C\n0;1;2\n1000;3;4', { ...answers, 'column.1': 'temperature' }).problems[0]).toBe(
      'The temperature is given by two columns.',
    );
  });
});

describe('the rows as the briefs read them', () => {
  const headers = ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft', '(4th across)', 'note'];
  const keys = ['weight', 'pressureAltitude', 'temperature', 'groundRoll', 'over50Feet', 'across4', 'note'];
  it('give every printed number at its point, converted from its own units', () => {
    const text = 'Weight 1000 kg\naltitude, m;0 \u00b0C;10 \u00b0C\n0;300;320\n1000;350;380';
    const { rows = [] } = understood(text, { 'figure.1.1': 'figure: over 50 ft', 'unit.figure': 'm' });
    const typed = readTypedTable([headers, ...rows.map((row) => keys.map((key) => row[key] ?? ''))]);
    expect(tableAnswer(typed, 'by-heading')).toEqual({
      verdict: 'OK',
      reasons: 'grid whole: 1 weight x 2 pressure altitude x 2 temperature; used below the least weight too',
    });
    const figure = arranged(figureOf(typed, 'over 50 ft', 'by-heading'));
    const at = { weight: 900, 'pressure altitude': 500, temperature: 5 } as const;
    // By hand: the mean of the four corners, at a weight below the table's.
    const inUnits = readFigure(figure, 'number', (input) => at[input.role as keyof typeof at]);
    expect([inUnits.value, figure.unit]).toEqual([337.5, 'm']);
  });
});
