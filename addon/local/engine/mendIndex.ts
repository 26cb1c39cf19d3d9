// A mend of how the engine notes each answer for later look-ups. As it comes, it looks through every different value of the
// column for an older note of the row, though there hardly ever is one: the time of a column grows with the square of its
// rows. Here it looks only where the row has been noted since the notes were last cleared.
import type { EngineModule } from './engineValues';

type Index = EngineModule['CELL_INVERTED_INDEX_CACHE'];

const mended = new WeakSet<object>();

export function mendIndex(engine: EngineModule): void {
  const indexes = Object.getPrototypeOf(engine.CELL_INVERTED_INDEX_CACHE) as Index;
  if (mended.has(indexes)) return;
  mended.add(indexes);
  const { set, shouldContinueBuildingCache } = indexes;
  /** Rows noted, by the map that the engine keeps for the column; it makes new ones when it clears its notes. */
  const noted = new WeakMap<object, Set<number>>();
  let isNew = false;

  indexes.shouldContinueBuildingCache = function isToBeNoted(...place): boolean {
    return isNew || shouldContinueBuildingCache.apply(this, place);
  };
  indexes.set = function note(unitId, sheetId, column, value, row, isForced = false): void {
    const before = this.getCellValuePositions(unitId, sheetId, column);
    // The engine's own way drops the older note of the row first; without one, adding is all it comes to.
    isNew = isForced && before !== undefined && noted.get(before)?.has(row) === false;
    set.call(this, unitId, sheetId, column, value, row, isForced && !isNew);
    isNew = false;
    const notes = before ?? this.getCellValuePositions(unitId, sheetId, column);
    if (notes === undefined) return;
    const rows = noted.get(notes) ?? new Set();
    rows.add(row);
    noted.set(notes, rows);
  };
}
