// What the copies of a trip's sheets and of their ranges are called.
import { sheetNames } from '../../sheets-templates/places';
import type { NewNames } from './formulaText';
import { freeName } from './insertionPlan';
import type { SheetMark } from './snapshot';

interface Copied {
  readonly name: string;
  readonly mark: Pick<SheetMark, 'key'>;
}

/** "Trip sheet 2" is copied to "Trip sheet 3"; a name that the user gave is kept whole. */
function plainNameOf({ name, mark }: Copied): string {
  const plain = sheetNames[mark.key];
  return name.startsWith(`${plain} `) && /^ \d+$/.test(name.slice(plain.length)) ? plain : name;
}

interface Taken {
  readonly sheets: Iterable<string>;
  readonly ranges: Iterable<string>;
}
const inSmallLetters = (names: Iterable<string>): Set<string> => new Set([...names].map((name) => name.toLowerCase()));

/** `ranges`: the names of the ranges of these sheets. `taken`: every name of the document. */
export function namesOfCopies(sheets: readonly Copied[], ranges: readonly string[], taken: Taken): NewNames {
  const [takenSheets, takenRanges] = [inSmallLetters(taken.sheets), inSmallLetters(taken.ranges)];
  return {
    sheets: new Map(sheets.map((one) => [one.name, freeName(plainNameOf(one), ' ', takenSheets)])),
    ranges: new Map(ranges.map((one) => [one, freeName(one.replace(/_\d+$/, ''), '_', takenRanges)])),
  };
}
