// What the names and weights of stations tell of who sits and what lies where: seats, baggage, people in the other unit, loads in an odd order.
// Common practice, no source: each is a guess from names and sizes.
import { kilogramsFromPounds, poundsFromKilograms } from '../basics/units';

export interface StationEntry {
  readonly name: string;
  readonly weight: number;
  readonly arm: number;
}

export type WeightUnit = 'lb' | 'kg';

export type SeatDoubt =
  | { readonly kind: 'below-zero' }
  | { readonly kind: 'nobody' }
  | { readonly kind: 'light-pilot' | 'heavy-seat'; readonly weight: number; readonly unit: WeightUnit | undefined; readonly converted: number }
  | { readonly kind: 'all-light'; readonly others: number; readonly unit: WeightUnit };

const isBaggage = (name: string): boolean => /\b(bags?|baggage|luggage|cargo|freight)\b/i.test(name);
const inTheNose = (name: string): boolean => /\b(nose|front|fwd|forward)\b/i.test(name);
const behind = /\b(rear|back|aft|middle|mid|2nd|second|3rd|third)\b/i;
/** The seats from which an aircraft is flown, as people name them. */
const isFrontSeat = ({ name }: StationEntry): boolean =>
  /\b(front|pilots?|co-?pilots?|crew|(left|right) seats?)\b/i.test(name) && !behind.test(name) && !isBaggage(name);
const isSeat = (entry: StationEntry): boolean => isFrontSeat(entry) || (/\b(seats?|passengers?|pax)\b/i.test(entry.name) && !isBaggage(entry.name));
/** What is put in weighs something; what is taken out of the aircraft may stand with less than nothing. */
const isPutIn = (entry: StationEntry): boolean => isSeat(entry) || isBaggage(entry.name);

/** Nobody who flies weighs less than this part of the lightest loading of the envelope: 41 lb of 1,650 lb. */
const leastPilotShare = 0.025;
/** A light adult, a person as certification once took all of them (170 lb), and a heavy one, in kilograms. */
const [lightAdult, standardPerson, heavyPerson] = [50, 77, 150] as const;
/** People that a station can hold, by its name: two in front, three on a bench behind. */
const placesAt = (entry: StationEntry): number => (/\b(seats|passengers|crew|pax|bench)\b/i.test(entry.name) ? (isFrontSeat(entry) ? 2 : 3) : 1);

const kilogramsIn = (weight: number, unit: WeightUnit): number => (unit === 'kg' ? weight : kilogramsFromPounds(weight));
/** As if it had been typed in the other unit. */
const converted = (weight: number, unit: WeightUnit | undefined): number =>
  unit === 'kg' ? kilogramsFromPounds(weight) : poundsFromKilograms(weight);

const weightOf = (entries: readonly StationEntry[]): number => entries.reduce((sum, { weight }) => sum + weight, 0);
const heaviest = (entries: readonly StationEntry[]): number => Math.max(...entries.map(({ weight }) => weight));

/** Who flies weighs too little for an adult. */
function lightPilot(front: readonly StationEntry[], leastLoading: number, unit: WeightUnit | undefined): SeatDoubt | undefined {
  const weight = heaviest(front);
  const light = weight < leastPilotShare * leastLoading || (unit !== undefined && kilogramsIn(weight, unit) < lightAdult);
  return light ? { kind: 'light-pilot', weight, unit, converted: converted(weight, unit) } : undefined;
}

/**
 * In pounds, two seats in front no heavier than one standard person and everybody else lighter than an adult: one person with children, or
 * kilograms throughout. Children of less than this are children.
 */
function allLight(front: readonly StationEntry[], others: readonly StationEntry[], unit: WeightUnit | undefined): SeatDoubt | undefined {
  if (unit !== 'lb' || others.length === 0) return undefined;
  const isLight = ({ weight }: StationEntry): boolean => weight >= lightAdult && kilogramsIn(weight, unit) < lightAdult;
  const shared = front.every((entry) => placesAt(entry) > 1 && kilogramsIn(entry.weight, unit) < standardPerson);
  return shared && others.every(isLight) ? { kind: 'all-light', others: weightOf(others), unit } : undefined;
}

/** One doubt at the first of the front seats: one of several may be empty. */
function doubtOfPilot(entries: readonly StationEntry[], leastLoading: number, unit: WeightUnit | undefined): SeatDoubt | undefined {
  const occupied = entries.filter((entry) => isSeat(entry) && entry.weight > 0);
  const front = occupied.filter(isFrontSeat);
  if (front.length === 0) return entries.some((entry) => isFrontSeat(entry) && entry.weight < 0) ? undefined : { kind: 'nobody' };
  return (
    lightPilot(front, leastLoading, unit) ??
    allLight(
      front,
      occupied.filter((entry) => !isFrontSeat(entry)),
      unit,
    )
  );
}

/** One doubt or none for each row; `leastLoading` is the lightest weight of the envelope. */
export function doubtsOfSeats(entries: readonly StationEntry[], leastLoading: number, unit: WeightUnit | undefined): (SeatDoubt | undefined)[] {
  const first = entries.findIndex(isFrontSeat);
  const pilot = first === -1 ? undefined : doubtOfPilot(entries, leastLoading, unit);
  const tooHeavy = (entry: StationEntry): boolean =>
    unit !== undefined && isSeat(entry) && kilogramsIn(entry.weight, unit) > heavyPerson * placesAt(entry);
  return entries.map((entry, row) => {
    if (entry.weight < 0 && isPutIn(entry)) return { kind: 'below-zero' };
    if (tooHeavy(entry)) return { kind: 'heavy-seat', weight: entry.weight, unit, converted: converted(entry.weight, unit) };
    return row === first ? pilot : undefined;
  });
}

/** Front seats, then those behind, then baggage; undefined for anything else, and for baggage in the nose. */
function placeInCabin(entry: StationEntry): number | undefined {
  if (isFrontSeat(entry)) return 0;
  if (isSeat(entry)) return behind.test(entry.name) ? 1 : undefined;
  return isBaggage(entry.name) && !inTheNose(entry.name) ? 2 : undefined;
}

export type OrderDoubt = { readonly kind: 'swapped' } | { readonly kind: 'ahead-of-pilot'; readonly arm: number };

/**
 * Arms rise from the front seats to those behind and to the baggage. A row out of that order which its own weight, read as the arm, would put
 * in it has the two swapped; what lies ahead of the front seats in any case is told too.
 */
export function doubtOfOrder(entries: readonly StationEntry[], row: number): OrderDoubt | undefined {
  const entry = entries[row];
  const own = entry === undefined ? undefined : placeInCabin(entry);
  if (entry === undefined || own === undefined || entry.weight <= 0) return undefined;
  const others = entries.flatMap((other, index) => {
    const place = index === row ? undefined : placeInCabin(other);
    return place === undefined || place === own ? [] : [{ place, arm: other.arm }];
  });
  const fits = (arm: number): boolean => others.every(({ place, arm: other }) => (place < own ? arm >= other : arm <= other));
  if (fits(entry.arm)) return undefined;
  if (fits(entry.weight)) return { kind: 'swapped' };
  const front = others.filter(({ place }) => place === 0);
  const ahead = front.length > 0 && front.every(({ arm }) => entry.arm < arm);
  return ahead ? { kind: 'ahead-of-pilot', arm: Math.min(...front.map(({ arm }) => arm)) } : undefined;
}
