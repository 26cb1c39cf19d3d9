// Every sheet, in the order in which they stand in the workbook.
import { currencyLogSheet } from './currencyLog';
import { dataLedgerSheet } from './dataLedger';
import { descentHoldCard } from './descentHoldCard';
import { manualTablesSheet } from './manualTables';
import { startSheet } from './start';
import type { SheetTemplate } from './template';
import { tripSheet } from './tripSheet';
import { weightAndBalanceSheet } from './weightAndBalance';

export const sheetTemplates: readonly SheetTemplate[] = [startSheet, tripSheet, descentHoldCard, weightAndBalanceSheet, dataLedgerSheet, currencyLogSheet, manualTablesSheet];
