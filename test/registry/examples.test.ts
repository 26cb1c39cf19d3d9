// The worked examples of every declaration are run; help, units and sources must be there.
import { describe, expect, it } from 'vitest';
import { registry } from '../../functions/registry/index.generated';
import type { FunctionName } from '../../functions/registry/names.generated';
import { call, plain } from '../support/call';

const asRows = (value: unknown): unknown[][] => (Array.isArray(value) ? (value as unknown[][]) : [[value]]).map((row) => row.map(plain));

describe.each(registry.map((declaration) => ({ name: declaration.name, declaration })))('$name', ({ declaration }) => {
  it.each(declaration.examples.map((example, index) => ({ index, example })))('example $index', ({ example }) => {
    const got = asRows(call(declaration.name as FunctionName, ...example.arguments));
    const wanted = asRows(example.gives);
    expect(got.map((row) => row.length)).toEqual(wanted.map((row) => row.length));
    wanted.forEach((row, r) =>
      row.forEach((cell, c) => {
        const value = got[r]?.[c];
        if (typeof cell === 'number')
          expect(Math.abs(Number(value) - cell), `row ${r} column ${c}: got ${String(value)}, want ${cell}`).toBeLessThanOrEqual(
            example.tolerance ?? 1e-9,
          );
        else expect(value).toBe(cell);
      }),
    );
  });

  it('has an example, a source, notes, and help for every argument', () => {
    expect(declaration.examples.length).toBeGreaterThan(0);
    expect(declaration.sources.length).toBeGreaterThan(0);
    expect(declaration.notes).not.toBe('');
    for (const { help, mustBe } of Object.values(declaration.parameters)) {
      expect(help).toMatch(/^[A-Z"0-9].*\.$/s);
      expect(mustBe).not.toBe('');
    }
  });

  it('is named as Sheets allows, and puts optional arguments last', () => {
    expect(declaration.name).toMatch(/^[A-Z][A-Z0-9_]{5,}$/);
    const optionals = Object.values(declaration.parameters).map(({ optional }) => optional !== undefined);
    expect(optionals).toEqual([...optionals].sort());
  });
});
