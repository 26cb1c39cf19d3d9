// What lengthens or shortens a distance on this runway: the manual's own corrections where it has them, else the published factors;
// and which of the manual's rows look like a typing error.
import type { SourceId } from '../basics/sources';
import type { Verdict } from '../basics/verdict';
import type { Correction } from './distanceCorrections';
import { publishedFactors, type RunwayCondition, type RunwayOperation } from './factor';

/** Surfaces a runway can be listed with. `paved_dry` is what manuals print their distances for. */
export const surfaces = ['paved_dry', 'paved_wet', 'grass_dry', 'grass_wet', 'grass_wet_very_short', 'soft'] as const;
export type Surface = (typeof surfaces)[number];

/** What a row of the manual's corrections is about. */
export type CorrectionKind = 'headwind' | 'tailwind' | 'slope' | Exclude<Surface, 'paved_dry'> | 'other';

export interface OwnCorrection {
  readonly kind: CorrectionKind;
  readonly correction: Correction;
}

export type CorrectionDoubt = 'unlikely-size' | 'wrong-sign' | 'beyond-published' | 'none-published' | 'surface-missing' | 'slope-missing';

export interface CorrectionRow extends Correction {
  readonly verdict: Verdict;
  readonly from: 'manual' | SourceId | undefined;
  readonly doubt: CorrectionDoubt | undefined;
  /** Percent for one unit of the amount, usually between these. */
  readonly usual: readonly [least: number, most: number] | undefined;
}

/**
 * Percent for a knot, for a percent of slope, or for the surface as a whole, between which manuals of light aircraft lie; what lies beyond is
 * looked at. Wind: manuals print about 10 % for each 9 to 12 knots ahead and for each 2 knots behind (FAA-H-8083-25, chapter 11).
 * @source common-practice
 */
const usualSizes: Readonly<Record<Exclude<CorrectionKind, 'other'>, readonly [number, number]>> = {
  headwind: [-2.5, -0.4],
  tailwind: [1.5, 10],
  slope: [2, 25],
  paved_wet: [0, 60],
  grass_dry: [5, 50],
  grass_wet: [10, 80],
  grass_wet_very_short: [30, 100],
  soft: [10, 150],
};

function judged({ kind, correction }: OwnCorrection): CorrectionRow {
  const usual = kind === 'other' ? undefined : usualSizes[kind];
  const each = correction.percent / correction.perAmount;
  const wrongSign = kind !== 'headwind' && kind !== 'other' && each < 0;
  const unlikely = usual !== undefined && (each < usual[0] || each > usual[1]);
  const doubt = wrongSign ? 'wrong-sign' : unlikely ? 'unlikely-size' : undefined;
  return { ...correction, verdict: wrongSign ? 'NO' : unlikely ? 'CHECK' : 'OK', from: 'manual', doubt, usual };
}

const unknown = (name: string, doubt: CorrectionDoubt): CorrectionRow => ({
  name,
  percent: 0,
  perAmount: 1,
  amount: 0,
  verdict: 'UNKNOWN',
  from: undefined,
  doubt,
  usual: undefined,
});

const sourceOf = (condition: RunwayCondition): SourceId =>
  condition === 'paved_wet' || condition === 'grass_wet_very_short' ? 'eu-965-2012' : 'safety-sense-7';

function published(operation: RunwayOperation, condition: RunwayCondition, amount: number): CorrectionRow {
  const { per, ...factors } = publishedFactors[condition];
  const factor = factors[operation];
  if (factor === undefined) return { ...unknown(condition, 'none-published'), verdict: 'CHECK' };
  const perAmount = per?.amount ?? 1;
  // 1.1 less 1 has a last bit too many; the factors are printed to a hundredth.
  const percent = Math.round((factor - 1) * 1e6) / 1e4;
  const beyond = amount > perAmount;
  const row = { name: condition, percent, perAmount, amount, from: sourceOf(condition), usual: undefined };
  return { ...row, verdict: beyond ? 'UNKNOWN' : 'OK', doubt: beyond ? 'beyond-published' : undefined };
}

/** The slope that lengthens: uphill for a take-off, downhill for a landing. A slope that helps is not credited. */
export const adverseSlope = (operation: RunwayOperation, slopePercent: number): number =>
  Math.max(0, operation === 'takeoff' ? slopePercent : -slopePercent);

export interface RunwayState {
  readonly surface: Surface | undefined;
  /** Up in the direction of the runway, percent. */
  readonly slopePercent: number | undefined;
}

/** One row for each thing that applies, winds first. A row of the manual goes before a published factor for the same thing. */
export function runwayCorrections(
  operation: RunwayOperation,
  { surface, slopePercent }: RunwayState,
  own: readonly OwnCorrection[],
): CorrectionRow[] {
  const ownOf = (kind: CorrectionKind): OwnCorrection[] => own.filter((one) => one.kind === kind);
  const winds = own.filter(({ kind }) => kind === 'headwind' || kind === 'tailwind');
  const applied = (kind: Exclude<CorrectionKind, 'headwind' | 'tailwind' | 'other'>, amount: number): CorrectionRow[] => {
    const rows = ownOf(kind);
    return rows.length === 0 ? [published(operation, kind, amount)] : rows.map((row) => judged({ kind, correction: { ...row.correction, amount } }));
  };
  const adverse = slopePercent === undefined ? 0 : adverseSlope(operation, slopePercent);
  return [
    ...winds.map(judged),
    ...(surface === undefined ? [unknown('surface', 'surface-missing')] : surface === 'paved_dry' ? [] : applied(surface, 1)),
    ...(slopePercent === undefined ? [unknown('slope', 'slope-missing')] : adverse > 0 ? applied('slope', adverse) : []),
    ...ownOf('other').map(judged),
  ];
}
