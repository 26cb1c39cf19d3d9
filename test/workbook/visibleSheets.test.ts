// The sheets that the panel is given with the one in sight.
import { describe, expect, it } from 'vitest';
import { visibleSheets } from '../../addon/workbook/visibleSheets';
import type { NameSnapshot, SheetMark } from '../../addon/workbook/snapshot';
import { asOfName } from '../../sheets-templates/asOf';

const mark = (set: string, names: SheetMark['names'] = {}): SheetMark => ({ key: 'trip', version: 1, set, names });
const marks = new Map([
  ['Start', mark('one', { [asOfName]: 'as_of' })],
  ['Trip', mark('one')],
  ['Start 2', mark('two', { [asOfName]: 'as_of_2' })],
  ['Trip 2', mark('two')],
  ['Lone', mark('three')],
]);
const name = (of: string, sheet: string): NameSnapshot => ({ name: of, sheet, range: 'A6' });
const names = [name('as_of', 'Start'), name('as_of_2', 'Start 2'), name('mine', 'Own')];

describe('the sheet in sight', () => {
  it.each([
    { shown: 'Trip', sheets: ['Trip', 'Start'] },
    { shown: 'Trip 2', sheets: ['Trip 2', 'Start 2'] },
    { shown: 'Start 2', sheets: ['Start 2'] },
    { shown: 'Lone', sheets: ['Lone', 'Start'] },
    { shown: 'Own', sheets: ['Own', 'Start'] },
  ])('$shown comes with the sheet that has its day', ({ shown, sheets }) => expect([...visibleSheets(shown, marks, names)]).toEqual(sheets));

  it('comes alone where the name of the day is gone, whatever day another set has', () => {
    expect([...visibleSheets('Trip 2', marks, names.slice(0, 1))]).toEqual(['Trip 2']);
    expect([...visibleSheets('Own', marks, names.slice(1))]).toEqual(['Own']);
  });
});
