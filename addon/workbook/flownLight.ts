// The four times of a flight as typed, and whether it took off and landed by night, from the Sun at the fields of the trip.
import { serialDayZero } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { flightRecord, type FlightRecord } from '../../core/route/record';
import { nightOfFlight, timesByNight, type NightOfFlight, type NightRule } from '../../core/currency/nightOfFlight';
import type { Position } from '../../core/navigation/geodesy';
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

type Light = 'day' | 'night';
export interface Lights {
  readonly takeOff: Light;
  readonly landing: Light;
  /** What night means here. */
  readonly rule: string;
  /** Of so many landings those by night; undefined where nobody can tell which of them were. */
  readonly landingsByNight: (landings: number) => number | undefined;
}

const nightWords: Readonly<Record<NightRule, string>> = {
  hourAfterSunset: 'from one hour after sunset to one hour before sunrise',
  civilNight: 'from the end of evening to the beginning of morning civil twilight',
};

/** What one definition calls day is day for all of them. */
function byNightOf(night: NightOfFlight, asked: readonly NightRule[], landings: number): number | undefined {
  const counts = asked.map((rule) => timesByNight(night, 'landing', rule, landings));
  if (counts.includes(0)) return 0;
  return counts.reduce((least, count) => (least === undefined || count === undefined ? undefined : Math.min(least, count)));
}

/**
 * Where a log follows two authorities, night is what both call so: that counts least.
 * @source cfr-61-57 (b): from one hour after sunset to one hour before sunrise; part-fcl: from the end of evening to the beginning of morning civil twilight.
 */
export function lightsOf(from: Position, to: Position, times: FlightRecord, day: number, rules: string): Lights {
  const [faa, others] = [/\bFAA\b/.test(rules), rules.replace(/\bFAA\b|\band\b/g, '').trim() !== ''];
  const asked: readonly NightRule[] = [...(faa ? (['hourAfterSunset'] as const) : []), ...(others || !faa ? (['civilNight'] as const) : [])];
  const night = nightOfFlight({ ...times, from, to, day: day + serialDayZero });
  const light = (end: 'takeOff' | 'landing'): Light => (asked.every((rule) => night[end][rule]) ? 'night' : 'day');
  return {
    ...{ takeOff: light('takeOff'), landing: light('landing') },
    rule: asked.map((rule) => nightWords[rule]).join(', and '),
    landingsByNight: (landings) => byNightOf(night, asked, landings),
  };
}
