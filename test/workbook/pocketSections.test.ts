// The pocket view out of the sheets' descriptions: nothing that can be typed, and no verdict, is lost or shown twice.
import { describe, expect, it } from 'vitest';
import { eachCell } from '../../addon/workbook/areas';
import { keysOf } from '../../addon/workbook/keys';
import { pocketSheet, type PocketPart, type PocketValue } from '../../addon/workbook/pocket/sections';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/addresses';
import type { SheetTemplate } from '../../sheets-templates/template';

/** Cells of the values in the parts that are wanted, a list's in each of its rows. */
const cellsIn = (parts: readonly PocketPart[], isWanted: (value: PocketValue) => boolean): string[] =>
  parts.flatMap((part) => {
    if (part.kind === 'said') return [];
    if (part.kind === 'line') return part.values.filter(isWanted).map(({ cell }) => address(cell.row, cell.column));
    return part.columns
      .filter(isWanted)
      .flatMap(({ cell }) => Array.from({ length: part.last - part.first + 1 }, (_, index) => address(part.first + index, cell.column)));
  });

const everyPart = (template: SheetTemplate): PocketPart[] => {
  const { top, sections } = pocketSheet(template);
  return [...top, ...sections.flatMap(({ parts }) => parts)];
};

describe.each(sheetTemplates.map((template) => [template.name, template] as const))('the pocket view of %s', (_, template) => {
  it('has every entry once', () => {
    const keyed = new Set<string>();
    for (const range of keysOf(template)?.ranges.values() ?? [])
      if (range !== undefined) eachCell(range, (row, column) => keyed.add(address(row, column)));
    const tinted = new Set(template.cells.filter(({ style }) => style.startsWith('input')).map(({ row, column }) => address(row, column)));
    // In a column of entries, cells without the tint show their answer.
    const shown = cellsIn(everyPart(template), ({ isEntry }) => isEntry).filter((place) => tinted.has(place));
    expect(shown.sort()).toEqual([...tinted].filter((place) => keyed.has(place)).sort());
  });

  it('has every verdict once', () => {
    const isVerdict = ({ style }: { readonly style: string }): boolean => style === 'verdict' || style === 'bigVerdict';
    const verdicts = template.cells.filter(isVerdict).map(({ row, column }) => address(row, column));
    expect(cellsIn(everyPart(template), ({ cell }) => isVerdict(cell)).sort()).toEqual(verdicts.sort());
  });
});

describe('the sections of the Trip sheet', () => {
  const trip = sheetTemplates.find(({ key }) => key === 'trip') as SheetTemplate;
  const part = (title: string, label: string): PocketPart | undefined =>
    pocketSheet(trip)
      .sections.find((section) => section.title === title)
      ?.parts.find((one) => one.kind === 'line' && one.label === label);

  it('name each place of a line, and its unit', () => {
    const wind = part('5 Weather, typed', 'wind');
    expect(wind?.kind === 'line' && wind.values.map(({ head }) => head)).toEqual(['departure', 'destination', 'alternate']);
    expect(wind?.kind === 'line' && wind.unit?.value).toBe('kt');
  });
});
