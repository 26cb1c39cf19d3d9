// Sets right in the finished file what the library gets wrong or has no option for: lines of a chart that other programs would
// round off, and notes too small for their text.
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

/** Without the word, LibreOffice draws a curve through the points: an outline that is not the aircraft's. */
const straightLines = (chart: string): string => chart.replace(/<c:smooth\b[^>]*\/>/g, '').replace(/<\/c:yVal>/g, '</c:yVal><c:smooth val="0"/>');

const charactersInLine = 34;
const linePoints = 13;
const noteWidthPoints = 190;

/** Each note as high as its text; texts in the order of the notes' boxes. */
function roomyNotes(boxes: string, texts: readonly string[]): string {
  let next = 0;
  return boxes.replace(
    /width:108pt;height:59\.25pt(.*?)<x:Anchor>(\d+),15,(\d+),2,\d+,31,\d+,4<\/x:Anchor>/gs,
    (_, between: string, column: string, row: string) => {
      const lines = (texts[next++] ?? '').split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / charactersInLine)), 1);
      // Columns and rows of the usual size are counted on; where they are wider, so is the note.
      const end = [Number(column) + 3, Number(row) + Math.ceil((lines * linePoints) / 15) + 1];
      return `width:${noteWidthPoints}pt;height:${lines * linePoints}pt${between}<x:Anchor>${column},15,${row},2,${end[0]},31,${end[1]},4</x:Anchor>`;
    },
  );
}

const notesIn = (comments: string): string[] =>
  [...comments.matchAll(/<comment\b.*?<\/comment>/gs)].map(([comment]) =>
    [...comment.matchAll(/<t\b[^>]*>(.*?)<\/t>/gs)].map(([, text = '']) => text).join(''),
  );

export function patchPackage(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const parts = unzipSync(bytes);
  const textOf = (path: string): string => strFromU8(parts[path] ?? new Uint8Array());
  for (const path of Object.keys(parts)) {
    if (/^xl\/charts\/chart\d+\.xml$/.test(path)) parts[path] = strToU8(straightLines(textOf(path)));
    const sheet = /^xl\/drawings\/vmlDrawing(\d+)\.vml$/.exec(path)?.[1];
    if (sheet !== undefined) parts[path] = strToU8(roomyNotes(textOf(path), notesIn(textOf(`xl/comments${sheet}.xml`))));
  }
  return new Uint8Array(zipSync(parts));
}
