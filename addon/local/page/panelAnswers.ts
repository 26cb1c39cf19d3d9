// What the page answers to the panel's questions. A refusal is an Error whose message is a sentence for the user.
import type { Injector, IWorkbookData } from '@univerjs/core';
import { sheetTemplates } from '../../../sheets-templates';
import type { PanelAnswer, PanelGiven, PanelQuestion } from '../../panel/host';
import { localToday } from '../../panel/localToday';
import { placedOnCopies } from '../../workbook/addFlight';
import { demoOn } from '../../workbook/demoOn';
import { withTripCopied } from '../saved/copyTrip';
import { withSheetFrozen, type Frozen } from '../saved/freezeSheet';
import { withSheetsInserted } from '../saved/insertSheets';
import { withSheetsUpdated } from '../saved/updateSheets';
import { withEntries } from '../saved/withEntries';
import { contentAt } from './cells';
import { changeCells } from './changeCells';
import { goTo } from './goTo';
import type { LiveWorkbook } from './liveWorkbook';
import { changeAndReload } from './reloading';
import type { Autosave } from './autosave';
import { writeEntries } from './writeEntries';

type CopyFirst = NonNullable<PanelGiven<'writeEntries'>['copyFirst']>;
export type PanelAnswers = { readonly [Question in PanelQuestion]: (given: PanelGiven<Question>) => Promise<PanelAnswer<Question>> };

async function readWorkbook({ settled, snapshot }: LiveWorkbook, { sheets }: PanelGiven<'readWorkbook'>): Promise<PanelAnswer<'readWorkbook'>> {
  await settled();
  return snapshot(sheets);
}

async function putFormula({ workbook }: LiveWorkbook, { formula }: PanelGiven<'putFormula'>): Promise<PanelAnswer<'putFormula'>> {
  if (!formula.startsWith('=')) throw new Error('A formula starts with an equals sign.');
  await workbook.endEditingAsync(true);
  const cell = workbook.getActiveCell();
  if (cell === null) throw new Error('Select a cell in the sheet first.');
  const place = cell.getA1Notation();
  const { v, f } = contentAt(workbook.getActiveSheet(), cell.getRow(), cell.getColumn());
  if (f || (v !== undefined && v !== null && v !== ''))
    throw new Error(`Cell ${place} is not empty, and nothing is overwritten. Select an empty cell.`);
  cell.setValue({ f: formula });
  return { cell: place };
}

function idOfSheet({ workbook }: LiveWorkbook, name: string): string {
  const sheet = workbook.getSheetByName(name);
  if (sheet === null) throw new Error(`There is no sheet "${name}" in this workbook any more. Nothing was changed.`);
  return sheet.getSheetId();
}

const listed = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');

/** A sheet of the workbook copied as values, under its name and the suffix. */
function withSheetAside({ workbook, snapshot }: LiveWorkbook, saved: IWorkbookData, { sheet: name, suffix }: CopyFirst): Frozen {
  const [sheet, shown] = [workbook.getSheetByName(name), snapshot('all').sheets.find((one) => one.name === name)];
  if (sheet === null || shown === undefined) throw new Error(`There is no sheet "${name}" in this workbook any more. Nothing was changed.`);
  return withSheetFrozen(saved, sheet.getSheetId(), shown, suffix);
}

export function panelAnswers(injector: Injector, live: LiveWorkbook, autosave: Autosave): PanelAnswers {
  return {
    readWorkbook: (given) => readWorkbook(live, given),
    goTo: (given) => goTo(live, given),
    putFormula: (given) => putFormula(live, given),
    writeEntries: ({ entries, copyFirst }) =>
      copyFirst === undefined
        ? writeEntries(injector, live, { entries })
        : changeAndReload(live, autosave, (saved) => {
            const { data, sheet } = withSheetAside(live, saved, copyFirst);
            const said = `${entries.length} cells written or emptied. The old trip is the sheet "${sheet}", values only. The trip is UNKNOWN until you have typed what is missing.`;
            return { data: withEntries(data, entries), said, sheet: copyFirst.sheet };
          }),
    changeCells: (given) => changeCells(injector, live, given),
    insertSheets: ({ keys }) =>
      changeAndReload(live, autosave, (saved) => {
        const { data, inserted, reads } = withSheetsInserted(saved, demoOn(sheetTemplates, localToday()), keys);
        const read = reads.length === 0 ? '' : ` ${inserted.length === 1 ? 'It reads' : 'They read'} what was there already: ${listed(reads)}.`;
        return { data, said: `Inserted: ${listed(inserted)}.${read}`, sheet: inserted[0] };
      }),
    addFlight: ({ sheet, ...plan }) =>
      changeAndReload(live, autosave, (saved) => {
        const { data, copies, names } = withTripCopied(saved, idOfSheet(live, sheet));
        const said = `The next flight is on ${listed(copies)}. It is UNKNOWN until you have typed what is missing.`;
        return { data: withEntries(data, placedOnCopies(plan, names)), said, sheet: copies[0] };
      }),
    updateSheets: ({ set, entries }) =>
      changeAndReload(live, autosave, (saved) => {
        const { data, updated, kept } = withSheetsUpdated(saved, sheetTemplates, set, entries);
        const inSight = live.workbook.getActiveSheet().getSheetName();
        const said = `Brought up to date: ${listed(updated)}. The older sheets stay beside them as ${listed(kept)}; delete those when you need them no longer.`;
        return { data, said, sheet: updated.includes(inSight) ? inSight : updated[0] };
      }),
    freezeSheet: () =>
      changeAndReload(live, autosave, (saved) => {
        const { sheetId, snapshot } = live.shown();
        const { data, sheet, formulas } = withSheetFrozen(saved, sheetId, snapshot, ` (values ${localToday()})`);
        return {
          data,
          said: `The copy is the sheet "${sheet}": ${formulas === 1 ? '1 formula is a value' : `${formulas} formulas are values`} there, and drawings are left out.`,
          sheet,
        };
      }),
  };
}
