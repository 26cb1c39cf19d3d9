// What the day is, in the words and units of a table's inputs.
import { densityAltitudeFeet, standardTemperatureCelsius } from '../air/atmosphere';
import type { InputColumn, InputRole } from '../manual/columns';
import type { ReadyFigure } from '../manual/openTable';
import type { FigureReading } from '../manual/readFigure';
import { converted, convertedDifference, type TableUnit } from '../manual/tableUnits';

export interface Conditions {
  /** In weightUnit; where that is not known, in the unit of the table. */
  readonly weight: number;
  readonly weightUnit: TableUnit | undefined;
  readonly pressureAltitudeFeet: number;
  readonly temperatureCelsius: number;
  /** Negative from behind. */
  readonly headwindKnots: number;
}

/** Less than this above the standard temperature is none to speak of. @source common-practice: temperatures are given in whole degrees. */
export const leastWarmthCelsius = 0.5;

export const aboveStandardCelsius = ({
  pressureAltitudeFeet,
  temperatureCelsius,
}: Pick<Conditions, 'pressureAltitudeFeet' | 'temperatureCelsius'>): number => temperatureCelsius - standardTemperatureCelsius(pressureAltitudeFeet);

/** An input of the table in the unit of its column. @source icao-7488, for the standard temperature and the density altitude. */
export function conditionFor({ role, unit }: InputColumn, conditions: Conditions): number {
  const { weight, weightUnit, pressureAltitudeFeet, temperatureCelsius, headwindKnots } = conditions;
  switch (role) {
    case 'weight':
      return converted(weight, weightUnit, unit);
    case 'pressure altitude':
      return converted(pressureAltitudeFeet, 'ft', unit);
    case 'density altitude':
      return converted(densityAltitudeFeet(pressureAltitudeFeet, temperatureCelsius), 'ft', unit);
    case 'temperature':
      return converted(temperatureCelsius, '°C', unit);
    case 'isa deviation':
      return convertedDifference(aboveStandardCelsius(conditions), '°C', unit ?? '°C');
    case 'headwind':
      return converted(headwindKnots, 'kt', unit);
    case 'power':
    case 'other':
      return Number.NaN;
  }
}

export const rolesOf = ({ base, steps }: ReadyFigure): ReadonlySet<InputRole> =>
  new Set([base, ...steps].flatMap(({ inputs }) => inputs.flatMap((input) => (isInputOrFrom(input) ? [input.role] : []))));

const isInputOrFrom = (input: ReadyFigure['base']['inputs'][number]): input is InputColumn => input.kind === 'input';

export const takesTemperature = (roles: ReadonlySet<InputRole>): boolean =>
  roles.has('temperature') || roles.has('isa deviation') || roles.has('density altitude');

/** What the figure takes no account of, or takes from a heavier aircraft; told with the answer. */
export interface TableBasis {
  /** The weight whose figure was taken for a lighter aircraft, and its unit. */
  readonly heavier: { readonly weight: number; readonly unit: string } | undefined;
  readonly noWeight: boolean;
  readonly noTemperature: boolean;
  readonly notes: readonly string[];
}

export function basisOf(figure: ReadyFigure, { heavier, notes }: FigureReading, weightUnit: string): TableBasis {
  const roles = rolesOf(figure);
  const unit = figure.inputs.find(({ role }) => role === 'weight')?.unit ?? weightUnit;
  return {
    heavier: heavier === undefined ? undefined : { weight: heavier, unit },
    noWeight: !roles.has('weight'),
    noTemperature: !takesTemperature(roles),
    notes,
  };
}
