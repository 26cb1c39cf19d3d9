// Reader of the aircraft flown: what each one is, so that landings count where they may, and its hours now.
import { dayNumber } from '../../core/basics/civilDate';
import type { FlownAircraft, TrainingDevice } from '../../core/currency/flightLog';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { columnPlaces, type Headings } from '../registry/readHeadings';
import { numberFromCell } from '../registry/readNumber';
import { namedFromCell, plainWords, yesNo } from '../registry/readText';

type Column = 'aircraft' | 'category' | 'class' | 'type' | 'tailwheel' | 'device' | 'hours' | 'readOn';
const headings: Headings<Column> = {
  aircraft: ['aircraft', 'registration'],
  category: ['category'],
  class: ['class'],
  type: ['type rating', 'type'],
  tailwheel: ['tailwheel', 'tail wheel'],
  device: ['device', 'training device'],
  hours: ['hours now', 'hours'],
  readOn: ['hours read on', 'read on'],
};

const mustBe = 'a table of aircraft under one header row';
const devices: readonly TrainingDevice[] = ['FFS', 'FTD', 'ATD'];
const tick = yesNo('');

/** Without a category nothing flown in it can be counted. */
export type FleetRow = Omit<FlownAircraft, 'category'> & Partial<Pick<FlownAircraft, 'category'>>;

export function fleetRows(help: string): Parameter<readonly FleetRow[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): readonly FleetRow[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const places = columnPlaces(range, { headings, needed: ['aircraft'], mustBe });
    const seen = new Set<string>();
    return range.slice(1).flatMap((row, index): FleetRow[] => {
      const cell = (column: Column): CellValue => row[places.get(column) ?? -1];
      const refuse = (column: Column, what: string, got = inWords(cell(column))): ArgumentError =>
        new ArgumentError(`${mustBe} (${what})`, got, index + 2, (places.get(column) ?? 0) + 1);
      if ([...places.values()].every((at) => isBlank(row[at]))) return [];
      const named = namedFromCell(cell('aircraft'));
      if (named === undefined) throw refuse('aircraft', 'aircraft in words');
      if (seen.has(named.key)) throw refuse('aircraft', 'each aircraft once', `${inWords(named.name)} again`);
      seen.add(named.key);
      const device = devices.find((word) => plainWords(String(cell('device'))) === word.toLowerCase());
      if (device === undefined && !isBlank(cell('device'))) throw refuse('device', 'device FFS, FTD, ATD, or blank for an aircraft');
      const hoursNow = numberFromCell(cell('hours'));
      if (!isBlank(cell('hours')) && (hoursNow === undefined || hoursNow < 0)) throw refuse('hours', 'hours now as a number');
      const readOn = isBlank(cell('readOn')) ? undefined : civilDateFromCell(cell('readOn'), dates);
      if (!isBlank(cell('readOn')) && readOn === undefined) throw refuse('readOn', 'the day on which the hours were read, as a date');
      const category = namedFromCell(cell('category'));
      return [
        {
          aircraft: named,
          ...(category === undefined ? {} : { category }),
          class: namedFromCell(cell('class')),
          type: namedFromCell(cell('type')),
          tailwheel: tailwheel(cell('tailwheel'), dates, refuse),
          device,
          hoursNow,
          hoursReadOn: readOn === undefined ? undefined : dayNumber(readOn),
        },
      ];
    });
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}

function tailwheel(cell: CellValue, dates: DateHost, refuse: (column: Column, what: string) => ArgumentError): boolean {
  if (isBlank(cell)) return false;
  try {
    return tick.read(cell, dates);
  } catch {
    throw refuse('tailwheel', 'tailwheel yes or no');
  }
}
