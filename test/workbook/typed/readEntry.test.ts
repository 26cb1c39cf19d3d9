// Days and decimals as people type them.
import { describe, expect, it } from 'vitest';
import { readEntry } from '../../../addon/workbook/typed/readEntry';

describe('a day', () => {
  it.each([
    ['2026-11-26', '2026-11-26'],
    ['26.11.2026', '2026-11-26'],
    ['3.4.2026', '2026-04-03'],
    ['26/11/2026', '2026-11-26'],
    ['11/26/2026', '2026-11-26'],
    ['4/4/2026', '2026-04-04'],
    ['26 Nov 2026', '2026-11-26'],
    [' 20261126 ', '2026-11-26'],
  ])('"%s" is %s', (typed, day) => expect(readEntry(typed, 'date')).toEqual({ text: day }));

  it.each([
    ['03/04/2026', 'can be two days. Type it as 2026-04-03 or as 2026-03-04.'],
    ['26.11.26', 'has no century.'],
    ['tomorrow', 'is no day.'],
    ['31.2.2026', 'is no day.'],
    ['12:30', 'is no day.'],
  ])('"%s" %s', (typed, said) => expect(readEntry(typed, 'date')).toEqual({ said: expect.stringContaining(said) as string }));

  it.each(['', '=TODAY()', '46000'])('"%s" is left to the grid', (typed) => expect(readEntry(typed, 'date')).toBeUndefined());
});

describe('a number', () => {
  it.each([
    ['480,50', '480.50'],
    ['-6,5', '-6.5'],
    ['1.234,50', '1234.50'],
    ['1 234 567,5', '1234567.5'],
    ['0,1234', '0.1234'],
    ['0,500', '0.500'],
    ['-0,500', '-0.500'],
  ])('"%s" is %s', (typed, number) => expect(readEntry(typed, 'number')).toEqual({ text: number }));

  it.each([
    ['1,250', '1250 or 1.250'],
    ['-1,250', '-1250 or -1.250'],
    ['1250,500', '1250500 or 1250.500'],
  ])('that can be two is asked: "%s"', (typed, two) =>
    expect(readEntry(typed, 'number')).toEqual({
      said: `"${typed}" can be two numbers. Type it without a comma: ${two}. Nothing was changed.`,
    }),
  );

  it.each(['', '480.50', '1,234,567', '12:30', 'five', '=A1', '5%', '1,25,000'])('"%s" is left to the grid', (typed) =>
    expect(readEntry(typed, 'number')).toBeUndefined(),
  );
});
