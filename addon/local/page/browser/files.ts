// The workbook as a file of the user's, out of this browser and back in: the very text that the server's file has.
import { standingOf } from '../../saved/workbookText';
import { download } from '../download';
import { addWorkbook, type KeptInfo } from './shelf';

const mediaType = 'application/json';
const largest = 64 * 1024 * 1024;

/** A file's name everywhere. */
export const fileNameOf = (name: string): string => `${name.replace(/[^\p{L}\p{N} ._-]/gu, '-').trim() || 'Workbook'}.json`;

interface FileToWrite {
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
}
type SavePicker = (options: {
  readonly suggestedName: string;
  readonly types: readonly { readonly description: string; readonly accept: Readonly<Record<string, readonly string[]>> }[];
}) => Promise<FileToWrite>;

/** Not in every browser. */
const picker = (): SavePicker | undefined => (window as { readonly showSaveFilePicker?: SavePicker }).showSaveFilePicker;

export type SavedTo = 'file' | 'download' | 'nowhere';

/** To where the user says, where the browser can ask; else handed to the browser as a download. */
export async function saveToFile(name: string, text: string): Promise<SavedTo> {
  const ask = picker();
  const suggestedName = fileNameOf(name);
  if (ask === undefined) {
    download(suggestedName, text, mediaType);
    return 'download';
  }
  try {
    const file = await ask.call(window, { suggestedName, types: [{ description: 'Rampwright workbook', accept: { [mediaType]: ['.json'] } }] });
    const writing = await file.createWritable();
    await writing.write(text);
    await writing.close();
    return 'file';
  } catch (thrown) {
    if (thrown instanceof DOMException && thrown.name === 'AbortError') return 'nowhere';
    throw thrown;
  }
}

/** Beside the workbooks that are there. Throws a sentence, with nothing changed. */
export async function openFromFile(file: File): Promise<KeptInfo> {
  if (file.size > largest) throw new Error(`"${file.name}" is larger than any workbook of this program. Nothing was changed.`);
  const text = await file.text();
  if (standingOf(text) === 'damaged') throw new Error(`"${file.name}" is not a whole workbook of this program. Nothing was changed.`);
  return addWorkbook(file.name.replace(/\.json$/i, ''), text);
}
