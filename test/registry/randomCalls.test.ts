// Random calls of every function, with whatever a person can leave in a cell, and with what no cell should hold: each must answer in
// cells, or refuse in one sentence. A fixed seed; RANDOM_CALLS=1000000 npx vitest run test/registry/randomCalls makes it long.
import { describe, expect, it } from 'vitest';
import type { FunctionDeclaration } from '../../functions/registry/declaration';
import { evaluate } from '../../functions/registry/evaluate';
import { registry } from '../../functions/registry/index.generated';
import { utcDateHost } from '../../functions/registry/utcDateHost';

declare const process: { readonly env: Readonly<Record<string, string | undefined>> };
const calls = Number(process.env['RANDOM_CALLS'] ?? 20_000);

/** From 0 up to 1: mulberry32, public domain. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const longText = 'q'.repeat(5000);
const numbers = [0, -0, 1, -1, 0.5, 2, 3, 10, 28, 45, 90, 100, 180, 360, 361, 999, 1013.25, 1430, 2300, 2616, 9999, 1e5, 46000, 1e6, 1e9, 1e12, 1e15];
const odd = [5e-324, 1e-320, -1e-310, 2.2e-308, 1e-200, 1e-30, 1e-13, 1e-12, 1e-9, 1e16, 1e21, 1e154, 1e300, 1.7e308, -1.7e308, 0.1 + 0.2 - 0.3];
const texts = [
  '',
  ' ',
  'yes',
  'no',
  'OK',
  'NO',
  'north',
  'NE',
  'left',
  '1 min',
  '6 NM',
  'FAA',
  'EASA',
  'ICAO',
  '28-day',
  '2613',
  '2026-01-22',
  '2026-02-30',
];
const oddTexts = [
  '1.000',
  '1,000',
  '12,5',
  '0.0',
  '1e5',
  '#N/A',
  '#REF!',
  'two\nlines',
  'a\r\nb',
  'tab\there',
  '"quoted"',
  '\u0000',
  '\u2028',
  longText,
  '{}',
];
const others = [true, false, null, undefined, {}, { a: 1 }, Object.create(null), [], () => 1, Symbol('s'), 10n, Number.NaN, Infinity, -Infinity];
const days = ['2026-01-22', '1950-01-01', '2100-12-31', '1899-12-30', '0001-01-01', '2024-02-29'].map((iso) => new Date(`${iso}T00:00:00Z`));
const dates = [...days, new Date('2026-03-04T13:45:10Z'), new Date(Number.NaN), new Date(8.64e15), new Date(-8.64e15)];

class Chance {
  constructor(private readonly next: () => number) {}
  below(count: number): number {
    return Math.floor(this.next() * count);
  }
  oneIn(count: number): boolean {
    return this.below(count) === 0;
  }
  of<Thing>(things: readonly Thing[]): Thing {
    return things[this.below(things.length)] as Thing;
  }
  cell(): unknown {
    const kind = this.below(20);
    if (kind < 6) return this.of(numbers) * (this.oneIn(4) ? this.next() : 1) * (this.oneIn(6) ? -1 : 1);
    if (kind < 9) return this.of(odd) * (this.oneIn(6) ? -1 : 1);
    if (kind < 13) return this.of(texts);
    if (kind < 16) return this.of(oddTexts);
    return kind < 18 ? this.of(dates) : this.of(others);
  }
  range(): unknown[][] {
    const [rows, columns] = [this.below(5), 1 + this.below(6)];
    return Array.from({ length: rows }, () => Array.from({ length: columns }, () => this.cell()));
  }
  /** An argument of an example, some of its cells replaced, rows doubled or left out. */
  changed(argument: unknown): unknown {
    if (!Array.isArray(argument)) return this.oneIn(4) ? this.cell() : argument;
    const share = this.of([3, 10, 40]);
    const rows = (argument as unknown[][]).map((row) => row.map((cell) => (this.oneIn(share) ? this.cell() : cell)));
    if (this.oneIn(8)) rows.push([...(rows[this.below(rows.length)] ?? [])]);
    if (this.oneIn(12)) rows.splice(this.below(rows.length), 1);
    return rows;
  }
  arguments({ examples, parameters }: FunctionDeclaration): unknown[] {
    const count = Object.keys(parameters).length;
    if (examples.length === 0 || this.oneIn(4)) {
      return Array.from({ length: this.below(count + 2) }, () => (this.oneIn(3) ? this.range() : this.cell()));
    }
    const given = this.of(examples).arguments.map((argument) => this.changed(argument));
    while (given.length < count && !this.oneIn(3)) given.push(this.oneIn(3) ? this.range() : this.cell());
    return given;
  }
}

const flat = (value: unknown): unknown[] => (Array.isArray(value) ? value.flatMap(flat) : [value]);

/** What is wrong with a sentence or with words in a cell; undefined where nothing is. */
function wrongWords(words: string): string | undefined {
  if (/mistake in the function itself/.test(words)) return 'a mistake in the function itself';
  if (/q{61}/.test(words)) return `an echo of ${words.length} characters`;
  if (/NaN|Infinity|undefined|\[object/.test(words)) return 'no words of ours';
  if (/[\n\r\t\u0000\u2028]/.test(words)) return 'more than one line';
  if (/(^|[^\w.])-0(\.0+)?($|[^\w.])/.test(words)) return '-0';
  return undefined;
}

function wrongCell(cell: unknown): string | undefined {
  if (typeof cell === 'number') return !Number.isFinite(cell) ? 'no finite number' : Object.is(cell, -0) ? '-0' : undefined;
  if (typeof cell === 'string') return wrongWords(cell);
  if (cell instanceof Date) return Number.isFinite(cell.getTime()) ? undefined : 'no date';
  return `a cell of ${typeof cell}`;
}

/** What is wrong with the answer of a call; undefined where nothing is. */
function wrongAnswer(declaration: FunctionDeclaration, given: readonly unknown[]): string | undefined {
  try {
    const cells = flat(evaluate(declaration, given, utcDateHost));
    const wrong = cells.find((cell) => wrongCell(cell) !== undefined);
    return wrong === undefined ? undefined : `${wrongCell(wrong) ?? ''}: ${String(wrong).slice(0, 200)}`;
  } catch (thrown) {
    const message = thrown instanceof Error ? thrown.message : String(thrown);
    if (!/^[A-Z][A-Z0-9_]+: .+\.$/.test(message)) return `no sentence: ${message.slice(0, 300)}`;
    const wrong = wrongWords(message);
    return wrong === undefined ? undefined : `${wrong}: ${message.slice(0, 300)}`;
  }
}

const shown = (given: readonly unknown[]): string =>
  JSON.stringify(given, (_, value: unknown) =>
    typeof value === 'bigint' || typeof value === 'symbol' || typeof value === 'function'
      ? String(value)
      : typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0))
        ? `(${Object.is(value, -0) ? '-0' : String(value)})`
        : value === longText
          ? '(long)'
          : value,
  ).slice(0, 700);

describe('random calls', () => {
  it(`answer or refuse in plain words: ${calls.toLocaleString('en')} over ${registry.length} functions`, () => {
    const chance = new Chance(randomFrom(20261129));
    const wrong = new Map<string, string>();
    for (let index = 0; index < calls; index += 1) {
      const declaration = registry[index % registry.length] as FunctionDeclaration;
      const given = chance.arguments(declaration);
      const found = wrongAnswer(declaration, given);
      if (found !== undefined && wrong.size < 40) wrong.set(`${declaration.name} ${found.split(':')[0] ?? ''}`, `${found}\n    ${shown(given)}`);
    }
    expect([...wrong].map(([what, how]) => `${what}\n    ${how}`).join('\n')).toBe('');
  }, 3_600_000);
});
