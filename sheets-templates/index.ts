// Every sheet, in the order in which they stand in the workbook.
import { currencyLogSheet } from './currency/sheet';
import { dataLedgerSheet } from './ledger/sheet';
import { daySheet } from './day/sheet';
import { descentHoldCard } from './card/sheet';
import { loadListSheet } from './due/sheet';
import { duesSheet } from './dues/sheet';
import { statementSheet } from './dues/statement';
import { fieldsSheet } from './fields/sheet';
import { manualTablesSheet } from './manual/sheet';
import { routeSheet } from './route/sheet';
import { startSheet } from './start/sheet';
import { withKeys } from './keys';
import type { SheetTemplate } from './template';
import { tripSheet } from './trip/sheet';
import { weightAndBalanceSheet } from './balance/sheet';
import { workingSheet } from './working/sheet';

export const sheetTemplates: readonly SheetTemplate[] = withKeys([
  startSheet,
  tripSheet,
  workingSheet,
  routeSheet,
  descentHoldCard,
  weightAndBalanceSheet,
  daySheet,
  dataLedgerSheet,
  loadListSheet,
  duesSheet,
  statementSheet,
  currencyLogSheet,
  fieldsSheet,
  manualTablesSheet,
]);
