// What stands beside the cells of a workbook (names, rules of colour, choices, notes, drawings, and its own settings), put together out of two
// windows: each name, each note, and the rest by sheet.
import type { IWorkbookData } from '@univerjs/core';
import { resourceNames } from '../engine/workbookResources';
import type { Clashes, Three } from './mergeWorkbooks';
import { canonical, sameContent } from './plainBook';

type Parts = Readonly<Record<'base' | 'here' | 'there', unknown>>;

const isRecord = (one: unknown): one is Readonly<Record<string, unknown>> => typeof one === 'object' && one !== null && !Array.isArray(one);

/** Notes stand by sheet, row and column; everything else by one identifier. */
const depthOf = (resource: string): number => (resource === resourceNames.notes ? 3 : 1);

const nothing = Symbol('nothing');

/** Part by part down to a depth, below it whole. */
function merged({ base, here, there }: Parts, depth: number, words: string, clashes: Clashes): unknown {
  if (sameContent(here, base) || sameContent(here, there)) return there ?? nothing;
  if (sameContent(there, base)) return here ?? nothing;
  const parts = [base ?? {}, here ?? {}, there ?? {}];
  if (depth === 0 || !parts.every(isRecord)) {
    const side = clashes.settle(canonical([words, here, there]), words);
    return (side === 'here' ? here : there) ?? nothing;
  }
  const [before, mine, theirs] = parts as [Record<string, unknown>, Record<string, unknown>, Record<string, unknown>];
  const keys = [...new Set([...Object.keys(theirs), ...Object.keys(mine)])];
  const entries = keys.map((key) => [
    key,
    merged({ base: before[key], here: mine[key], there: theirs[key] }, depth - 1, `${words} (${key})`, clashes),
  ]);
  return Object.fromEntries(entries.filter(([, part]) => part !== nothing)) as unknown;
}

const inWords: Readonly<Record<string, string>> = {
  [resourceNames.names]: 'a name of the workbook',
  [resourceNames.tints]: 'the rules of colour',
  [resourceNames.validations]: 'the choices and limits of entries',
  [resourceNames.notes]: 'a note',
};

const read = (text: string | undefined): unknown => (text === undefined || text === '' ? {} : (JSON.parse(text) as unknown));

function resources(three: Three, clashes: Clashes): IWorkbookData['resources'] {
  const names = [...new Set([three.there, three.here].flatMap((data) => (data.resources ?? []).map(({ name }) => name)))];
  return names.map((name) => {
    const of = (data: IWorkbookData): unknown => read(data.resources?.find((one) => one.name === name)?.data);
    const parts = { base: of(three.base), here: of(three.here), there: of(three.there) };
    const content = merged(parts, depthOf(name), inWords[name] ?? 'what stands beside the cells', clashes);
    return { name, data: JSON.stringify(content === nothing ? {} : content) };
  });
}

/** One name for two places is no name. */
function isNamedTwice(kept: IWorkbookData['resources']): boolean {
  const records = Object.values(read(kept?.find(({ name }) => name === resourceNames.names)?.data) as Record<string, { readonly name?: string }>);
  const names = records.map(({ name }) => (name ?? '').toLowerCase());
  return new Set(names).size < names.length;
}

/** Undefined where it cannot be put together. `changes`: whether anything changes here by it. */
export function mergedKept(
  three: Three,
  clashes: Clashes,
): { readonly parts: Pick<IWorkbookData, 'resources' | 'name' | 'defaultStyle'>; readonly changes: boolean } | undefined {
  const kept = resources(three, clashes);
  if (isNamedTwice(kept)) return undefined;
  const settings = (['name', 'defaultStyle'] as const).map((key) => {
    const value = merged({ base: three.base[key], here: three.here[key], there: three.there[key] }, 0, `the workbook's own ${key}`, clashes);
    return [key, value === nothing ? undefined : value] as const;
  });
  const parts = { resources: kept, ...Object.fromEntries(settings) } as Pick<IWorkbookData, 'resources' | 'name' | 'defaultStyle'>;
  const textOf = (one: IWorkbookData['resources']): unknown => Object.fromEntries((one ?? []).map(({ name, data }) => [name, read(data)]));
  return { parts, changes: !sameContent(textOf(kept), textOf(three.here.resources)) };
}
