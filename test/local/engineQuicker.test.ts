// The engine of formulas made quicker answers as it did: joined texts against the package as it comes, fields that are set plainly, and
// formulas kept by their whole text.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type * as CoreNamespace from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import type { EngineModule } from '../../addon/local/engine/engineValues';
import { patchTexts } from '../../addon/local/engine/patchTexts';
import { accessorsIn, withPlainFields } from '../../addon/local/engine/plainFields';
import { ownSheet } from '../support/headlessSnapshot';

const require = createRequire(import.meta.url);

/** The package as it comes, loaded once more. */
function freshEngine(): EngineModule {
  const path = require.resolve('@univerjs/engine-formula');
  const loaded = require.cache[path];
  Reflect.deleteProperty(require.cache, path);
  const engine = require(path) as EngineModule;
  if (loaded === undefined) Reflect.deleteProperty(require.cache, path);
  else require.cache[path] = loaded;
  return engine;
}

type Value = EngineNamespace.BaseValueObject;
type Joining = { calculate(...values: Value[]): Value };
type Single = string | number | boolean | { readonly error: string } | { readonly nothing: 'blank' | 'absent' };

const single: fc.Arbitrary<Single> = fc.oneof(
  fc.string({ maxLength: 80 }),
  fc.double({ noNaN: true }),
  fc.boolean(),
  fc.constantFrom('#N/A', '#VALUE!').map((error) => ({ error })),
  fc.constantFrom('blank' as const, 'absent' as const).map((nothing) => ({ nothing })),
);
const array = fc
  .record({ rows: fc.integer({ min: 1, max: 4 }), columns: fc.integer({ min: 1, max: 4 }) })
  .chain(({ rows, columns }) => fc.array(fc.array(single, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }));

function valueOf(engine: EngineModule, given: Single): Value | null {
  if (typeof given === 'string') return engine.StringValueObject.create(given);
  if (typeof given === 'number') return engine.NumberValueObject.create(given);
  if (typeof given === 'boolean') return engine.BooleanValueObject.create(given);
  if ('error' in given) return engine.ErrorValueObject.create(given.error as EngineNamespace.ErrorType);
  return given.nothing === 'blank' ? engine.NullValueObject.create() : null;
}

function operand(engine: EngineModule, given: Single | Single[][]): Value {
  if (!Array.isArray(given)) return valueOf(engine, given) ?? engine.NullValueObject.create();
  const rows = given.map((row) => row.map((one) => valueOf(engine, one)));
  const [rowCount, columnCount] = [rows.length, rows[0]?.length ?? 0];
  return engine.ArrayValueObject.create({ calculateValueList: rows, rowCount, columnCount, unitId: '', sheetId: '', row: -1, column: -1 });
}

function joinedBy(engine: EngineModule, given: readonly (Single | Single[][])[]): unknown {
  const found = engine.functionText.find(([, name]) => String(name) === 'CONCATENATE')?.[0] as unknown as new (name: string) => Joining;
  const answer = new found('CONCATENATE').calculate(...given.map((one) => operand(engine, one))) as EngineNamespace.ArrayValueObject;
  const shown = answer.getArrayValue().map((row) => row.map((one) => [one?.constructor.name, one?.getValue()]));
  return [answer.isArray(), answer.getRowCount(), answer.getColumnCount(), shown];
}

describe('the engine made quicker', () => {
  it('joins texts as it did, of whatever shape and kind', () => {
    const [before, now] = [freshEngine(), freshEngine()];
    patchTexts(now);
    fc.assert(
      fc.property(fc.array(fc.oneof(single, array), { minLength: 1, maxLength: 4 }), (given) => {
        expect(joinedBy(now, given)).toEqual(joinedBy(before, given));
      }),
      { numRuns: 3000, seed: 20261130 },
    );
  });

  it('makes a text of its own for every text, with a link where one is given', () => {
    const engine = freshEngine();
    patchTexts(engine);
    const { StringValueObject } = engine;
    expect([StringValueObject.create('a').getValue(), StringValueObject.create('').isString()]).toEqual(['a', true]);
    const linked = StringValueObject.create('a', { isHyperlink: true, hyperlinkUrl: 'https://example.invalid/' } as never);
    expect([linked.isHyperlink(), StringValueObject.create('a').isHyperlink()]).toEqual([true, false]);
  });

  it('sets fields plainly, but none that a class reads or writes through a function', () => {
    const source = [
      'class A {',
      '\tget node() {',
      '\t}',
      '\tconstructor() {',
      '\t\t_defineProperty(this, "node", 1);',
      '\t\t_defineProperty(this, "rows", f(2));',
    ];
    const plain = withPlainFields(source.join('\n'), accessorsIn([source.join('\n')])).split('\n');
    expect(plain.slice(4)).toEqual(['\t\t_defineProperty(this, "node", 1);', '\t\tvoid (this.rows = f(2));']);
    const engine = readFileSync(require.resolve('@univerjs/engine-formula'), 'utf8');
    const left = [...withPlainFields(engine, accessorsIn([engine])).matchAll(/_defineProperty\(this, "(\w+)"/g)].length;
    expect([engine.split('_defineProperty(this, "').length > 1000, left > 0, left < 60]).toEqual([true, true, true]);
  });

  it('takes no long formula for another one whose text comes to the same number of 32 bits', async () => {
    const { hashAlgorithm } = require('@univerjs/core') as typeof CoreNamespace;
    const formulaOf = (number: number): string =>
      `=LEN("${'x'.repeat(60)}${(Math.imul(number, 0x9e3779b1) >>> 0).toString(36).padStart(7, 'x')}")-67+${number}`;
    const byHash = new Map<number, number>();
    let pair: readonly number[] = [];
    for (let number = 100_000; number < 999_999 && pair.length === 0; number += 1) {
      const hash = hashAlgorithm(formulaOf(number));
      const other = byHash.get(hash);
      if (other !== undefined) pair = [other, number];
      byHash.set(hash, number);
    }
    const [first = 0, second = 0] = pair;
    expect(first).not.toBe(second);
    const workbook = await openHeadless([ownSheet('Own', { A1: formulaOf(first), A2: formulaOf(second) })]);
    expect([workbook.value('Own', 'A1'), workbook.value('Own', 'A2')]).toEqual([first, second]);
    workbook.dispose();
  });
});
