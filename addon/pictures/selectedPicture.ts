// The picture that belongs to the selected row, from the workbook as plain data; or what to select instead.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { SheetSnapshot, WorkbookSnapshot } from '../workbook/snapshot';
import { NotDrawn } from './missing';
import { distance, from, type Drawable, type Size } from './selected/drawable';
import { descentDrawable, holdDrawable } from './selected/flightDrawings';
import { aircraftDrawable, pilotDrawable } from './selected/listDrawings';
import { briefDrawable, checkDrawable } from './selected/loadingDrawings';
import { pictured } from '../workbook/callParameters';
import { picturedCalls, picturedNameIn, type FoundCall, type PicturedCall, type PicturedName } from './selected/picturedCall';
import { dueDrawable, recencyDrawable } from './selected/recencyDrawings';
import { templateDrawables } from './selected/templateDrawings';
import { sheetRead } from './selected/workbookCells';

export type SelectedPicture =
  /** `of` says in a few words what is drawn. The picture has the width asked for; a list is as high as its lines need. */
  | { readonly svg: string; readonly of: string }
  /** A sentence: why nothing is drawn, and what to select or do. */
  | { readonly none: string };

const drawables: Readonly<Record<PicturedName, (call: PicturedCall) => Drawable>> = {
  HOLD_BRIEF: holdDrawable,
  DESCENT_PLAN: descentDrawable,
  BALANCE_CHECK: checkDrawable,
  LOADING_BRIEF: briefDrawable,
  RECENCY_DAYS: recencyDrawable,
  RECENCY_MONTHS: recencyDrawable,
  DUE_STATUS: dueDrawable,
  PILOT_STATUS: pilotDrawable,
  AIRCRAFT_STATUS: aircraftDrawable,
};

/** A drawable that only says why it cannot be drawn. */
const saying = (cell: FoundCall['cell'], name: string, sentence: string): Drawable => ({
  ...from(cell, 1, 1),
  name,
  draw: () => {
    throw new NotDrawn(sentence);
  },
});

function ofCall({ cell, name, call }: FoundCall): Drawable {
  if (call === undefined)
    return saying(
      cell,
      name,
      `In the selected row ${name} is part of a longer formula, which is not worked out here. Put the call alone into a cell with room for its whole answer.`,
    );
  try {
    return drawables[call.name](call);
  } catch (thrown) {
    if (!(thrown instanceof NotDrawn)) throw thrown;
    return saying(cell, name, thrown.message);
  }
}

interface Choice {
  readonly drawables: readonly Drawable[];
  /** On a sheet of ours the nearest picture is drawn; elsewhere only that of the selected row. */
  readonly isOurs: boolean;
}

function choiceOn(workbook: WorkbookSnapshot, sheet: SheetSnapshot, templates: readonly SheetTemplate[]): Choice {
  const template = templates.find(({ key }) => key === sheet.mark?.key);
  const declared = template === undefined ? [] : templateDrawables(template, sheet);
  // The template's own calls lie in the cells of its charts and pictures, which know more about them.
  const calls = template !== undefined && template.charts.length > 0 ? [] : picturedCalls(workbook, sheet);
  const others = calls.filter(({ cell }) => !declared.some(({ rows, columns }) => distance(rows, cell.row) + distance(columns, cell.column) === 0));
  return { drawables: [...declared, ...others.map(ofCall)], isOurs: template !== undefined };
}

function nearest({ drawables: all, isOurs }: Choice, { row, column }: WorkbookSnapshot['selected']): Drawable | undefined {
  const byDistance = [...all].sort(
    (one, other) => distance(one.rows, row) - distance(other.rows, row) || distance(one.columns, column) - distance(other.columns, column),
  );
  return byDistance.find(({ rows }) => isOurs || distance(rows, row) === 0);
}

const maxNamed = 3;

function selectInstead({ drawables: all }: Choice, sheet: SheetSnapshot, row: number, templates: readonly SheetTemplate[]): string {
  if (all.length > 0) {
    const places = [...all].sort((one, other) => distance(one.rows, row) - distance(other.rows, row)).slice(0, maxNamed);
    const named = places.map(
      ({ rows, name }) => `${rows.first === rows.last ? `row ${rows.first}` : `rows ${rows.first} to ${rows.last}`} (${name})`,
    );
    return `No picture belongs to row ${row} of "${sheet.name}". Select ${named.join(' or ')}.`;
  }
  const drawn = templates
    .filter(({ cells }) => cells.some(({ formula }) => formula !== undefined && picturedNameIn(formula) !== undefined))
    .map(({ name }) => name);
  return `Nothing on "${sheet.name}" has a picture. Select a row of ${drawn.join(', ')}, or of your own with one of these calls: ${Object.keys(pictured).join(', ')}.`;
}

export function selectedPicture(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], size: Size): SelectedPicture {
  const { selected } = workbook;
  try {
    const sheet = sheetRead(workbook, selected.sheet);
    const choice = choiceOn(workbook, sheet, templates);
    const found = nearest(choice, selected);
    if (found === undefined) return { none: selectInstead(choice, sheet, selected.row, templates) };
    const { svg, what, row } = found.draw(selected.row, size);
    return { svg, of: `${what}: ${sheet.name}, row ${row}` };
  } catch (thrown) {
    if (!(thrown instanceof NotDrawn)) throw thrown;
    return { none: thrown.message };
  }
}
