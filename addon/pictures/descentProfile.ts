// A descent as plain numbers: its bands along the track, the path flown, and where the names of its crossings find room.
import { widthOfText } from './svg';

export interface ProfileBand {
  readonly fromFeet: number;
  readonly toFeet: number;
  readonly groundspeedKnots: number;
  readonly nauticalMiles: number;
}

export interface ProfileCrossing {
  readonly name: string;
  /** From here along the track. */
  readonly atNauticalMiles: number;
  readonly altitudeFeet: number;
  readonly kind: 'at' | 'at or below' | 'at or above';
}

export interface DescentProfile {
  readonly bands: readonly ProfileBand[];
  /** Where the last band ends, from here. */
  readonly endNauticalMiles: number;
  readonly crossings: readonly ProfileCrossing[];
  /** Given where there is no "here": distances run from the start of the descent, and the fix it is made for lies so far on. */
  readonly fixNauticalMiles?: number;
}

export const area = { left: 52, right: 14, bottom: 60 };

export const thousands = (feet: number): string => String(Math.round(feet)).replace(/\B(?=(\d{3})+$)/g, ',');

const totalMiles = (bands: readonly ProfileBand[]): number => bands.reduce((total, { nauticalMiles }) => total + nauticalMiles, 0);

/** Start and end of each band along the track. */
export function bandPlaces({
  bands,
  endNauticalMiles,
}: DescentProfile): readonly (ProfileBand & { readonly startsAt: number; readonly endsAt: number })[] {
  let at = endNauticalMiles - totalMiles(bands);
  return bands.map((band) => {
    const startsAt = at;
    at += band.nauticalMiles;
    return { ...band, startsAt, endsAt: at };
  });
}

/** From here, level to the start, down the bands, and level on to the last thing there is to show. */
export function pathOf(profile: DescentProfile): readonly { readonly miles: number; readonly feet: number }[] {
  const places = bandPlaces(profile);
  const [first, last] = [places[0], places[places.length - 1]];
  if (first === undefined || last === undefined) return [];
  const farthest = Math.max(last.endsAt, profile.fixNauticalMiles ?? last.endsAt, ...profile.crossings.map(({ atNauticalMiles }) => atNauticalMiles));
  const start = first.startsAt > 0 ? [{ miles: 0, feet: first.fromFeet }] : [];
  const onward = farthest > last.endsAt ? [{ miles: farthest, feet: last.toFeet }] : [];
  return [
    ...start,
    { miles: first.startsAt, feet: first.fromFeet },
    ...places.map(({ endsAt, toFeet }) => ({ miles: endsAt, feet: toFeet })),
    ...onward,
  ];
}

export interface NamePlace {
  readonly crossing: ProfileCrossing;
  readonly x: number;
  readonly row: number;
}

/**
 * Names over the plot, each ending at the thread that hangs down from it. From left to right each takes the lowest row that neither a
 * name nor a thread reaches into, so that no thread runs through a name.
 */
export function namePlaces(crossings: readonly ProfileCrossing[], x: (miles: number) => number): readonly NamePlace[] {
  const taken: number[] = [];
  return [...crossings]
    .sort((one, other) => one.atNauticalMiles - other.atNauticalMiles)
    .map((crossing) => {
      const thread = x(crossing.atNauticalMiles);
      const end = Math.max(thread, area.left + widthOfText(crossing.name));
      const free = taken.findIndex((until) => end - widthOfText(crossing.name) > until);
      const row = free < 0 ? taken.length : free;
      for (let lower = 0; lower <= row; lower += 1) taken[lower] = end + 4;
      return { crossing, x: end, row };
    });
}

export const maxNameRows = 3;

export const rowsOf = (places: readonly NamePlace[]): number => places.reduce((most, { row }) => Math.max(most, row + 1), 0);

export function startWords({ fixNauticalMiles }: DescentProfile, miles: number): string {
  if (fixNauticalMiles === undefined) return miles < 0 ? `start ${(-miles).toFixed(1)} NM behind` : `start in ${miles.toFixed(1)} NM`;
  return fixNauticalMiles < 0 ? `start ${(-fixNauticalMiles).toFixed(1)} NM after the fix` : `start ${fixNauticalMiles.toFixed(1)} NM before the fix`;
}

export function describe(profile: DescentProfile): string {
  const places = bandPlaces(profile);
  const last = places[places.length - 1];
  const down =
    last === undefined
      ? ''
      : `From ${thousands(places[0]?.fromFeet ?? 0)} to ${thousands(last.toFeet)} feet, ${startWords(profile, places[0]?.startsAt ?? 0)}, down at ${last.endsAt.toFixed(1)} NM.`;
  const crossings = profile.crossings.map(
    ({ name, kind, altitudeFeet, atNauticalMiles }) => `${name} ${kind} ${thousands(altitudeFeet)} feet at ${atNauticalMiles.toFixed(1)} NM`,
  );
  return `${down}${crossings.length === 0 ? '' : ` Crossing: ${crossings.join('; ')}.`}`;
}
