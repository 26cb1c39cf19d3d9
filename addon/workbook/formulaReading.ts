// Reads a formula as people and hosts write it: the functions called with their arguments, the ranges read, the bare words.
// Commas and semicolons both separate arguments; case and blanks outside strings do not matter.
import { functionNames } from '../../functions/registry/names.generated';
import { columnNumber, type Area } from './areas';
import { bareSheet } from './formulaText';

export type Token =
  | { readonly kind: 'text' | 'space' | 'separator' | 'other'; readonly text: string }
  | { readonly kind: 'opening'; readonly text: string; /** In capitals; "" where a bare parenthesis opens. */ readonly name: string }
  | { readonly kind: 'closing'; readonly text: string }
  | { readonly kind: 'word'; readonly text: string }
  | { readonly kind: 'reference'; readonly text: string; readonly reference: Reference };

export interface Reference {
  /** Undefined: the formula's own sheet. */
  readonly sheet: string | undefined;
  /** In capitals, with its dollar signs, without the sheet: $A$1:C9, or #REF!. */
  readonly range: string;
  /** Whole columns and rows reach to infinity. Undefined where the range is lost (#REF!). */
  readonly area: Area | undefined;
}

export interface Call {
  /** In capitals. */
  readonly name: string;
  /** The text of each argument, without the blanks around it; none for F(). */
  readonly args: readonly string[];
}

export interface FormulaReading {
  readonly calls: readonly Call[];
  readonly references: readonly Reference[];
  /** Words that are neither calls nor ranges: names of the workbook, TRUE and FALSE, variables of a LET. */
  readonly words: readonly string[];
}

const ours: ReadonlySet<string> = new Set(functionNames);

/** One of our functions, by its name in capitals. */
export const isOurs = (name: string): boolean => ours.has(name);

const spilling: ReadonlySet<string> = new Set([
  'FILTER',
  'SORT',
  'UNIQUE',
  'SEQUENCE',
  'ARRAYFORMULA',
  'RANDARRAY',
  'TRANSPOSE',
  'IMPORTRANGE',
  'QUERY',
  'MAP',
  'BYROW',
  'BYCOL',
  'MAKEARRAY',
]);

/** A formula whose answer may fill more cells than its own: one that calls a function of ours, or a built-in one of that kind. */
export const maySpill = ({ calls }: Pick<FormulaReading, 'calls'>): boolean => calls.some(({ name }) => isOurs(name) || spilling.has(name));

const parts = {
  text: /"(?:[^"]|"")*"?/,
  sheet: new RegExp(`(?:'(?:[^']|'')*'|${bareSheet})!`),
  range: /#REF!|\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}(?:\$?\d+)?)?|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}(?:\$?\d+)?|\$?\d+:\$?\d+/,
  word: /[A-Za-z_\u00c0-\uffff][\w.\u00c0-\uffff]*/,
  rest: /\s+|#(?:DIV\/0!|N\/A|NAME\?|NULL!|NUM!|VALUE!|ERROR!|SPILL!|CALC!)|\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|[\s\S]/,
};
const { text, sheet, range, word, rest } = parts;
const pattern = new RegExp(
  `(${text.source})|(${sheet.source})?(${range.source})(?![\\w.(!\\u00c0-\\uffff])|(${sheet.source})?(${word.source})(\\s*\\()?|(${rest.source})`,
  'g',
);

/** A1, A1:C9, A:C, 1:9, A5:C; dollar signs as they come. Undefined for a range that is lost. */
export function areaOf(given: string): Area | undefined {
  const corner = /^([A-Z]*)(\d*)$/;
  const [from = '', to = from] = given.replace(/\$/g, '').toUpperCase().split(':');
  const [first, last] = [corner.exec(from), corner.exec(to)];
  if (first === null || last === null || from === '') return undefined;
  const column = (letters: string | undefined, open: number): number => (letters === undefined || letters === '' ? open : columnNumber(letters));
  const row = (digits: string | undefined, open: number): number => (digits === undefined || digits === '' ? open : Number(digits));
  const rows = [row(first[2], 1), row(last[2], Infinity)];
  const columns = [column(first[1], 1), column(last[1], Infinity)];
  return { row: Math.min(...rows), column: Math.min(...columns), lastRow: Math.max(...rows), lastColumn: Math.max(...columns) };
}

const sheetName = (prefix: string): string => prefix.slice(0, -1).replace(/^'|'$/g, '').replace(/''/g, "'");

function tokenOf([whole, quoted, sheetOfRange, found, sheetOfWord, name, opening]: RegExpExecArray): Token {
  if (quoted !== undefined) return { kind: 'text', text: whole };
  if (found !== undefined)
    return {
      kind: 'reference',
      text: whole,
      reference: { sheet: sheetOfRange === undefined ? undefined : sheetName(sheetOfRange), range: found.toUpperCase(), area: areaOf(found) },
    };
  if (name !== undefined && opening !== undefined) return { kind: 'opening', text: whole, name: name.toUpperCase() };
  if (name !== undefined) return sheetOfWord === undefined ? { kind: 'word', text: name } : { kind: 'other', text: whole };
  if (whole === '(') return { kind: 'opening', text: whole, name: '' };
  if (whole === ')') return { kind: 'closing', text: whole };
  if (whole === ',' || whole === ';') return { kind: 'separator', text: whole };
  return { kind: /^\s/.test(whole) ? 'space' : 'other', text: whole };
}

/** Formulas that have been taken apart, while work is done that asks for the same ones again and again. */
let known: Map<string, readonly Token[]> | undefined;

/** Does this work with each formula taken apart once. What is known is forgotten afterwards: of a whole workbook it is 30 MB. */
export function readingOnce<Result>(work: () => Result): Result {
  const before = known;
  known ??= new Map();
  try {
    return work();
  } finally {
    known = before;
  }
}

/** The parts of a formula, in order; their texts together are the formula without its =. */
export function tokensOf(formula: string): readonly Token[] {
  const before = known?.get(formula);
  if (before !== undefined) return before;
  const tokens = takenApart(formula);
  known?.set(formula, tokens);
  return tokens;
}

function takenApart(formula: string): Token[] {
  const body = formula.replace(/^\s*=/, '');
  const tokens: Token[] = [];
  pattern.lastIndex = 0;
  for (let found = pattern.exec(body); found !== null; found = pattern.exec(body)) tokens.push(tokenOf(found));
  return tokens;
}

interface OpenCall {
  readonly name: string;
  readonly args: string[];
}

function callsOf(tokens: readonly Token[]): Call[] {
  const calls: OpenCall[] = [];
  const open: OpenCall[] = [];
  const write = (to: readonly OpenCall[], piece: string): void => {
    for (const { args } of to) args[args.length - 1] = `${args[args.length - 1] ?? ''}${piece}`;
  };
  for (const token of tokens) {
    const innermost = open[open.length - 1];
    if (token.kind === 'opening') {
      write(open, token.text);
      const call = { name: token.name, args: [''] };
      open.push(call);
      if (token.name !== '') calls.push(call);
    } else if (token.kind === 'closing') {
      open.pop();
      write(open, token.text);
    } else if (token.kind === 'separator' && innermost !== undefined) {
      write(open.slice(0, -1), token.text);
      innermost.args.push('');
    } else write(open, token.text);
  }
  return calls.map(({ name, args }) => ({ name, args: args.length === 1 && args[0]?.trim() === '' ? [] : args.map((one) => one.trim()) }));
}

/** Calls in the order in which they open; nothing is wrong enough to be refused. */
export function readFormula(formula: string): FormulaReading {
  const tokens = tokensOf(formula);
  return {
    calls: callsOf(tokens),
    references: tokens.flatMap((token) => (token.kind === 'reference' ? [token.reference] : [])),
    words: tokens.flatMap((token) => (token.kind === 'word' ? [token.text] : [])),
  };
}
