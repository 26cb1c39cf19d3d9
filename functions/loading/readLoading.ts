// Reads what a loading is made of besides its stations: tanks, the arms of their fuel, and the limits of weight and lateral balance.
import type { FuelArm } from '../../core/loading/balanceChange';
import { CoreError } from '../../core/basics/errors';
import type { WeightLimits } from '../../core/loading/flight';
import type { Tank } from '../../core/loading/tanks';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { labelledRows, type LabelledRow } from '../registry/readLabelledRows';
import { limitInWords, numberFromCell, numberInWords } from '../registry/readNumber';
import { plainWords } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';

export const mostFuel = 1_000_000;
export const furthestArm = 1_000_000;

export const tankRows = labelledRows({
  label: 'tank',
  columns: [
    { name: 'quantity on board', minimum: 0, maximum: mostFuel },
    { name: 'place in the order of burning', minimum: 1, maximum: 99 },
    { name: 'lateral arm', minimum: -furthestArm, maximum: furthestArm, mayBeBlank: true },
  ],
  help: 'Four columns: tank, usable quantity on board, place in the order of burning (tanks of one place burn together, the same from each), lateral arm (right positive, 0 on the centre line; while it is blank, lateral balance is UNKNOWN where there are lateral limits).',
});

export const tankArmRows = labelledRows({
  label: 'tank',
  columns: [
    { name: 'quantity in it', minimum: 0, maximum: mostFuel, mayBeBlank: true },
    { name: 'arm', minimum: -furthestArm, maximum: furthestArm },
  ],
  help: 'Three columns: tank, quantity in it, arm of that fuel, from the manual. One row for a tank of constant arm, with its usable fuel (or a blank) as the quantity; else two rows or more, straight lines between them, nothing beyond the last.',
});

export interface Limits extends WeightLimits {
  readonly left: number | undefined;
  readonly right: number | undefined;
}

export const noLimits: Limits = { zeroFuel: undefined, takeoff: undefined, landing: undefined, left: undefined, right: undefined };
const limitsMustBe =
  'five cells in a row: maximum zero-fuel, take-off and landing weight, each above 0, lateral limit left and, further right, right';

function readLimits(raw: unknown): Limits {
  const range = isRange(raw) ? (raw as readonly (readonly unknown[])[]) : [[raw]];
  const cells = range[0] ?? [];
  if (range.length !== 1 || cells.length !== 5) throw new ArgumentError(limitsMustBe, `a range of ${sizeInWords(range.length, cells.length)}`);
  const numbers = cells.map((cell, index) => {
    const value = numberFromCell(cell);
    const bad = value === undefined ? !isBlank(cell) : index < 3 && value <= 0;
    if (bad) throw new ArgumentError(limitsMustBe, numberInWords(cell), 1, index + 1);
    return value;
  });
  const [zeroFuel, takeoff, landing, left, right] = numbers;
  if ((left === undefined) !== (right === undefined)) throw new ArgumentError(`${limitsMustBe}, both lateral limits or none`, 'one of them');
  if (left !== undefined && right !== undefined && left >= right)
    throw new ArgumentError(limitsMustBe, `${limitInWords(left)} and ${limitInWords(right)}`, 1, 4);
  return { zeroFuel, takeoff, landing, left, right };
}

export const limitRow: Parameter<Limits> & { readonly shape: 'table' } = {
  shape: 'table',
  unit: 'row',
  mustBe: limitsMustBe,
  help: 'Five cells in a row: maximum zero-fuel weight, maximum take-off weight, maximum landing weight, lateral limits left and right. A blank is no such limit.',
  optional: undefined,
  read: readLimits,
};

const tankArmsMustBe = 'rows of tank, quantity in it, arm, each quantity of a tank once, from empty to what is on board';

function armsOf(name: string, quantity: number, rows: readonly LabelledRow[]): FuelArm[] {
  const bad = (got: string) => new NamedArgumentError('tank_arms', new ArgumentError(tankArmsMustBe, `${got} for ${inWords(name)}`));
  const [only] = rows;
  if (rows.length > 1 && rows.some(({ numbers: [at] }) => at === undefined)) throw bad('a blank quantity among several rows');
  const [full = quantity, constant = 0] = only?.numbers ?? [];
  // A tank of constant arm needs no row for empty; its one quantity is what it holds.
  const isConstant = rows.length === 1 && (full > 0 || only?.numbers[0] === undefined);
  const table = isConstant
    ? [...new Set([0, full])].map((at) => ({ quantity: at, arm: constant }))
    : rows.map(({ numbers: [at = 0, arm = 0] }) => ({ quantity: at, arm })).sort((one, other) => one.quantity - other.quantity);
  const [first, last] = [table[0], table[table.length - 1]];
  if (first === undefined || last === undefined) throw bad('no row');
  const again = table.find((row, index) => row.quantity === table[index + 1]?.quantity);
  if (again !== undefined) throw bad(`${limitInWords(again.quantity)} more than once`);
  if (quantity > 0 && (first.quantity > 0 || last.quantity < quantity)) {
    throw bad(`rows for ${limitInWords(first.quantity)} to ${limitInWords(last.quantity)} and ${limitInWords(quantity)} on board`);
  }
  return table;
}

export function tanksOf(rows: readonly LabelledRow[], arms: readonly LabelledRow[]): Tank[] {
  if (rows.length === 0) throw new CoreError('nothing-given', { what: 'tanks' });
  const keys = rows.map(({ name }) => plainWords(name));
  return rows.map(({ name, numbers: [quantity = 0, order = 1, lateralArm] }, index) => {
    const key = plainWords(name);
    if (keys.indexOf(key) < index)
      throw new NamedArgumentError('tanks', new ArgumentError(`${tankRows.mustBe}, each tank once`, `${inWords(name)} again`));
    return {
      name,
      quantity,
      order,
      lateralArm,
      arms: armsOf(
        name,
        quantity,
        arms.filter((row) => plainWords(row.name) === key),
      ),
    };
  });
}
