// Sheets may be called almost anything. Whatever the name, what refers to the sheet is read and rewritten as what it is: as the grid writes
// references, as Google Sheets does, and through a formula with everything around it.
import { createRequire } from 'node:module';
import type * as EngineNamespace from '@univerjs/engine-formula';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quoteSheetName, readSheetReference, splitSheetReference } from '../../addon/local/engine/a1';
import { readableSheetName } from '../../addon/local/engine/sheetNaming';
import { readFormula, tokensOf } from '../../addon/workbook/formulaReading';
import { quotedSheet, referencesOf, rewriteFormula } from '../../addon/workbook/formulaText';

const { serializeRangeWithSheet } = createRequire(import.meta.url)('@univerjs/engine-formula') as typeof EngineNamespace;
const corner = { startRow: 3, startColumn: 1, endRow: 8, endColumn: 2 };

const letter = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...'\'"[]()!#$%&*+,-./:;<=>?@\\^_`{|}~ ') },
  { weight: 2, arbitrary: fc.constantFrom(...'AaBb19é日\ud83d\udee9（）￥。“\u00a0') },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 1 }) },
);
const sheetName = fc.array(letter, { minLength: 1, maxLength: 12 }).map((letters) => letters.join(''));
/** Formulas do not tell capitals apart, nor do they hold lines. */
const inOneLine = sheetName.filter((name) => name.trim() !== '' && !/[\r\n\u2028\u2029]/.test(name));

function expectRead(reference: string, name: string): void {
  const formula = `=IF(A1>0,SUM(${reference})*2,"it's 'not'!here")&as_of`;
  expect(readFormula(formula).references.map(({ sheet, range }) => [sheet, range])).toEqual([
    [undefined, 'A1'],
    [name, 'B4:C9'],
  ]);
  expect(
    tokensOf(formula)
      .map(({ text }) => text)
      .join(''),
  ).toBe(formula.slice(1));
  expect([...referencesOf(formula).sheets]).toEqual([name]);
  expect(referencesOf(formula).words.has('as_of')).toBe(true);
  const moved = rewriteFormula(formula, { sheets: new Map([[name, "An'other [one]"]]), ranges: new Map([['as_of', 'as_of_2']]) }, ',');
  expect(moved).toBe(`=IF(A1>0,SUM('An''other [one]'!B4:C9)*2,"it's 'not'!here")&as_of_2`);
}

describe('a sheet of any name', () => {
  it('is found where a host writes it with quotation marks, brackets and all', () => {
    fc.assert(
      fc.property(inOneLine, (name) => expectRead(`${quotedSheet(name)}!B4:C9`, name)),
      { numRuns: 2000 },
    );
  });

  it('is found where the grid writes it, with quotation marks or without', () => {
    fc.assert(
      fc.property(inOneLine, (given) => {
        const name = readableSheetName(given, []);
        expectRead(serializeRangeWithSheet(name, corner), name);
      }),
      { numRuns: 2000 },
    );
  });

  it('is split from its range', () => {
    fc.assert(
      fc.property(sheetName, (name) => {
        expect(splitSheetReference(`${quoteSheetName(name)}!$B$4:$C$9`)).toEqual({ sheet: name, range: '$B$4:$C$9' });
        expect(splitSheetReference(`=${quoteSheetName(name)}!B4`)).toEqual({ sheet: name, range: 'B4' });
      }),
      { numRuns: 2000 },
    );
  });

  it.each(['#REF!', "'x'!#REF!", '=SUM(Start!A1)', "'''a'!BA$2!", "'half!A1", 'B1', ''])('is not found in %s, and nothing breaks', (text) =>
    expect(readSheetReference(text)).toBeUndefined(),
  );
});

describe('a name that the grid cannot read', () => {
  it.each([
    ["Pilot's [trip]", "Pilot's (trip)"],
    ['Go!', 'Go-'],
    ['a/b\\c*d?e', 'a-b-c-d-e'],
    ['@home', '-home'],
    ['me@home', 'me@home'],
    ['two\nlines', 'two-lines'],
    ['Plain (1): "as" it is', 'Plain (1): "as" it is'],
  ])('%j becomes %j', (name, readable) => expect(readableSheetName(name, [])).toBe(readable));

  it('never becomes one that another sheet has', () => expect(readableSheetName('[trip]', ['(Trip)', '(trip) 2'])).toBe('(trip) 3'));
});
