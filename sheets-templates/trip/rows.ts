// Where the entries and results of the Trip sheet stand: rows by name, numbered in the order in which they are declared here.
import { below, lastRow, row, rows, rowsFrom } from '../layout';

/** Columns A to E: what the pilot types. */
const left = rowsFrom(6, {
  tripHeading: row,
  aircraft: row,
  pilot: row,
  firstDay: row,
  lastDay: row,
  takeoffTime: row,
  passengers: row,
  night: row,
  instrument: row,
  judgeDescent: row,
  judgeHold: row,
  fieldsHeading: row,
  field: row,
  runwayName: row,
  bestRunway: row,
  available: row,
  fuelHeading: row,
  distance: row,
  groundspeed: row,
  minutesTyped: row,
  timesFrom: row,
  timeEnRoute: row,
  fuelFlow: row,
  contingency: row,
  holding: row,
  reserve: row,
  climbHeading: row,
  gradient: row,
  climbSpeed: row,
  typedHeading: row,
  altimeter: row,
  temperature: row,
  windFrom: row,
  wind: row,
  gust: row,
  datesHeading: row,
  landingsRecent: row,
  review: row,
  medical: row,
  inspections: row,
  data: row,
  beforeHeading: row,
  beforeTo: row,
  beforeLands: row,
  beforeFuel: row,
  beforeMinutes: row,
  takenOn: row,
});

/** Columns G to I: the items judged, and what the other sheets work out. */
const right = rowsFrom(6, {
  judgedHeads: row,
  judged: rows(26),
  loadingHeading: below(1, row),
  takeoffWeight: row,
  landingWeight: row,
  fuelOnBoard: row,
  fuelRequired: row,
  tripFuel: row,
  cardHeading: row,
  startDown: row,
  startDecided: row,
  holdEntry: row,
  holdInbound: row,
  holdOutbound: row,
  holdOutboundTime: row,
  holdLimit: row,
});

/** Below both halves: the reports, departure first. */
const foot = rowsFrom(Math.max(lastRow(left), lastRow(right)) + 2, {
  reportsHeading: row,
  reportsHelp: row,
  metars: rows(3),
  tafs: rows(3),
});

export const tripRows = { ...left, ...right, ...foot } as const;
/** Those in which something is typed: their names are the keys of the entries. */
export const tripEntryRows = { ...left, ...foot } as const;
export const tripLastRow = lastRow(foot);

/** The columns of the three places of a trip, the same on the Trip sheet and on Trip working. */
export const placeColumns = ['B', 'C', 'D'] as const;
export type PlaceColumn = (typeof placeColumns)[number];
export const placeNames: Readonly<Record<PlaceColumn, string>> = { B: 'departure', C: 'destination', D: 'alternate' };
