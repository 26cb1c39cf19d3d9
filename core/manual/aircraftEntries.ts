// The row of an aircraft in the aircraft list, looked over: what is missing, and what looks like a typing error.
import { kilogramsFromPounds, litresFromUsGallons } from '../basics/units';
import { worstVerdict, type Verdict } from '../basics/verdict';

export const weightUnits = ['lb', 'kg'] as const;
export type WeightUnitName = (typeof weightUnits)[number];
export const fuelUnits = ['US gal', 'L', 'lb', 'kg'] as const;
export type FuelUnitName = (typeof fuelUnits)[number];

/** Undefined is missing or cannot be read. Weights in the weight unit, fuel in the fuel unit. */
export interface AircraftEntries {
  readonly weightUnit: WeightUnitName | undefined;
  readonly fuelUnit: FuelUnitName | undefined;
  readonly fuelWeightEach: number | undefined;
  readonly usableFuel: number | undefined;
  readonly maximumZeroFuelWeight: number | undefined;
  readonly maximumTakeoffWeight: number | undefined;
  readonly maximumLandingWeight: number | undefined;
  readonly crosswindKnots: number | undefined;
  readonly cruiseKnots: number | undefined;
  readonly fuelFlowPerHour: number | undefined;
  readonly taxiFuel: number | undefined;
}

export type AircraftFinding =
  | { readonly kind: 'missing'; readonly what: keyof AircraftEntries }
  | { readonly kind: 'fuel-weight'; readonly each: number; readonly weightUnit: WeightUnitName; readonly fuelUnit: FuelUnitName }
  | {
      readonly kind: 'above-takeoff';
      readonly what: 'maximumZeroFuelWeight' | 'maximumLandingWeight';
      readonly weight: number;
      readonly takeoff: number;
    }
  | { readonly kind: 'takeoff-weight'; readonly weight: number; readonly unit: WeightUnitName }
  | { readonly kind: 'fuel-share'; readonly fuelWeight: number; readonly takeoff: number }
  | { readonly kind: 'endurance'; readonly hours: number; readonly flow: number; readonly usable: number }
  | {
      readonly kind: 'unusual';
      readonly what: 'crosswindKnots' | 'cruiseKnots' | 'taxiFuel';
      readonly value: number;
      readonly usual: readonly [number, number];
    };

/** Kilograms a litre of anything that light aircraft burn: avgas 0.69 to 0.74, petrol to 0.78, jet fuel 0.775 to 0.84. @source common-practice */
const usualDensity = [0.67, 0.86] as const;
/** Light aircraft, kilograms. @source common-practice */
const usualTakeoffKilograms = [200, 6000] as const;
/** Full tanks as a part of the greatest take-off weight. @source common-practice */
const greatestFuelShare = 0.5;
/** @source common-practice */
export const usualOf = { crosswindKnots: [5, 35], cruiseKnots: [40, 350] } as const;
/** Hours that full tanks last in cruise. @source common-practice */
export const usualFullTanksHours = [1.5, 14] as const;
/** Of the usable fuel. @source common-practice */
const greatestTaxiShare = 0.1;

const isMass = (unit: FuelUnitName): unit is 'lb' | 'kg' => unit === 'lb' || unit === 'kg';
const kilogramsOf = (value: number, unit: WeightUnitName): number => (unit === 'kg' ? value : kilogramsFromPounds(value));
const outside = (value: number, [least, most]: readonly [number, number]): boolean => value < least || value > most;

const needed: readonly (keyof AircraftEntries)[] = [
  'weightUnit',
  'fuelUnit',
  'fuelWeightEach',
  'usableFuel',
  'maximumTakeoffWeight',
  'maximumLandingWeight',
];

/** Fuel kept by weight weighs one unit each, in its own unit; kept by volume its density tells. */
function fuelWeightFindings({ weightUnit, fuelUnit, fuelWeightEach: each }: AircraftEntries): AircraftFinding[] {
  if (weightUnit === undefined || fuelUnit === undefined || each === undefined) return [];
  const kilograms = kilogramsOf(each, weightUnit);
  const perOne = isMass(fuelUnit) ? kilogramsOf(1, fuelUnit) : fuelUnit === 'L' ? 1 : litresFromUsGallons(1);
  const likely = isMass(fuelUnit) ? ([0.98, 1.02] as const) : usualDensity;
  return outside(kilograms / perOne, likely) ? [{ kind: 'fuel-weight', each, weightUnit, fuelUnit }] : [];
}

function weightFindings(entries: AircraftEntries): AircraftFinding[] {
  const { weightUnit, maximumTakeoffWeight: takeoff, usableFuel, fuelWeightEach } = entries;
  if (takeoff === undefined) return [];
  const above = (['maximumZeroFuelWeight', 'maximumLandingWeight'] as const).flatMap((what): AircraftFinding[] => {
    const weight = entries[what];
    return weight !== undefined && weight > takeoff ? [{ kind: 'above-takeoff', what, weight, takeoff }] : [];
  });
  const strange = weightUnit !== undefined && outside(kilogramsOf(takeoff, weightUnit), usualTakeoffKilograms);
  const fuelWeight = (usableFuel ?? 0) * (fuelWeightEach ?? 0);
  return [
    ...above,
    ...(strange ? [{ kind: 'takeoff-weight', weight: takeoff, unit: weightUnit } as const] : []),
    ...(fuelWeight > greatestFuelShare * takeoff ? [{ kind: 'fuel-share', fuelWeight, takeoff } as const] : []),
  ];
}

function flightFindings({ usableFuel: usable, fuelFlowPerHour: flow, crosswindKnots, cruiseKnots, taxiFuel }: AircraftEntries): AircraftFinding[] {
  const hours = usable === undefined || flow === undefined || flow <= 0 ? undefined : usable / flow;
  const taxiUsual = [0, greatestTaxiShare * (usable ?? Infinity)] as const;
  const unusual = (
    what: 'crosswindKnots' | 'cruiseKnots' | 'taxiFuel',
    value: number | undefined,
    usual: readonly [number, number],
  ): AircraftFinding[] => (value !== undefined && outside(value, usual) ? [{ kind: 'unusual', what, value, usual }] : []);
  return [
    ...(hours !== undefined && outside(hours, usualFullTanksHours)
      ? [{ kind: 'endurance', hours, flow: flow ?? 0, usable: usable ?? 0 } as const]
      : []),
    ...unusual('crosswindKnots', crosswindKnots, usualOf.crosswindKnots),
    ...unusual('cruiseKnots', cruiseKnots, usualOf.cruiseKnots),
    ...unusual('taxiFuel', taxiFuel, taxiUsual),
  ];
}

export interface AircraftEntriesStanding {
  readonly verdict: Verdict;
  /** What is missing first. */
  readonly findings: readonly AircraftFinding[];
}

export function aircraftEntriesStanding(entries: AircraftEntries): AircraftEntriesStanding {
  const missing = needed.filter((what) => entries[what] === undefined).map((what): AircraftFinding => ({ kind: 'missing', what }));
  const findings = [...missing, ...fuelWeightFindings(entries), ...weightFindings(entries), ...flightFindings(entries)];
  if (findings.length === 0) return { verdict: 'OK', findings };
  return { verdict: worstVerdict(findings.map(({ kind }) => (kind === 'missing' ? 'UNKNOWN' : 'CHECK'))), findings };
}
