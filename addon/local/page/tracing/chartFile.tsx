// A traced chart as a file of this machine: the picture as it was opened, with its hash, and all that was clicked, to compare or go on with later.
import { download } from '../download';
import { openPicture, type ChartPicture } from './chartPicture';
import { emptyDraft, frameOf, inputAxisOf, type Draft } from './draft';

const kind = 'rampwright-chart';
const version = 1;

/** In pieces: a call takes no more arguments than this at once. */
const piece = 0x8000;
function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (let first = 0; first < bytes.length; first += piece) text += String.fromCharCode(...bytes.subarray(first, first + piece));
  return btoa(text);
}
const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));

const chartFileText = ({ name, hash, bytes }: ChartPicture, draft: Draft): string =>
  JSON.stringify({ kind, version, picture: { name, sha256: hash, base64: base64Of(bytes) }, draft });

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value);
const isNumber = (value: unknown): boolean => typeof value === 'number' && Number.isFinite(value);

/** Whether a value has the form of another one: records by their entries, lists by their first, or anything where that one is empty. */
function hasFormOf(value: unknown, form: unknown): boolean {
  if (form === null) return value === null;
  if (Array.isArray(form))
    return Array.isArray(value) && (form.length === 0 || value.every((one) => form.some((own: unknown) => hasFormOf(one, own))));
  if (isRecord(form)) return isRecord(value) && Object.entries(form).every(([key, own]) => hasFormOf(value[key], own));
  return typeof form === 'number' ? isNumber(value) : typeof value === typeof form;
}

const place = { x: 0, y: 0 };
const draftForm = {
  ...emptyDraft,
  corners: [place, null],
  further: [{ at: place, value: { across: 0, up: 0 } }],
  curves: [{ value: '', lines: [[{ input: 0, figure: 0, afterGap: false }]], readings: [{ input: 0, figure: 0, how: '' }] }],
};

/** A place that is not clicked yet is null in a file. Axes that settle nothing are open again. */
function draftIn(value: Draft): Draft {
  const draft = { ...value, corners: value.corners.map((one) => one ?? undefined) };
  return { ...draft, settled: draft.settled && 'frame' in frameOf(draft) && inputAxisOf(draft) !== undefined };
}

async function chartInFile(text: string): Promise<{ readonly picture: ChartPicture; readonly draft: Draft }> {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    throw new Error('This file is no chart saved here: it cannot be read.');
  }
  const form = { kind, version, picture: { name: '', sha256: '', base64: '' }, draft: draftForm };
  if (!isRecord(content) || content['kind'] !== kind) throw new Error('This file is no chart saved here.');
  if (content['version'] !== version) throw new Error('This chart was saved by another version, which is not read here.');
  if (!hasFormOf(content, form)) throw new Error('This chart file is damaged, and nothing of it was taken.');
  const { picture: saved, draft } = content as unknown as { picture: { name: string; sha256: string; base64: string }; draft: Draft };
  const picture = await openPicture(saved.name, bytesOf(saved.base64));
  if (picture.hash !== saved.sha256) throw new Error('The picture in this file is not the one that was traced, and nothing of it was taken.');
  return { picture, draft: draftIn(draft) };
}

/** A picture, or a chart saved here. */
export async function openChartFile(file: File): Promise<{ readonly picture: ChartPicture; readonly draft?: Draft }> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const isText = bytes[0] === '{'.charCodeAt(0);
  return isText ? chartInFile(new TextDecoder().decode(bytes)) : { picture: await openPicture(file.name, bytes) };
}

/** Made when it is pressed: the whole picture is in it. */
export function SaveChart({ picture, draft }: { readonly picture: ChartPicture; readonly draft: Draft }) {
  const name = `${picture.name.replace(/\.[^.]*$/, '')}.chart.json`;
  return (
    <>
      <p class="choices">
        <button type="button" onClick={() => download(name, chartFileText(picture, draft), 'application/json')}>
          Save the picture with all that was traced
        </button>
      </p>
      <p>
        The note of the table names the picture and its hash; the workbook does not hold the picture itself. Keep that file ({name}) beside the
        manual.
      </p>
    </>
  );
}
