// The names of the sheets and the cells that one sheet reads from another, in one place.
import { area } from './addresses';
import { airFrom, airList, answer, wholeRows } from './route/rows';
import type { SheetKey } from './template';
import { tripRows } from './trip/rows';

export const sheetNames: Readonly<Record<SheetKey, string>> = {
  start: 'Start',
  trip: 'Trip sheet',
  working: 'Trip working',
  route: 'Route',
  card: 'Descent and hold card',
  balance: 'Weight and balance',
  day: 'Flights of the day',
  ledger: 'Data ledger',
  due: 'Load list',
  dues: 'Dues',
  statement: 'Statement',
  currency: 'Currency log',
  fields: 'Fields',
  tables: 'Manual tables',
};

/** The sheets of which each belongs to one trip: they read one another, and are copied together. */
export const sheetsOfOneTrip: ReadonlySet<SheetKey> = new Set(['trip', 'working', 'balance', 'card', 'route']);

/** Cells of Start read elsewhere: whether as_of is today, and in words on which day everything is judged. */
export const startCells = { dayVerdict: 'A8', judgedOn: 'B8' } as const;

/** Where Weight and balance and the card say which trip they work for. */
export const forTripCells = { balance: 'G4', card: 'E1', working: 'C1', route: 'C1' } as const;

/** Where Trip working keeps all that is typed on the Trip sheet that it reads, as one text. */
export const entriesReadCell = 'W4';

/** Where a sheet says which of its computed cells were typed over; blank where none was. */
export const typedOverCells = { balance: 'A5', card: 'A10', ledger: 'A7', currency: 'A8', working: 'A4', route: 'A5' } as const;

/** Where a sheet says that a row stands beside its list: of the cards, of the pilot's papers, of the aircraft's items, of fields and runways. */
export const besideCells = { data: 'A9', pilot: 'B3', aircraft: 'B4', fields: 'A4' } as const;

/** Cells of the Trip sheet read elsewhere. */
export const tripCells = {
  departure: `B${tripRows.field}`,
  destination: `C${tripRows.field}`,
  firstDay: `B${tripRows.firstDay}`,
  lastDay: `B${tripRows.lastDay}`,
  tripFuel: `H${tripRows.tripFuel}`,
} as const;

/** All that is typed on the Trip sheet, with what stands among it. */
export const tripEntryRanges = {
  entries: `B${tripRows.aircraft}:D${tripRows.takenOn}`,
  reports: `A${tripRows.metars.first}:A${tripRows.tafs.last}`,
} as const;

/** Cells of Weight and balance read elsewhere: fuel and weights worked out with built-in formulas, and the judged points. */
export const balanceCells = {
  fuelOnBoard: 'C34',
  taxiFuel: 'C35',
  tripFuel: 'C36',
  fuelWeightEach: 'C37',
  zeroFuelWeight: 'C38',
  takeoffWeight: 'C39',
  landingWeight: 'C40',
  pointNames: 'A44:A50',
  pointVerdicts: 'B44:B50',
  pointReasons: 'H44:H50',
  /** Of these points what the Trip sheet tells under the whole burn: during the flight, burning into the reserve and, where there are limits, lateral. */
  burnNames: 'A47:A49',
  burnVerdicts: 'B47:B49',
  burnReasons: 'H47:H49',
  /** Every verdict of the loading: points, lateral balance, burn; and of its entries, station by station. */
  loadingVerdicts: 'B44:B64',
  /** The aircraft of each station: as many of the one in use, so many verdicts of entries there must be. */
  stationAircraft: 'A7:A24',
  /** What the lines below stations and fuel say of them. */
  stationsSaid: 'A25',
  fuelSaid: 'A41',
  entryNames: 'G8:G23',
  entryVerdicts: 'H8:H23',
  entryReasons: 'I8:I23',
} as const;

/** Cells of the Route read elsewhere: its verdict with the reason, where it begins and ends, how far, how long, with how much fuel; the last leg and the winds for the card. */
export const routeCells = {
  verdict: 'B2',
  reason: 'C2',
  from: 'A3',
  to: 'B3',
  distance: 'D3',
  minutes: 'H3',
  fuel: 'K3',
  parts: area(answer.first, 2, answer.last, 2),
  /** Of each part: its leg, and its minutes. */
  legs: area(answer.first, 1, answer.last, 1),
  legMinutes: area(answer.first, 14, answer.last, 14),
  lastGroundspeed: `D${wholeRows.lastGroundspeed}`,
  lastCourse: `D${wholeRows.lastCourse}`,
  winds: area(airList.first, airFrom, airList.last + 1, airFrom + 2),
  windPlaces: area(airList.first, airFrom + 4, airList.last + 1, airFrom + 4),
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
