// What the copies of a trip's sheets are called.
import { sheetNames } from '../../sheets-templates/places';
import type { SheetMark } from './snapshot';

/** "Trip sheet 2" is copied to "Trip sheet 3"; a name that the user gave is kept whole. */
export function plainNameOf({ name, mark }: { readonly name: string; readonly mark: Pick<SheetMark, 'key'> }): string {
  const plain = sheetNames[mark.key];
  return name.startsWith(`${plain} `) && /^ \d+$/.test(name.slice(plain.length)) ? plain : name;
}
