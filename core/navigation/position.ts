// Reads a position as people write it: a latitude and a longitude, in decimals or in degrees, minutes and seconds.
// What can be read in two ways is refused, since a position in the wrong place looks as good as the right one.
import { CoreError, type CoreErrorDetails } from '../basics/errors';
import type { Position } from './geodesy';

type Axis = 'latitude' | 'longitude';

const largestDegrees: Record<Axis, number> = { latitude: 90, longitude: 180 };
/** Digits of the degrees: all of them where minutes follow without a gap, else at most. @source icao-4444, item 15; iso-6709. */
const degreeDigits: Record<Axis, number> = { latitude: 2, longitude: 3 };
const axisOfLetter: Readonly<Record<string, Axis>> = { N: 'latitude', S: 'latitude', E: 'longitude', W: 'longitude' };

/** One coordinate as written: its figures, and whether it is north or east. */
interface Written {
  readonly axis: Axis;
  readonly figures: string;
  readonly negative: boolean;
}

class Unreadable extends Error {
  readonly reason: CoreErrorDetails['position-unreadable']['reason'];
  constructor(reason: CoreErrorDetails['position-unreadable']['reason']) {
    super(reason);
    this.reason = reason;
  }
}

/** Capitals; the typographer's marks, blanks and minus signs as ASCII ones; decimal commas as points. */
function plainText(text: string): string {
  const ascii = text
    .trim()
    .toUpperCase()
    .replace(/[\u00ba\u02da]/g, '\u00b0')
    .replace(/[\u2032\u2018\u2019\u02b9\u02bc\u00b4`]/g, "'")
    .replace(/[\u2033\u201c\u201d\u02ba]|''/g, '"')
    .replace(/[\u2212\u2010\u2011\u2013]/g, '-')
    .replace(/\s+/g, ' ');
  // Beside a decimal point a comma can only divide; without one, a comma tight between digits is the decimal mark.
  return ascii.includes('.') ? ascii : ascii.replace(/(\d),(?=\d)/g, '$1.');
}

const decimal = /^(\d{1,3}(?:\.\d+)?) ?\u00b0?$/;
const marked = /^(\d{1,3}) ?\u00b0 ?(\d{1,2}(?:\.\d+)?)(?: ?'? ?$| ?' ?(\d{1,2}(?:\.\d+)?) ?"? ?$)/;
const divided = [' ', ':', '-'].map((gap) => new RegExp(`^(\\d{1,3})${gap}(\\d{1,2}(?:\\.\\d+)?)(?:${gap}(\\d{1,2}(?:\\.\\d+)?))?$`));

/** Degrees and minutes, and perhaps seconds, without gaps: 3124, 312436, 3124.6. */
function packedParts(figures: string, axis: Axis): string[] | undefined {
  const whole = /^\d+/.exec(figures)?.[0].length ?? 0;
  const digits = degreeDigits[axis];
  if (!/^\d+(\.\d+)?$/.test(figures) || (whole !== digits + 2 && whole !== digits + 4)) return undefined;
  const minutes = figures.slice(digits, digits + 2);
  const degrees = figures.slice(0, digits);
  return whole === digits + 2 ? [degrees, figures.slice(digits)] : [degrees, minutes, figures.slice(digits + 2)];
}

/** Degrees, then minutes and seconds where they are given, as text. */
function partsOf({ axis, figures }: Written, packed: boolean): string[] {
  const found = [decimal, marked, ...divided].map((form) => form.exec(figures)).find((match) => match !== null);
  const parts = found?.slice(1).filter((part) => part !== undefined) ?? (packed ? packedParts(figures, axis) : undefined);
  const wholeDegrees = parts?.[0]?.split('.')[0] ?? '';
  const fractionInside = parts?.slice(0, -1).some((part) => part.includes('.')) ?? false;
  if (parts === undefined || fractionInside || wholeDegrees.length > degreeDigits[axis]) throw new Unreadable(`${axis}-form`);
  return parts;
}

function degreesOf({ axis, negative }: Written, parts: readonly string[]): number {
  const [degrees = 0, minutes = 0, seconds = 0] = parts.map(Number);
  const total = degrees + (minutes * 60 + seconds) / 3600;
  if (minutes >= 60 || seconds >= 60 || total > largestDegrees[axis]) throw new Unreadable(`${axis}-range`);
  return negative && total !== 0 ? -total : total;
}

const before = /^([NSEW])([^A-Z]+?)[,;/ ]*([NSEW])([^A-Z]+)$/;
const behind = /^([^A-Z]+)([NSEW])[,;/ ]*([^A-Z]+)([NSEW])$/;

/** Two coordinates with hemisphere letters, in either order. */
function lettered(text: string): Written[] {
  const [, letter1 = '', figures1 = '', letter2 = '', figures2 = ''] = before.exec(text) ?? [];
  const [, figures3 = '', letter3 = '', figures4 = '', letter4 = ''] = behind.exec(text) ?? [];
  const pairs =
    letter1 === ''
      ? [
          [letter3, figures3],
          [letter4, figures4],
        ]
      : [
          [letter1, figures1],
          [letter2, figures2],
        ];
  const coordinates = pairs.map(([letter = '', figures = '']) => ({
    axis: axisOfLetter[letter] ?? 'latitude',
    figures: figures.replace(/^ +|[ ,]+$/g, ''),
    negative: letter === 'S' || letter === 'W',
  }));
  if (new Set(coordinates.map(({ axis }) => axis)).size !== 2) throw new Unreadable('letters');
  if (coordinates.some(({ figures }) => /^[+-]/.test(figures))) throw new Unreadable('sign-and-letter');
  return coordinates;
}

/** Both signed and of full width, as ISO 6709 has it; else -31-41 might be one coordinate. */
const joined = /^([+-](?:\d\d){1,3}(?:\.\d+)?)([+-]\d(?:\d\d){1,3}(?:\.\d+)?)\/?$/;

/** Two coordinates without letters, latitude first. */
function signed(text: string): { readonly coordinates: Written[]; readonly bothSigned: boolean; readonly anySigned: boolean } {
  const pieces = joined.exec(text)?.slice(1) ?? splitUnlettered(text);
  const signs = pieces.map((piece) => /^[+-]/.test(piece));
  const coordinates = pieces.map((piece, index) => {
    const figures = piece.replace(/^[+-]/, '');
    if (/[+-]/.test(figures)) throw new Unreadable('ambiguous');
    return { axis: index === 0 ? ('latitude' as const) : ('longitude' as const), figures, negative: piece.startsWith('-') };
  });
  return { coordinates, bothSigned: signs.every(Boolean), anySigned: signs.some(Boolean) };
}

function splitUnlettered(text: string): string[] {
  const pieces = text.split(/ ?[,;] ?/);
  if (pieces.length > 2) throw new Unreadable('not-two');
  if (pieces.length === 2) return pieces;
  const secondSigned = /^(.+?) ([+-].+)$/.exec(text);
  if (secondSigned !== null) return secondSigned.slice(1);
  const words = text.split(' ');
  if (words.length < 2) throw new Unreadable('not-two');
  // Otherwise two bare numbers may be the degrees and minutes of one coordinate.
  const whole = words[0]?.includes('.') === true || words.every((word) => word.includes('\u00b0'));
  if (words.length > 2 || !whole) throw new Unreadable('ambiguous');
  return words;
}

function coordinatesOf(text: string): { readonly written: Written; readonly parts: string[] }[] {
  if (/[A-Z]/.test(text)) return lettered(text).map((written) => ({ written, parts: partsOf(written, true) }));
  const { coordinates, bothSigned, anySigned } = signed(text);
  const read = coordinates.map((written) => ({ written, parts: partsOf(written, bothSigned) }));
  // Minutes without a letter or a sign: nothing says which side of the equator and of Greenwich is meant.
  if (!anySigned && read.some(({ parts }) => parts.length > 1)) throw new Unreadable('ambiguous');
  return read;
}

/** The position that a text says; throws where it says none, or more than one. @source iso-6709; icao-4444, item 15. */
export function readPosition(text: string): Position {
  try {
    const read = coordinatesOf(plainText(text)).map(({ written, parts }) => ({ axis: written.axis, degrees: degreesOf(written, parts) }));
    const along = (axis: Axis): number => read.find((coordinate) => coordinate.axis === axis)?.degrees ?? 0;
    return { latitudeDegrees: along('latitude'), longitudeDegrees: along('longitude') };
  } catch (thrown) {
    throw thrown instanceof Unreadable ? new CoreError('position-unreadable', { text, reason: thrown.reason }) : thrown;
  }
}
