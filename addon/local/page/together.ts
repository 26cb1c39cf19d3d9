// Saves what this page holds together with what other windows have kept meanwhile, and shows here what they entered. Where both changed the same
// cells nothing is saved until somebody has answered.
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { layoutOf, withLayout } from '../saved/layout';
import { mergeWorkbooks, type CellFromThere, type Clash, type Merged, type Side } from '../saved/mergeWorkbooks';
import { ownCell, linesOf } from '../saved/plainBook';
import { withReadableNames } from '../saved/readableNames';
import { withTintsByWord } from '../saved/tintsByWord';
import { SaveError, type KeptFile } from './keeper';
import { newId } from './newId';

/** The workbook of the page. */
export interface PageBook {
  readonly read: () => IWorkbookData;
  /** Not where somebody is typing into a cell: what is typed there then would go over what it has not seen. */
  readonly isTyping: () => boolean;
  readonly write: (cells: readonly CellFromThere[]) => void;
}

/** Nothing was saved: the same cells were changed here and there. */
export class ClashError extends SaveError {
  constructor(readonly clashes: readonly Clash[]) {
    super('the same cells were changed here and in another window. Say which entries hold.', 'clash');
  }
}

export interface Together {
  /** Throws SaveError. */
  readonly save: () => Promise<void>;
  /** Another workbook in the place of this one. Throws SaveError. */
  readonly replaceBy: (data: IWorkbookData, copyFirst: boolean) => Promise<void>;
  /** Takes over what others have kept, where nothing waits here to be saved. Gives whether all of it is in sight now. */
  readonly look: () => Promise<boolean>;
  /** From now on these of the cells that both changed are this side's. */
  readonly answer: (clashes: readonly Clash[], side: Side) => void;
  /** Cells were put in, taken out or moved here: from now on this page's entries cannot be put together with others. */
  readonly moved: () => void;
  /** Whether others have kept what is not in sight here. */
  readonly isBehind: () => boolean;
}

const moveWords =
  'The file was changed elsewhere (another window or program), and here or there rows, columns or sheets were put in, taken out or moved, so that the entries cannot be put together.';

/** Others may save faster than this page puts together what they saved. */
const mostAttempts = 8;

/** The workbook with some cells as this page has them, which writes a look in its own way. */
function withCellsOf(data: IWorkbookData, page: IWorkbookData, cells: readonly CellFromThere[]): IWorkbookData {
  const sheets = structuredClone(data.sheets);
  for (const { sheetId, row, column } of cells) {
    const lines = ((sheets[sheetId] ??= {}).cellData ??= {}) as Record<number, Record<number, ICellData>>;
    (lines[row] ??= {})[column] = ownCell(page, linesOf(page.sheets[sheetId])[row]?.[column]);
  }
  return { ...data, sheets };
}

function togetherIn(merged: Merged): IWorkbookData {
  if (merged.kind === 'moved') throw new SaveError(moveWords, 'changed');
  if (merged.kind === 'clash') throw new ClashError(merged.clashes);
  return merged.data;
}

export function keepTogether(page: PageBook, file: KeptFile, opened: IWorkbookData): Together {
  let layout = layoutOf(opened);
  const answered = new Map<string, Side>();
  const read = (): IWorkbookData => withLayout(page.read(), layout);
  /** What this page has in common with what is kept. */
  let base = read();
  /** What is kept, where the page does not show all of it. */
  let kept: IWorkbookData | undefined;

  const withKept = (here: IWorkbookData): Merged =>
    kept === undefined ? { kind: 'merged', data: here, fromThere: [], beyondCells: false } : mergeWorkbooks({ base, here, there: kept }, answered);
  const readKept = async (): Promise<void> => {
    kept = withTintsByWord(withReadableNames(await file.read()));
  };
  const catchUp = (): void => {
    if (kept === undefined || page.isTyping()) return;
    const merged = withKept(read());
    if (merged.kind !== 'merged') return;
    if (merged.fromThere.length > 0) page.write(merged.fromThere);
    // The looks and widths of others come with the next loading; until then each save puts both together.
    base = withCellsOf(merged.beyondCells ? base : kept, read(), merged.fromThere);
    if (!merged.beyondCells) kept = undefined;
  };
  const attempt = async (): Promise<boolean> => {
    const here = read();
    const merged = withKept(here);
    // Nobody is asked about what others have changed again since.
    if (merged.kind !== 'merged' && (await file.isChanged())) {
      await readKept();
      return false;
    }
    const data = togetherIn(merged);
    try {
      await file.send(data);
    } catch (thrown) {
      if (!(thrown instanceof SaveError) || thrown.kind !== 'changed') throw thrown;
      await readKept();
      return false;
    }
    answered.clear();
    base = here;
    if (kept !== undefined) kept = data;
    catchUp();
    return true;
  };
  return {
    save: async () => {
      for (let count = 0; count < mostAttempts; count += 1) if (await attempt()) return;
      throw new SaveError('other windows save all the time. It tries again every few seconds.', 'passing');
    },
    replaceBy: async (data, copyFirst) => {
      if (kept !== undefined) throw new SaveError('another window has changed the file. Load it first.', 'refused');
      await file.send(data, copyFirst);
    },
    look: async () => {
      if (await file.isChanged()) await readKept();
      catchUp();
      return kept === undefined;
    },
    answer: (clashes, side) => clashes.forEach(({ key }) => answered.set(key, side)),
    moved: () => (layout = newId()),
    isBehind: () => kept !== undefined,
  };
}
