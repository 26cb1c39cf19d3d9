// Which sheets the panel is given where it asks for what the user looks at.
import { asOfName } from '../../sheets-templates/asOf';
import type { NameSnapshot, SheetMark } from './snapshot';

/** The sheet in sight, and the one with the day on which everything is judged: that of its own set, where it has one. */
export function visibleSheets(shown: string, marks: ReadonlyMap<string, SheetMark>, names: readonly NameSnapshot[]): Set<string> {
  const set = marks.get(shown)?.set;
  const ofSet = set === undefined ? [] : [...marks.values()].filter((mark) => mark.set === set);
  const name = ofSet.map((mark) => mark.names[asOfName]).find((one) => one !== undefined) ?? asOfName;
  const day = names.find((one) => one.name === name);
  return new Set(day === undefined ? [shown] : [shown, day.sheet]);
}
