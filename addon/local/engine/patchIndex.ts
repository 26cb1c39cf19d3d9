// Two patches of how the engine notes the values of columns for later look-ups. As it comes,
// 1. it looks through every different value of the column for an older note of the row, though there hardly ever is one: the time of a column
//    grows with the square of its rows. Here it looks only where the row has been noted since the notes were last cleared.
// 2. it notes what is worked out along the way (row numbers by ROW, several columns joined) as if it stood in the cells at the formula's own place,
//    so that another formula which looks there finds what is not there, or misses what is. Here only cells are noted, and only cells looked up.
import type { ArrayValueObject, BaseReferenceObject } from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';

type Index = EngineModule['CELL_INVERTED_INDEX_CACHE'];

/** What the engine's own class has, as far as it is used here. */
interface ArrayParts {
  _batchOperatorValue(this: ArrayValueObject, ...given: unknown[]): void;
}

const patched = new WeakSet<object>();

/** Tells at any time whether the array that is being worked with holds the values of cells. */
function watchArrays(engine: EngineModule): () => boolean {
  const ofCells = new WeakSet<object>();
  let isOfCells = true;
  const references: BaseReferenceObject = engine.BaseReferenceObject.prototype;
  const { toArrayValueObject } = references;
  references.toArrayValueObject = function cellsAsArray(this: BaseReferenceObject, ...given) {
    const array = toArrayValueObject.apply(this, given);
    ofCells.add(array);
    return array;
  };
  const arrays = engine.ArrayValueObject.prototype as unknown as ArrayParts;
  const { _batchOperatorValue: work } = arrays;
  arrays._batchOperatorValue = function watched(this: ArrayValueObject, ...given): void {
    const before = isOfCells;
    isOfCells = ofCells.has(this);
    try {
      work.apply(this, given);
    } finally {
      isOfCells = before;
    }
  };
  return () => isOfCells;
}

export function patchIndex(engine: EngineModule): void {
  const indexes = Object.getPrototypeOf(engine.CELL_INVERTED_INDEX_CACHE) as Index;
  if (patched.has(indexes)) return;
  patched.add(indexes);
  const { set, shouldContinueBuildingCache, canUseCache, setContinueBuildingCache } = indexes;
  const isOfCells = watchArrays(engine);
  /** Rows noted, by the map that the engine keeps for the column; it makes new ones when it clears its notes. */
  const noted = new WeakMap<object, Set<number>>();
  let isNew = false;

  indexes.canUseCache = function onlyOfCells(...place) {
    return isOfCells() ? canUseCache.apply(this, place) : { rowsInCache: [], rowsNotInCache: [] };
  };
  indexes.setContinueBuildingCache = function onlyOfCells(...place): void {
    if (isOfCells()) setContinueBuildingCache.apply(this, place);
  };
  indexes.shouldContinueBuildingCache = function isToBeNoted(...place): boolean {
    return isNew || shouldContinueBuildingCache.apply(this, place);
  };
  indexes.set = function note(unitId, sheetId, column, value, row, isForced = false): void {
    // An answer is forced, and stands in its cell.
    if (!isForced && !isOfCells()) return;
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
