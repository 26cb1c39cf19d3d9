// Templates as a later version may have them: rows elsewhere, other words, lists with more or less room.
import { areaOf, tokensOf, type Reference } from '../../addon/workbook/formulaReading';
import { keysShown } from '../../sheets-templates/keys';
import type { SheetKey, SheetTemplate, TemplateCell } from '../../sheets-templates/template';

const atRows = (range: string, rowNow: (row: number) => number): string =>
  range.replace(/([A-Z]+\$?)(\d+)/g, (_, letters: string, row: string) => `${letters}${rowNow(Number(row))}`);

function formulaNow(formula: string, home: string, moved: string, rowNow: (row: number) => number): string {
  const written = ({ sheet = home, range }: Reference, whole: string): string =>
    sheet === moved && areaOf(range) !== undefined ? `${whole.slice(0, whole.length - range.length)}${atRows(range, rowNow)}` : whole;
  return `=${tokensOf(formula)
    .map((token) => (token.kind === 'reference' ? written(token.reference, token.text) : token.text))
    .join('')}`;
}

/** One sheet with its rows elsewhere, in a version of its own; formulas of every sheet follow. */
export function withRowsAt(templates: readonly SheetTemplate[], key: SheetKey, rowNow: (row: number) => number): SheetTemplate[] {
  const moved = templates.find((one) => one.key === key)?.name ?? '';
  return templates.map((template) => {
    const followed = (cell: TemplateCell): TemplateCell =>
      cell.formula === undefined ? cell : { ...cell, formula: formulaNow(cell.formula, template.name, moved, rowNow) };
    if (template.key !== key) return { ...template, cells: template.cells.map(followed) };
    const cells = template.cells.map((cell) => ({ ...followed(cell), row: rowNow(cell.row) }));
    const names = template.names.map(({ name, range }) => ({ name, range: atRows(range, rowNow) }));
    return {
      ...template,
      version: template.version + 1,
      rows: Math.max(template.rows, ...cells.map(({ row }) => row), rowNow(template.rows)),
      cells,
      names,
    };
  });
}

/** One sheet with its cells changed one by one, undefined to leave one out; in a version of its own. */
export const withCells = (
  templates: readonly SheetTemplate[],
  key: SheetKey,
  change: (cell: TemplateCell) => TemplateCell | undefined,
): SheetTemplate[] =>
  templates.map((template) =>
    template.key === key ? { ...template, version: template.version + 1, cells: template.cells.flatMap((cell) => change(cell) ?? []) } : template,
  );

/** One sheet without some of its keys, or with others in their place; in a version of its own. */
export const withoutKeysOf = (templates: readonly SheetTemplate[], key: SheetKey, goes: (key: string) => boolean | string): SheetTemplate[] =>
  withCells(templates, key, (cell) =>
    cell.formula?.includes(keysShown) === true
      ? {
          ...cell,
          formula: cell.formula
            .replace(/"([^"@ ]+)",([A-Z0-9:]+),?/g, (whole: string, name: string, range: string) => {
              const gone = goes(name);
              return gone === true ? '' : gone === false ? whole : `"${gone}",${range},`;
            })
            .replace(/,\)/g, ')'),
        }
      : cell,
  );
