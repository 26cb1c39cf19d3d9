// True airspeed and fuel flow of a leg in cruise, and where each comes from: typed, the cruise table, or one figure for the aircraft.
import { CoreError } from '../basics/errors';
import type { AircraftTable } from '../manual/openTable';
import { openFigures, type OpenedTable } from './tableFigures';

export interface CruiseFigures {
  readonly trueAirspeedKnots: number;
  readonly flowPerHour: number;
}

export type CruiseOrigin = 'typed' | 'table' | 'aircraft list';

export interface CruiseUsed extends CruiseFigures {
  readonly speedFrom: CruiseOrigin;
  readonly flowFrom: CruiseOrigin;
  /** By which the table was read; undefined where it was not, or has no such column. */
  readonly power: number | undefined;
}

/** What a leg says of its cruise; what it leaves open is read in the table. */
export interface CruiseAsked {
  readonly altitudeFeet: number;
  readonly trueAirspeedKnots: number | undefined;
  readonly flowPerHour: number | undefined;
  readonly power: number | undefined;
  readonly temperatureCelsius: number | undefined;
}

/** What holds for every leg that says nothing of its own. */
export interface CruiseMeans {
  readonly table: AircraftTable | undefined;
  readonly weight: number | undefined;
  readonly fuelUnit: Parameters<typeof openFigures>[2];
  readonly power: number | undefined;
  /** Of the aircraft list: for legs that neither say it nor read it in the table. */
  readonly trueAirspeedKnots: number | undefined;
  readonly flowPerHour: number | undefined;
}

export type Cruise = (asked: CruiseAsked) => CruiseUsed;

interface Wanted {
  readonly answer: 'trueAirspeed' | 'flow';
  readonly what: string;
  readonly typed: number | undefined;
  readonly ofList: number | undefined;
}

/**
 * Typed figures go first; then the table where a power is given, or where it has none; then the figure of the aircraft list. A table that
 * cannot answer is never passed over for another figure.
 */
export function cruiseOf({ table, weight, fuelUnit, power: powerOfAll, ...list }: CruiseMeans): Cruise {
  let opened: OpenedTable | undefined;
  return ({ altitudeFeet, trueAirspeedKnots, flowPerHour, power: powerOfLeg, temperatureCelsius }) => {
    const power = powerOfLeg ?? powerOfAll;
    const used = ({
      answer,
      what,
      typed,
      ofList,
    }: Wanted): { readonly value: number; readonly from: CruiseOrigin; readonly power?: number | undefined } => {
      if (typed !== undefined) return { value: typed, from: 'typed' };
      if (table !== undefined) {
        opened ??= openFigures(table, 'cruise', fuelUnit);
        const byPower = opened.takesPower(answer);
        if (!byPower || power !== undefined || ofList === undefined) {
          const value = opened.read(answer, { altitudeFeet, temperatureCelsius, power, weight });
          if (value <= 0) throw new CoreError('figure-missing', { what: `more than 0 as ${what}`, table: 'cruise' });
          return { value, from: 'table', power: byPower ? power : undefined };
        }
      } else if (power !== undefined) throw new CoreError('cruise-table-missing', { power });
      if (ofList === undefined) throw new CoreError('figure-missing', { what, table: undefined });
      return { value: ofList, from: 'aircraft list' };
    };
    const speed = used({ answer: 'trueAirspeed', what: 'true airspeed', typed: trueAirspeedKnots, ofList: list.trueAirspeedKnots });
    const flow = used({ answer: 'flow', what: 'fuel flow', typed: flowPerHour, ofList: list.flowPerHour });
    return {
      trueAirspeedKnots: speed.value,
      flowPerHour: flow.value,
      speedFrom: speed.from,
      flowFrom: flow.from,
      power: speed.power ?? flow.power,
    };
  };
}
