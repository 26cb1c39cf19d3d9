// The first row of a list taken out, as people take out what is no longer theirs: every call of the workbook is still there, and still
// answers beside the rows that are left.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { cornerRows, stationRows, tankRows } from '../../sheets-templates/balance/rows';
import { crossings, plan } from '../../sheets-templates/card/descentLists';
import { placesFor as currencyPlaces, usualRoom as currencyRoom } from '../../sheets-templates/currency/places';
import { fieldList, runwayList } from '../../sheets-templates/fields/sheet';
import { placesFor as ledgerPlaces, defaultRoom as ledgerRoom } from '../../sheets-templates/ledger/places';
import { aircraftEntryVerdicts, aircraftList, manualTablesSheet } from '../../sheets-templates/manual/sheet';
import { balanceCells, sheetNames } from '../../sheets-templates/places';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { withCells, withRowsAt } from '../support/movedTemplates';
import { formulaCells } from './callGraph';
import { isOurs } from './formulaText';

const ledger = ledgerPlaces(ledgerRoom);
const currency = currencyPlaces(currencyRoom);

/** A row deleted: ranges that begin or end with it are one row shorter. */
const without = (key: SheetKey, row: number): SheetTemplate[] =>
  withRowsAt(
    withCells(sheetTemplates, key, (cell) => (cell.row === row ? undefined : cell)),
    key,
    (one) => (one > row ? one - 1 : one),
  );

const callsIn = (templates: readonly SheetTemplate[]): string[] =>
  formulaCells(templates)
    .filter(({ text }) => text.calls.some(isOurs))
    .map(({ sheet, text }) => `${sheet} ${text.calls.filter(isOurs).join(' ')}`);

/** The points of the loading begin below their heads. */
const points = Number(/\d+/.exec(balanceCells.pointNames)?.[0]);
/** Where what AIRCRAFT_ENTRIES answers begins. */
const aircraftChecked = Number(/\$(\d+):/.exec(aircraftEntryVerdicts)?.[1]);
const lists: readonly (readonly [what: string, key: SheetKey, first: number])[] = [
  ['cards', 'ledger', ledger.cards.first],
  ['licences', 'ledger', ledger.licences.first],
  ['members', 'ledger', ledger.members.first],
  ['the diary', 'ledger', ledger.diary.first],
  ['papers', 'currency', currency.papers.first],
  ["the pilot's list", 'currency', currency.pilot.first],
  ['items of the aircraft', 'currency', currency.items.first],
  ['flights', 'currency', currency.flights.first],
  ['restrictions', 'card', crossings.first],
  ['the plan', 'card', plan.first],
  ['stations', 'balance', stationRows.first],
  ['tanks', 'balance', tankRows.first],
  ['points', 'balance', points],
  ['corners', 'balance', cornerRows.first],
  ['fields', 'fields', fieldList.first],
  ['runways', 'fields', runwayList.first],
  ['aircraft', 'tables', aircraftList.first],
  ['tables of the manual, and corrections', 'tables', manualTablesSheet.keys.lists['takeoff']?.first ?? 0],
];

describe('the first row taken out of a list', () => {
  const before = callsIn(sheetTemplates);
  it.each(lists)('%s: no call goes with it', (_what, key, first) => {
    expect(callsIn(without(key, first))).toEqual(before);
  });

  describe('in the workbook', () => {
    let workbook: HeadlessWorkbook;
    beforeAll(async () => {
      workbook = await openHeadless(sheetTemplates);
    });
    afterAll(() => workbook.dispose());
    /** Takes the row out, looks, and takes that back. */
    async function takenOut(sheet: string, row: number, see: () => void): Promise<void> {
      await workbook.removeRows(sheet, row, 1);
      see();
      await workbook.undo();
      expect(workbook.named('trip_verdict')).toEqual([['OK']]);
    }

    it('leaves the cards that are left with their own verdicts', async () => {
      const { cards, diary, members } = ledger;
      const sheet = sheetNames.ledger;
      const verdicts = workbook.values(sheet, `J${cards.first + 1}:K${cards.first + 9}`);
      await takenOut(sheet, cards.first, () => {
        expect(workbook.values(sheet, `J${cards.head}:M${cards.head}`)).toEqual([['verdict', 'days left', 'out of date from, sheet time', 'reason']]);
        expect(workbook.values(sheet, `J${cards.first}:K${cards.first + 8}`)).toEqual(verdicts);
        expect(workbook.value(sheet, `A${diary.first - 1}`)).toMatch(/^(load|renew)$/);
        expect(workbook.values(sheet, `I${members.head - 1}:J${members.first - 1}`)).toEqual([
          ['by', 'name'],
          ['member', 'Ada'],
        ]);
      });
    });

    it.each([
      ['an item', sheetNames.currency, currency.items.first, `J${currency.items.first}`],
      ['a paper', sheetNames.currency, currency.papers.first, `D${currency.pilot.first - 1}`],
      ['a restriction', sheetNames.card, crossings.first, `J${crossings.first}`],
      ['a station', sheetNames.balance, stationRows.first, `B${points - 1}`],
      ['a field', sheetNames.fields, fieldList.first, `G${fieldList.first}`],
      ['a line of the tables', sheetNames.tables, manualTablesSheet.keys.lists['takeoff']?.first ?? 0, `B${aircraftChecked}`],
    ])('leaves a verdict in the first row where %s is gone', async (_what, sheet, row, cell) => {
      await takenOut(sheet, row, () => expect(workbook.value(sheet, cell)).toMatch(/^(OK|CHECK|NO|UNKNOWN)$/));
    });

    it('leaves the runways that are left with their directions', async () => {
      await takenOut(sheetNames.fields, runwayList.first, () =>
        expect(workbook.values(sheetNames.fields, `A${runwayList.first}:J${runwayList.first}`)[0]).toMatchObject({
          0: 'Marrowfield',
          1: '21',
          9: 210,
        }),
      );
    });
  });

  it('takes no month with a licence: the renewals by month have rows of their own', () => {
    const { licences, renewals } = ledger;
    const beside = sheetTemplates
      .find(({ key }) => key === 'ledger')
      ?.cells.filter(({ row, column, formula }) => row >= licences.first && row <= licences.last && column > 8 && formula !== undefined);
    expect(beside).toEqual([]);
    expect(renewals.head).toBeGreaterThan(licences.last);
  });
});
