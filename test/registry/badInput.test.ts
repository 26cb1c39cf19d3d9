// Every argument of every function fed what must never come through: one clear sentence, or the blank rule.
import { describe, expect, it } from 'vitest';
import { registry } from '../../functions/registry/index.generated';
import type { FunctionDeclaration } from '../../functions/registry/declaration';
import { evaluate } from '../../functions/registry/evaluate';
import { utcDateHost } from '../../functions/registry/utcDateHost';

const bad: Readonly<Record<string, unknown>> = {
  text: 'warm',
  blank: '',
  negative: -1234.5,
  huge: 1e300,
  'not a number': Number.NaN,
  infinite: Number.POSITIVE_INFINITY,
  'error text': '#N/A',
  true: true,
  'no such date': new Date(Number.NaN),
  'a date': new Date('2026-03-04T00:00:00Z'),
  'a row of two': [[1, 2]],
  'a block': [
    [1, 2],
    [3, 4],
    [5, 6],
  ],
  ragged: [[1, 2], [3]],
  'flat array': [1, 2, 3],
  object: { a: 1 },
  'column of errors': [['#REF!'], ['#N/A']],
  'empty range': [
    ['', ''],
    ['', ''],
  ],
};

const sentence = (name: string): RegExp => new RegExp(`^${name}: .+; got .+\\.$|^${name}: takes .+\\.$`, 's');

function flat(value: unknown): unknown[] {
  return Array.isArray(value) ? (value as unknown[]).flatMap(flat) : [value];
}

/** Nothing that is not a number, and no sentence about our own mistakes, may reach a cell. */
function check(declaration: FunctionDeclaration, given: readonly unknown[]): void {
  let cells: unknown[];
  try {
    cells = flat(evaluate(declaration, given, utcDateHost));
  } catch (thrown) {
    const message = thrown instanceof Error ? thrown.message : String(thrown);
    expect(message).toMatch(sentence(declaration.name));
    cells = [message];
  }
  for (const cell of cells) {
    expect(cell === null || cell === undefined, `${declaration.name} gave ${String(cell)}`).toBe(false);
    if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
    if (cell instanceof Date) expect(Number.isFinite(cell.getTime())).toBe(true);
    if (typeof cell === 'string') expect(cell).not.toMatch(/mistake in the function|undefined|Infinity|\n\s+at /);
  }
}

describe.each(registry.map((declaration) => ({ name: declaration.name, declaration })))('$name', ({ declaration }) => {
  const example = declaration.examples[0]?.arguments ?? [];
  const names = Object.keys(declaration.parameters);

  it.each(names.flatMap((argument, index) => Object.keys(bad).map((kind) => ({ argument, index, kind }))))('$argument: $kind', ({ index, kind }) => {
    const given: unknown[] = names.map((_, place) => example[place]);
    given[index] = bad[kind];
    check(declaration, given);
    given[index] = [[bad[kind]], [example[index]]];
    if (!Array.isArray(bad[kind])) check(declaration, given);
  });

  it('names a blank required argument', () => {
    const required = names.filter((name) => declaration.parameters[name]?.optional === undefined);
    if (required.length < 2) return;
    for (const name of required) {
      const given = names.map((other, place) => (other === name ? '' : example[place]));
      check(declaration, given);
    }
  });

  it('is blank where every required argument is blank', () => {
    expect(
      flat(
        evaluate(
          declaration,
          names.map(() => ''),
          utcDateHost,
        ),
      ).every((cell) => cell === ''),
    ).toBe(true);
  });

  it('refuses one argument too many', () => {
    expect(() => evaluate(declaration, [...names.map((_, place) => example[place]), 1], utcDateHost)).toThrow(/takes .+ arguments?; got/);
  });

  it('never changes what it was given', () => {
    const frozen = JSON.stringify(example);
    evaluate(declaration, example, utcDateHost);
    expect(JSON.stringify(example)).toBe(frozen);
  });
});
