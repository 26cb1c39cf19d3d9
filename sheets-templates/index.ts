// Every sheet, in the order in which they stand in the workbook.
import type { SheetTemplate } from './template';

export const sheetTemplates: readonly SheetTemplate[] = [];
