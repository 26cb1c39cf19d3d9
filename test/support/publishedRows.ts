// Reads the transcribed tables of test/published: lines of
//   id | FUNCTION | arguments; separated; so | result column | value as printed | tolerance | reason for it | source | status
// with `# rows: n` and remarks in lines that start with #. Without a tolerance it is half the last printed digit.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export interface PublishedRow {
  readonly file: string;
  readonly id: string;
  readonly functionName: string;
  readonly arguments: readonly (number | string)[];
  readonly result: string;
  readonly printed: string;
  readonly tolerance: number;
  readonly looser: boolean;
  readonly reason: string;
  readonly source: string;
  readonly status: string;
}

const folder = fileURLToPath(new URL('../published/', import.meta.url));
const tables = readdirSync(folder, { recursive: true, encoding: 'utf8' });

/** Half of the last printed digit: 0.005 for "84.81", 0.5 for "5718". */
export function halfLastDigit(printed: string): number {
  const decimals = /\.(\d+)$/.exec(printed)?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

/** A cell as printed: a number where it reads as one. A leading zero marks text, such as a cycle identifier. */
function cell(text: string): number | string {
  return /^[+-]?(0|[1-9]\d*)?(\.\d+)?$/.test(text) && text !== '' ? Number(text) : text.replace(/^"(.*)"$/, '$1');
}

function row(file: string, line: string): PublishedRow {
  const fields = line.split('|').map((field) => field.trim());
  if (fields.length !== 9) throw new Error(`${file}: 9 fields wanted, ${fields.length} found: ${line}`);
  const [id = '', functionName = '', given = '', result = '', printed = '', tolerance = '', reason = '', source = '', status = ''] = fields;
  const half = halfLastDigit(printed);
  const allowed = tolerance === '' ? half : Number(tolerance);
  const cells = given === '' ? [] : given.split(';').map((argument) => cell(argument.trim()));
  return { file, id, functionName, arguments: cells, result, printed, tolerance: allowed, looser: allowed > half, reason, source, status };
}

export function publishedFiles(): { readonly file: string; readonly declaredRows: number; readonly rows: readonly PublishedRow[] }[] {
  return tables
    .filter((name) => name.endsWith('.txt') && name !== 'knownDeviations.txt')
    .map((file) => {
      const lines = readFileSync(`${folder}${file}`, 'utf8')
        .split('\n')
        .filter((line) => line.trim() !== '');
      const declared = lines.map((line) => /^# rows: (\d+)$/.exec(line)?.[1]).find((count) => count !== undefined);
      return { file, declaredRows: Number(declared), rows: lines.filter((line) => !line.startsWith('#')).map((line) => row(file, line)) };
    });
}

/** Ids of published rows that we miss, each with its reason: `id | reason`. */
export function knownDeviations(): ReadonlyMap<string, string> {
  const lines = readFileSync(`${folder}knownDeviations.txt`, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'));
  return new Map(lines.map((line) => line.split('|').map((field) => field.trim()) as [string, string]));
}
