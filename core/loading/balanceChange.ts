// Changes to a loading: what to shift or add for a wanted centre of gravity, and the loading as fuel burns.
import { totalLoading } from './balance';
import { CoreError } from '../basics/errors';

/** Rounding may leave a weight this share beyond the whole without its being so. */
const roundingShare = 1e-9;

/**
 * Weight to shift from one arm to another: weight shifted / total weight = change of centre of gravity / distance shifted.
 * Negative: as much from the second arm to the first. Exact.
 * @source weight-balance-handbook, chapter 2, shifting weight; phak, chapter on weight and balance, weight shift formula.
 */
export function weightToShift(weight: number, arm: number, targetArm: number, fromArm: number, toArm: number): number {
  if (fromArm === toArm) throw new CoreError('shift-nowhere', { arm: fromArm });
  const shifted = (weight * (targetArm - arm)) / (toArm - fromArm) + 0;
  if (Math.abs(shifted) > weight * (1 + roundingShare))
    throw new CoreError('balance-out-of-reach', { change: 'moved', needed: Math.abs(shifted), weight, targetArm });
  return shifted;
}

/**
 * Weight to add at an arm: total weight x (target - arm) / (arm of the addition - target). Negative: to take out there. Exact.
 * @source weight-balance-handbook, chapter on ballast, ballast weight needed; phak, weight addition or removal formula.
 */
export function weightToAdd(weight: number, arm: number, targetArm: number, atArm: number): number {
  if (targetArm === arm) return 0;
  if (atArm === targetArm) throw new CoreError('ballast-at-target', { arm: atArm });
  const added = (weight * (targetArm - arm)) / (atArm - targetArm);
  if (added <= -weight * (1 - roundingShare)) throw new CoreError('balance-out-of-reach', { change: 'taken out', needed: -added, weight, targetArm });
  return added;
}

export interface FuelArm {
  readonly quantity: number;
  readonly arm: number;
}

/** The table in order of quantity; a quantity may stand in it once. */
export function fuelTableInOrder(rows: readonly FuelArm[]): readonly FuelArm[] {
  if (rows.length === 0) throw new CoreError('nothing-given', { what: 'fuel_table' });
  const ordered = [...rows].sort((a, b) => a.quantity - b.quantity);
  for (const [index, { quantity }] of ordered.entries()) {
    if (quantity < 0 || quantity === ordered[index - 1]?.quantity) {
      throw new CoreError('fuel-table-bad', { reason: quantity < 0 ? 'negative' : 'repeated', quantity });
    }
  }
  return ordered;
}

/** Arm of this much fuel, on the straight line between the two rows of the table about it; never beyond its rows. */
export function fuelArmAt(ordered: readonly FuelArm[], quantity: number): number {
  const above = ordered.findIndex((row) => row.quantity >= quantity);
  const high = ordered[above];
  const low = ordered[above - 1] ?? high;
  if (high === undefined || low === undefined || quantity < low.quantity) {
    const [first, last] = [ordered[0]?.quantity ?? 0, ordered[ordered.length - 1]?.quantity ?? 0];
    throw new CoreError('fuel-outside-table', { quantity, low: first, high: last });
  }
  if (high.quantity === low.quantity) return high.arm;
  return low.arm + ((quantity - low.quantity) / (high.quantity - low.quantity)) * (high.arm - low.arm);
}

export interface TrackPoint {
  readonly fuel: number;
  readonly weight: number;
  readonly arm: number;
}

export interface BurnOff {
  readonly zeroFuelWeight: number;
  readonly zeroFuelArm: number;
  readonly fuelTable: readonly FuelArm[];
  readonly fuelStart: number;
  readonly fuelEnd: number;
  /** Equal parts of the burn; one point more than parts. */
  readonly steps: number;
  readonly weightPerUnit: number;
}

/** The loading from the starting fuel to the last, in equal parts. @source weight-balance-handbook, chapter 2; straight lines between the table's rows. */
export function burnTrack({ zeroFuelWeight, zeroFuelArm, fuelTable, fuelStart, fuelEnd, steps, weightPerUnit }: BurnOff): readonly TrackPoint[] {
  if (fuelEnd > fuelStart) {
    throw new CoreError('outside-range', {
      quantity: 'fuelEnd',
      unit: 'of fuel, no more than fuel_start',
      low: 0,
      high: fuelStart,
      received: fuelEnd,
    });
  }
  const ordered = fuelTableInOrder(fuelTable);
  return Array.from({ length: steps + 1 }, (_, index) => {
    const fuel = index === steps ? fuelEnd : fuelStart + ((fuelEnd - fuelStart) * index) / steps;
    // Empty tanks weigh nothing, so the table need not say where nothing is.
    const items = [{ weight: zeroFuelWeight, arm: zeroFuelArm }];
    if (fuel > 0) items.push({ weight: fuel * weightPerUnit, arm: fuelArmAt(ordered, fuel) });
    const { weight, arm } = totalLoading(items);
    return { fuel, weight, arm };
  });
}
