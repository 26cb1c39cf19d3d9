// Inserting the whole workbook into a document of the double: beside what the user has, twice, and in few calls.
import { afterEach, describe, expect, it } from 'vitest';
import { chartBlocks } from '../../addon/google/chartData';
import { insertSheets } from '../../addon/google/insertSheets';
import { sheetGrid } from '../../addon/google/sheetGrid';
import { stackOf } from '../../addon/google/stack';
import { sheetTemplates } from '../../sheets-templates';
import { contentOf, formulasOf } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

afterEach(withoutPlatform);

describe('the whole workbook', () => {
  const everyKey = sheetTemplates.map(({ key }) => key);

  it('goes in, twice, beside user data, and no formula is broken', () => {
    const double = withDouble('America/New_York');
    double.document.insertSheet('Trip sheet', 1);
    double
      .sheet('Trip sheet')
      .getRange(1, 1, 1, 2)
      .setValues([['mine', 42]]);
    const mine = contentOf(double.sheet('Trip sheet'));
    const first = insertSheets(everyKey, sheetTemplates);
    const second = insertSheets(everyKey, sheetTemplates);
    expect(first.inserted).toHaveLength(sheetTemplates.length);
    expect(new Set([...first.inserted, ...second.inserted]).size).toBe(2 * sheetTemplates.length);
    expect(contentOf(double.sheet('Trip sheet'))).toBe(mine);
    // The double throws at a formula that names a sheet or a range that is not there; here: none points to the other set.
    for (const name of second.inserted) {
      const text = formulasOf(double.sheet(name)).join('\n');
      for (const other of first.inserted) expect(text).not.toContain(`'${other}'!`);
    }
  });

  it('has its notes and tints, whether a copy carries them or not', () => {
    const written = (pastesAll: boolean): readonly { readonly tints: readonly unknown[]; readonly notes: unknown }[] => {
      const double = withDouble();
      double.document.pastesAll = pastesAll;
      insertSheets(everyKey, sheetTemplates);
      return sheetTemplates.map(({ name }) => {
        const { cells, rules } = double.sheet(name);
        const tints = rules.map(({ facts }) => [facts.text, facts.background, facts.ranges.map((range) => range.getA1Notation())]);
        return { tints, notes: Object.fromEntries([...cells].flatMap(([place, { note }]) => (note === '' ? [] : [[place, note]]))) };
      });
    };
    const sheets = written(false);
    expect(sheets.map(({ notes }) => notes)).toEqual(
      sheetTemplates.map(({ cells }) =>
        Object.fromEntries(cells.flatMap(({ row, column, note = '' }) => (note === '' ? [] : [[`${row}-${column}`, note]]))),
      ),
    );
    expect(sheets.map(({ tints }) => tints.length > 0)).toEqual(sheetTemplates.map(({ verdictRanges }) => verdictRanges.length > 0));
    expect(written(true)).toEqual(sheets);
  });

  it('draws each series of a chart in a colour of its own', () => {
    const double = withDouble();
    insertSheets(everyKey, sheetTemplates);
    for (const { name, charts } of sheetTemplates) {
      const drawn = double.sheet(name).charts.map(({ facts }) => new Set(facts.colors).size);
      expect(drawn, name).toEqual(charts.map(({ series }) => series.length));
    }
  });

  it('takes few calls', () => {
    const { recorder } = withDouble();
    insertSheets(everyKey, sheetTemplates);
    const byName = new Map<string, number>();
    for (const { name, kind } of recorder.calls) if (kind === 'document') byName.set(name, (byName.get(name) ?? 0) + 1);
    const reads = recorder.calls.filter(({ name, kind }) => kind === 'document' && /\.(get|find)/.test(name)).length;
    console.log(
      `${sheetTemplates.length} sheets: ${recorder.count('document')} calls that read or change the document (${reads} read), ${recorder.count('handle')} that only name a range, ${recorder.count('builder')} of builders in memory\n` +
        [...byName]
          .sort((one, other) => other[1] - one[1])
          .map(([name, count]) => `  ${count} ${name}`)
          .join('\n'),
    );
    const names = { sheets: new Map<string, string>(), ranges: new Map<string, string>() };
    const all = sheetTemplates.map((template) => ({
      template,
      grid: sheetGrid(
        template,
        chartBlocks(template).flatMap(({ cells }) => cells),
        names,
        () => undefined,
      ),
    }));
    const { rows, columns } = stackOf(all, 26);
    const own = all.reduce((sum, { grid }) => sum + grid.rows * grid.columns, 0);
    console.log(`each layer of the whole workbook: ${rows} x ${columns} = ${rows * columns} cells; the sheets have ${own} together`);
    // One call for each layer, whatever the number of sheets. What is left is one call for each width, merge, name and mark.
    const layers = ['setBackgrounds', 'setTextStyles', 'setHorizontalAlignments', 'setWrapStrategies', 'setNumberFormats'].map(
      (name) => `Range.${name}`,
    );
    expect(layers.map((name) => byName.get(name))).toEqual(layers.map(() => 1));
    // Nobody promises that these come along with a copy, and values do not.
    expect(byName.get('Range.setNotes')).toBe(sheetTemplates.length);
    // One more asks what the document takes between arguments.
    expect(byName.get('Range.setValues')).toBe(sheetTemplates.length + 1);
    expect(byName.get('Sheet.setConditionalFormatRules')).toBe(sheetTemplates.filter(({ verdictRanges }) => verdictRanges.length > 0).length);
    expect(byName.get('Range.setDataValidations')).toBe(sheetTemplates.filter(({ validations }) => validations.length > 0).length);
    // So many for a sheet: a new one brings its own, and none of the older ones may become dearer.
    expect(recorder.count('document')).toBeLessThanOrEqual(24 * sheetTemplates.length);
  });
});
