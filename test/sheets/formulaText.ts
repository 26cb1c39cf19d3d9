// What stands in a formula, read with another engine's tokenizer: calls, references, names, literals.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { getTokens, initSync, type MarkedToken } from '@ironcalc/wasm';
import { registry } from '../../functions/registry/index.generated';
import { a1FromRange } from '../../addon/local/engine/a1';

initSync({ module: readFileSync(createRequire(import.meta.url).resolve('@ironcalc/wasm/wasm_bg.wasm')) });

const ours = new Set(registry.map(({ name }) => name));

export interface FormulaText {
  /** Names of the functions called, once for each call. */
  readonly calls: readonly string[];
  /** How deep our functions stand inside one another. */
  readonly depthOfOurs: number;
  /** Ranges read; without a sheet, on the formula's own. */
  readonly ranges: readonly { readonly sheet: string | undefined; readonly range: string }[];
  /** Words that are no calls: names of the workbook, and the variables of a LET. */
  readonly words: readonly string[];
  readonly decimals: readonly string[];
  readonly hasArrayLiteral: boolean;
  readonly unreadable: boolean;
}

export const isOurs = (name: string): boolean => ours.has(name);

interface Corner {
  readonly row: number;
  readonly column: number;
}

const rangeBetween = (left: Corner, right: Corner): string =>
  a1FromRange({ startRow: left.row - 1, startColumn: left.column - 1, endRow: right.row - 1, endColumn: right.column - 1 });

function rangesOf(tokens: readonly MarkedToken[]): FormulaText['ranges'] {
  return tokens.flatMap(({ token }) => {
    if (typeof token !== 'object') return [];
    if ('Reference' in token) return [{ sheet: token.Reference.sheet ?? undefined, range: rangeBetween(token.Reference, token.Reference) }];
    return 'Range' in token ? [{ sheet: token.Range.sheet ?? undefined, range: rangeBetween(token.Range.left, token.Range.right) }] : [];
  });
}

/** Follows the parentheses, each marked with whether it opens a call of ours. */
function depthOfOurs(tokens: readonly MarkedToken[]): number {
  const open: boolean[] = [];
  let deepest = 0;
  tokens.forEach(({ token }, index) => {
    if (token === 'LeftParenthesis') {
      const before = tokens[index - 1]?.token;
      open.push(typeof before === 'object' && 'Ident' in before && isOurs(before.Ident.toUpperCase()));
      deepest = Math.max(deepest, open.filter(Boolean).length);
    }
    if (token === 'RightParenthesis') open.pop();
  });
  return deepest;
}

export function readFormula(formula: string): FormulaText {
  const text = formula.replace(/^=/, '');
  const tokens = getTokens(text);
  const identifiers = tokens.flatMap(({ token }, index) =>
    typeof token === 'object' && 'Ident' in token ? [{ name: token.Ident, called: tokens[index + 1]?.token === 'LeftParenthesis' }] : [],
  );
  const numbers = tokens.filter(({ token }) => typeof token === 'object' && 'Number' in token).map(({ start, end }) => text.slice(start, end));
  return {
    calls: identifiers.filter(({ called }) => called).map(({ name }) => name.toUpperCase()),
    depthOfOurs: depthOfOurs(tokens),
    ranges: rangesOf(tokens),
    words: identifiers.filter(({ called }) => !called).map(({ name }) => name),
    decimals: numbers.filter((number) => /[.eE]/.test(number)),
    hasArrayLiteral: tokens.some(({ token }) => token === 'LeftBrace'),
    unreadable: tokens.some(({ token }) => token === 'Illegal'),
  };
}
