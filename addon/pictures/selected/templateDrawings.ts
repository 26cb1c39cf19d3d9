// The charts and pictures that a template declares, drawn from the sheet as it stands now, wherever its rows have gone.
import { numberFromCell } from '../../../functions/registry/readNumber';
import type { ScatterChart, SheetPicture, SheetTemplate } from '../../../sheets-templates/template';
import type { Area } from '../../workbook/areas';
import { areaOf } from '../../workbook/formulaReading';
import { keysIn } from '../../workbook/keys';
import { placesNow } from '../../workbook/placesNow';
import type { CellValue, SheetSnapshot } from '../../workbook/snapshot';
import { drawPicture } from '../drawPicture';
import { NotDrawn } from '../missing';
import { runsOf, scatterPicture, type DrawnSeries, type ScatterRequest } from '../scatterPicture';
import type { Drawable, Drawing, Size, Span } from './drawable';
import { valueAt } from '../../workbook/templateLabels';
import { cellsIn } from './workbookCells';

/** Where a range of the template stands now; undefined where it was taken out. */
type Place = (range: string) => Area | undefined;

function placeNow(template: SheetTemplate, sheet: SheetSnapshot): Place {
  const places = placesNow(template, sheet);
  return (text) => {
    const now = places?.range(text);
    return now === undefined ? undefined : areaOf(now);
  };
}

const span = (areas: readonly Area[], first: 'row' | 'column', last: 'lastRow' | 'lastColumn'): Span => ({
  first: Math.min(...areas.map((one) => one[first])),
  last: Math.max(...areas.map((one) => one[last])),
});

function lost(title: string, sheet: SheetSnapshot): NotDrawn {
  const [why, what] =
    keysIn(sheet) === undefined
      ? ['it is of a version before sheets had keys, or has lost them', 'Bring the sheet up to date, or insert it anew.']
      : ['rows, columns or cells were taken out', 'Put them back, or insert the sheet anew.'];
  return new NotDrawn(`The cells behind "${title}" are not found on "${sheet.name}": ${why}. ${what}`);
}

/** A drawable over the cells of these ranges, which says so where they are not to be found. */
function over(
  title: string,
  sheet: SheetSnapshot,
  ranges: readonly string[],
  place: Place,
  draw: (at: (range: string) => Area, selectedRow: number, size: Size) => Drawing,
): Drawable {
  const found = ranges.flatMap((range) => place(range) ?? []);
  const at = (range: string): Area => {
    const area = place(range);
    if (area === undefined) throw lost(title, sheet);
    return area;
  };
  const everywhere = { first: 1, last: Infinity };
  return {
    rows: found.length === 0 ? everywhere : span(found, 'row', 'lastRow'),
    columns: found.length === 0 ? everywhere : span(found, 'column', 'lastColumn'),
    name: title,
    draw: (selectedRow, size) => draw(at, selectedRow, size),
  };
}

function mainRange(drawn: SheetPicture['drawn']): string {
  if (drawn.kind === 'hold') return drawn.from.brief;
  if (drawn.kind === 'route') return drawn.from.parts;
  return drawn.kind === 'routeProfile' ? drawn.from.levels : drawn.from.plan;
}

function pictureDrawable({ title, drawn }: SheetPicture, sheet: SheetSnapshot, place: Place): Drawable {
  const main = mainRange(drawn);
  return over(title, sheet, Object.values(drawn.from), place, (at, _, size) => ({
    svg: drawPicture(drawn, (range) => cellsIn(sheet, at(range)), size),
    what: title,
    row: at(main).row,
  }));
}

const numbersIn = (cells: readonly (readonly CellValue[])[]): (number | undefined)[] => cells.map(([value]) => numberFromCell(value));

/**
 * The point of the selected row: its numbers in the columns of a series that is drawn from there. Rows between those of the series,
 * such as the worst point of the burn, go by the text at their left.
 */
function selectedPoint(chart: ScatterChart, sheet: SheetSnapshot, at: (range: string) => Area, row: number): ScatterRequest['selected'] {
  const series = chart.series.map(({ title, x, y }) => ({ title, x: at(x), y: at(y) }));
  const own = series.find(({ y }) => row >= y.row && row <= y.lastRow);
  const between = series.find((one) => {
    const alike = series.filter(({ x, y }) => x.column === one.x.column && y.column === one.y.column).map(({ y }) => y);
    return row >= Math.min(...alike.map((area) => area.row)) && row <= Math.max(...alike.map((area) => area.lastRow));
  });
  const found = own ?? between;
  if (found === undefined) return undefined;
  const [x, y] = [found.x, found.y].map(({ column }) => numberFromCell(valueAt(sheet, row, column)));
  if (x === undefined || y === undefined) return undefined;
  const text = valueAt(sheet, row, 1);
  return { x, y, words: own !== undefined ? own.title : typeof text === 'string' && text !== '' ? text : `row ${row}` };
}

function chartDrawable(chart: ScatterChart, sheet: SheetSnapshot, place: Place): Drawable {
  const { title, series } = chart;
  return over(
    title,
    sheet,
    series.flatMap(({ x, y }) => [x, y]),
    place,
    (at, selectedRow, size) => {
      const drawn = series.map((one): DrawnSeries => ({
        title: one.title,
        drawn: one.drawn,
        runs: runsOf(numbersIn(cellsIn(sheet, at(one.x))), numbersIn(cellsIn(sheet, at(one.y)))),
      }));
      const selected = selectedPoint(chart, sheet, at, selectedRow);
      return { svg: scatterPicture({ ...chart, series: drawn, ...(selected !== undefined && { selected }) }, size), what: title, row: selectedRow };
    },
  );
}

export function templateDrawables(template: SheetTemplate, sheet: SheetSnapshot): Drawable[] {
  const place = placeNow(template, sheet);
  return [
    ...template.charts.map((chart) => chartDrawable(chart, sheet, place)),
    // Of a sheet without keys these are drawn from its calls.
    ...(keysIn(sheet) === undefined ? [] : (template.pictures ?? [])).map((picture) => pictureDrawable(picture, sheet, place)),
  ];
}
