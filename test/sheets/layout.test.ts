// Rows numbered in the order in which they are declared.
import { describe, expect, it } from 'vitest';
import { below, lastRow, row, rows, rowsFrom } from '../../sheets-templates/layout';

describe('rows', () => {
  const made = rowsFrom(5, { heading: row, pilot: row, list: rows(4), foot: below(2, row), answer: below(1, rows(3)) });

  it('follow one another, empty rows between them where they are asked for', () =>
    expect(made).toEqual({ heading: 5, pilot: 6, list: { first: 7, last: 10 }, foot: 13, answer: { first: 15, last: 17 } }));

  it('tell the last of them', () => expect([lastRow(made), lastRow(rowsFrom(3, { only: row }))]).toEqual([17, 3]));
});
