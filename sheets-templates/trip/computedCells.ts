// The item "Cells and sheets" of the Trip sheet: no result that the verdict rests on was typed over, here or on the sheets that it reads, and
// those sheets work for this trip. A tab copied by the menu of the spreadsheet goes on reading the sheets of the first trip.
import { line, on, tripEntriesText, tripInWords, typedOver, unlessFormula } from '../build';
import { balanceCells, entriesReadCell, forTripCells, sheetNames, startCells, tripCells, typedOverCells } from '../places';
import type { TemplateCell } from '../template';
import { byRoute } from './entries';
import { tripRows } from './rows';

const row = tripRows.judged.last;
const whole = 'every computed cell holds its formula, and the sheets are of this trip';

/** What another sheet says of its own cells, and whether it still says anything. */
function toldBy(key: 'balance' | 'card' | 'working' | 'route'): readonly string[] {
  const place = on(sheetNames[key], typedOverCells[key]);
  return [place, unlessFormula(place, `what ${sheetNames[key]} tells of its own`)];
}

const own = tripInWords((place) => place);

/** That another sheet works for another trip than this one. */
function strangerTo(key: 'balance' | 'card' | 'working' | 'route'): string {
  const place = on(sheetNames[key], forTripCells[key]);
  const fuel = on(sheetNames.balance, balanceCells.tripFuel);
  const others = [
    `${place}<>${own}`,
    ...(key === 'balance' ? [`${fuel}<>${tripCells.tripFuel}`] : []),
    ...(key === 'working' ? [`${on(sheetNames.working, entriesReadCell)}<>${tripEntriesText((range) => range)}`] : []),
  ];
  return `IF(OR(${others.join(',')}),"${sheetNames[key]} works "&${place}&", by another Trip sheet than this: copy them together","")`;
}

/** `cells` are all others of the sheet, but for the verdict that rests on this item. */
export function computedCellsItem(cells: readonly TemplateCell[]): TemplateCell[] {
  const day = unlessFormula(on(sheetNames.start, startCells.dayVerdict), `whether as_of is today, on ${sheetNames.start}`);
  const said = typedOver(
    cells,
    day,
    ...toldBy('balance'),
    ...toldBy('card'),
    ...toldBy('working'),
    strangerTo('balance'),
    strangerTo('card'),
    strangerTo('working'),
    ...[...toldBy('route'), strangerTo('route')].map((text) => `IF(${byRoute},${text},"")`),
  );
  return line(
    row,
    7,
    ['Cells and sheets', 'label'],
    [
      `=IFERROR(IF(I${row}="${whole}","OK","CHECK"),"UNKNOWN")`,
      'verdict',
      { note: 'CHECK where a typed value stands in the place of a formula, or a sheet works for another trip.' },
    ],
    [`=IF(${said}="","${whole}",${said}&": two answers may stand side by side")`, 'reason'],
  );
}
