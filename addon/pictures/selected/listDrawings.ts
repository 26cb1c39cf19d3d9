// The pictures of PILOT_STATUS and AIRCRAFT_STATUS on any sheet: the selected item's line of days, and below it what lapses next.
import { itemHeadings } from '../../../functions/currency/readAircraftItems';
import { plainWords } from '../../../functions/registry/readText';
import type { CellValue } from '../../workbook/snapshot';
import type { Lapsing } from '../lapsingNext';
import { Missing, NotDrawn, orEmpty } from '../missing';
import { recencyPicture } from '../recencyPicture';
import { from, type Drawable, type Drawing, type Size } from './drawable';
import type { PicturedCall } from './picturedCall';
import { asOfDay, asVerdict, titleOf } from './recencyDrawings';
import { dayOf, isNumber } from './workbookCells';

interface ListItem extends Lapsing {
  /** Counted from 0 at the call. */
  readonly index: number;
  readonly counted?: number;
  readonly needed?: number;
  readonly daysLeft: CellValue;
  readonly reason: string;
}

interface ItemList {
  readonly items: readonly ListItem[];
  readonly height: number;
}

const maxRows = 1000;

/** Rows of item, counted, needed, verdict, good through, days left, rule. */
function pilotItems(call: PicturedCall): ItemList {
  const items: ListItem[] = [];
  for (let index = 0; index < maxRows; index += 1) {
    const [item = '', counted, needed, word, through, daysLeft = '', rule = ''] = [0, 1, 2, 3, 4, 5, 6].map((column) => call.answer(index, column));
    const verdict = asVerdict(word);
    if (typeof item !== 'string' || item === '' || verdict === undefined) break;
    items.push({
      index,
      item,
      verdict,
      goodThroughDay: dayOf(through),
      daysLeft,
      reason: String(rule),
      ...(isNumber(counted) && isNumber(needed) && { counted, needed }),
    });
  }
  return { items, height: items.length };
}

/** Rows of verdict, good through, days left, hours left, rule, each beside its item. */
function aircraftItems(call: PicturedCall): ItemList {
  const [header = [], ...rows] = call.cells('items') ?? [];
  const column = (words: readonly string[]): number => header.findIndex((heading) => words.includes(plainWords(String(heading))));
  const [itemColumn, aircraftColumn] = [column(itemHeadings.item), column(itemHeadings.aircraft)];
  const items = rows.flatMap((row, index): ListItem[] => {
    const [word, through, daysLeft = '', hours, rule = ''] = [0, 1, 2, 3, 4].map((at) => call.answer(index, at));
    const verdict = asVerdict(word);
    if (verdict === undefined) return [];
    const name = [row[itemColumn], row[aircraftColumn]].filter((value) => value !== undefined && value !== '').join(', ');
    return [
      {
        index,
        item: name === '' ? `row ${call.cell.row + index}` : name,
        verdict,
        goodThroughDay: dayOf(through),
        hoursLeft: isNumber(hours) ? hours : undefined,
        daysLeft,
        reason: String(rule),
      },
    ];
  });
  return { items, height: rows.length };
}

/** The day the list is judged on: as given, or, where that is a formula in the call, what the sheet's own days left say. */
function judgedOn(call: PicturedCall, items: readonly ListItem[]): number {
  if (call.argument('as_of').kind !== 'formula') return asOfDay(call);
  const dated = items.find(({ goodThroughDay, daysLeft }) => goodThroughDay !== undefined && isNumber(daysLeft));
  if (dated?.goodThroughDay === undefined || !isNumber(dated.daysLeft))
    throw new NotDrawn(`${call.place}: its as_of is a formula, which is not worked out here. Put it into a cell of its own, and give that cell.`);
  return dated.goodThroughDay - dated.daysLeft;
}

/** The item of the selected row; in any other row the one that lapses next, or the first of the list. */
function chosen(items: readonly ListItem[], index: number, asOf: number): ListItem | undefined {
  const next = [...items]
    .filter(({ goodThroughDay = -Infinity }) => goodThroughDay >= asOf)
    .sort((one, other) => (one.goodThroughDay ?? 0) - (other.goodThroughDay ?? 0));
  return items.find((item) => item.index === index) ?? next[0] ?? items[0];
}

function listSvg(selected: ListItem, items: readonly ListItem[], asOf: number, width: number): string {
  const { counted, needed, reason } = selected;
  const count = counted === undefined || needed === undefined ? {} : { counted, needed };
  return recencyPicture(
    { selected, asOfDay: asOf, events: [], others: items.filter((one) => one !== selected), ...count, ...(reason !== '' && { reason }) },
    width,
  );
}

function listDrawable(call: PicturedCall, { items, height }: ItemList, columns: number): Drawable {
  const draw = (selectedRow: number, size: Size): Drawing => {
    const { row } = call.cell;
    let selected: ListItem | undefined;
    const svg = orEmpty({ ...size, title: titleOf(call.place) }, () => {
      if (items.length === 0) throw call.unlike(call.answer(0, 0));
      const asOf = judgedOn(call, items);
      selected = chosen(items, selectedRow - row, asOf);
      if (selected === undefined) throw new Missing(`no item in ${call.place}`);
      return listSvg(selected, items, asOf, size.width);
    });
    return { svg, what: selected?.item ?? call.name, row: row + (selected?.index ?? 0) };
  };
  return { ...from(call.cell, height, columns), name: call.name, draw };
}

export const pilotDrawable = (call: PicturedCall): Drawable => listDrawable(call, pilotItems(call), 7);
export const aircraftDrawable = (call: PicturedCall): Drawable => listDrawable(call, aircraftItems(call), 5);
