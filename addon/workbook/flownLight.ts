// The four times of a flight as typed, and whether it took off and landed by night, from the Sun at the fields of the trip.
import { serialDayZero } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { flightRecord, type FlightRecord } from '../../core/route/record';
import { dayOrNight } from '../../core/route/sunTimes';
import { minutesFromTimeText } from '../../functions/registry/readDate';
import { numberFromCell } from '../../functions/registry/readNumber';
import type { Area } from './areas';
import type { CellValue, SheetSnapshot } from './snapshot';
import { cellsOf, eachRow, valueAt } from './tripEntries';

const timeNames = { offBlock: 'off block', takeOff: 'take-off', landing: 'landing', onBlock: 'on block' } as const;
/** As typed, UTC. */
export type FlownTimes = Readonly<Record<keyof typeof timeNames, string>>;

export function timesOf(flown: FlownTimes): FlightRecord {
  const minutesOf = (key: keyof typeof timeNames): number => {
    const minutes = minutesFromTimeText(flown[key]);
    if (minutes === undefined) throw new Error(`The time of ${timeNames[key]} must be a time of day in UTC, such as 1430 or 14:30.`);
    return minutes;
  };
  const [off, up, down, on] = [minutesOf('offBlock'), minutesOf('takeOff'), minutesOf('landing'), minutesOf('onBlock')];
  try {
    return flightRecord(off, up, down, on);
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    throw new Error('The times are out of order: each must come after the one before it, with at most 4 hours of taxiing and 20 of flight.');
  }
}

interface Position {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}

/** Of a field by its name; undefined where the list of fields has none, or has the name twice. */
export function positionOf(fields: SheetSnapshot, name: CellValue): Position | undefined {
  const [names, latitudes, longitudes] = cellsOf(fields, ['fields.field', 'fields.latitude', 'fields.longitude']);
  if (names === undefined || latitudes === undefined || longitudes === undefined || name === '') return undefined;
  const [place, ...others] = eachRow(names).filter(({ row }) => valueAt(fields, { ...names, row }) === name);
  if (place === undefined || others.length > 0) return undefined;
  const degrees = (list: Area): number | undefined => numberFromCell(valueAt(fields, { ...list, row: place.row }));
  const [latitudeDegrees, longitudeDegrees] = [degrees(latitudes), degrees(longitudes)];
  return latitudeDegrees === undefined || longitudeDegrees === undefined ? undefined : { latitudeDegrees, longitudeDegrees };
}

export interface Lights {
  readonly takeOff: 'day' | 'night';
  readonly landing: 'day' | 'night';
  /** What night means here. */
  readonly rule: string;
}

/**
 * Where a log follows two authorities, night is what both call so: that counts least.
 * @source cfr-61-57 (b): from one hour after sunset to one hour before sunrise; part-fcl: from the end of evening to the beginning of morning civil twilight.
 */
export function lightsOf(from: Position, to: Position, times: FlightRecord, day: number, rules: string): Lights {
  const [faa, others] = [/\bFAA\b/.test(rules), rules.replace(/\bFAA\b|\band\b/g, '').trim() !== ''];
  const lightAt = (place: Position, minutes: number): 'day' | 'night' => {
    const { civilNight, hourAfterSunset } = dayOrNight(place, day + serialDayZero, minutes);
    return (!others || civilNight) && (!faa || hourAfterSunset) ? 'night' : 'day';
  };
  const hour = 'from one hour after sunset to one hour before sunrise';
  const twilight = 'from the end of evening to the beginning of morning civil twilight';
  return {
    takeOff: lightAt(from, times.takeOffMinutes),
    landing: lightAt(to, times.landingMinutes),
    rule: faa && others ? `${hour}, and ${twilight}` : faa ? hour : twilight,
  };
}
