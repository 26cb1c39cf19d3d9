// IF and IFERROR work out the branch that they take and no other, and answer as spreadsheets do (Google's documentation of both).
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { ownSheet } from '../support/headlessSnapshot';

const cases: Readonly<Record<string, readonly [formula: string, answer: string | number | boolean]>> = {
  D1: ['=IF(A1>0,"above","not above")', 'above'],
  D2: ['=IF(A1<0,"below","not below")', 'not below'],
  D3: ['=IF(A1<0,"below")', false],
  D4: ['=IF(A1,"filled","empty")', 'filled'],
  D5: ['=IF(A4,"filled","empty")', 'empty'],
  D6: ['=IF(A5>0,1,2)', '#N/A'],
  D7: ['=IF(A1>0,A2,A5)', 2],
  D8: ['=IF(A1>0,A5,A2)', '#N/A'],
  D9: ['=SUM(IF(A1>0,A1:A3,B1:B3))', 6],
  D10: ['=SUM(IF(A1<0,A1:A3,B1:B3))', 60],
  D11: ['=SUM(IF(A1:A3>1,A1:A3,B1:B3))', 15],
  D12: ['=IFERROR(A1,"none")', 1],
  D13: ['=IFERROR(A5,"none")', 'none'],
  D14: ['=IFERROR(1/0,A5)', '#N/A'],
  D15: ['=IFERROR("text",A5)', 'text'],
  D16: ['=SUM(IFERROR(A1:A5,100))', 106],
  D17: ['=IF(A1>0,IF(A2>2,"deep",IFERROR(A5,"deeper")),A5)', 'deeper'],
  D18: ['=IF(A1>0,"",A5)&IF(A1>1,A5,"end")', 'end'],
  D19: ['=IF("a"="b",1/0,IF(NOT(A1=1),1/0,A3))', 3],
};

describe('a branch', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    const values = { A1: 1, A2: 2, A3: 3, A5: '=NA()', B1: 10, B2: 20, B3: 30 };
    const formulas = Object.fromEntries(Object.entries(cases).map(([cell, [formula]]) => [cell, formula]));
    workbook = await openHeadless([
      ownSheet('Own', {
        ...values,
        ...formulas,
        F1: '=IF(TRUE,1,ISA_TEMPERATURE("x"))',
        F2: '=IFERROR(2,ISA_TEMPERATURE("x"))',
        F3: '=IFERROR(ISA_TEMPERATURE("x"),3)',
      }),
    ]);
  });
  afterAll(() => workbook.dispose());

  it.each(Object.entries(cases))('of %s: %s', (cell, [, answer]) => {
    expect(workbook.value('Own', cell)).toBe(answer);
  });

  it('that is not taken asks nothing of our functions', () => {
    expect(['F1', 'F2', 'F3'].map((cell) => workbook.value('Own', cell))).toEqual([1, 2, 3]);
    expect(['F1', 'F2', 'F3'].map((cell) => workbook.sentences('Own', cell).length)).toEqual([0, 0, 1]);
  });

  it('is taken when the condition turns, with what has changed in it meanwhile', async () => {
    await workbook.set('Own', { B1: 11 });
    await workbook.set('Own', { A1: -1 });
    const now = (cells: readonly string[]): unknown[] => cells.map((cell) => workbook.value('Own', cell));
    expect(now(['D1', 'D2', 'D9', 'D10', 'D12', 'D17'])).toEqual(['not above', 'below', 61, 4, -1, '#N/A']);
    await workbook.set('Own', { A1: 1, B1: 10 });
    expect(now(Object.keys(cases))).toEqual(Object.values(cases).map(([, answer]) => answer));
  });
});
