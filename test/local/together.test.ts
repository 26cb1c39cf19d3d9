// Two windows that save one file: whatever the order, nothing that was acknowledged is lost, unless somebody who saw it typed over it or said so.
import fc from 'fast-check';
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { workbookData } from '../../addon/local/engine/workbookData';
import { SaveError, type KeptFile } from '../../addon/local/page/keeper';
import { ClashError, keepTogether, type PageBook, type Together } from '../../addon/local/page/together';
import { tinyTemplate } from '../support/tinyTemplate';

const first = workbookData([tinyTemplate]);
const [sheetId = ''] = first.sheetOrder;
type Lines = Record<number, Record<number, ICellData>>;
const linesOf = (data: IWorkbookData): Lines => (data.sheets[sheetId]?.cellData ?? {}) as Lines;
const valueIn = (data: IWorkbookData, row: number, column: number): string => String(linesOf(data)[row]?.[column]?.v ?? '');

/** What is kept, as any of the keepers would keep it. */
class Store {
  text = JSON.stringify(first);
  version = 0;

  fileOf(): KeptFile {
    let known = this.version;
    return {
      send: (data) => {
        if (known !== this.version) return Promise.reject(new SaveError('changed elsewhere', 'changed'));
        this.text = JSON.stringify(data);
        known = this.version += 1;
        return Promise.resolve();
      },
      isChanged: () => Promise.resolve(known !== this.version),
      read: () => {
        known = this.version;
        return Promise.resolve(JSON.parse(this.text) as IWorkbookData);
      },
      copies: () => Promise.resolve([]),
      copyOf: () => Promise.reject(new Error('none')),
    };
  }
  value = (row: number, column: number): string => valueIn(JSON.parse(this.text) as IWorkbookData, row, column);
}

interface Window {
  readonly together: Together;
  type(row: number, column: number, content: ICellData): void;
  shown(row: number, column: number): string;
  /** While somebody types into a cell nothing of others is written. */
  typing: boolean;
}

function open(store: Store): Window {
  const data = JSON.parse(store.text) as IWorkbookData;
  const put = (row: number, column: number, content: ICellData): void => void ((linesOf(data)[row] ??= {})[column] = content);
  const window = { typing: false };
  const page: PageBook = {
    read: () => structuredClone(data),
    isTyping: () => window.typing,
    write: (cells) => cells.forEach(({ row, column, content }) => put(row, column, content)),
  };
  const together = keepTogether(page, store.fileOf(), data);
  return Object.assign(window, { together, type: put, shown: (row: number, column: number) => valueIn(data, row, column) });
}

const text = (v: string): ICellData => ({ v, t: 1 });

describe('two windows that save one file', () => {
  it('both save, and each shows what the other entered', async () => {
    const store = new Store();
    const [one, other] = [open(store), open(store)];
    one.type(30, 1, text('one'));
    await one.together.save();
    other.type(31, 1, text('other'));
    await other.together.save();
    expect([store.value(30, 1), store.value(31, 1)]).toEqual(['one', 'other']);
    expect([other.shown(30, 1), other.together.isBehind()]).toEqual(['one', false]);
    expect(one.shown(31, 1)).toBe('');
    expect(await one.together.look()).toBe(true);
    expect(one.shown(31, 1)).toBe('other');
  });

  it('save nothing where both changed a cell, until somebody says which holds', async () => {
    for (const side of ['here', 'there'] as const) {
      const store = new Store();
      const [one, other] = [open(store), open(store)];
      one.type(30, 1, text('one'));
      await one.together.save();
      other.type(30, 1, text('other'));
      const thrown: unknown = await other.together.save().catch((reason: unknown) => reason);
      if (!(thrown instanceof ClashError)) throw new Error('no question');
      expect(store.value(30, 1)).toBe('one');
      other.together.answer(thrown.clashes, side);
      await other.together.save();
      const held = side === 'here' ? 'other' : 'one';
      expect([store.value(30, 1), other.shown(30, 1)]).toEqual([held, held]);
    }
  });

  it('do not write under the hands of somebody who types, and ask what holds afterwards', async () => {
    const store = new Store();
    const [one, other] = [open(store), open(store)];
    one.type(30, 1, text('one'));
    await one.together.save();
    other.typing = true;
    expect(await other.together.look()).toBe(false);
    expect(other.shown(30, 1)).toBe('');
    other.typing = false;
    other.type(30, 1, text('other'));
    await expect(other.together.save()).rejects.toThrow(ClashError);
    expect(store.value(30, 1)).toBe('one');
  });

  it('put nothing together once rows were moved in one of them', async () => {
    const store = new Store();
    const [one, other] = [open(store), open(store)];
    one.together.moved();
    one.type(30, 1, text('one'));
    await one.together.save();
    other.type(31, 1, text('other'));
    await expect(other.together.save()).rejects.toMatchObject({ kind: 'changed' });
    expect([store.value(30, 1), store.value(31, 1)]).toEqual(['one', '']);
    expect(await open(store).together.look()).toBe(true);
  });

  it('go on while one has looks of the other to show that only a new loading brings', async () => {
    const store = new Store();
    const [one, other] = [open(store), open(store)];
    const kept = JSON.parse(store.text) as IWorkbookData;
    const sheet = kept.sheets[sheetId];
    store.text = JSON.stringify({ ...kept, sheets: { [sheetId]: { ...sheet, columnData: { ...sheet?.columnData, 3: { w: 333 } } } } });
    store.version += 1;
    one.type(30, 1, text('one'));
    await one.together.save();
    expect(one.together.isBehind()).toBe(true);
    one.type(30, 1, text('one again'));
    await one.together.save();
    expect(store.text).toContain('"w":333');
    expect(store.value(30, 1)).toBe('one again');
    await expect(one.together.replaceBy(first, false)).rejects.toThrow('Load it first');
    await other.together.look();
    expect(other.shown(30, 1)).toBe('one again');
  });
});

describe('random work in two windows', () => {
  const step = fc.record({
    window: fc.integer({ min: 0, max: 1 }),
    does: fc.constantFrom('type', 'type', 'type', 'save', 'save', 'look', 'begin typing', 'end typing', 'clear'),
    row: fc.integer({ min: 30, max: 32 }),
    column: fc.integer({ min: 0, max: 2 }),
    side: fc.constantFrom<'here' | 'there'>('here', 'there'),
  });

  it('loses nothing that was acknowledged', async () => {
    const seen = { clashes: 0, merged: 0 };
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 10, maxLength: 40 }), async (steps) => {
        const store = new Store();
        const windows = [open(store), open(store)];
        const [waiting, acknowledged, givenUp] = [
          [new Map<string, string>(), new Map<string, string>()],
          new Map<string, string>(),
          new Set<string>(),
        ];
        let count = 0;
        for (const { window: which, does, row, column, side } of steps) {
          const window = windows[which];
          const mine = waiting[which];
          if (window === undefined || mine === undefined) continue;
          if (does === 'begin typing' || does === 'end typing') window.typing = does === 'begin typing';
          if (does === 'look' && mine.size === 0) await window.together.look();
          if (does === 'type' || does === 'clear') {
            const before = window.shown(row, column);
            if (before !== '') givenUp.add(before);
            const content = does === 'clear' ? { v: null } : text(`${which}-${(count += 1)}`);
            window.type(row, column, content);
            if (does === 'type') mine.set(`${row},${column}`, String(content.v));
            else mine.delete(`${row},${column}`);
          }
          if (does !== 'save') continue;
          const versionBefore = store.version;
          try {
            await window.together.save();
          } catch (thrown) {
            if (!(thrown instanceof ClashError)) throw thrown;
            seen.clashes += 1;
            // Who answers gives up what the other side has in those rows.
            for (const { words } of thrown.clashes) {
              const clashing = Number(/^[A-C](\d+) on/.exec(words)?.[1]) - 1;
              for (const at of [0, 1, 2]) for (const value of [window.shown(clashing, at), store.value(clashing, at)]) givenUp.add(value);
            }
            window.together.answer(thrown.clashes, side);
            await window.together.save();
          }
          if (store.version > versionBefore + 1) seen.merged += 1;
          for (const [place, value] of mine) acknowledged.set(value, place);
          mine.clear();
          for (const [value, place] of acknowledged) {
            const [atRow = 0, atColumn = 0] = place.split(',').map(Number);
            if (!givenUp.has(value)) expect([place, store.value(atRow, atColumn)]).toEqual([place, value]);
          }
        }
        // At the end both see the same.
        for (const window of windows) {
          window.typing = false;
          for (let tries = 0; tries < 3; tries += 1)
            await window.together.save().catch((thrown: unknown) => thrown instanceof ClashError && window.together.answer(thrown.clashes, 'there'));
        }
        for (const window of windows) await window.together.look();
        for (const row of [30, 31, 32])
          for (const column of [0, 1, 2])
            expect(windows.map((window) => window.shown(row, column))).toEqual([store.value(row, column), store.value(row, column)]);
      }),
      { numRuns: 60 },
    );
    expect(seen.clashes).toBeGreaterThan(5);
  });
});
