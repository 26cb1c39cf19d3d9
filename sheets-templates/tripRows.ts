// Where the entries and results of the Trip sheet stand: rows by name, so that formulas cannot point beside them.

export const entryRows = {
  aircraft: 6, pilot: 7, firstDay: 8, lastDay: 9,
  field: 11, latitude: 12, longitude: 13, elevation: 14, altimeter: 15, temperature: 16, windFrom: 17, wind: 18, runway: 19, available: 20, factor: 21,
  gradient: 30, climbSpeed: 31,
  cruiseSpeed: 40, fuelFlow: 41, reserve: 42, timeEnRoute: 43, tripFuel: 44, fuelLeft: 45,
  cruiseAltitude: 53, crossingAltitude: 54, beforeFix: 55, descentAngle: 56, descentSpeed: 57, startDown: 58, descentRate: 59,
  holdSide: 62, holdTurns: 63, holdHeading: 64, holdAltitude: 65, holdSpeed: 66, holdInbound: 67, holdEntry: 68, holdLimit: 69,
  landingsRecent: 77, medical: 78,
} as const;

/** Blocks of rows: corrections typed, spills of the briefs, the judged items, the databases. */
export const blockRows = {
  judged: { first: 6, last: 19 },
  takeoffCorrections: { first: 25, last: 28 },
  landingCorrections: { first: 49, last: 52 },
  climbBrief: { first: 32, last: 37 },
  takeoffBrief: { first: 24, last: 38 },
  takeoffLimits: { first: 40, last: 44 },
  landingBrief: { first: 48, last: 62 },
  landingLimits: { first: 64, last: 68 },
  databases: { first: 73, last: 76 },
} as const;

export type Block = { readonly first: number; readonly last: number };
