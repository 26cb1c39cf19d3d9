// The last change that a section made, to be taken back as long as nobody changed the same cells since.
import { turnedRound, type CellsChanged, type RowsMoved } from '../workbook/cellChanges';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import type { PanelHost } from './host';

export interface LastChange {
  readonly what: string;
  readonly changes: readonly CellsChanged[];
  /** Rows that were put in for it, with the keys as they are since. */
  readonly rowsIn?: RowsMoved | undefined;
}

interface TakeBackProps {
  readonly host: PanelHost;
  readonly asking: Asking;
  readonly last: LastChange;
  /** Looks at the workbook anew. */
  readonly onDone: () => Promise<void>;
}

export function TakeBack({ host, asking, last, onDone }: TakeBackProps) {
  const takeBack = async (): Promise<string> => {
    await host.ask('changeCells', { changes: turnedRound(last.changes), ...(last.rowsIn && { rowsOut: last.rowsIn }) });
    await onDone();
    return `Taken back: ${last.what}. Every cell holds what it held before.${last.rowsIn === undefined ? '' : ' The rows that were put in are out again.'}`;
  };
  return (
    <p>
      <AskButton look="wide" asking={asking} ask={() => asking.run('Putting back what was there.', takeBack)}>
        Undo: {last.what}
      </AskButton>
    </p>
  );
}
