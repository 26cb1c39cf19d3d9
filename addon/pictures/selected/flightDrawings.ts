// The pictures of HOLD_BRIEF and DESCENT_PLAN on any sheet, from the rows they lay out.
import type { CellValue } from '../../workbook/snapshot';
import { descentPicture } from '../descentPicture';
import { Missing, orEmpty } from '../missing';
import { bandsOf, holdPictureOfCells, planRows } from '../sheetPictures';
import { from, type Drawable, type Drawing, type Size } from './drawable';
import type { PicturedCall } from './picturedCall';
import { isNumber } from './workbookCells';

const rowsWhile = (call: PicturedCall, columns: number, most: number, goesOn: (row: readonly CellValue[]) => boolean): CellValue[][] => {
  const rows: CellValue[][] = [];
  for (let index = 0; index < most; index += 1) {
    const row = Array.from({ length: columns }, (_, column) => call.answer(index, column));
    if (!goesOn(row)) break;
    rows.push(row);
  }
  return rows;
};

/** HOLD_BRIEF lays out so many rows. */
export const briefRows = 21;

/** The brief tells the direction: a parallel entry ends with a turn the other way, the others with one in it. */
function turnsOf(brief: readonly (readonly CellValue[])[]): CellValue {
  const value = (item: string): CellValue => brief.find(([name]) => name === item)?.[1] ?? '';
  const last = value('second turn');
  if (!String(value('entry')).startsWith('parallel')) return last;
  return last === 'right' ? 'left' : last === 'left' ? 'right' : '';
}

export function holdDrawable(call: PicturedCall): Drawable {
  const brief = rowsWhile(call, 2, briefRows, ([item]) => item !== '');
  const draw = (_: number, size: Size): Drawing => {
    const svg = orEmpty({ ...size, title: 'Hold' }, () => {
      if (brief[0]?.[0] !== 'entry') throw call.unlike(call.answer(0, 0));
      const [heading, inbound, windFrom, wind] = ['heading_at_fix', 'inbound_course', 'wind_from_deg', 'wind_kt'].map((name) => [
        [call.number(name)],
      ]);
      return holdPictureOfCells(
        { heading: heading ?? [], inbound: inbound ?? [], windFrom: windFrom ?? [], wind: wind ?? [], turns: [[turnsOf(brief)]], brief },
        'north',
        size,
      );
    });
    return { svg, what: 'Hold', row: call.cell.row };
  };
  return { ...from(call.cell, brief.length, 3), name: 'HOLD_BRIEF', draw };
}

const planColumns = 8;
const maxPlanRows = 60;

export function descentDrawable(call: PicturedCall): Drawable {
  const below = rowsWhile(call, planColumns, maxPlanRows, ([fromFeet]) => isNumber(fromFeet));
  const rows = planRows(below);
  const draw = (_: number, size: Size): Drawing => {
    const svg = orEmpty({ ...size, title: 'Descent profile' }, () => {
      if (below.length === 0) throw call.unlike(call.answer(0, 0));
      if (below.length === 1) throw new Missing(`${call.place} has no height to lose`);
      const fixNauticalMiles = rows?.[rows.length - 1]?.[7];
      if (rows === undefined || !isNumber(fixNauticalMiles)) throw new Missing(`the rows of ${call.place} do not end with the whole descent`);
      const bands = bandsOf(rows);
      const endNauticalMiles = bands.reduce((sum, { nauticalMiles }) => sum + nauticalMiles, 0);
      return descentPicture({ bands, endNauticalMiles, crossings: [], fixNauticalMiles }, size);
    });
    return { svg, what: 'Descent profile', row: call.cell.row };
  };
  return { ...from(call.cell, rows?.length ?? below.length, planColumns), name: 'DESCENT_PLAN', draw };
}
