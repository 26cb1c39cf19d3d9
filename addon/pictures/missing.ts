// Why a picture is not drawn: a cell lacks its number, which the picture then says in its place; or nothing here can be drawn at all.
import { emptyPicture, type Sheet } from './svg';

/** A cell that does not hold what the picture needs. The message goes on from "Nothing to draw: ", without a full stop. */
export class Missing extends Error {}

/** The whole message is a sentence for the user. */
export class NotDrawn extends Error {}

export function orEmpty(sheet: Omit<Sheet, 'description'>, draw: () => string): string {
  try {
    return draw();
  } catch (thrown) {
    if (!(thrown instanceof Missing)) throw thrown;
    return emptyPicture({ ...sheet, description: '' }, `Nothing to draw: ${thrown.message}.`);
  }
}
