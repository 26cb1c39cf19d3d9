// The small formula reader: calls with their arguments, ranges of every kind, words; against another engine's tokenizer too.
import { describe, expect, it } from 'vitest';
import { areaOf, readFormula, tokensOf } from '../../addon/workbook/formulaReading';
import { sheetTemplates } from '../../sheets-templates';
import { readFormula as readByOther } from '../sheets/formulaText';

describe('calls', () => {
  it.each([
    ['=HOLD_BRIEF(B53,B55;"left, or (right)",,)', [['HOLD_BRIEF', 'B53', 'B55', '"left, or (right)"', '', '']]],
    [
      '=iferror( descent_plan (A1, sum(B1:B2) ; (C1,D1)) , "a ""b""")',
      [
        ['IFERROR', 'descent_plan (A1, sum(B1:B2) ; (C1,D1))', '"a ""b"""'],
        ['DESCENT_PLAN', 'A1', 'sum(B1:B2)', '(C1,D1)'],
        ['SUM', 'B1:B2'],
      ],
    ],
    ['=TODAY()', [['TODAY']]],
    ['=LOG10(A1)+A1', [['LOG10', 'A1']]],
    ['=(A1+B1)*2', []],
    ['=SUM(A1', [['SUM', 'A1']]],
    ['="NOW()"&A1', []],
    ['=_xlfn.T.TEST(A1)', [['_XLFN.T.TEST', 'A1']]],
  ])('%s', (formula, wanted) => expect(readFormula(formula).calls.map(({ name, args }) => [name, ...args])).toEqual(wanted));
});

describe('ranges and words', () => {
  it.each([
    ["='Trip sheet'!$B$3+Start!A6", ['Trip sheet|$B$3', 'Start|A6'], []],
    ["='Ann''s'!A1:b2", ["Ann's|A1:B2"], []],
    ['=SUM(B:C)+SUM(2:3)+SUM(A5:B)', ['|B:C', '|2:3', '|A5:B'], []],
    ['=IF(as_of>TRUE,A1x,ABCD1)', [], ['as_of', 'TRUE', 'A1x', 'ABCD1']],
    ["=#REF!+'Trip sheet'!#REF!", ['|#REF!', 'Trip sheet|#REF!'], []],
    ['="A1"&\'a"b\'!C1', ['a"b|C1'], []],
    ['=IFERROR(#DIV/0!+1.5E+3,#N/A)+2E5', [], []],
    ['=Blatt_ü!A1+Größe', ['Blatt_ü|A1'], ['Größe']],
  ])('%s', (formula, ranges, words) => {
    const { references, words: found } = readFormula(formula);
    expect(references.map(({ sheet, range }) => `${sheet ?? ''}|${range}`)).toEqual(ranges);
    expect(found).toEqual(words);
  });

  it('reach as far as they say', () => {
    expect(areaOf('$B$3')).toEqual({ row: 3, column: 2, lastRow: 3, lastColumn: 2 });
    expect(areaOf('C9:AA1')).toEqual({ row: 1, column: 3, lastRow: 9, lastColumn: 27 });
    expect(areaOf('B:B')).toEqual({ row: 1, column: 2, lastRow: Infinity, lastColumn: 2 });
    expect(areaOf('2:3')).toEqual({ row: 2, column: 1, lastRow: 3, lastColumn: Infinity });
    expect(areaOf('A5:B')).toEqual({ row: 5, column: 1, lastRow: Infinity, lastColumn: 2 });
    expect(areaOf('#REF!')).toBeUndefined();
  });
});

describe('every formula of the sheets', () => {
  const formulas = sheetTemplates.flatMap(({ cells }) => cells.flatMap(({ formula }) => (formula === undefined ? [] : [formula])));

  it('is read without a loss', () => {
    expect(formulas.length).toBeGreaterThan(150);
    for (const formula of formulas)
      expect(
        `=${tokensOf(formula)
          .map(({ text }) => text)
          .join('')}`,
      ).toBe(formula);
  });

  it('has the calls, ranges and words that another engine finds', () => {
    /** A12:A12 is A12. */
    const bare = (range: string): string => range.replace(/\$/g, '').replace(/^([^:]+):\1$/, '$1');
    for (const formula of formulas) {
      const [ours, other] = [readFormula(formula), readByOther(formula)];
      expect(ours.calls.map(({ name }) => name).sort()).toEqual([...other.calls].sort());
      expect(ours.references.map(({ sheet, range }) => `${sheet ?? ''}|${bare(range)}`)).toEqual(
        other.ranges.map(({ sheet, range }) => `${sheet ?? ''}|${range}`),
      );
      expect(ours.words.filter((word) => !/^(true|false)$/i.test(word))).toEqual(other.words);
    }
  });
});
