// What the panel says of a check and of an update: every count with its word, and what was not found said too.
import { describe, expect, it } from 'vitest';
import { countsInWords, daysInWords, totalInWords } from '../../addon/panel/checkWords';
import { isSame, lookedInWords, lookThrough, updatedInWords, versionsInWords } from '../../addon/panel/updateSets';
import type { CheckReport } from '../../addon/workbook/check/checkWorkbook';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { markOf, writtenSheet } from '../support/writtenSheet';

const nothing = { error: 0, unknown: 0, day: 0, formula: 0, tint: 0, volatile: 0, moved: 0, copied: 0 };
const report = (counts: Partial<CheckReport['counts']>, compared = 120): CheckReport => ({
  findings: [],
  counts: { ...nothing, ...counts },
  calls: [],
  callsInAll: 0,
  compared,
  said: [],
});

describe('the counts of a check', () => {
  it('say what was not found', () => {
    expect(countsInWords(report({}))).toEqual(
      [
        'No errors.',
        'No UNKNOWN verdicts.',
        'No changed formulas among the 120 that were compared.',
        'No function of ours depends on NOW or RAND.',
      ].map((text) => ({ text, found: false })),
    );
    expect(totalInWords(report({}))).toBe('No problems found.');
  });

  it('say nothing of formulas when none could be compared', () =>
    expect(countsInWords(report({}, 0)).some(({ text }) => text.includes('formula'))).toBe(false));

  it('put what was found first, one and many', () => {
    expect(
      countsInWords(report({ unknown: 1, formula: 12 }))
        .map(({ text }) => text)
        .slice(0, 3),
    ).toEqual(['1 UNKNOWN verdict', '12 formulas of sheets of ours were changed', 'No errors.']);
    for (const kind of Object.keys(nothing))
      for (const count of [1, 30])
        expect(countsInWords(report({ [kind]: count }))[0], kind).toEqual({
          text: expect.stringMatching(new RegExp(`^${count} [^0-9]`)) as string,
          found: true,
        });
    expect(totalInWords(report({ error: 1 }))).toBe('Checked. 1 finding.');
    expect(totalInWords(report({ error: 1, moved: 2 }))).toBe('Checked. 3 findings.');
  });
});

const start = sheetTemplates.find(({ key }) => key === 'start');
if (start === undefined) throw new Error('no Start sheet');
const workbookOf = (...versions: readonly number[]): WorkbookSnapshot => ({
  sheets: versions.map((version, index) => ({
    ...writtenSheet(start),
    name: `Start ${index + 1}`,
    mark: { ...markOf(start, String(index)), version },
  })),
  names: start.names.map(({ name, range }) => ({ name, sheet: 'Start 1', range })),
  selected: { sheet: 'Start 1', row: 1, column: 1 },
});

describe('the day of a check', () => {
  it('is told by sheet, and not at all where there is none', () => {
    expect(daysInWords(workbookOf(1))).toEqual([expect.stringMatching(/^Judged on \d{4}-\d\d-\d\d, as_of of "Start 1"\.$/)]);
    expect(daysInWords({ ...workbookOf(1), names: [] })).toEqual([]);
    expect(daysInWords({ ...workbookOf(1), sheets: [] })).toEqual([]);
  });
});

describe('the sets before an update', () => {
  const looked = (...versions: readonly number[]) => lookThrough(workbookOf(...versions.map((older) => start.version + older)), sheetTemplates);

  it('are looked through only where they are out of date', () => {
    expect(looked(0, -1).map(({ outOfDate, carried }) => [outOfDate, carried?.refusals])).toEqual([
      [false, undefined],
      [true, []],
    ]);
  });

  it('are told in words, newer ones never as up to date', () => {
    expect(lookedInWords([])).toBe('This document has no sheets of Rampwright yet.');
    expect(lookedInWords(looked(0))).toBe('Every sheet of ours is up to date.');
    expect(lookedInWords(looked(1))).toBe('No sheet is out of date.');
    expect(lookedInWords(looked(-1, 0))).toBe('1 set of sheets is out of date.');
    expect(lookedInWords(looked(-1, -1))).toBe('2 sets of sheets are out of date.');
    expect(looked(0, -1, 1).flatMap(versionsInWords)).toEqual([
      `Version ${start.version}, today's: Start 1.`,
      `Version ${start.version - 1}, today's is ${start.version}: Start 2.`,
      `Version ${start.version + 1}, newer than this panel (reload the document): Start 3.`,
    ]);
  });

  it('are the same as long as what was read out holds', () => {
    const [one] = looked(-1);
    const [other] = looked(-1);
    if (one?.carried === undefined || other?.carried === undefined) throw new Error('no set');
    expect(isSame(one, other)).toBe(true);
    expect(isSame(one, { ...other, carried: { ...other.carried, notes: ['another'] } })).toBe(false);
    expect(isSame(one, { ...other, carried: { ...other.carried, entries: [] } })).toBe(true);
  });

  it('are told after the update by their names, the kept ones too', () => {
    expect(updatedInWords({ updated: ['Start'], kept: ['Start (before)'] })).toBe(
      'Up to date, with your entries: "Start". The older one is kept as "Start (before)". Look the new ones through; then the older ones may be deleted.',
    );
  });
});
