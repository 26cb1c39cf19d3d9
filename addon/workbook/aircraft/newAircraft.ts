// A new aircraft, as its owner types it: its row of the list in order, or everything of another one under the new name.
import { meaningOf } from '../pasted/numberText';
import type { CellValue } from '../snapshot';
import { withoutWeighings, type AircraftRows, type WholeAircraft } from './wholeAircraft';

interface Entry {
  readonly key: string;
  readonly label: string;
  /** Else a number. */
  readonly choices?: readonly string[];
  readonly needed: boolean;
}

/** In the order in which a manual gives them. */
export const newEntries: readonly Entry[] = [
  { key: 'weightIn', label: 'Weights are in', choices: ['lb', 'kg'], needed: true },
  { key: 'armIn', label: 'Arms are in', choices: ['in', 'mm', 'cm', 'm'], needed: true },
  { key: 'distanceIn', label: 'Distances are in', choices: ['ft', 'm'], needed: true },
  { key: 'fuelIn', label: 'Fuel is in', choices: ['US gal', 'L', 'lb', 'kg'], needed: true },
  { key: 'fuelWeight', label: 'Weight of one unit of fuel', needed: true },
  { key: 'usableFuel', label: 'Usable fuel, all tanks', needed: true },
  { key: 'crosswindShown', label: 'Demonstrated crosswind, kt', needed: false },
  { key: 'mostZeroFuelWeight', label: 'Maximum zero-fuel weight, if there is one', needed: false },
  { key: 'mostTakeoffWeight', label: 'Maximum take-off weight', needed: true },
  { key: 'mostLandingWeight', label: 'Maximum landing weight', needed: true },
  { key: 'cruiseTrueAirspeed', label: 'Cruise true airspeed, kt', needed: false },
  { key: 'cruiseFuelFlow', label: 'Cruise fuel flow, an hour', needed: false },
  { key: 'taxiFuel', label: 'Taxi fuel', needed: false },
  { key: 'climbFuel', label: 'Climb fuel, extra', needed: false },
];

export type TypedEntries = Readonly<Record<string, string | undefined>>;

export interface NewAircraft {
  readonly aircraft: WholeAircraft | undefined;
  /** Sentences: what cannot be taken as it was typed. */
  readonly problems: readonly string[];
}

/** A spreadsheet would make a formula, a number or a date of such a name, and no list could find it. */
const noName = /^\s*[=+\-@']|^[\d.,:/\s-]*$/;

function entryRead({ key, label, choices }: Entry, typed: TypedEntries): { readonly value?: CellValue; readonly problem?: string } {
  const text = (typed[key] ?? '').trim();
  if (text === '') return {};
  if (choices !== undefined) return { value: text };
  const meaning = meaningOf(text);
  if (meaning.kind === 'number' && meaning.unit === '' && meaning.marks === '') return { value: meaning.value };
  const why = meaning.kind === 'open' ? `can be ${meaning.thousands} or ${meaning.decimals}` : 'is no plain number';
  return { problem: `${label}: "${text}" ${why}. Type figures only, such as 2300 or 6.5.` };
}

/** `copied`: the lists of the aircraft that it begins as a copy of; its empty weight is its own, and is left blank. */
export function newAircraft(name: string, typed: TypedEntries, copied: AircraftRows | undefined): NewAircraft {
  const named = name.trim();
  const badName =
    named !== '' && noName.test(named)
      ? [`"${named}" can be taken for a number or a formula: a name needs a letter, and begins with a letter or a figure.`]
      : [];
  if (named === '' || badName.length > 0) return { aircraft: undefined, problems: badName };
  if (copied !== undefined) return { aircraft: { name: named, lists: withoutWeighings(copied) }, problems: [] };
  const read = newEntries.map((entry) => ({ entry, ...entryRead(entry, typed) }));
  const problems = read.flatMap(({ problem }) => problem ?? []);
  const lacking = read.filter(({ entry, value }) => entry.needed && value === undefined);
  if (problems.length > 0 || lacking.length > 0) return { aircraft: undefined, problems };
  const row = Object.fromEntries(read.flatMap(({ entry, value }) => (value === undefined ? [] : [[entry.key, value] as const])));
  return { aircraft: { name: named, lists: { aircraft: [row] } }, problems: [] };
}
