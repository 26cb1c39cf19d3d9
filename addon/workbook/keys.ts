// Reads the keys of a sheet (sheets-templates/keys.ts): which range stands under which key, in a template as it is written and
// in a sheet as its user has it.
import { keysShown, unnamed } from '../../sheets-templates/keys';
import type { SheetTemplate } from '../../sheets-templates/template';
import type { Area } from './areas';
import { tokensOf } from './formulaReading';
import { formulaSense } from './formulaSense';
import type { CellPlace, FormulaCell, SheetSnapshot } from './snapshot';

export interface Keys {
  /** Where the formula stands that holds them. */
  readonly cell: FormulaCell;
  /** By key; a range that was taken out is undefined. */
  readonly ranges: ReadonlyMap<string, Area | undefined>;
  /** Row and column numbers, and cells, in the order of the template. */
  readonly rows: readonly (number | undefined)[];
  readonly columns: readonly (number | undefined)[];
  readonly answers: readonly (Area | undefined)[];
}

const beginning = new RegExp(`^\\s*=\\s*IF\\(\\s*TRUE\\s*[,;]\\s*"${keysShown}"`, 'i');

export const isKeyFormula = ({ text }: Pick<FormulaCell, 'text'>): boolean => beginning.test(text);

function readKeys(cell: FormulaCell): Keys {
  const found = new Map<string, (Area | undefined)[]>();
  let key = '';
  for (const token of tokensOf(cell.text)) {
    if (token.kind === 'text') key = token.text.slice(1, -1);
    if (token.kind === 'text') found.set(key, found.get(key) ?? []);
    if (token.kind === 'reference') found.get(key)?.push(token.reference.area);
  }
  const several = (name: string): (Area | undefined)[] => found.get(name) ?? [];
  const others: readonly string[] = [...Object.values(unnamed), keysShown];
  return {
    cell,
    ranges: new Map([...found].filter(([name]) => !others.includes(name)).map(([name, [range]]) => [name, range])),
    rows: [cell.row, ...several(unnamed.rows).map((area) => area?.row)],
    columns: [...several(unnamed.columns).map((area) => area?.column), cell.column],
    answers: several(unnamed.answers),
  };
}

/** Undefined where the sheet has none, or where they stand twice, so that it cannot be told which hold. */
export function keysIn({ formulas }: Pick<SheetSnapshot, 'formulas'>): Keys | undefined {
  const [only, ...others] = formulas.filter(isKeyFormula);
  return only === undefined || others.length > 0 ? undefined : readKeys(only);
}

export const formulasOf = ({ cells }: Pick<SheetTemplate, 'cells'>): FormulaCell[] =>
  cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [{ row, column, text: formula }]));

export const keysOf = (template: Pick<SheetTemplate, 'cells'>): Keys | undefined => keysIn({ formulas: formulasOf(template) });

/** Every cell stands where the template put it, so that a new sheet may read it by the template's own addresses. */
export function isUnmoved(template: SheetTemplate, sheet: Pick<SheetSnapshot, 'formulas'>): boolean {
  const [before, now] = [keysOf(template)?.cell, keysIn(sheet)?.cell];
  const sense = (formula: string): string => formulaSense(formula, { word: (word) => word, reference: ({ range }) => range.replace(/\$/g, '') });
  return (
    before !== undefined && now !== undefined && before.row === now.row && before.column === now.column && sense(before.text) === sense(now.text)
  );
}

/** The first cell of a range. */
export const cornerOf = ({ row, column }: Area): CellPlace => ({ row, column });
