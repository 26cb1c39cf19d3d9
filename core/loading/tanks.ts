// Fuel in several tanks: which tank gives how much as it burns, and where the fuel that is left sits.
import { fuelArmAt, type FuelArm } from './balanceChange';
import type { LoadedItem } from './balance';

export interface Tank {
  readonly name: string;
  /** In the unit of the tank's arm table. */
  readonly quantity: number;
  /** Tanks burn in rising order; those of one order burn together, the same quantity from each. */
  readonly order: number;
  /** Arm against the quantity in this tank, rising, straight lines between. */
  readonly arms: readonly FuelArm[];
  /** Undefined where the owner gave none. */
  readonly lateralArm: number | undefined;
}

export const totalFuel = (tanks: readonly Tank[]): number => tanks.reduce((sum, { quantity }) => sum + quantity, 0);

/** Takes `amount` in equal parts from tanks that burn together; an empty one leaves its part to the others. */
function drainTogether(quantities: number[], members: readonly number[], amount: number): void {
  let left = amount;
  let open = members.filter((index) => (quantities[index] ?? 0) > 0);
  while (left > 0 && open.length > 0) {
    const part = Math.min(left / open.length, ...open.map((index) => quantities[index] ?? 0));
    for (const index of open) quantities[index] = (quantities[index] ?? 0) - part;
    left -= part * open.length;
    open = open.filter((index) => (quantities[index] ?? 0) > 1e-12);
  }
}

/** What is in each tank when `burned` is gone; never below zero. Common practice, no source: equal draw from tanks used together. */
export function quantitiesAfter(tanks: readonly Tank[], burned: number): number[] {
  const quantities = tanks.map(({ quantity }) => quantity);
  const orders = [...new Set(tanks.map(({ order }) => order))].sort((a, b) => a - b);
  let left = burned;
  for (const wanted of orders) {
    const members = tanks.map((_, index) => index).filter((index) => tanks[index]?.order === wanted);
    const there = members.reduce((sum, index) => sum + (quantities[index] ?? 0), 0);
    drainTogether(quantities, members, Math.min(left, there));
    left = Math.max(0, left - there);
  }
  return quantities;
}

/** The fuel left in each tank as a weight at an arm; an empty tank weighs nothing and needs no arm. */
export function fuelItems<Given extends Tank>(
  tanks: readonly Given[],
  burned: number,
  weightPerUnit: number,
): (LoadedItem & Pick<Given, 'lateralArm'>)[] {
  const quantities = quantitiesAfter(tanks, burned);
  return tanks
    .map(({ arms, lateralArm }: Given, index) => ({ quantity: quantities[index] ?? 0, arms, lateralArm }))
    .filter(({ quantity }) => quantity > 0)
    .map(({ quantity, arms, lateralArm }) => ({ weight: quantity * weightPerUnit, arm: fuelArmAt(arms, quantity), lateralArm }));
}

/**
 * How much has burned when a tank runs empty or passes a row of its arms: there the way of the centre of gravity bends.
 * When a tank has given so much, each of those that burn with it has given as much, or all it had.
 */
export function burnsAtBends(tanks: readonly Tank[]): number[] {
  return tanks.flatMap(({ quantity, order, arms }) => {
    const before = totalFuel(tanks.filter((other) => other.order < order));
    const together = tanks.filter((other) => other.order === order);
    const left = [0, ...arms.map((row) => row.quantity)].filter((each) => each < quantity);
    return left.map((each) => before + together.reduce((sum, other) => sum + Math.min(quantity - each, other.quantity), 0));
  });
}
