// The list of the workbooks that this browser keeps, with what can be done to each.
import { useState } from 'preact/hooks';
import { standingOf } from '../../saved/workbookText';
import { CopyRows } from '../copyRows';
import { showDialog } from '../dialog';
import { momentWords } from '../goBack';
import type { KeptCopy } from '../keeper';
import { currentInfo } from './browserKeeper';
import { backupsOf, keptWorkbooks, removeWorkbook, renameWorkbook, type KeptBackup, type KeptInfo } from './shelf';

export interface WorkbookActions {
  /** Leaves this page for the one of another workbook. */
  readonly goTo: (id: string) => Promise<void>;
  /** A new workbook, with the invented demo where there is no text. */
  readonly begin: (name: string, text?: string) => Promise<void>;
  readonly saveFirst: () => Promise<void>;
  /** Undefined where no workbook is in sight. */
  readonly goBack: ((made: number) => Promise<never>) | undefined;
}

interface Shown {
  readonly infos: readonly KeptInfo[];
  readonly backups: readonly KeptBackup[];
  readonly persisted: boolean;
}

async function shownNow(): Promise<Shown> {
  const here = currentInfo();
  const persisted = await (navigator.storage?.persisted?.() ?? Promise.resolve(false));
  return { infos: await keptWorkbooks(), backups: here === undefined ? [] : await backupsOf(here.id), persisted };
}

interface RowProps {
  readonly info: KeptInfo;
  readonly actions: WorkbookActions;
  readonly run: (work: () => Promise<unknown>) => void;
}

function filedWords({ filed, version }: KeptInfo): string {
  if (filed === undefined) return 'never saved to a file';
  return `saved to a file ${momentWords(filed.at)}${filed.version === version ? '' : ', changed since'}`;
}

function Rename({ info, run, done }: Pick<RowProps, 'info' | 'run'> & { readonly done: () => void }) {
  const [name, setName] = useState(info.name);
  return (
    <p class="choices">
      <input aria-label="New name" value={name} maxLength={80} onInput={({ currentTarget }) => setName(currentTarget.value)} />
      <button type="button" onClick={() => run(() => renameWorkbook(info.id, name).then(done))}>
        Take this name
      </button>
      <button type="button" onClick={done}>
        Cancel
      </button>
    </p>
  );
}

function Remove({ info, run, done }: Pick<RowProps, 'info' | 'run'> & { readonly done: () => void }) {
  return (
    <p class="choices">
      <span>Gone for good, with its older copies:</span>
      <button type="button" onClick={() => run(() => removeWorkbook(info.id))}>
        Remove "{info.name}"
      </button>
      <button type="button" onClick={done}>
        Keep it
      </button>
    </p>
  );
}

function Row({ info, actions, run }: RowProps) {
  const [asking, ask] = useState<'' | 'name' | 'remove'>('');
  const isHere = info.id === currentInfo()?.id;
  const done = (): void => ask('');
  return (
    <li>
      <p>
        <b>{info.name}</b> {isHere && '(open here)'}
        <br />
        Saved {momentWords(info.saved)}; {filedWords(info)}
      </p>
      {asking === '' && (
        <p class="choices">
          {!isHere && (
            <button type="button" onClick={() => run(() => actions.goTo(info.id))}>
              Open
            </button>
          )}
          <button type="button" onClick={() => ask('name')}>
            Rename
          </button>
          {!isHere && (
            <button type="button" onClick={() => ask('remove')}>
              Remove
            </button>
          )}
        </p>
      )}
      {asking === 'name' && <Rename info={info} run={run} done={done} />}
      {asking === 'remove' && <Remove info={info} run={run} done={done} />}
    </li>
  );
}

function Backups({ backups, actions, run }: Pick<Shown, 'backups'> & Pick<RowProps, 'actions' | 'run'>) {
  const name = currentInfo()?.name ?? 'Workbook';
  if (backups.length === 0) return null;
  const { goBack } = actions;
  const open = ({ made }: KeptCopy) => {
    const text = backups.find((one) => one.made === made)?.text;
    return (
      <button type="button" onClick={() => run(() => actions.begin(`${name}, copy of ${momentWords(made)}`, text))}>
        Open it beside this one
      </button>
    );
  };
  return (
    <details>
      <summary>Older copies of "{name}"</summary>
      <p>
        As it was before the first change of each day. The ten newest are kept, and of those before them one a week. Whoever goes back loses nothing:
        what stands here now becomes a copy first.
      </p>
      <CopyRows
        copies={backups.map(({ made, text }) => ({ made, standing: standingOf(text) }))}
        goBack={goBack && ((made) => run(() => goBack(made)))}
        others={open}
      />
    </details>
  );
}

function Dialog({ first, actions, close }: { readonly first: Shown; readonly actions: WorkbookActions; readonly close: () => void }) {
  const [shown, setShown] = useState(first);
  const [failed, setFailed] = useState('');
  const run = (work: () => Promise<unknown>): void => {
    work()
      .then(shownNow)
      .then((now) => {
        setShown(now);
        setFailed('');
      })
      .catch((thrown: unknown) => setFailed(`Not done: ${thrown instanceof Error ? thrown.message : String(thrown)}`));
  };
  return (
    <>
      <h1>Workbooks in this browser</h1>
      <ul>
        {shown.infos.map((info) => (
          <Row key={`${info.id} ${info.name}`} info={info} actions={actions} run={run} />
        ))}
      </ul>
      <Backups backups={shown.backups} actions={actions} run={run} />
      <p>
        {shown.persisted
          ? 'This browser has promised to keep them until you clear its data.'
          : 'This browser may throw them away when it runs short of room, or after weeks without a visit.'}{' '}
        A file that you saved is safe from that. Nothing is sent anywhere.
      </p>
      <p role="status">{failed}</p>
      <p class="choices">
        <button type="button" onClick={() => run(() => actions.begin('Workbook'))}>
          New workbook, with the invented demo
        </button>
        <button type="button" onClick={close}>
          Close
        </button>
      </p>
    </>
  );
}

export async function showWorkbooksDialog(actions: WorkbookActions): Promise<void> {
  await actions.saveFirst().catch(() => undefined);
  const first = await shownNow();
  showDialog('Workbooks in this browser', (close) => <Dialog first={first} actions={actions} close={close} />);
}
