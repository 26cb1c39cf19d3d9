// Formulas rewritten for a document: separators, sheets and names, and nothing inside a string.
import { describe, expect, it } from 'vitest';
import { referencesOf, rewriteFormula } from '../../addon/workbook/formulaText';

const names = {
  sheets: new Map([
    ['Trip sheet', 'Trip sheet 2'],
    ['Start', 'Start 3'],
    ["Ann's", "Ann's 2"],
  ]),
  ranges: new Map([['as_of', 'as_of_2']]),
};

describe('rewriteFormula', () => {
  it.each([
    ['=SUM(A1,B2)', '=SUM(A1;B2)', 'commas between arguments'],
    ['=IF(A1="a, b","it said ""no, thanks""",C1)', '=IF(A1="a, b";"it said ""no, thanks""";C1)', 'commas in strings stay'],
    ["='Trip sheet'!$B$3+1", "='Trip sheet 2'!$B$3+1", 'a quoted sheet'],
    ['=Start!A6', "='Start 3'!A6", 'a sheet without quotes'],
    ["='Ann''s'!A1", "='Ann''s 2'!A1", 'a quote in a name'],
    ["='Other, sheet'!A1", "='Other, sheet'!A1", 'a sheet that keeps its name, comma and all'],
    ['=IF(as_of>B1,as_of,"as_of")', '=IF(as_of_2>B1;as_of_2;"as_of")', 'a name of a range, not the same word in a string'],
    ['=as_of(1,2)', '=as_of(1;2)', 'a function is no range name'],
    ['=last_as_of+as_of_day', '=last_as_of+as_of_day', 'only whole words'],
    ['="\'Trip sheet\'!A1"', '="\'Trip sheet\'!A1"', 'a reference quoted as text'],
    ["='Trip sheet'!A1&\"'\"&'Trip sheet'!B1", "='Trip sheet 2'!A1&\"'\"&'Trip sheet 2'!B1", 'an apostrophe in a string'],
    ['=Größe!A1+Straße_2!B2', "='Größe'!A1+'Straße_2'!B2", 'names beyond a to z'],
    ['=#REF!+#DIV/0!+Start!A1', "=#REF!+#DIV/0!+'Start 3'!A1", 'an error is no sheet'],
    ['=LOG10(as_of)+1.5E+3+$A$1:B2', '=LOG10(as_of_2)+1.5E+3+$A$1:B2', 'functions, numbers and cells'],
  ])('%s', (formula, wanted) => expect(rewriteFormula(formula, names)).toBe(wanted));

  it('keeps commas where the host takes them', () => {
    expect(rewriteFormula("=IF(Start!A1,as_of,'Trip sheet'!B1)", names, ',')).toBe("=IF('Start 3'!A1,as_of_2,'Trip sheet 2'!B1)");
  });
});

describe('referencesOf', () => {
  it('finds sheets, and words that may be names', () => {
    const { sheets, words } = referencesOf("=IF(as_of>'Trip sheet'!B3,Start!A1,\"'No sheet'!A1\")");
    expect([...sheets].sort()).toEqual(['Start', 'Trip sheet']);
    expect(words.has('as_of')).toBe(true);
    expect(words.has('IF')).toBe(false);
  });
});
