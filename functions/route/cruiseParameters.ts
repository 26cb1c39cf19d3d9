// Parameters of a leg's cruise that the functions of a route share: the cruise table, and what holds for legs that say nothing of their own.
import { fuelUnits } from '../../core/manual/aircraftEntries';
import type { AircraftTable } from '../../core/manual/openTable';
import type { CruiseMeans } from '../../core/route/cruise';
import { aircraftTable, orNoTable } from '../manual/table';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { choice } from '../registry/readText';

export const flow = (help: string) => number({ unit: 'an hour', minimum: 0, aboveMinimum: true, maximum: 1_000_000, help });

export const cruiseTable = optional(
  orNoTable(
    aircraftTable(
      'Cruise table with its header row: first of power, pressure altitude, temperature or ISA deviation those it has, then true airspeed, fuel flow.',
    ),
  ),
  undefined,
  'each leg gives both',
);

export const cruiseOfAll = {
  power: optional(
    number({ unit: '', minimum: 0, maximum: 10_000, help: 'By which the cruise table is read for legs without a power of their own.' }),
    undefined,
    'as each leg says',
  ),
  cruise_kt: optional(
    number({ unit: 'knots', minimum: 20, maximum: 600, help: 'True airspeed of legs that neither say it nor read it in the cruise table.' }),
    undefined,
    'each leg says it',
  ),
  cruise_flow: optional(flow('Fuel flow of such legs.'), undefined, 'each leg says it'),
  fuel_unit: optional(
    choice({ words: fuelUnits, help: 'In which the fuel is counted, for tables whose flow has a unit of its own.' }),
    undefined,
    'the tables have none of their own',
  ),
} as const;

interface CruiseGiven {
  readonly cruise: AircraftTable | undefined;
  readonly weight: number | undefined;
  readonly power: number | undefined;
  readonly cruise_kt: number | undefined;
  readonly cruise_flow: number | undefined;
  readonly fuel_unit: CruiseMeans['fuelUnit'];
}

export const cruiseMeans = ({ cruise, weight, power, cruise_kt, cruise_flow, fuel_unit }: CruiseGiven): CruiseMeans => ({
  table: cruise,
  weight,
  fuelUnit: fuel_unit,
  power,
  trueAirspeedKnots: cruise_kt,
  flowPerHour: cruise_flow,
});
