// The keys of a sheet in the grid's own engine, through what a user may do to it: the formula must name the same cells afterwards.
import { createRequire } from 'node:module';
import type * as Core from '@univerjs/core';
import type * as CoreFacade from '@univerjs/core/facade';
import type * as Engine from '@univerjs/engine-formula';
import type * as Sheets from '@univerjs/sheets';
import type * as SheetsFormula from '@univerjs/sheets-formula';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { workbookData } from '../../addon/local/engine/workbookData';
import { areaText } from '../../addon/workbook/areas';
import { keysIn } from '../../addon/workbook/keys';
import { sheetTemplates } from '../../sheets-templates';

const require = createRequire(import.meta.url);
const core = require('@univerjs/core') as typeof Core;
const { FUniver } = require('@univerjs/core/facade') as typeof CoreFacade;
const engine = require('@univerjs/engine-formula') as typeof Engine;
const sheets = require('@univerjs/sheets') as typeof Sheets;
const formulas = require('@univerjs/sheets-formula') as typeof SheetsFormula;
for (const part of ['sheets', 'engine-formula', 'sheets-formula']) require(`@univerjs/${part}/facade`);

const card = sheetTemplates.find(({ key }) => key === 'card');
if (card === undefined) throw new Error('no card');
const opened: Core.Univer[] = [];
let api: CoreFacade.FUniver;
let workbook: ReturnType<CoreFacade.FUniver['createWorkbook']>;
const name = card.name;

beforeEach(() => {
  const univer = new core.Univer({ locale: core.LocaleType.EN_US, locales: { [core.LocaleType.EN_US]: {} }, logLevel: core.LogLevel.ERROR });
  univer.registerPlugin(engine.UniverFormulaEnginePlugin);
  univer.registerPlugin(sheets.UniverSheetsPlugin);
  univer.registerPlugin(formulas.UniverSheetsFormulaPlugin, { initialFormulaComputing: formulas.CalculationMode.NO_CALCULATION });
  opened.push(univer);
  api = FUniver.newAPI(univer);
  workbook = api.createWorkbook(workbookData([card], `keys-${opened.length}`));
});
afterAll(() => opened.forEach((univer) => univer.dispose()));

const sheet = () => {
  const found = workbook.getSheetByName(name);
  if (found === null) throw new Error('no sheet');
  return found;
};

/** Where something with a key stands now, as the formula at the end of the first row says. */
function now(key: string, of = sheet()): string | undefined {
  const column = of.getMaxColumns();
  const keys = keysIn({ formulas: [{ row: 1, column, text: of.getRange(0, column - 1, 1, 1).getFormula() }] });
  const area = keys?.ranges.get(key);
  return area === undefined ? undefined : areaText(area);
}

const command = (id: string, given: object): Promise<unknown> =>
  api.executeCommand(id, { unitId: workbook.getId(), subUnitId: sheet().getSheetId(), ...given }) as Promise<unknown>;

describe('keys', () => {
  it('stand where the template put them', () => expect([now('altitudeNow'), now('crossings.fix')]).toEqual(['B7', 'A12:A20']));

  it('follow rows and columns put in and taken out', () => {
    sheet().insertRows(12, 2);
    expect([now('altitudeNow'), now('crossings.fix'), now('planFor')]).toEqual(['B7', 'A12:A22', 'B25']);
    sheet().insertColumns(1, 1);
    expect([now('altitudeNow'), now('crossings.toGo')]).toEqual(['C7', 'C12:C22']);
    sheet().deleteRows(6, 1);
    expect([now('altitudeNow'), now('descentAngle')]).toEqual([undefined, 'C7']);
  });

  it('follow cells pushed down beside others that stay, and a cell cut and pasted', async () => {
    await command('sheet.command.insert-range-move-down', { range: { startRow: 7, endRow: 7, startColumn: 0, endColumn: 2 } });
    expect([now('altitudeNow'), now('descentAngle')]).toEqual(['B7', 'B9']);
    await command('sheet.command.move-range', {
      fromRange: { startRow: 6, endRow: 6, startColumn: 1, endColumn: 1 },
      toRange: { startRow: 90, endRow: 90, startColumn: 1, endColumn: 1 },
    });
    expect(now('altitudeNow')).toBe('B91');
  });

  it('are copied with the sheet', () => {
    sheet().insertRows(3, 1);
    const copy = workbook.duplicateSheet(sheet());
    expect([now('altitudeNow', copy), now('crossings.fix', copy)]).toEqual(['B8', 'A13:A21']);
  });
});
