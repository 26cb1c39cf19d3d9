// What holds for every sheet: formulas that both Google Sheets and the local grid read alike, no error on the demo
// data, few of our calls and short chains of them, and built-in formulas that a second engine answers alike.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { formulaCells, longestChain, ourCalls } from './callGraph';
import { isOurs, readFormula } from './formulaText';

/** Built-in functions that Google Sheets and the local engine both have and answer alike. */
const shared = new Set(
  `ABS AND AVERAGE CEILING CHOOSE COLUMNS COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE DAY EDATE EOMONTH EXACT FILTER FIND FLOOR IF IFERROR IFS INDEX INT
   ISBLANK ISERROR ISNA ISNUMBER ISTEXT LARGE LEFT LEN LET LOWER MATCH MAX MAXIFS MID MIN MINIFS MOD MONTH NA N NOT OFFSET OR PI RIGHT ROUND ROUNDDOWN ROUNDUP ROW ROWS
   SEARCH SMALL SUBSTITUTE SUM SUMIF SUMIFS SUMPRODUCT SWITCH T TEXT TEXTJOIN TODAY TRIM UNIQUE UPPER VALUE VLOOKUP XLOOKUP XMATCH YEAR ARRAYFORMULA ISFORMULA ADDRESS COLUMN`.split(
    /\s+/,
  ),
);

const errorValue = /^#[A-Z/0!?]+$/;
const cells = formulaCells(sheetTemplates);
const placed = cells.map((cell) => ({ place: `${cell.sheet} ${cell.cell}`, ...cell }));

describe('the reader of formulas', () => {
  it('finds calls, ranges, names, decimals and array literals', () => {
    const text = readFormula(`=IF(B2>=1.5,ISA_TEMPERATURE(TRUE_AIRSPEED(1,as_of,'My sheet'!$A$1:B9)),{1,2}&"x(1.5")`);
    expect(text).toMatchObject({
      calls: ['IF', 'ISA_TEMPERATURE', 'TRUE_AIRSPEED'],
      depthOfOurs: 2,
      words: ['as_of'],
      decimals: ['1.5'],
      hasArrayLiteral: true,
      unreadable: false,
    });
    expect(text.ranges).toEqual([
      { sheet: undefined, range: 'B2' },
      { sheet: 'My sheet', range: 'A1:B9' },
    ]);
  });
});

describe('the formulas of every sheet', () => {
  it('are there', () => expect(cells.length).toBeGreaterThan(20));

  it.each(placed)('$place is written for both hosts', ({ text, formula }) => {
    expect(text.unreadable, formula).toBe(false);
    expect(
      text.calls.filter((name) => !isOurs(name) && !shared.has(name)),
      formula,
    ).toEqual([]);
    expect(text.decimals, formula).toEqual([]);
    expect(text.hasArrayLiteral, formula).toBe(false);
  });
});

describe('the workbook on its demo data', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  it.each(placed)('$place is no error, nor any cell it fills', ({ sheet, cell, formula }) => {
    const values = workbook.values(sheet, workbook.filled(sheet, cell)).flat();
    expect(
      values.filter((value) => typeof value === 'string' && (errorValue.test(value) || /; got .*\.$/.test(value))),
      formula,
    ).toEqual([]);
  });

  // The platform runs 30 calls at a time; those of the Route come on top of them, and at most three.
  const onRoute = cells.filter(({ sheet }) => sheet === 'Route');
  it('asks for 32 of our calls or fewer, and for three on the Route', () => {
    const others = ourCalls(cells.filter(({ sheet }) => sheet !== 'Route'));
    expect(others.length, others.join('\n')).toBeLessThanOrEqual(32);
    expect(ourCalls(onRoute).length).toBeLessThanOrEqual(3);
  });

  it('has at most three of our calls in a chain, to the verdict of the trip and to any other cell', () => {
    const { calls, way } = longestChain(sheetTemplates, workbook);
    expect(calls, way.join(' > ')).toBeLessThanOrEqual(3);
    expect(longestChain(sheetTemplates, workbook, 'trip_verdict').calls).toBeGreaterThan(1);
  });

  it('has one of the four verdicts, and a verdict with a reason for each item', () => {
    const verdicts = ['OK', 'CHECK', 'NO', 'UNKNOWN'];
    expect(verdicts).toContain(workbook.named('trip_verdict')[0]?.[0]);
    const reasons = workbook.named('trip_reasons');
    expect(reasons.length).toBeGreaterThan(4);
    for (const [item, verdict, reason] of reasons) {
      expect(item).not.toBe('');
      expect(verdicts).toContain(verdict);
      expect(reason).not.toBe('');
    }
  });
});
