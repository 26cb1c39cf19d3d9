// The manual's corrections to a distance: how much each comes to today, what it is a part of, and the distance with all of them.
import { CoreError } from '../basics/errors';
import { answersOf } from '../manual/figure';
import { rolesOf, takesTemperature } from './conditions';
import { plainHeader } from '../manual/grid';
import type { AircraftTable, ReadyFigure } from '../manual/openTable';

/** An amount that the wind of the day gives: this share of the knots from ahead, or of those from behind. */
export interface WindAmount {
  readonly from: 'ahead' | 'behind';
  readonly share: number;
}

/** An amount that the temperature gives: degrees Celsius above standard. Colder than that nothing is credited. */
export interface WarmthAmount {
  readonly from: 'above standard';
}

/** `percent` more distance for each `perAmount` of `amount`. */
export interface Correction {
  readonly name: string;
  readonly percent: number;
  readonly perAmount: number;
  readonly amount: number | WindAmount | WarmthAmount;
  /** What the percentage is of, or which of the two distances it is for; undefined: of either distance. */
  readonly of?: CorrectionOf | undefined;
}

/** A part of the ground roll lengthens the distance over an obstacle by as much; the other two are for one of the distances alone. */
export type CorrectionOf = 'ground roll' | 'ground roll only' | 'over 50 ft';

export interface CorrectionEffect {
  readonly name: string;
  readonly percent: number;
  readonly of: CorrectionOf | undefined;
}

function amountOf({ amount }: Correction, headwindKnots: number, aboveStandardCelsius: number): number {
  if (typeof amount === 'number') return amount;
  if (amount.from === 'above standard') return Math.max(0, aboveStandardCelsius);
  return amount.share * Math.max(0, amount.from === 'ahead' ? headwindKnots : -headwindKnots);
}

export function effectOf(correction: Correction, headwindKnots: number, aboveStandardCelsius: number): CorrectionEffect {
  const percent = (correction.percent * amountOf(correction, headwindKnots, aboveStandardCelsius)) / correction.perAmount + 0;
  if (percent <= -100) throw new CoreError('correction-too-large', { name: correction.name, percent });
  return { name: correction.name, percent, of: correction.of };
}

const factorOf = (effects: readonly CorrectionEffect[]): number => effects.reduce((product, { percent }) => product * (1 + percent / 100), 1);

/**
 * The corrections multiply one another. @source safety-sense-7, worked example: each condition's factor is applied to the last. What is a part
 * of the ground roll lengthens the run alone, and the rest of the way over the obstacle stays.
 */
export function correctedDistance(book: number, effects: readonly CorrectionEffect[], groundRoll: number | undefined, isGroundRoll: boolean): number {
  const whole = effects.filter(({ of }) => of === undefined || of === (isGroundRoll ? 'ground roll only' : 'over 50 ft'));
  const onRoll = factorOf(effects.filter(({ of }) => of === 'ground roll'));
  return whole.reduce((distance, { percent }) => distance * (1 + percent / 100), book + (groundRoll ?? 0) * (onRoll - 1));
}

const isRoll = (header: string): boolean => /^(take-?off|landing)?ground(roll|run)$/.test(plainHeader(header));

/** The figure of the ground roll, where a correction is a part of it. */
export function rollNeededFor(
  table: AircraftTable,
  wanted: string,
  effects: readonly CorrectionEffect[],
): ReadyFigure | 'the figure itself' | undefined {
  if (isRoll(wanted)) return 'the figure itself';
  const [needing] = effects.filter(({ of, percent }) => of === 'ground roll' && percent !== 0);
  if (needing === undefined) return undefined;
  const headers = answersOf(table.typed.blocks);
  const roll = headers.find(isRoll);
  if (roll === undefined) throw new CoreError('correction-needs-roll', { name: needing.name, headers });
  return table.figure(roll, 'by-heading');
}

/** A correction for what the table takes itself, which would count it again. */
export function countsTwice(figure: ReadyFigure, corrections: readonly Correction[]): CoreError | undefined {
  const roles = rolesOf(figure);
  const [wind, warmth] = [roles.has('headwind'), takesTemperature(roles)];
  for (const { name, amount } of corrections) {
    if (typeof amount === 'number') continue;
    const isWarmth = amount.from === 'above standard';
    if (isWarmth ? warmth : wind) return new CoreError('counted-twice', { name, what: isWarmth ? 'temperature' : 'wind' });
  }
  return undefined;
}
