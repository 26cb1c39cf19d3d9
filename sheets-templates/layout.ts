// Numbers the rows of a sheet in the order in which they are declared, so that a row is added in one place and everything
// below it moves down by itself.

export type Block = { readonly first: number; readonly last: number };

interface One {
  readonly kind: 'row';
  /** Empty rows above it. */
  readonly air: number;
}
interface Several {
  readonly kind: 'rows';
  readonly count: number;
  readonly air: number;
}
export type Rows = One | Several;

/** One row. */
export const row: One = { kind: 'row', air: 0 };
/** So many rows, such as those of a list or of an answer that spills. */
export const rows = (count: number): Several => ({ kind: 'rows', count, air: 0 });
/** The same with empty rows above it. */
export const below = <Kind extends Rows>(air: number, kind: Kind): Kind => ({ ...kind, air });

export type Numbered<Spec extends Readonly<Record<string, Rows>>> = { readonly [Name in keyof Spec]: Spec[Name] extends One ? number : Block };

/** The rows by name, the first of them standing in row `from`. */
export function rowsFrom<const Spec extends Readonly<Record<string, Rows>>>(from: number, spec: Spec): Numbered<Spec> {
  let next = from;
  const numbered = Object.entries(spec).map(([name, { air, ...kind }]) => {
    const first = next + air;
    next = first + (kind.kind === 'row' ? 1 : kind.count);
    return [name, kind.kind === 'row' ? first : { first, last: next - 1 }] as const;
  });
  return Object.fromEntries(numbered) as Numbered<Spec>;
}

/** The last of these rows. */
export const lastRow = (numbered: Readonly<Record<string, number | Block>>): number =>
  Math.max(...Object.values(numbered).map((one) => (typeof one === 'number' ? one : one.last)));
