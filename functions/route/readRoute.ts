// Readers of a route: its legs, the places they name, and the air over them, each a table under one header row.
import type { AirLevel } from '../../core/route/air';
import type { ListedPlace } from '../../core/route/places';
import type { LegEntry } from '../../core/route/placed';
import { CoreError } from '../../core/basics/errors';
import { readPosition } from '../../core/navigation/position';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, type CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { headedRows, type HeadedRow } from '../registry/readHeadedRows';
import { ownColumnHelp, type Headings } from '../registry/readHeadings';
import { number, numberFromCell, trueDirection } from '../registry/readNumber';
import { namedFromCell } from '../registry/readText';

type Table<Row> = Parameter<Row> & { readonly shape: 'table' };
type Cell = Pick<Parameter<number>, 'read'>;

export const mostLegs = 20;
const altitude = number({ unit: 'feet', minimum: -1500, maximum: 60000, help: '' });

type LegColumn = 'from' | 'to' | 'altitude' | 'trueAirspeed' | 'flow' | 'power' | 'ground' | 'clearance';
const legHeadings: Headings<LegColumn> = {
  from: ['from'],
  to: ['to'],
  altitude: ['altitude, ft', 'altitude', 'level'],
  trueAirspeed: ['true airspeed, kt', 'true airspeed'],
  flow: ['fuel flow, an hour', 'fuel flow'],
  power: ['power'],
  ground: ['highest ground, ft', 'highest ground'],
  clearance: ['clearance, ft', 'clearance'],
};
const legFigures: Readonly<Record<'trueAirspeed' | 'flow' | 'power', Cell & { readonly name: string }>> = {
  trueAirspeed: { name: 'true airspeed', ...number({ unit: 'knots', minimum: 20, maximum: 600, help: '' }) },
  flow: { name: 'fuel flow', ...number({ unit: 'an hour', minimum: 0, aboveMinimum: true, maximum: 100_000, help: '' }) },
  power: { name: 'power', ...number({ unit: '', minimum: 0, maximum: 10_000, help: '' }) },
};

/** A leg as it can be read, or what is wrong with its row. */
export interface ReadLeg {
  readonly row: number;
  readonly words: { readonly from: string; readonly to: string };
  readonly entry: LegEntry | undefined;
  readonly trouble: string;
  /** As they stand there: who judges the ground reads them. */
  readonly ground: CellValue;
  readonly clearance: CellValue;
}

function readLeg({ row, cell }: HeadedRow<LegColumn>, dates: DateHost): ReadLeg {
  const [from, to] = [namedFromCell(cell('from')), namedFromCell(cell('to'))];
  const words = { from: from?.name ?? '', to: to?.name ?? '' };
  const troubles: string[] = [];
  const figure = (name: string, reader: Cell, raw: CellValue): number | undefined => {
    try {
      return reader.read(raw, dates);
    } catch (thrown) {
      if (!(thrown instanceof ArgumentError)) throw thrown;
      troubles.push(`${name} must be ${thrown.mustBe}; got ${thrown.got}`);
      return undefined;
    }
  };
  const ifTyped = (column: 'trueAirspeed' | 'flow' | 'power'): number | undefined =>
    isBlank(cell(column)) ? undefined : figure(legFigures[column].name, legFigures[column], cell(column));
  if (to === undefined) troubles.push(`to must be a name in the lists of places, or a position; got ${inWords(cell('to'))}`);
  if (from === undefined && !isBlank(cell('from'))) troubles.push(`from must be a name or a position; got ${inWords(cell('from'))}`);
  const altitudeFeet = figure('altitude', altitude, cell('altitude'));
  const asked = { trueAirspeedKnots: ifTyped('trueAirspeed'), flowPerHour: ifTyped('flow'), power: ifTyped('power') };
  const entry = to === undefined || altitudeFeet === undefined || troubles.length > 0 ? undefined : { from, to, altitudeFeet, ...asked };
  return { row, words, entry, trouble: troubles.join('; '), ground: cell('ground'), clearance: cell('clearance') };
}

const legsMustBe = `a table of 1 to ${mostLegs} legs under one header row`;

/** Blank rows are passed over; what is wrong with a row spoils its own leg. */
export function legRows(help: string): Table<readonly ReadLeg[]> {
  const read = (raw: CellValue, dates: DateHost): readonly ReadLeg[] => {
    const rows = headedRows(raw, { headings: legHeadings, needed: ['to', 'altitude'], mustBe: legsMustBe });
    const legs = rows.flatMap((row) => (row === undefined ? [] : [readLeg(row, dates)]));
    if (legs.length === 0 || legs.length > mostLegs) throw new ArgumentError(legsMustBe, `${legs.length} legs`);
    return legs;
  };
  return { shape: 'table', unit: 'table', mustBe: legsMustBe, help: `${help} ${ownColumnHelp}`, optional: undefined, read };
}

const placeHeadings: Headings<'name' | 'position' | 'latitude' | 'longitude' | 'elevation'> = {
  name: ['point', 'field', 'place', 'name'],
  position: ['position'],
  latitude: ['latitude'],
  longitude: ['longitude'],
  elevation: ['elevation, ft', 'elevation'],
};
const placesMustBe = 'a table of places under one header row';

function positionOf({ cell }: HeadedRow<keyof typeof placeHeadings>): ListedPlace['position'] {
  const [latitudeDegrees, longitudeDegrees] = [numberFromCell(cell('latitude')), numberFromCell(cell('longitude'))];
  if (latitudeDegrees !== undefined && longitudeDegrees !== undefined)
    return Math.abs(latitudeDegrees) <= 90 && Math.abs(longitudeDegrees) <= 180 ? { latitudeDegrees, longitudeDegrees } : undefined;
  const written = cell('position');
  if (typeof written !== 'string' || isBlank(written)) return undefined;
  try {
    return readPosition(written);
  } catch (thrown) {
    if (thrown instanceof CoreError) return undefined;
    throw thrown;
  }
}

/** A place whose position cannot be read is known by name only, and spoils the legs that fly to it. */
export function placeRows(help: string): Table<readonly ListedPlace[]> {
  const read = (raw: CellValue): readonly ListedPlace[] =>
    headedRows(raw, { headings: placeHeadings, needed: ['name'], mustBe: placesMustBe, passedOver: ['station'] }).flatMap((row) => {
      const named = row === undefined ? undefined : namedFromCell(row.cell('name'));
      return row === undefined || named === undefined
        ? []
        : [{ named, position: positionOf(row), elevationFeet: numberFromCell(row.cell('elevation')) }];
    });
  return { shape: 'table', unit: 'table', mustBe: placesMustBe, help, optional: undefined, read };
}

const airHeadings: Headings<'place' | 'altitude' | 'from' | 'knots' | 'temperature'> = {
  place: ['place', 'near'],
  altitude: ['altitude, ft', 'altitude'],
  from: ['wind from, true', 'wind from', 'direction'],
  knots: ['wind, kt', 'knots'],
  temperature: ['temperature, c', 'temperature'],
};
const airMustBe = 'a table of winds under one header row';
const air = {
  altitude,
  from: trueDirection(''),
  knots: number({ unit: 'knots', minimum: 0, maximum: 300, help: '' }),
  temperature: number({ unit: 'degrees Celsius', minimum: -90, maximum: 60, help: '' }),
};

export function airRows(help: string): Table<readonly AirLevel[]> {
  const read = (raw: CellValue, dates: DateHost): readonly AirLevel[] =>
    headedRows(raw, { headings: airHeadings, needed: ['altitude', 'from', 'knots'], mustBe: airMustBe }).flatMap((row) => {
      if (row === undefined) return [];
      const value = (column: keyof typeof air): number => {
        try {
          return air[column].read(row.cell(column), dates);
        } catch (thrown) {
          if (!(thrown instanceof ArgumentError)) throw thrown;
          throw new ArgumentError(`${airMustBe} (${airHeadings[column][0] ?? column} ${thrown.mustBe})`, thrown.got, row.row);
        }
      };
      return [
        {
          place: namedFromCell(row.cell('place')),
          altitudeFeet: value('altitude'),
          fromDegrees: value('from'),
          knots: value('knots'),
          temperatureCelsius: isBlank(row.cell('temperature')) ? undefined : value('temperature'),
        },
      ];
    });
  return { shape: 'table', unit: 'table', mustBe: airMustBe, help, optional: undefined, read };
}
