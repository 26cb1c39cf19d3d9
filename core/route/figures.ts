// The aircraft's own figures for a route by height: how it climbs and comes down.
import { trueAirspeedKnots } from '../air/airspeed';
import { standardTemperatureCelsius } from '../air/atmosphere';
import { CoreError } from '../basics/errors';
import { stretchesOf, stretchTrueAirspeedKnots, type ScheduleRow } from '../descent/schedule';
import type { FuelUnitName } from '../manual/aircraftEntries';
import type { AircraftTable } from '../manual/openTable';
import { aboveStandardCelsius, type AirColumn } from './air';
import { openFigures, type Answer, type OpenedTable } from './tableFigures';

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
  /** In which the route counts its fuel; undefined where it is not said, and then no table may say another. */
  readonly fuelUnit: FuelUnitName | undefined;
}

/** Between two rows of a table of time, fuel and distance the climb is steady. @source phak, performance charts: differences of the two altitudes. */
function climbByDifferences({ read, altitudes }: OpenedTable, weight: number | undefined): VerticalFlight {
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

function climbByRate({ has, read, altitudes }: OpenedTable, { weight, climbIndicatedKnots, climbFlowPerHour }: FlightFigures): VerticalFlight {
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
  const opened = openFigures(table, 'climb', figures.fuelUnit);
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
