// Reader of a day that must be compared with moments of UTC: the day, and the spreadsheet's own clock.
import { dayNumber, type Instant } from '../../core/basics/civilDate';
import type { WallClock } from '../../core/ledger/ledgerCard';
import type { CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';
import { date } from './readDate';

export interface SheetDay {
  readonly day: number;
  /** What the spreadsheet's clock shows at a moment. */
  readonly wallClock: (instant: Instant) => WallClock;
}

export function sheetDay(help: string): Parameter<SheetDay> & { readonly shape: 'cell' } {
  const base = date(help);
  const read = (raw: CellValue, dates: DateHost): SheetDay => ({
    day: dayNumber(base.read(raw, dates)),
    wallClock: (instant) => {
      const shown = dates.toCivil(dates.fromInstant(instant));
      return { day: dayNumber(shown), minutes: shown.hours * 60 + shown.minutes };
    },
  });
  return { ...base, optional: undefined, read };
}
