// A flight as it was planned beside how it was flown: a row of Manual tables, for the flow and the speed of the next trip.
import { numberFromCell } from '../../functions/registry/readNumber';
import { flownKeys } from '../../sheets-templates/manual/flown';
import type { SheetTemplate } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { readArea } from './areas';
import { freeRow } from './freeRow';
import { placesNow } from './placesNow';
import { valuesIn } from './readPlace';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';
import { cellsOf, companion, valueAt, type EntryWritten } from './tripEntries';

interface FlownPart {
  readonly day: number;
  readonly aircraft: string;
  readonly minutes: number;
  readonly fuelUsed: string;
}

interface Beside {
  readonly entries: readonly EntryWritten[];
  readonly shown: readonly (readonly [heading: string, text: string])[];
  readonly said: string;
}

const nothing: Beside = { entries: [], shown: [], said: '' };
const mostFuel = 10_000;

/** What the Trip sheet shows in a cell of the template, where it is a number. */
function shownOn(trip: SheetSnapshot, templates: readonly SheetTemplate[], cell: string): number | undefined {
  const template = templates.find(({ key }) => key === 'trip');
  const range = template && placesNow(template, trip)?.range(cell);
  const value = range === undefined ? undefined : valuesIn({ sheet: trip, area: readArea(range) })[0]?.[0];
  return typeof value === 'number' ? value : undefined;
}

const tenths = (value: number): number => Math.round(value * 10) / 10;

function fuelOf(text: string): number {
  const fuel = numberFromCell(text.trim());
  if (fuel === undefined || fuel <= 0 || fuel > mostFuel)
    throw new Error('The fuel used must be a number above 0, in the fuel unit of the aircraft list.');
  return fuel;
}

export function plannedAndFlown(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], trip: SheetSnapshot, flown: FlownPart): Beside {
  if (flown.fuelUsed.trim() === '') return nothing;
  const fuel = fuelOf(flown.fuelUsed);
  const tables = companion(workbook, trip, 'tables');
  if (tables === undefined)
    throw new Error('The Manual tables of this trip were not found, so the fuel used has no place. Leave it blank, or insert them.');
  const places = flownKeys.flatMap((key) => cellsOf(tables, [`flown.${key}`]));
  if (places.length < flownKeys.length)
    throw new Error(`A column of "Planned and flown" on "${tables.name}" was taken out, so no row can be written there.`);
  const row = freeRow(tables, places);
  const planned = [`B${tripRows.distance}`, `B${tripRows.timeEnRoute}`, `H${tripRows.tripFuel}`].map((cell) => shownOn(trip, templates, cell));
  const fields = cellsOf(trip, ['field.departure', 'field.destination']).map((cell) => valueAt(trip, cell));
  const values: readonly CellValue[] = [
    ...[flown.aircraft, flown.day],
    ...fields,
    ...planned.map((value) => (value === undefined ? '' : tenths(value))),
    ...[flown.minutes, fuel],
  ];
  const inWords = (value: number | undefined): string => (value === undefined ? 'not known' : String(tenths(value)));
  return {
    entries: values.flatMap((content, index): EntryWritten[] =>
      content === ''
        ? []
        : [{ sheet: tables.name, row, column: places[index]?.column ?? 0, content, ...(index === 1 && { numberFormat: 'yyyy-mm-dd' }) }],
    ),
    shown: [
      ['minutes, planned and flown', `${inWords(planned[1])}, ${flown.minutes}`],
      ['fuel, planned and used', `${inWords(planned[2])}, ${fuel}`],
    ],
    said: ` Planned and flown go into row ${row} of "${tables.name}", for the flow and the speed of the next trip.`,
  };
}
