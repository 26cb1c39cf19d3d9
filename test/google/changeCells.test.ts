// Rectangles of cells changed: only where they hold what was seen, all of them or none, and taken back by the same change turned round.
import { afterEach, describe, expect, it } from 'vitest';
import { changeCells } from '../../addon/google/changeCells';
import { turnedRound, type CellsChanged } from '../../addon/workbook/cellChanges';
import { contentOf, documentOf, insertSmall } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

afterEach(withoutPlatform);

const change: CellsChanged = {
  sheet: 'Hold',
  row: 20,
  column: 1,
  before: [
    ['', 'mine'],
    [7, { formula: '=B20' }],
  ],
  after: [
    ['Quillon Four', 2300],
    ['', ''],
  ],
};

function opened() {
  const double = withDouble('Europe/Paris');
  insertSmall();
  const hold = double.sheet('Hold');
  hold.cell(20, 2).value = 'mine';
  hold.cell(21, 1).value = 7;
  hold.cell(21, 2).formula = '=B20';
  return { double, hold };
}

describe('changeCells', () => {
  it('writes where everything is as it was seen, and is taken back by the same change turned round', () => {
    const { hold } = opened();
    const before = contentOf(hold);
    expect(changeCells({ changes: [change] })).toEqual({ cells: 4 });
    expect([hold.cell(20, 1).value, hold.cell(20, 2).value, hold.cell(21, 1).value, hold.cell(21, 2).formula]).toEqual([
      'Quillon Four',
      2300,
      '',
      '',
    ]);
    expect(changeCells({ changes: turnedRound([change]) })).toEqual({ cells: 4 });
    expect(hold.cell(21, 2).formula).toBe('=B20');
    expect(contentOf(hold)).toEqual(before);
  });

  it.each<readonly [string, (opened_: ReturnType<typeof opened>) => void]>([
    ['a value', ({ hold }) => void (hold.cell(20, 2).value = 'changed')],
    ['a blank cell', ({ hold }) => void (hold.cell(20, 1).value = 0)],
    ['a formula', ({ hold }) => void (hold.cell(21, 2).formula = '=B19')],
  ])('writes nothing where somebody changed %s', (_, spoil) => {
    const made = opened();
    spoil(made);
    const before = documentOf(made.double);
    expect(() => changeCells({ changes: [{ ...change, row: 30, before: [['']], after: [['x']] }, change] })).toThrow(
      'Cells of "Hold" were changed since you looked, so nothing was written. Look again.',
    );
    expect(documentOf(made.double)).toEqual(before);
  });

  it('writes nothing where a sheet is gone or ends before', () => {
    const { double } = opened();
    const before = documentOf(double);
    expect(() => changeCells({ changes: [change, { ...change, sheet: 'Gone' }] })).toThrow('There is no sheet "Gone" any more. Nothing was changed.');
    expect(() => changeCells({ changes: [{ ...change, row: 90_000 }] })).toThrow('were changed since you looked');
    expect(documentOf(double)).toEqual(before);
  });

  it('leaves everything as it was wherever the platform fails on the way', () => {
    const one: CellsChanged = { sheet: 'Hold', row: 30, column: 1, before: [['']], after: [['x']] };
    const sentences = Array.from({ length: 40 }, (_, step): string => {
      const { double } = opened();
      const before = documentOf(double);
      double.recorder.failAt = double.recorder.count('document') + step + 1;
      try {
        changeCells({ changes: [one, change] });
        return '';
      } catch (thrown) {
        double.recorder.failAt = undefined;
        expect(documentOf(double), `failing at call ${step + 1}`).toEqual(before);
        return thrown instanceof Error ? thrown.message : '';
      }
    });
    expect(sentences.filter((sentence) => /^Nothing was written, .* every cell is as it was\./.test(sentence)).length).toBeGreaterThan(0);
    expect(sentences).toContain('');
  });
});
