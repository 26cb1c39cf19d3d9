// The names of the sheets and the cells that one sheet reads from another, in one place.
import type { SheetKey } from './template';
import { entryRows } from './tripRows';

export const sheetNames: Readonly<Record<SheetKey, string>> = {
  start: 'Start',
  trip: 'Trip sheet',
  card: 'Descent and hold card',
  balance: 'Weight and balance',
  ledger: 'Data ledger',
  currency: 'Currency log',
  tables: 'Manual tables',
};

/** Cells of the Trip sheet read elsewhere. */
export const tripCells = { firstDay: `B${entryRows.firstDay}`, lastDay: `B${entryRows.lastDay}`, tripFuel: `B${entryRows.tripFuel}` } as const;

/** Cells of Weight and balance read elsewhere: fuel and weights worked out with built-in formulas, and the judged points. */
export const balanceCells = {
  fuelOnBoard: 'C34',
  taxiFuel: 'C35',
  takeoffWeight: 'C39',
  landingWeight: 'C40',
  pointNames: 'A44:A50',
  pointVerdicts: 'B44:B50',
  pointReasons: 'H44:H50',
  /** Of these points what the Trip sheet tells under the whole burn: on the way, reserve and, where there are limits, lateral. */
  burnNames: 'A47:A49',
  burnVerdicts: 'B47:B49',
  burnReasons: 'H47:H49',
  /** Every verdict of the loading: points, lateral balance, burn; and of its entries, station by station. */
  loadingVerdicts: 'B44:B64',
  /** The aircraft of each station: as many of the one in use, so many verdicts of entries there must be. */
  stationAircraft: 'A7:A24',
  entryNames: 'G8:G23',
  entryVerdicts: 'H8:H23',
  entryReasons: 'I8:I23',
} as const;

/** Cells of the Descent and hold card read elsewhere: its verdicts with their reasons, the start of the descent, the hold worked out. */
export const cardCells = {
  crossings: { verdict: 'E2', reason: 'F2' },
  descent: { verdict: 'E3', reason: 'F3' },
  schedule: 'E24:G29',
  hold: { verdict: 'E4', reason: 'F4' },
  startDown: 'F7',
  startDecided: 'F9',
  briefItems: 'E54:E74',
  briefValues: 'F54:F74',
} as const;
