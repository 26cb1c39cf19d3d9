// Where the entries and results of the Trip sheet stand: rows by name, so that formulas cannot point beside them.

export const entryRows = {
  aircraft: 6, pilot: 7, firstDay: 8, lastDay: 9,
  field: 11, latitude: 12, longitude: 13, elevation: 14, altimeter: 15, temperature: 16, windFrom: 17, wind: 18, runway: 19, available: 20, factor: 21, variation: 22,
  gradient: 30, climbSpeed: 31,
  cruiseSpeed: 40, fuelFlow: 41, reserve: 42, timeEnRoute: 43, tripFuel: 44, fuelLeft: 45,
  startDown: 55, startDecided: 56, holdInbound: 57, holdEntry: 58, holdOutbound: 59, holdOutboundTime: 60, holdLimit: 61,
  leg: 70,
  landingsRecent: 77, medical: 78,
} as const;

/** Blocks of rows: corrections typed, spills of the briefs, the judged items, the databases. */
export const blockRows = {
  judged: { first: 6, last: 21 },
  /** Read with the blank row below, so that a row put in after the last is read too. */
  takeoffCorrections: { first: 25, last: 28 },
  landingCorrections: { first: 49, last: 52 },
  climbBrief: { first: 32, last: 37 },
  takeoffBrief: { first: 24, last: 39 },
  takeoffLimits: { first: 41, last: 45 },
  landingBrief: { first: 48, last: 62 },
  landingLimits: { first: 64, last: 68 },
  databases: { first: 73, last: 76 },
  /** The reports typed in, and what METAR_READ reads from them: departure, then destination. */
  reports: { first: 82, last: 83 },
  reportValues: { first: 86, last: 87 },
} as const;

export type Block = { readonly first: number; readonly last: number };

/** The rows of a list of corrections that formulas read. */
export const correctionsRead = ({ first, last }: Block): Block => ({ first, last: last + 1 });
