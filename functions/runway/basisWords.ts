// What a table leaves out, or takes from a heavier aircraft, in the words of a brief; and the manual's own notes.
import type { TableBasis } from '../../core/runway/conditions';
import { oneLine } from '../registry/cellValues';
import { limitInWords } from '../registry/readNumber';
import { rounded } from '../registry/sharedWords';

export const uncountedTailwindInWords = (knots: number): string =>
  `${Number(knots.toPrecision(2))} kt of tailwind is not counted: corrections has no tailwind row`;

export const uncountedWarmthInWords = (celsius: number): string =>
  `the table gives no temperature and it is ${limitInWords(Math.max(1, Math.round(celsius)))} deg C warmer than standard, which no correction "above standard" counts`;

const longestNote = 120;
const noteInWords = (note: string): string => (note.length > longestNote ? `${note.slice(0, longestNote)}...` : note);

/** Behind a reason: "; figures of 2,300 lb, used for the lighter aircraft too; ...". */
export function basisInWords({ heavier, noWeight, noTemperature, notes }: TableBasis): string {
  const parts = [
    heavier === undefined
      ? ''
      : `figures of ${rounded(heavier.weight)}${heavier.unit === '' ? '' : ` ${heavier.unit}`}, used for the lighter aircraft too`,
    noWeight ? 'the table gives no weight, so its figures are taken at any' : '',
    noTemperature ? 'the table gives no temperature' : '',
    ...notes.map((note) => `note of the manual: ${noteInWords(oneLine(note))}`),
  ];
  return parts
    .filter((part) => part !== '')
    .map((part) => `; ${part}`)
    .join('');
}
