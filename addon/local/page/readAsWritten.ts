// Reads what is typed into cells for days and numbers as people write them (typedEntry.ts), before the grid does, which knows one country's ways.
import type { Injector } from '@univerjs/core';
import { SheetDataValidationModel } from '@univerjs/preset-sheets-data-validation';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/sheets';
import { readEntry, type Wanted } from '../../workbook/typed/readEntry';
import { notify } from './notices';

/** The grid's own reading of numbers and days has 0. */
const beforeTheGrid = 10;

const wantedBy: Readonly<Record<string, Wanted | undefined>> = { date: 'date', decimal: 'number', whole: 'number' };

/** A cell without a rule, whose numbers have a look of their own, such as 480.50. */
const isAmount = (pattern: string): boolean => /[0#]/.test(pattern) && !/[ymdhs@]/i.test(pattern);

export function readAsWritten(injector: Injector): void {
  const rules = injector.get(SheetDataValidationModel);
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: beforeTheGrid,
    handler: (value, { unitId, subUnitId, row, col, worksheet, workbook }, next) => {
      const typed = value?.v;
      if (!value || typeof typed !== 'string' || value.f || value.p) return next(value);
      const rule = rules.getRuleByLocation(unitId, subUnitId, row, col);
      const pattern = workbook.getStyles().getStyleByCell(worksheet.getCellRaw(row, col))?.n?.pattern ?? '';
      const wanted = rule ? wantedBy[String(rule.type)] : isAmount(pattern) ? 'number' : undefined;
      const read = wanted === undefined ? undefined : readEntry(typed, wanted);
      if (read === undefined) return next(value);
      if ('text' in read) return next({ ...value, v: read.text });
      // Where no rule stands the cell takes it as a text, and whoever counts it says so.
      if (!rule) return next(value);
      notify(read.said);
      return { ...worksheet.getCellRaw(row, col) };
    },
  });
}
