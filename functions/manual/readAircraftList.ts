// Reader of the aircraft list: its units, limits and usual figures, one aircraft a row under one header row.
import { fuelUnits, weightUnits, type AircraftEntries, type FuelUnitName } from '../../core/manual/aircraftEntries';
import type { Named } from '../../core/basics/named';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { columnPlaces, type Headings } from '../registry/readHeadings';
import { numberFromCell } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';

type Column =
  | keyof AircraftEntries
  | ('aircraft' | 'armUnit' | 'distanceUnit' | 'lateralLeft' | 'lateralRight' | 'climbFuel' | 'momentsIn' | 'envelopeIn' | 'leadingEdge' | 'chord');
const headings: Headings<Column> = {
  aircraft: ['aircraft'],
  weightUnit: ['weight in'],
  armUnit: ['arm in'],
  distanceUnit: ['distance in'],
  fuelUnit: ['fuel in'],
  fuelWeightEach: ['fuel weight, each'],
  usableFuel: ['usable fuel'],
  crosswindKnots: ['demonstrated crosswind, kt', 'crosswind shown, kt'],
  maximumZeroFuelWeight: ['maximum zero fuel weight', 'most zero fuel weight'],
  maximumTakeoffWeight: ['maximum take off weight', 'most take off weight'],
  maximumLandingWeight: ['maximum landing weight', 'most landing weight'],
  lateralLeft: ['lateral limit left'],
  lateralRight: ['lateral limit right'],
  cruiseKnots: ['cruise true airspeed, kt'],
  fuelFlowPerHour: ['cruise fuel flow, an hour'],
  taxiFuel: ['taxi fuel'],
  climbFuel: ['climb fuel, extra'],
  momentsIn: ['moments in'],
  envelopeIn: ['envelope in'],
  leadingEdge: ['leading edge of mac'],
  chord: ['mac'],
};

const mustBe = 'a table of aircraft under one header row';
const otherFuelWords: Readonly<Record<string, FuelUnitName>> = { gal: 'US gal', 'us gallon': 'US gal', litre: 'L', liter: 'L', litres: 'L' };

const unitOf = <Unit extends string>(cell: CellValue, units: readonly Unit[]): Unit | undefined =>
  units.find((unit) => plainWords(unit) === plainWords(String(cell)));

export interface AircraftRow {
  readonly aircraft: Named;
  readonly entries: AircraftEntries;
}

export function aircraftRows(help: string): Parameter<readonly AircraftRow[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue): readonly AircraftRow[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const places = columnPlaces(range, { headings, needed: ['aircraft'], mustBe });
    if (range.length < 2) throw new ArgumentError(mustBe, inWords(raw));
    return range.slice(1).flatMap((row): AircraftRow[] => {
      const cell = (column: Column): CellValue => row[places.get(column) ?? -1];
      const aircraft = namedFromCell(cell('aircraft'));
      if (aircraft === undefined) return [];
      const number = (column: Column): number | undefined => numberFromCell(cell(column));
      return [
        {
          aircraft,
          entries: {
            weightUnit: unitOf(cell('weightUnit'), weightUnits),
            fuelUnit: unitOf(cell('fuelUnit'), fuelUnits) ?? otherFuelWords[plainWords(String(cell('fuelUnit')))],
            fuelWeightEach: number('fuelWeightEach'),
            usableFuel: number('usableFuel'),
            maximumZeroFuelWeight: number('maximumZeroFuelWeight'),
            maximumTakeoffWeight: number('maximumTakeoffWeight'),
            maximumLandingWeight: number('maximumLandingWeight'),
            crosswindKnots: number('crosswindKnots'),
            cruiseKnots: number('cruiseKnots'),
            fuelFlowPerHour: number('fuelFlowPerHour'),
            taxiFuel: number('taxiFuel'),
          },
        },
      ];
    });
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}
