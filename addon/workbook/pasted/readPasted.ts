// Pasted text as a grid: what was understood, and what is open. A number that can be read in two ways is not taken until that is answered.
import { meaningOf, plainSigns, type CellMeaning } from './numberText';

export interface PasteAnswers {
  /** What "1,250" and "1.250" are. */
  readonly commas?: 'thousands' | 'decimals';
  readonly points?: 'thousands' | 'decimals';
  /** What a single blank between figures is: "1 250" one number, or two columns. */
  readonly spaces?: 'thousands' | 'columns';
}

export type PasteQuestion =
  | {
      readonly kind: 'sign';
      readonly sign: ',' | '.';
      readonly text: string;
      readonly thousands: number;
      readonly decimals: number;
      readonly cells: number;
    }
  | { readonly kind: 'spaces'; readonly text: string; readonly rows: readonly number[] }
  /** Rows of another width than most: where in them a hole is, nobody can know from blanks alone. */
  | { readonly kind: 'width'; readonly rows: readonly number[]; readonly usual: number }
  | { readonly kind: 'unreadable'; readonly row: number; readonly column: number; readonly text: string };

/** A cell that is not taken yet is open. */
export type PastedCell = CellMeaning | { readonly kind: 'held' };

export interface PastedRow {
  /** Line of the text, counted from 1. */
  readonly line: number;
  readonly cells: readonly PastedCell[];
}

export interface Pasted {
  readonly rows: readonly PastedRow[];
  readonly questions: readonly PasteQuestion[];
}

/** Signs between columns in which a hole can be seen; two blanks or more, and one blank, show none. */
const clearSeparators = ['\t', ';', '|'] as const;

/** "1 250", or more groups, anywhere in a piece: what a single blank leaves open. */
const groupable = /(?:^|[^\d.,])[1-9]\d{0,2} \d{3}(?!\d)/;

interface Split {
  readonly pieces: readonly string[];
  readonly spacesOpen: boolean;
}

/** A number and its unit or mark belong together though a blank stands between them. */
const glued = (text: string): string =>
  text
    .replace(/\bsea level\b|\bs\. ?l\.(?=\s|$)/gi, 'SL')
    .replace(/\bISA ?([+-]) ?(\d)/gi, 'ISA$1$2')
    .replace(/(\d) (?=(?:\u00b0|\u00ba|deg|ft|feet|lbs?|kgs?|kts?|knots|km\/h|m\/s|mph|fpm|gal|%|[CFmL]\b))/gi, '$1')
    .replace(/(\S) (?=\(\d\)(?:\s|$))/g, '$1');

function splitByBlanks(line: string, answer: PasteAnswers['spaces']): Split {
  const text = glued(line.trim());
  if (!groupable.test(text)) return { pieces: text.split(/ +/), spacesOpen: false };
  if (answer === 'columns') return { pieces: text.split(/ +/), spacesOpen: false };
  // Only where two blanks part the columns can one blank be a sign of thousands without doubt.
  const wide = text.split(/ {2,}/);
  const settled = answer === 'thousands' && wide.length > 1 && wide.every((piece) => !piece.includes(' ') || meaningOf(piece).kind === 'number');
  return { pieces: wide, spacesOpen: !settled };
}

/** A dash and a figure with a blank between them: a hole and a number, or a number below 0. */
const dashed = /(?:^|\s)[+-] \d/;

function splitLine(line: string, separator: string | undefined, answer: PasteAnswers['spaces']): Split {
  if (separator !== undefined) return { pieces: line.split(separator).map((piece) => piece.trim()), spacesOpen: false };
  const split = splitByBlanks(line, answer);
  return dashed.test(line) ? { ...split, spacesOpen: true } : split;
}

function settled(cell: CellMeaning, { commas, points }: PasteAnswers): CellMeaning {
  if (cell.kind !== 'open') return cell;
  const answer = cell.sign === ',' ? commas : points;
  return answer === undefined ? cell : { kind: 'number', value: cell[answer], unit: cell.unit, marks: cell.marks };
}

function usualWidth(widths: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const width of widths) counts.set(width, (counts.get(width) ?? 0) + 1);
  return [...counts].sort(([one, times], [other, otherTimes]) => otherTimes - times || other - one)[0]?.[0] ?? 0;
}

const isWord = (cell: PastedCell): boolean => cell.kind === 'words' && !/\d/.test(cell.text);

/** A line of headings may hold numbers too ("ROLL 50 ft ROLL 50 ft"), but never more of them than words. */
export function isNumeric({ cells }: Pick<PastedRow, 'cells'>): boolean {
  const numbers = cells.filter(({ kind }) => kind === 'number' || kind === 'open').length;
  return numbers >= 2 && numbers > cells.filter(isWord).length;
}

/** Words of several parts before the numbers of a line are one cell: "Pressure altitude 0 10 20". */
function joinedWords(pieces: readonly string[]): readonly string[] {
  const first = pieces.findIndex((piece) => !isWord(meaningOf(piece)));
  return first < 2 ? pieces : [pieces.slice(0, first).join(' '), ...pieces.slice(first)];
}

function signQuestions(cells: readonly CellMeaning[], pieces: readonly string[]): PasteQuestion[] {
  return ([',', '.'] as const).flatMap((sign): PasteQuestion[] => {
    const open = cells.flatMap((cell, index) => (cell.kind === 'open' && cell.sign === sign ? [{ cell, text: pieces[index] ?? '' }] : []));
    const [first] = open;
    return first === undefined
      ? []
      : [{ kind: 'sign', sign, text: first.text, thousands: first.cell.thousands, decimals: first.cell.decimals, cells: open.length }];
  });
}

export function readPasted(text: string, answers: PasteAnswers = {}): Pasted {
  const lines = text.split(/\r\n|\r|\n/).map((line) => plainSigns(line));
  const separator = clearSeparators.find((one) => lines.some((line) => line.includes(one)));
  const split = lines
    .map((line, index) => ({ line: index + 1, text: line, ...splitLine(line, separator, answers.spaces) }))
    .filter((one) => one.text.trim() !== '');
  const read = split.map(({ line, pieces: found, spacesOpen, text: whole }) => {
    const pieces = separator === undefined && isNumeric({ cells: found.map(meaningOf) }) ? joinedWords(found) : found;
    return { line, pieces, spacesOpen, whole, cells: pieces.map((piece) => settled(meaningOf(piece), answers)) };
  });
  const numeric = read.filter((row) => row.spacesOpen || isNumeric(row));
  const usual = usualWidth(numeric.filter(({ spacesOpen }) => !spacesOpen).map(({ cells }) => cells.length));
  // The row across the top, which is the first below words, may lack the cells above the first columns, and may have one for two below it.
  const isFirst = (row: (typeof read)[number]): boolean => {
    const before = read[read.indexOf(row) - 1];
    return before === undefined || !(before.spacesOpen || isNumeric(before));
  };
  const odd = (row: (typeof read)[number]): boolean =>
    separator === undefined && !row.spacesOpen && isNumeric(row) && row.cells.length !== usual && !(isFirst(row) && row.cells.length < usual);
  const rows = read.map((row): PastedRow => {
    const held = row.spacesOpen || odd(row);
    return { line: row.line, cells: held ? row.cells.map(() => ({ kind: 'held' as const })) : row.cells };
  });
  const [spaced] = read.filter(({ spacesOpen }) => spacesOpen);
  const odds = read.filter(odd);
  const kept = read.filter((row) => !row.spacesOpen && !odd(row));
  return {
    rows,
    questions: [
      ...(spaced === undefined
        ? []
        : [{ kind: 'spaces' as const, text: spaced.whole.trim(), rows: read.filter(({ spacesOpen }) => spacesOpen).map(({ line }) => line) }]),
      ...signQuestions(
        kept.flatMap(({ cells }) => cells),
        kept.flatMap(({ pieces }) => pieces),
      ),
      ...(odds.length === 0 ? [] : [{ kind: 'width' as const, rows: odds.map(({ line }) => line), usual }]),
      ...kept
        .filter(isNumeric)
        .flatMap(({ line, cells }) =>
          cells.flatMap((cell, column): PasteQuestion[] =>
            cell.kind === 'words' && column > 0 && /\d/.test(cell.text)
              ? [{ kind: 'unreadable', row: line, column: column + 1, text: cell.text }]
              : [],
          ),
        ),
    ],
  };
}
