// The aircraft's own figures for a route: true airspeed and flow in cruise, and how it climbs and comes down, by height.
import { trueAirspeedKnots } from '../air/airspeed';
import { densityAltitudeFeet, standardTemperatureCelsius } from '../air/atmosphere';
import { CoreError } from '../basics/errors';
import { stretchesOf, stretchTrueAirspeedKnots, type ScheduleRow } from '../descent/schedule';
import type { InputColumn } from '../manual/columns';
import { answersOf, type InputsAsked } from '../manual/figure';
import { plainHeader } from '../manual/grid';
import type { AircraftTable, ReadyFigure } from '../manual/openTable';
import { bendsAlong, readFigure } from '../manual/readFigure';
import { converted, convertedDifference, type TableUnit } from '../manual/tableUnits';
import { aboveStandardCelsius, type AirColumn } from './air';

const minutesPerHour = 60;

/** At one height. */
export interface VerticalFigures {
  readonly rateFeetPerMinute: number;
  readonly trueAirspeedKnots: number;
  readonly flowPerHour: number;
}

/** How the aircraft climbs, or comes down, through the air of one place. */
export interface VerticalFlight {
  /** Heights at which something bends. */
  readonly bendsFeet: readonly number[];
  readonly at: (altitudeFeet: number, air: AirColumn) => VerticalFigures;
}

/** What stands in none of a table's columns. */
export interface FlightFigures {
  readonly weight: number | undefined;
  readonly climbIndicatedKnots: number | undefined;
  readonly climbFlowPerHour: number | undefined;
}

/** Headings of the columns that are inputs where a table is nothing but numbers, and of the answers, without blanks. */
const inputNames = ['weight', 'pressurealtitude', 'densityaltitude', 'temperature', 'isadeviation', 'power', 'abovestandard'];
const answers = {
  rate: ['rateofclimb'],
  indicated: ['indicatedairspeed', 'indicatedairspeed,kt'],
  trueAirspeed: ['trueairspeed', 'trueairspeed,kt'],
  flow: ['fuelflow', 'fuelflow,anhour'],
  minutes: ['minutes', 'time'],
  fuel: ['fuel'],
  distance: ['distance', 'nauticalmiles', 'distance,nm'],
} as const;
type Answer = keyof typeof answers;
const unitsOfAnswers: Partial<Record<Answer, TableUnit>> = { rate: 'ft/min', indicated: 'kt', trueAirspeed: 'kt' };

/** Undefined is what is not known. */
interface Values {
  readonly weight?: number | undefined;
  readonly power?: number | undefined;
  readonly altitudeFeet: number;
  readonly temperatureCelsius: number | undefined;
}

interface Opened {
  readonly has: (answer: Answer) => boolean;
  readonly read: (answer: Answer, values: Values) => number;
  readonly altitudes: readonly number[];
}

/** An input in the unit of its column; undefined where it is not known. */
function inputValue({ role, unit, header }: InputColumn, { weight, power, altitudeFeet, temperatureCelsius }: Values): number | undefined {
  const above = temperatureCelsius === undefined ? undefined : temperatureCelsius - standardTemperatureCelsius(altitudeFeet);
  switch (role) {
    case 'weight':
      // The weight of a route has no unit: it is in that of a table that says none.
      return unit === undefined ? weight : undefined;
    case 'pressure altitude':
      return converted(altitudeFeet, 'ft', unit);
    case 'density altitude':
      return temperatureCelsius === undefined ? undefined : converted(densityAltitudeFeet(altitudeFeet, temperatureCelsius), 'ft', unit);
    case 'temperature':
      return temperatureCelsius === undefined ? undefined : converted(temperatureCelsius, '°C', unit);
    case 'isa deviation':
      return above === undefined ? undefined : convertedDifference(above, '°C', unit ?? '°C');
    case 'headwind':
      return undefined;
    case 'other':
      return plainHeader(header) === 'power' ? power : plainHeader(header) === 'abovestandard' ? above : undefined;
  }
}

const wordsForMissing = ({ role, unit, header }: InputColumn): string =>
  role === 'weight' && unit !== undefined ? 'weights in the unit of the aircraft list, with no unit of their own' : `a ${header} to read it with`;

/** Headings of its answers. Of a table of numbers alone the first columns are inputs, as long as their headings are names of inputs. */
function columnsOf({ typed: { plain, blocks } }: AircraftTable): { readonly asked: InputsAsked; readonly heads: readonly string[] } {
  if (plain === undefined) return { asked: 'by-heading', heads: answersOf(blocks) };
  const first = plain.headers.findIndex((header) => !inputNames.includes(plainHeader(header)));
  const inputs = first < 0 ? plain.headers.length : first;
  return { asked: inputs, heads: plain.headers.slice(inputs) };
}

function open(table: AircraftTable, name: 'climb' | 'cruise'): Opened {
  const { asked, heads } = columnsOf(table);
  const missing = (what: string): CoreError => new CoreError('figure-missing', { what, table: name });
  const headerOf = (answer: Answer): string | undefined => heads.find((head) => answers[answer].some((one) => one === plainHeader(head)));
  const figureOf = (answer: Answer): ReadyFigure => {
    const header = headerOf(answer);
    if (header === undefined) throw missing(`a column "${answers[answer][0]}"`);
    const figure = table.figure(header, asked);
    if (!figure.inputs.some(({ role }) => role === 'pressure altitude' || role === 'density altitude'))
      throw missing('a column "pressure altitude" among its first');
    return figure;
  };
  const known = (Object.keys(answers) as Answer[]).find((answer) => headerOf(answer) !== undefined);
  return {
    has: (answer) => headerOf(answer) !== undefined,
    read: (answer, values) => {
      const figure = figureOf(answer);
      const { value } = readFigure(figure, 'number', (input) => {
        const one = inputValue(input, values);
        if (one === undefined) throw missing(wordsForMissing(input));
        return one;
      });
      const unit = unitsOfAnswers[answer];
      return unit === undefined ? value : converted(value, figure.unit, unit);
    },
    altitudes: known === undefined ? [] : levelsOf(figureOf(known)),
  };
}

const levelsOf = (figure: ReadyFigure): number[] => {
  const unit = figure.inputs.find(({ role }) => role === 'pressure altitude')?.unit;
  return bendsAlong(figure, 'pressure altitude').map((level) => converted(level, unit, 'ft'));
};

export interface CruiseFigures {
  readonly trueAirspeedKnots: number;
  readonly flowPerHour: number;
}

/** What a leg says of its cruise; what it leaves open is read in the table. */
export interface CruiseAsked {
  readonly altitudeFeet: number;
  readonly trueAirspeedKnots: number | undefined;
  readonly flowPerHour: number | undefined;
  readonly power: number | undefined;
  readonly temperatureCelsius: number | undefined;
}

export type Cruise = (asked: CruiseAsked) => CruiseFigures;

/** Typed figures go before those of the table. */
export function cruiseOf(table: AircraftTable | undefined, weight: number | undefined): Cruise {
  let opened: Opened | undefined;
  return ({ altitudeFeet, trueAirspeedKnots: typedKnots, flowPerHour, power, temperatureCelsius }) => {
    const from = (answer: Answer, what: string): number => {
      if (table === undefined) throw new CoreError('figure-missing', { what, table: undefined });
      opened ??= open(table, 'cruise');
      const value = opened.read(answer, { altitudeFeet, temperatureCelsius, power, weight });
      if (value <= 0) throw new CoreError('figure-missing', { what: `more than 0 as ${what}`, table: 'cruise' });
      return value;
    };
    return { trueAirspeedKnots: typedKnots ?? from('trueAirspeed', 'true airspeed'), flowPerHour: flowPerHour ?? from('flow', 'fuel flow') };
  };
}

/** Between two rows of a table of time, fuel and distance the climb is steady. @source phak, performance charts: differences of the two altitudes. */
function climbByDifferences({ read, altitudes }: Opened, weight: number | undefined): VerticalFlight {
  return {
    bendsFeet: altitudes,
    at: (altitudeFeet, air) => {
      const above = altitudes.findIndex((level) => level > altitudeFeet);
      const [low, high] = [altitudes[above - 1], altitudes[above]];
      if (low === undefined || high === undefined)
        throw new CoreError('levels-too-few', {
          table: 'climb',
          lowest: altitudes[0] ?? 0,
          highest: altitudes[altitudes.length - 1] ?? 0,
          neededLow: altitudeFeet,
          neededHigh: altitudeFeet,
        });
      const difference = (answer: Answer): number =>
        read(answer, { altitudeFeet: high, temperatureCelsius: air.temperatureAt(altitudeFeet), weight }) -
        read(answer, { altitudeFeet: low, temperatureCelsius: air.temperatureAt(altitudeFeet), weight });
      const hours = difference('minutes') / minutesPerHour;
      if (hours <= 0) throw new CoreError('figure-missing', { what: `minutes that rise from ${low} to ${high} feet`, table: 'climb' });
      return {
        rateFeetPerMinute: (high - low) / (hours * minutesPerHour),
        trueAirspeedKnots: difference('distance') / hours,
        flowPerHour: difference('fuel') / hours,
      };
    },
  };
}

function climbByRate({ has, read, altitudes }: Opened, { weight, climbIndicatedKnots, climbFlowPerHour }: FlightFigures): VerticalFlight {
  const typed = (value: number | undefined, what: string): number => {
    if (value === undefined) throw new CoreError('figure-missing', { what, table: undefined });
    return value;
  };
  return {
    bendsFeet: altitudes,
    at: (altitudeFeet, air) => {
      const given = air.temperatureAt(altitudeFeet);
      const values = { altitudeFeet, temperatureCelsius: given, weight };
      const rateFeetPerMinute = read('rate', values);
      if (rateFeetPerMinute <= 0) throw new CoreError('no-climb', { altitudeFeet, rateFeetPerMinute });
      const temperature = given ?? standardTemperatureCelsius(altitudeFeet);
      const knots = has('indicated') ? read('indicated', values) : typed(climbIndicatedKnots, 'indicated airspeed in the climb');
      return {
        rateFeetPerMinute,
        trueAirspeedKnots: has('trueAirspeed') ? read('trueAirspeed', values) : trueAirspeedKnots(knots, altitudeFeet, temperature),
        flowPerHour: has('flow') ? read('flow', values) : typed(climbFlowPerHour, 'fuel flow in the climb'),
      };
    },
  };
}

/** The climb table gives time, fuel and distance from a level below, or a rate. Without one the route is flown as cruise from the start. */
export function climbOf(table: AircraftTable | undefined, figures: FlightFigures): VerticalFlight | undefined {
  if (table === undefined) return undefined;
  const opened = open(table, 'climb');
  return opened.has('minutes') ? climbByDifferences(opened, figures.weight) : climbByRate(opened, figures);
}

/** The descent by a schedule, such as DESCENT_PLAN takes. Indicated airspeed is taken as calibrated. */
export function descentOf(schedule: readonly ScheduleRow[], fromFeet: number, toFeet: number, flowPerHour: number): VerticalFlight {
  const stretches = stretchesOf(schedule, fromFeet, toFeet, false);
  return {
    bendsFeet: stretches.map((stretch) => stretch.fromFeet),
    at: (altitudeFeet, air) => {
      const stretch = stretches.find((one) => altitudeFeet <= one.fromFeet && altitudeFeet >= one.toFeet);
      if (stretch === undefined) throw new CoreError('schedule-too-low', { highest: fromFeet, needed: altitudeFeet });
      return {
        rateFeetPerMinute: stretch.rateFeetPerMinute,
        trueAirspeedKnots: stretchTrueAirspeedKnots(stretch, altitudeFeet, aboveStandardCelsius(air, altitudeFeet)),
        flowPerHour,
      };
    },
  };
}
