// The names of the sheets and the cells that one sheet reads from another, in one place.
import type { SheetKey } from './template';

export const sheetNames: Readonly<Record<SheetKey, string>> = {
  start: 'Start',
  trip: 'Trip sheet',
  balance: 'Weight and balance',
  tables: 'Manual tables',
};

/** Cells of the Trip sheet read elsewhere. */
export const tripCells = { tripFuel: 'B40' } as const;

/** Cells of Weight and balance read elsewhere: the rows of its three points, and its fuel entries. */
export const balanceRows = { zeroFuel: 30, takeoff: 31, landing: 32 } as const;
export const balanceCells = { fuelOnBoard: 'C22', taxiFuel: 'C23' } as const;
