// Which part of a picture is seen, and how large.
import type { Place } from '../../../tracing/greyPicture';

export interface View {
  /** Screen pixels of a pixel of the picture. */
  readonly scale: number;
  /** Where the picture's corner is on the screen. */
  readonly x: number;
  readonly y: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

export const toScreen = ({ scale, x, y }: View, place: Place): Place => ({ x: x + (place.x + 0.5) * scale, y: y + (place.y + 0.5) * scale });
export const toPicture = ({ scale, x, y }: View, place: Place): Place => ({ x: (place.x - x) / scale - 0.5, y: (place.y - y) / scale - 0.5 });

/** Undefined while there is no room yet. */
export function fitted(room: Size, picture: Size): View | undefined {
  if (room.width === 0 || room.height === 0) return undefined;
  const scale = Math.min(room.width / picture.width, room.height / picture.height);
  return { scale, x: (room.width - picture.width * scale) / 2, y: (room.height - picture.height * scale) / 2 };
}

const [smallest, largest] = [0.05, 12];

/** Larger or smaller about a place of the screen, which stays where it is. */
export function zoomed(view: View, factor: number, about: Place): View {
  const scale = Math.min(Math.max(view.scale * factor, smallest), largest);
  const part = scale / view.scale;
  return { scale, x: about.x - (about.x - view.x) * part, y: about.y - (about.y - view.y) * part };
}
