// What a form of the panel knows and does: reads the workbook, writes what is typed one entry after another, and reads again until the answers are
// there. What is shown as an answer is never older than the last entry.
import { useEffect, useRef, useState } from 'preact/hooks';
import { contentsOf, turnedRound, withContent, type CellContent, type CellsChanged } from '../workbook/cellChanges';
import { readTyped } from '../workbook/pocket/typedEntry';
import type { FormCell } from '../workbook/pocket/snapshotForm';
import type { CellPlace, WorkbookSnapshot } from '../workbook/snapshot';
import type { Outcome } from './asking';
import type { PanelHost } from './host';
import { localTime } from './localToday';
import { readAnswers } from './sheetReading';

export interface SheetRead {
  readonly workbook: WorkbookSnapshot;
  /** Of the user's clock. */
  readonly at: string;
  /** Its answers belong to its entries; else only the entries may be shown. */
  readonly isAnswered: boolean;
}

const reasonOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

const withCell = (workbook: WorkbookSnapshot, sheet: string, place: CellPlace, content: CellContent): WorkbookSnapshot => ({
  ...workbook,
  sheets: workbook.sheets.map((one) => (one.name === sheet ? withContent(one, place, content) : one)),
});

/** The workbook as the form shows it, and a line of things to do with it: when the last of them is done, all is read once more. */
function useReading(host: PanelHost) {
  const [read, setRead] = useState<SheetRead>();
  const [outcome, setOutcome] = useState<Outcome>();
  const [waiting, setWaiting] = useState(0);
  /** As shown; state is drawn a moment later. */
  const known = useRef<SheetRead>();
  const [line, open] = [useRef(Promise.resolve()), useRef(0)];
  const show = (next: SheetRead): void => {
    known.current = next;
    setRead(next);
  };
  const told = (thrown: unknown): void => setOutcome({ kind: 'refused', text: reasonOf(thrown) });
  const look = async (): Promise<void> => show({ workbook: await readAnswers(host), at: localTime(), isAnswered: true });
  const queue = (work: () => Promise<void>): void => {
    open.current += 1;
    setWaiting(open.current);
    if (known.current !== undefined) show({ ...known.current, isAnswered: false });
    line.current = line.current
      .then(work)
      .catch(told)
      // Several entries typed in a row are written first.
      .then(() => (open.current === 1 ? look() : undefined))
      .catch(told)
      .finally(() => {
        open.current -= 1;
        setWaiting(open.current);
      });
  };
  const readAgain = (): void => {
    if (open.current === 0) queue(() => Promise.resolve());
  };
  return { read, outcome, setOutcome, isWorking: waiting > 0, known, show, queue, readAgain };
}

export function useSheetForm(host: PanelHost) {
  const { read, outcome, setOutcome, isWorking, known, show, queue, readAgain } = useReading(host);
  const [last, setLast] = useState<readonly CellsChanged[]>();
  const change = (changes: readonly CellsChanged[], takesBack: boolean): void => {
    for (const { sheet, row, column, after } of changes)
      if (known.current !== undefined)
        show({ ...known.current, workbook: withCell(known.current.workbook, sheet, { row, column }, after[0]?.[0] ?? '') });
    setOutcome(undefined);
    queue(async () => {
      await host.ask('changeCells', { changes });
      setLast(takesBack ? undefined : changes);
    });
  };
  const write = (sheet: string, cells: readonly (CellPlace & { readonly content: CellContent })[]): void => {
    const snapshot = known.current?.workbook.sheets.find(({ name }) => name === sheet);
    if (snapshot === undefined) return;
    const changeOf = ({ row, column, content }: CellPlace & { readonly content: CellContent }): CellsChanged => ({
      ...{ sheet, row, column },
      before: [contentsOf(snapshot, row, column, 1)],
      after: [[content]],
    });
    change(cells.map(changeOf), false);
  };
  const submit = (sheet: string, cell: FormCell, text: string): void => {
    const typed = readTyped(text, cell);
    if ('refusal' in typed) setOutcome({ kind: 'refused', text: typed.refusal });
    else write(sheet, [{ row: cell.row, column: cell.column, content: typed.content }]);
  };
  const empty = (sheet: string, cells: readonly CellPlace[]): void =>
    write(
      sheet,
      cells.map(({ row, column }) => ({ row, column, content: '' })),
    );
  // Somebody who comes back from the grid may have changed anything there.
  useEffect(() => {
    readAgain();
    window.addEventListener('focus', readAgain);
    return () => window.removeEventListener('focus', readAgain);
  }, []);
  return { read, outcome, isWorking, readAgain, submit, empty, undo: last && (() => change(turnedRound(last), true)) };
}
