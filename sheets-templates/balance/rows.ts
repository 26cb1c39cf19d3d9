// Where the lists of Weight and balance stand, and what formulas read of them.

export const stationRows = { first: 8, last: 23 } as const;
export const tankRows = { first: 28, last: 33 } as const;
export const cornerRows = { first: 68, last: 97 } as const;
export const weighingRows = { first: 103, last: 122 } as const;

export type Rows = { readonly first: number; readonly last: number };
export const block = ({ first, last }: Rows, from: string, to = from): string => `$${from}$${first}:$${to}$${last}`;

/**
 * The rows that formulas read: with the heads, which name no aircraft, and with the blank row below where there is one, so that a row put in
 * at either end of a list is read too.
 */
export const readRows = (rows: Rows): Rows => ({ first: rows.first - 1, last: rows === tankRows ? rows.last : rows.last + 1 });
export const read = (rows: Rows, from: string, to = from): string => block(readRows(rows), from, to);

/** Formula text: columns of a table, only the rows of the aircraft in use. */
export const ofRows = (rows: Rows, from: string, to = from): string => `FILTER(${read(rows, from, to)},${read(rows, 'A')}=aircraft_in_use)`;

/** Formula text: the corners of the aircraft and category in use, arm and weight. */
export const envelopeInUse = `FILTER(${read(cornerRows, 'C', 'D')},(${read(cornerRows, 'A')}=aircraft_in_use)*(${read(cornerRows, 'B')}=$F$4))`;
