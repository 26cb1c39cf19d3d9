// The headless workbook with a tiny sheet: what crosses between the engine and the registry, and how errors are kept.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { isoFromSerial, serialFromIso } from '../../addon/workbook/serialDates';
import { tinyTemplate } from '../support/tinyTemplate';
import { changedTemplates, everything, type Changes } from './changedTemplates';

const sheet = tinyTemplate.name;
const warm = 'ISA_TEMPERATURE: pressure_altitude_ft must be -5,000 to 65,617 feet; got "warm"';

describe('the headless workbook', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless([tinyTemplate]);
  });
  afterAll(() => workbook.dispose());
  const value = (cell: string) => workbook.value(sheet, cell);

  it('reads values as they were typed', () => {
    expect(value('B2')).toBe(5000);
    expect(value('B7')).toBe('0101');
    expect(value('B8')).toBe(true);
    expect(isoFromSerial(Number(value('B6')))).toBe('2026-01-22');
    expect(value('H60')).toBe('');
  });

  it('spills a mapped column, blank where the row is blank, the sentence where it is bad', () => {
    expect(workbook.values(sheet, 'B10:B13').flat()).toEqual([15, expect.closeTo(-4.812, 3), '', `${warm} (row 4).`]);
  });

  it('says which cells a formula fills', () => {
    expect(workbook.filled(sheet, 'B10')).toBe('B10:B13');
    expect(workbook.filled(sheet, 'B4')).toBe('B4');
  });

  it('gives a blank for a blank cell, and takes an omitted argument as left out', () => {
    expect(value('B17')).toBe('');
    expect(value('B18')).toBe(0);
  });

  it('shows #ERROR! for a call that throws and remembers why; IFERROR catches it', () => {
    expect(value('B15')).toBe('#ERROR!');
    expect(workbook.sentences(sheet, 'B15')).toEqual([`${warm}.`]);
    expect(value('B16')).toBe('caught');
    expect(workbook.sentences(sheet, 'B4')).toEqual([]);
  });

  it('keeps the sentence of the first of two calls in one cell, though the second succeeds', () => {
    expect(workbook.sentences(sheet, 'B25')).toEqual([`${warm}.`]);
  });

  it('words a wrong count of arguments and an error handed on', () => {
    expect(workbook.sentences(sheet, 'B19')).toEqual(['ISA_TEMPERATURE: takes 1 argument; got 2.']);
    expect(workbook.sentences(sheet, 'B24')[0]).toContain('got "#DIV/0!"');
  });

  it('knows names, and hands ARRAYFORMULA through', () => {
    expect(value('B23')).toBeCloseTo(5.094, 3);
    expect(workbook.named('level')).toEqual([[5000]]);
    expect(workbook.named('temperatures').length).toBe(4);
    expect(workbook.values(sheet, 'B20:B21').flat()).toEqual([0, 20000]);
  });

  it('tells a text identifier from a number, dates from numbers', async () => {
    await workbook.set(sheet, { E2: '=CYCLE_ID(B6)', E3: '=ISTEXT(E2)', E4: '=CYCLE_LIST(B6,2)', E7: '=CYCLE_NEXT(E4)', E8: '=CYCLE_DATE(B7)' });
    expect(value('E2')).toBe('2601');
    expect(value('E3')).toBe(true);
    expect(isoFromSerial(Number(value('E4')))).toBe('2026-01-22');
    expect(value('F4')).toBe('2601');
    expect(isoFromSerial(Number(value('E7')))).toBe('2026-02-19');
    expect(isoFromSerial(Number(value('E8')))).toBe('2001-01-25');
  });

  it('takes the empty text of a formula for text, whatever was calculated before it, and an empty cell for 0', async () => {
    const cells = {
      G2: '=IF(TRUE,"","")',
      G3: '=G2*2',
      G4: '=ISBLANK(G2)',
      G5: '=ISA_TEMPERATURE(A14)',
      G6: '=G5+1',
      G7: '=G20*2',
      G8: '=SUM(G2:G5)',
      G9: '=B12+1',
    };
    await workbook.set(sheet, cells);
    const column = () => workbook.values(sheet, 'G3:G9').flat();
    const right = ['#VALUE!', false, '', '#VALUE!', 0, '#VALUE!', '#VALUE!'];
    expect(column()).toEqual(right);
    await workbook.set(sheet, { G3: '=G2*2', G6: '=G5+1', G9: '=B12+1' });
    expect(column()).toEqual(right);
    await workbook.set(sheet, { A10: 0, G2: '=IF(TRUE,"","")' });
    expect(column()).toEqual(right);
  });

  it('recalculates after an edit, and forgets the sentence of a call that now succeeds', async () => {
    await workbook.set(sheet, { A13: 36089, B2: 0 });
    expect(value('B4')).toBeCloseTo(0, 6);
    expect(value('B5')).toBe('OK');
    expect(value('B13')).toBeCloseTo(-56.4995, 3);
    expect(workbook.sentences(sheet, 'B15')).toEqual([]);
  });

  it('names a sheet, a cell or a name that is not there', () => {
    expect(() => workbook.value('No sheet', 'A1')).toThrow('no sheet "No sheet"');
    expect(() => value('A0')).toThrow('not a cell reference');
    expect(() => workbook.named('nothing')).toThrow('no name "nothing"');
  });
});

describe('a spill that changes', () => {
  const first = {
    A30: 0,
    A31: 10000,
    A32: 20000,
    D30: '=ISA_TEMPERATURE(A30:A32)',
    E30: '=D31',
    E31: '=IFERROR(MATCH(-4.812,D30:D32,0),"none")',
    E32: '=SUM(D30:D32)',
    E33: '=INDEX(D30:D32,3)',
    E34: '=COUNTIF(D30:D32,"<0")',
    E35: '=IFERROR(E30+E33,"lost")',
    F30: '=D31:D32*2',
    G30: '=F31+1',
    G31: '=IFERROR(F30+1,"none")',
  };
  const changes: Record<string, Changes> = {
    'to an error': { D30: '=ISA_TEMPERATURE("warm")' },
    'to one value': { D30: '=ISA_TEMPERATURE(A31)' },
    'to fewer rows': { D30: '=ISA_TEMPERATURE(A30:A31)' },
    'to nothing': { D30: '' },
    'to rows of which one is blank': { A31: '' },
    'to rows of which one is bad': { A31: 'warm' },
    'to a blocked spill': { D31: 7 },
    'to rows that a second spill reads': { A31: 5000, A32: '' },
  };

  it.each(Object.entries(changes))('%s leaves nothing of the old one behind, and comes back whole', async (_, change) => {
    const templates = changedTemplates([tinyTemplate], sheet, first);
    const workbook = await openHeadless(templates);
    const before = everything(templates, workbook);
    await workbook.set(sheet, change);
    const changed = changedTemplates(templates, sheet, change);
    const fresh = await openHeadless(changed);
    expect(everything(changed, workbook)).toEqual(everything(changed, fresh));
    await workbook.set(
      sheet,
      Object.fromEntries(Object.keys(change).map((cell) => [cell, Object.entries(first).find(([key]) => key === cell)?.[1] ?? ''])),
    );
    expect(everything(templates, workbook)).toEqual(before);
    workbook.dispose();
    fresh.dispose();
  });
});

describe('a spill that another one blocks', () => {
  const cold = 20000;
  const first = {
    ...{ A40: 0, A41: 10000, A42: cold, A43: cold, A44: cold, A45: cold, B40: 15000 },
    ...{ D40: '=FILTER(A40:A45,A40:A45<B40)', D44: '=ISA_TEMPERATURE(A41:A42)', E44: '=SUM(D44:D46)' },
  };
  const grown = { A42: 500, A43: 1000, A44: 2000, A45: 3000 };
  const back = { A42: cold, A43: cold, A44: cold, A45: cold };

  it.each([
    ['with the one below calculated again', back],
    ['alone', { A43: cold, A44: cold, A45: cold }],
    ['because the one below is gone', { D44: '' }],
  ] as const)('comes back %s', async (_, change) => {
    const opened = changedTemplates([tinyTemplate], sheet, first);
    const workbook = await openHeadless(opened);
    await workbook.set(sheet, grown);
    expect(workbook.value(sheet, 'D40')).toBe('#SPILL!');
    const fresh = await openHeadless(changedTemplates(changedTemplates(opened, sheet, grown), sheet, change));
    await workbook.set(sheet, change);
    expect(everything(opened, workbook)).toEqual(everything(opened, fresh));
    expect(workbook.value(sheet, 'D40')).toBe(0);
    workbook.dispose();
    fresh.dispose();
  });
});

describe('serial numbers', () => {
  it('counts days from 30 December 1899', () => expect(serialFromIso('1900-01-01')).toBe(2));
});

describe('a formula that looks where another one worked something out', () => {
  it.each([
    ['row numbers', '=SUMPRODUCT((ROW(A50:A53)=51)*1)', 1],
    ['row numbers, all but one', '=SUMPRODUCT((ROW(A50:A53)<>51)*1)', 3],
    ['two columns joined with a text', '=SUMPRODUCT(((A50:B53&"")="x")*1)', 1],
  ])('finds what stands there: %s', async (_, formula, counted) => {
    // The engine noted what the first formula works out as if it stood in the cells below it, or in the first columns.
    const cells = {
      ...{ A50: 1, A51: 'x', A52: 7, A53: 7, B50: 2, B51: 3, B52: 4, B53: 5 },
      ...{
        F50: formula,
        F51: 7,
        F52: 8,
        F53: 51,
        G50: '=SUMPRODUCT((F51:F53=7)*1)',
        G51: '=SUMPRODUCT((F51:F53=51)*1)',
        G52: '=SUMPRODUCT((A50:A53=7)*1)',
      },
    };
    const workbook = await openHeadless(changedTemplates([tinyTemplate], sheet, cells));
    expect(workbook.values(sheet, 'F50:G52')).toEqual([
      [counted, 1],
      [7, 1],
      [8, 2],
    ]);
    workbook.dispose();
  });
});

describe('a text with ? or *', () => {
  it('is compared as it stands, and is a wildcard only where a criterion is given', async () => {
    const cells = {
      ...{ A50: 'Ana/Lee', A51: 'Ana?Lee', A52: 'Ana*', B50: 1, B51: 2, B52: 3, D50: 'ana?lee', D51: 'Ana*' },
      ...{
        F50: '=D50=A50',
        F51: '=D50=A51',
        F52: '=A50<>D51',
        F53: '=SUMPRODUCT((A50:A52=D50)*B50:B52)',
        G50: '=XLOOKUP(D50,A50:A52,B50:B52)',
        G51: '=XLOOKUP(D51,A50:A52,B50:B52,"none",0)',
        G52: '=XLOOKUP(D50,A50:A52,B50:B52,"none",2)',
        G53: '=COUNTIF(A50:A52,D51)',
      },
    };
    const workbook = await openHeadless(changedTemplates([tinyTemplate], sheet, cells));
    expect(workbook.values(sheet, 'F50:G53')).toEqual([
      [false, 2],
      [true, 3],
      [true, 1],
      [2, 3],
    ]);
    workbook.dispose();
  });
});
