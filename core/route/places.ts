// Places of a route: by name out of the pilot's lists, or by a position as it is written.
import { CoreError } from '../basics/errors';
import type { Named } from '../basics/named';
import type { Position } from '../navigation/geodesy';
import { readPosition } from '../navigation/position';

export interface ListedPlace {
  readonly named: Named;
  /** Undefined where it is missing or cannot be read. */
  readonly position: Position | undefined;
  readonly elevationFeet: number | undefined;
}

export interface Place {
  readonly name: string;
  readonly position: Position;
  readonly elevationFeet: number | undefined;
}

const samePosition = (one: Position | undefined, other: Position | undefined): boolean =>
  one?.latitudeDegrees === other?.latitudeDegrees && one?.longitudeDegrees === other?.longitudeDegrees;

/** A name that two lists give the same position is one place; with two positions nobody can know which is meant. */
function listed({ name, key }: Named, places: readonly ListedPlace[]): Place | undefined {
  const found = places.filter(({ named }) => named.key === key);
  const [first] = found;
  if (first === undefined) return undefined;
  if (found.some(({ position }) => !samePosition(position, first.position))) throw new CoreError('place-twice', { name });
  if (first.position === undefined) throw new CoreError('place-without-position', { name });
  return { name: first.named.name, position: first.position, elevationFeet: found.find((one) => one.elevationFeet !== undefined)?.elevationFeet };
}

/** Throws where the text is neither a name of the lists nor a position. */
export function placeOf(named: Named, places: readonly ListedPlace[]): Place {
  const found = listed(named, places);
  if (found !== undefined) return found;
  try {
    return { name: named.name, position: readPosition(named.name), elevationFeet: undefined };
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    // Words without a figure were meant for a name.
    throw /\d/.test(named.name) ? thrown : new CoreError('place-unknown', { name: named.name });
  }
}
