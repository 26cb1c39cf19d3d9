// Reader of the side on which to hold, as a controller or a chart words it.
import { ArgumentError } from '../registry/argumentError';
import { inWords, type CellValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { numberFromCell } from '../registry/readNumber';

/** A direction from the fix; or a compass point and the radial of the line on which to hold. */
export type HoldSide =
  { readonly kind: 'direction'; readonly degrees: number } | { readonly kind: 'onRadial'; readonly point: number; readonly radial: number };

const compassPoints = ['n', 'nne', 'ne', 'ene', 'e', 'ese', 'se', 'sse', 's', 'ssw', 'sw', 'wsw', 'w', 'wnw', 'nw', 'nnw'];
const degreesBetweenPoints = 360 / compassPoints.length;

/** "North-east" and "N E" are ne. */
function compassDegrees(words: string): number | undefined {
  const letters = words.replace(/[\s-]/g, '').replace(/north|south|east|west/g, (word) => word.charAt(0));
  const index = compassPoints.indexOf(letters);
  return index < 0 ? undefined : index * degreesBetweenPoints;
}

const onCircle = (degrees: number | undefined): number | undefined => (degrees !== undefined && degrees >= 0 && degrees <= 360 ? degrees : undefined);

function radialDegrees(words: string): number | undefined {
  const parts = /^(?:r|radial)[\s-]*(\d{1,3})$|^(\d{1,3})(?:\s*degrees?|°)?[\s-]*radial$/.exec(words);
  return parts === null ? undefined : onCircle(Number(parts[1] ?? parts[2]));
}

function sideInWords(words: string): HoldSide | undefined {
  const both = /^(.+?)\s+on\s+(?:the\s+)?(.+)$/.exec(words);
  if (both !== null) {
    const point = compassDegrees(both[1] ?? '');
    const radial = radialDegrees(both[2] ?? '');
    return point === undefined || radial === undefined ? undefined : { kind: 'onRadial', point, radial };
  }
  const degrees = compassDegrees(words) ?? radialDegrees(words);
  return degrees === undefined ? undefined : { kind: 'direction', degrees };
}

export function holdSide(help: string): Parameter<HoldSide> & { readonly shape: 'cell' } {
  const mustBe =
    'a compass point such as "NE" or "south", a radial such as "180 radial" or "R180", both as "W on 086 radial", or 0 to 360 degrees magnetic';
  /** "Hold west" is west; "hold" alone is nothing. */
  const withoutHold = (words: string): string => words.replace(/^hold(ing)?\s+/, '');
  const read = (raw: CellValue): HoldSide => {
    const degrees = onCircle(numberFromCell(raw));
    if (degrees !== undefined) return { kind: 'direction', degrees };
    const side = typeof raw === 'string' ? sideInWords(withoutHold(raw.trim().toLowerCase().replace(/\s+/g, ' '))) : undefined;
    if (side === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return side;
  };
  return { shape: 'cell', unit: 'degrees magnetic', mustBe, help, optional: undefined, read };
}
