// The rows for Manual tables of a table whose questions are answered: words that say what each column is and in which unit, then a row a point.
import type { TableUnit } from '../../../core/manual/tableUnits';
import { isSide, unitOf, type ColumnRole } from './tableSides';
import { columnOfRole, inputColumns, roleWords, type InputColumnKey, type SideRole, type TableKind } from './tableKinds';
import type { PrintedNumber, ShapedRow, TableShape } from './tableShape';

/** Contents by the keys of the list's columns. */
export type TableRow = Readonly<Record<string, number | string>>;

interface Point {
  readonly inputs: ReadonlyMap<SideRole, number>;
  readonly figures: ReadonlyMap<string, number>;
  readonly marks: readonly string[];
}

interface Group {
  readonly figures: readonly string[];
  readonly points: Point[];
}

export interface Settled {
  readonly shape: TableShape;
  readonly kind: TableKind;
  readonly sides: readonly ColumnRole[];
  readonly across: SideRole | undefined;
  readonly figures: (block: number, index: number) => string | undefined;
  readonly held: SideRole | undefined;
  readonly heldValues: readonly (number | undefined)[];
}

function pointOf(inputs: readonly (readonly [ColumnRole, PrintedNumber | undefined])[], held: readonly [SideRole, number] | undefined): Point {
  const given = inputs.flatMap(([role, cell]) => (cell === undefined ? [] : [{ role, cell }]));
  const kept = given.filter(({ role }) => role !== 'nothing');
  return {
    inputs: new Map([
      ...(held === undefined ? [] : [held]),
      ...kept.flatMap(({ role, cell }) => (isSide(role) ? [[role, cell.value] as const] : [])),
    ]),
    figures: new Map(kept.flatMap(({ role, cell }) => (isSide(role) || typeof role === 'string' ? [] : [[role.figure, cell.value] as const]))),
    marks: [...new Set(kept.map(({ cell }) => cell.marks).filter((mark) => mark !== ''))],
  };
}

function pointsOf({ shape, sides, across, figures, held, heldValues }: Settled, block: number, { cells }: ShapedRow): Point[] {
  const value = heldValues[block];
  const constant = held === undefined || value === undefined ? undefined : ([held, value] as const);
  const side = sides.map((role, index) => [role, cells[index]] as const);
  if (across === undefined) return [pointOf(side, constant)];
  return (shape.blocks[block]?.across ?? []).map((top, at) => {
    const below = Array.from({ length: shape.figures }, (_, index): readonly [ColumnRole, PrintedNumber | undefined] => {
      const figure = figures(block, index);
      return [figure === undefined ? 'nothing' : { figure }, cells[shape.side + at * shape.figures + index]];
    });
    return pointOf([...side, [across, top], ...below], constant);
  });
}

/** Blocks one after another that give the same figures stand under one row of words. */
function groupsOf(settled: Settled): Group[] {
  const groups: Group[] = [];
  settled.shape.blocks.forEach(({ rows }, block) => {
    const points = rows.flatMap((row) => pointsOf(settled, block, row)).filter(({ figures }) => figures.size > 0);
    const given = new Set(points.flatMap(({ figures }) => [...figures.keys()]));
    const figures = settled.kind.figures.map(({ name }) => name).filter((name) => given.has(name));
    const last = groups[groups.length - 1];
    if (last !== undefined && last.figures.join() === figures.join()) last.points.push(...points);
    else groups.push({ figures, points });
  });
  return groups;
}

export type Placing = ReadonlyMap<SideRole, InputColumnKey>;

/** A headwind takes a column that no other input needs. */
export function placesOf(roles: readonly SideRole[]): Placing | undefined {
  const fixed = roles.flatMap((role) => columnOfRole[role] ?? []);
  const free = [...inputColumns].reverse().filter((key) => !fixed.includes(key));
  const places = roles.map((role) => [role, columnOfRole[role] ?? free.shift()] as const);
  const known = places.flatMap(([role, key]) => (key === undefined ? [] : [[role, key] as const]));
  return known.length < roles.length || new Set(known.map(([, key]) => key)).size < roles.length ? undefined : new Map(known);
}

export interface Words {
  readonly units: Readonly<Record<string, TableUnit | undefined>>;
  readonly below: boolean;
  readonly curves: boolean;
  readonly note: string;
  readonly marked: (mark: string) => string;
}

function wordsRow({ kind }: Settled, places: Placing, { figures }: Group, { units, below, curves, note }: Words): TableRow {
  const inputs = inputColumns.map((key): readonly [string, string] => {
    const [role] = [...places].find(([, place]) => place === key) ?? [];
    if (role === undefined) return [key, 'none'];
    const name = columnOfRole[role] === key && ['weight', 'pressure altitude', 'temperature'].includes(role) ? [] : [roleWords[role]];
    return [key, [...name, units[unitOf(role) ?? ''], ...(role === 'weight' && below ? ['up to'] : [])].join(', ')];
  });
  const answers = kind.figures
    .filter(({ name }) => figures.includes(name))
    .map(({ key }, index): readonly [string, string] => [key, [units['figure'], ...(curves && index === 0 ? ['curve'] : [])].join(', ')]);
  return Object.fromEntries([...inputs, ...answers, ...(note === '' ? [] : [['note', note] as const])]);
}

export function rowsOf(settled: Settled, places: Placing, words: Words): TableRow[] {
  const keyOf = new Map(settled.kind.figures.map(({ name, key }) => [name, key]));
  return groupsOf(settled).flatMap((group) => [
    wordsRow(settled, places, group, words),
    ...group.points.map((point): TableRow => {
      const notes = point.marks.map(words.marked).join('; ');
      return Object.fromEntries([
        ...[...point.inputs].map(([role, value]) => [places.get(role) ?? '', value] as const),
        ...[...point.figures].map(([figure, value]) => [keyOf.get(figure) ?? '', value] as const),
        ...(notes === '' ? [] : [['note', notes] as const]),
      ]);
    }),
  ]);
}
