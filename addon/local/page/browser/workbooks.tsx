// The workbooks of this browser: saved to a file, opened from one, begun, renamed, removed, and gone back to as they were before.
import { render } from 'preact';
import { withFormat } from '../../saved/fileFormat';
import { elementNamed } from '../elements';
import { goBackTo } from '../goBack';
import { notify, notifyFailure } from '../notices';
import type { StartedPage } from '../startPage';
import { addressOf, currentInfo, newWorkbookText } from './browserKeeper';
import { openFromFile, saveToFile } from './files';
import { addWorkbook, markFiled, textOf } from './shelf';
import { versionOf } from '../keeper';
import { showWorkbooksDialog } from './workbooksDialog';

const week = 7 * 24 * 60 * 60 * 1000;

/** What is in sight, as text; without a grid what is kept. */
async function textInSight(started: StartedPage | undefined): Promise<string> {
  if (started === undefined) return (await textOf(currentInfo()?.id ?? '')) ?? '';
  await started.live.settled();
  return JSON.stringify(withFormat(started.live.workbook.save()));
}

async function save(started: StartedPage | undefined): Promise<void> {
  const [text, info] = [await textInSight(started), currentInfo()];
  const saved = await saveToFile(info?.name ?? 'Workbook', text);
  if (saved === 'nowhere') return;
  if (info !== undefined) await markFiled(info.id, versionOf(text)).catch(() => undefined);
  const where = saved === 'file' ? 'Saved to the file.' : 'The browser was given the file, and puts it among your downloads.';
  notify(`${where} "Open a file" opens it again, here or in another browser; npm start -- --file, then its path, opens it on a computer with Node.`);
}

/** Saves what is here first, so that nothing is left behind. */
async function goTo(started: StartedPage | undefined, id: string): Promise<void> {
  await started?.autosave.saveNow();
  location.assign(addressOf(id));
}

const openFile = async (started: StartedPage | undefined, file: File): Promise<void> => goTo(started, (await openFromFile(file)).id);

function Strip({ started }: { readonly started: StartedPage | undefined }) {
  const dialog = (): Promise<void> =>
    showWorkbooksDialog({
      goTo: (id) => goTo(started, id),
      begin: async (name, text) => goTo(started, (await addWorkbook(name, text ?? newWorkbookText())).id),
      saveFirst: async () => started?.autosave.saveNow(),
      goBack: started && ((made) => goBackTo(started, made, 'the list under "Workbooks"')),
    });
  const chosen = ({ currentTarget }: { readonly currentTarget: HTMLInputElement }): void => {
    const [file] = currentTarget.files ?? [];
    if (file !== undefined) void openFile(started, file).catch(notifyFailure);
    // The same file may be chosen again.
    currentTarget.value = '';
  };
  return (
    <>
      <button id="save-file-button" type="button" onClick={() => void save(started).catch(notifyFailure)}>
        Save to a file
      </button>
      <button id="open-file-button" type="button" onClick={() => elementNamed('workbook-file').click()}>
        Open a file
      </button>
      <input id="workbook-file" type="file" accept=".json,application/json" aria-label="Workbook file" hidden onChange={chosen} />
      <button id="workbooks-button" type="button" onClick={() => void dialog().catch(notifyFailure)}>
        Workbooks
      </button>
    </>
  );
}

/** A browser may throw away what it keeps: after a week without a file, the page says so. */
function remind(started: StartedPage | undefined): void {
  const info = currentInfo();
  if (info === undefined || info.filed?.version === info.version || Date.now() - (info.filed?.at ?? info.begun) < week) return;
  const since = info.filed === undefined ? 'never' : `last on ${new Date(info.filed.at).toLocaleDateString('en-GB', { dateStyle: 'medium' })}`;
  const said = elementNamed('files-said').textContent ?? '';
  const sentence = `"${info.name}" was ${since === 'never' ? 'never saved' : `saved ${since}`} to a file. What only a browser keeps can be lost: with its data cleared, with the device, or when it runs short of room.`;
  notify(`${said} ${sentence}`.trim(), [{ label: 'Save to a file', chosen: () => void save(started).catch(notifyFailure) }]);
}

export function offerWorkbooks(started: StartedPage | undefined): void {
  render(<Strip started={started} />, elementNamed('keeper'));
  remind(started);
}
