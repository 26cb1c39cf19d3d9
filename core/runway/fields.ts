// A list of fields and their runways as somebody typed it: what is missing, and what looks like a typing error.
import type { Named } from '../basics/named';
import { feetFromMetres, metresFromFeet, turnDegrees, wrapDegrees } from '../basics/units';
import { worstVerdict, type Verdict } from '../basics/verdict';
import { geodesicLeg, type Position } from '../navigation/geodesy';
import type { Surface } from './corrections';

export const lengthUnits = ['ft', 'm'] as const;
export type LengthUnit = (typeof lengthUnits)[number];

/** Undefined is what is missing or cannot be read. */
export interface FieldRunway {
  readonly field: Named;
  /** As painted: 03, 21L. */
  readonly name: string;
  readonly directionDegrees: number | undefined;
  /** Something stands in the cell of the direction, readable or not. */
  readonly directionTyped: boolean;
  readonly takeoffAvailable: number | undefined;
  readonly landingAvailable: number | undefined;
  readonly unit: LengthUnit | undefined;
  readonly surface: Surface | undefined;
  readonly slopePercent: number | undefined;
}

export interface ListedField {
  readonly field: Named;
  readonly position: Position | undefined;
  readonly elevationFeet: number | undefined;
}

export type FieldFinding =
  | { readonly kind: 'missing'; readonly what: string }
  | { readonly kind: 'twice' }
  | { readonly kind: 'no-runway' }
  | { readonly kind: 'runway-missing'; readonly runway: string; readonly what: string }
  | { readonly kind: 'elevation'; readonly feet: number }
  | { readonly kind: 'far'; readonly nauticalMiles: number; readonly nearest: string }
  | { readonly kind: 'direction'; readonly runway: string; readonly degrees: number; readonly named: number }
  | { readonly kind: 'length'; readonly runway: string; readonly length: number; readonly unit: LengthUnit }
  | { readonly kind: 'landing-longer'; readonly runway: string; readonly landing: number; readonly takeoff: number; readonly unit: LengthUnit }
  | {
      readonly kind: 'other-end';
      readonly runway: string;
      readonly length: number;
      readonly other: string;
      readonly otherLength: number;
      readonly unit: LengthUnit;
    }
  | { readonly kind: 'slopes'; readonly runway: string; readonly other: string }
  | { readonly kind: 'slopes-apart'; readonly runway: string; readonly other: string }
  | { readonly kind: 'surfaces'; readonly runway: string; readonly other: string }
  | { readonly kind: 'same-place'; readonly other: string };

/** Fields lie between the Dead Sea and the highest airports; beyond it is a slip. @source common-practice */
const usualElevationFeet = { least: -1300, most: 14_500 } as const;
/** Metres between which the runways of light aircraft lie. @source common-practice */
export const usualLengthMetres = { least: 200, most: 5500 } as const;
/** A list of one's own fields with one this far from all others holds a wrong sign or digit, most likely. @source common-practice */
const farNauticalMiles = 1000;
/** A runway is named after its magnetic direction to the nearest ten degrees; the field turns by a few degrees in the years between. @source aim, 2-3-3 */
const namedWithinDegrees = 15;
/** Displaced thresholds shorten the landing; nothing makes it much longer than the take-off. @source common-practice */
const landingLonger = 1.25;
/** Both ends are one strip: lengths that differ by more hold a slip, most likely. @source common-practice */
const endsDiffer = 1.5;
/** The same strip the other way: slopes that differ in size by more percent hold a slip. @source common-practice */
const slopesDiffer = 1;

/** 210 for "21", "21L" or "RWY 21"; undefined where the name holds no runway number. */
export function directionOfName(name: string): number | undefined {
  const found = /^(?:rwy ?)?(\d{1,2})\s*[LCR]?$/i.exec(name.trim());
  const number = Number(found?.[1]);
  return found === null || number < 1 || number > 36 ? undefined : number * 10;
}

/** As typed; as named where nothing is typed. */
const runwayDirection = ({ directionDegrees, directionTyped, name }: FieldRunway): number | undefined =>
  directionTyped ? directionDegrees : directionOfName(name);

const metres = (length: number, unit: LengthUnit): number => (unit === 'm' ? length : metresFromFeet(length));
export const convertLength = (length: number, from: LengthUnit, to: LengthUnit): number =>
  from === to ? length : from === 'm' ? feetFromMetres(length) : metresFromFeet(length);

function fieldFindings(one: ListedField, all: readonly ListedField[]): FieldFinding[] {
  const { position, elevationFeet } = one;
  const others = all.filter((other) => other !== one);
  const found: FieldFinding[] = others.some(({ field }) => field.key === one.field.key) ? [{ kind: 'twice' }] : [];
  if (position === undefined) found.push({ kind: 'missing', what: 'latitude or longitude' });
  if (elevationFeet === undefined) found.push({ kind: 'missing', what: 'elevation' });
  else if (elevationFeet < usualElevationFeet.least || elevationFeet > usualElevationFeet.most)
    found.push({ kind: 'elevation', feet: elevationFeet });
  return position === undefined ? found : [...found, ...farFrom(position, others)];
}

function farFrom(position: Position, others: readonly ListedField[]): FieldFinding[] {
  const distances = others.flatMap(({ field, position: there }) => {
    const same = there?.latitudeDegrees === position.latitudeDegrees && there.longitudeDegrees === position.longitudeDegrees;
    return there === undefined ? [] : [{ name: field.name, miles: same ? 0 : geodesicLeg(position, there).distanceNauticalMiles }];
  });
  const nearest = distances.sort((left, right) => left.miles - right.miles)[0];
  if (nearest?.miles === 0) return [{ kind: 'same-place', other: nearest.name }];
  return nearest === undefined || nearest.miles <= farNauticalMiles ? [] : [{ kind: 'far', nauticalMiles: nearest.miles, nearest: nearest.name }];
}

function missingOfRunway(runway: FieldRunway): FieldFinding[] {
  const parts: readonly (readonly [string, unknown])[] = [
    ['direction', runwayDirection(runway)],
    ['take-off available', runway.takeoffAvailable],
    ['landing available', runway.landingAvailable],
    ['length unit (ft or m)', runway.unit],
    ['surface', runway.surface],
    ['slope', runway.slopePercent],
  ];
  const missing = parts.filter(([, value]) => value === undefined).map(([what]) => what);
  return missing.length === 0 ? [] : [{ kind: 'runway-missing', runway: runway.name, what: missing.join(', ') }];
}

function lengthFindings({ name, takeoffAvailable, landingAvailable, unit }: FieldRunway): FieldFinding[] {
  if (unit === undefined) return [];
  const strange = [takeoffAvailable, landingAvailable].find(
    // 0 is a runway closed for that use.
    (length) =>
      length !== undefined && length > 0 && (metres(length, unit) < usualLengthMetres.least || metres(length, unit) > usualLengthMetres.most),
  );
  if (strange !== undefined) return [{ kind: 'length', runway: name, length: strange, unit }];
  const longer =
    takeoffAvailable !== undefined && landingAvailable !== undefined && takeoffAvailable > 0 && landingAvailable > landingLonger * takeoffAvailable;
  return longer ? [{ kind: 'landing-longer', runway: name, landing: landingAvailable, takeoff: takeoffAvailable, unit }] : [];
}

function directionFindings({ name, directionDegrees }: FieldRunway): FieldFinding[] {
  const named = directionOfName(name);
  if (named === undefined || directionDegrees === undefined) return [];
  return Math.abs(turnDegrees(named, directionDegrees)) > namedWithinDegrees
    ? [{ kind: 'direction', runway: name, degrees: directionDegrees, named }]
    : [];
}

const sideOf = (name: string): string => /[LCR]$/i.exec(name.trim())?.[0].toUpperCase() ?? '';
const sideSeen: Readonly<Record<string, string>> = { L: 'R', R: 'L', C: 'C', '': '' };

function otherEndOf(runway: FieldRunway, runways: readonly FieldRunway[]): FieldRunway | undefined {
  const named = directionOfName(runway.name);
  return runways.find((other) => {
    const there = directionOfName(other.name);
    return (
      named !== undefined &&
      there !== undefined &&
      wrapDegrees(named + 180) === wrapDegrees(there) &&
      sideOf(other.name) === sideSeen[sideOf(runway.name)]
    );
  });
}

/** Each pair of ends is told once, at the end that stands first. */
function pairFindings(runway: FieldRunway, runways: readonly FieldRunway[]): FieldFinding[] {
  const other = otherEndOf(runway, runways);
  if (other === undefined || runways.indexOf(other) < runways.indexOf(runway)) return [];
  const [slope, otherSlope] = [runway.slopePercent ?? 0, other.slopePercent ?? 0];
  const names = { runway: runway.name, other: other.name };
  const slopes: FieldFinding[] = [
    ...(slope * otherSlope > 0 ? [{ kind: 'slopes', ...names } as const] : []),
    ...(slope * otherSlope <= 0 && Math.abs(slope + otherSlope) > slopesDiffer ? [{ kind: 'slopes-apart', ...names } as const] : []),
    ...(runway.surface !== undefined && other.surface !== undefined && runway.surface !== other.surface
      ? [{ kind: 'surfaces', ...names } as const]
      : []),
  ];
  const { takeoffAvailable: length, unit } = runway;
  if (length === undefined || unit === undefined || other.takeoffAvailable === undefined || other.unit === undefined) return slopes;
  const otherLength = convertLength(other.takeoffAvailable, other.unit, unit);
  const [short, long] = [Math.min(length, otherLength), Math.max(length, otherLength)];
  if (short <= 0 || long <= endsDiffer * short) return slopes;
  return [...slopes, { kind: 'other-end', runway: runway.name, length, other: other.name, otherLength, unit }];
}

const unknownKinds: readonly FieldFinding['kind'][] = ['missing', 'twice', 'no-runway', 'runway-missing'];
const verdictOf = ({ kind }: FieldFinding): Verdict => (unknownKinds.includes(kind) ? 'UNKNOWN' : 'CHECK');

export interface FieldStanding {
  readonly verdict: Verdict;
  /** The worst first. */
  readonly findings: readonly FieldFinding[];
  readonly runwayCount: number;
}

/** How each field of the list stands, its runways with it. */
export function fieldStandings(fields: readonly ListedField[], runways: readonly FieldRunway[]): FieldStanding[] {
  return fields.map((one) => {
    const own = runways.filter(({ field }) => field.key === one.field.key);
    const findings = [
      ...fieldFindings(one, fields),
      ...(own.length === 0 ? [{ kind: 'no-runway' } as const] : []),
      ...own.flatMap((runway) => [...missingOfRunway(runway), ...directionFindings(runway), ...lengthFindings(runway), ...pairFindings(runway, own)]),
    ];
    const sorted = [...findings].sort((left, right) => Number(verdictOf(left) !== 'UNKNOWN') - Number(verdictOf(right) !== 'UNKNOWN'));
    return { verdict: findings.length === 0 ? 'OK' : worstVerdict(findings.map(verdictOf)), findings: sorted, runwayCount: own.length };
  });
}
