// The tints of verdicts held against those that the templates put there: a colour that belongs to another row's word is believed before the
// word is read. Where a host does not read its rules, nothing is said.
import { verdictTints } from '../../../sheets-templates/look';
import type { SheetTemplate } from '../../../sheets-templates/template';
import { areasOf, areaText, eachCell, readArea, type Area } from '../areas';
import type { PlacesNow } from '../placesNow';
import { holds } from '../readPlace';
import type { SheetSnapshot, TintSnapshot } from '../snapshot';
import { findingAt, type Finding } from './finding';

const covers = ({ ranges }: TintSnapshot, row: number, column: number): boolean => ranges.some((range) => holds(readArea(range), { row, column }));

const sameColour = (one: string | undefined, other: string): boolean => one?.toLowerCase() === other.toLowerCase();

/** The cells of an area for which something holds, in as few ranges as they take. */
function rangesWhere(area: Area, isSo: (row: number, column: number) => boolean): string[] {
  const cells = Array.from({ length: area.lastRow }, () => Array<boolean>(area.lastColumn).fill(false));
  eachCell(area, (row, column) => {
    const line = cells[row - 1];
    if (line !== undefined && isSo(row, column)) line[column - 1] = true;
  });
  return areasOf(cells).map(areaText);
}

/** Words that have lost their tint in some of the verdict's cells. */
function findUntinted(sheet: SheetSnapshot, area: Area, tints: readonly TintSnapshot[]): Finding[] {
  const bare = new Map<string, string[]>();
  for (const [word, colour] of Object.entries(verdictTints)) {
    const own = tints.filter((one) => one.word === word && sameColour(one.colour, colour));
    const ranges = rangesWhere(area, (row, column) => !own.some((one) => covers(one, row, column))).join(', ');
    if (ranges !== '') bare.set(ranges, [...(bare.get(ranges) ?? []), word]);
  }
  return [...bare].map(([ranges, words]) =>
    findingAt(
      'tint',
      sheet,
      readArea(ranges.replace(/,.*$/, '')),
      `Verdicts in ${ranges} have lost the rule that tints ${words.join(', ')}. Read the word; to have the tint back, insert the sheet anew or bring it up to date.`,
    ),
  );
}

/** A rule beside the sheet's own that colours verdicts: by a formula it may look at other cells, by a word it may have another's colour. */
function findForeign(sheet: SheetSnapshot, area: Area, tints: readonly TintSnapshot[]): Finding[] {
  const isOwn = ({ word, colour }: TintSnapshot): boolean =>
    word !== undefined && word in verdictTints && sameColour(colour, verdictTints[word as keyof typeof verdictTints]);
  return tints.flatMap((one) => {
    const ranges = isOwn(one) ? '' : rangesWhere(area, (row, column) => covers(one, row, column)).join(', ');
    if (ranges === '') return [];
    const by = one.formula === undefined ? 'a rule of its own' : `the rule ${one.formula}, which looks at cells by their place`;
    return [
      findingAt(
        'tint',
        sheet,
        readArea(ranges.replace(/,.*$/, '')),
        `Verdicts in ${ranges} are coloured by ${by}: the colour may be that of another row. Take the rule away, or read the word only.`,
      ),
    ];
  });
}

export function compareTints(template: SheetTemplate, sheet: SheetSnapshot, laid: PlacesNow): Finding[] {
  const { tints } = sheet;
  if (tints === undefined || (sheet.mark?.version ?? template.version) !== template.version) return [];
  const found = template.verdictRanges.flatMap((range) => {
    const now = laid.range(range);
    return now === undefined ? [] : [...findUntinted(sheet, readArea(now), tints), ...findForeign(sheet, readArea(now), tints)];
  });
  return found.filter((one, index) => found.findIndex(({ sentence }) => sentence === one.sentence) === index);
}
