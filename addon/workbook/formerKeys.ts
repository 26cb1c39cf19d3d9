// Entries that had another key in an earlier version, or stood on another sheet: key of today to the key before, each with the
// key of its sheet before it. The cells of a list are "sheet.list.column.3", counted from 1. One entry of before may go to several of today.

/** A row of Fields for each end of the trip, and a runway of each; its name and the unit of its length were not asked for, and stay blank. */
const ends = [
  ['departure', 1, 'takeoffAvailable'],
  ['destination', 2, 'landingAvailable'],
] as const;
const toFields = ends.flatMap(([end, row, available]) => [
  ...['field', 'latitude', 'longitude', 'elevation'].map((name) => [`fields.fields.${name}.${row}`, `trip.${name}.${end}`] as const),
  [`fields.runways.field.${row}`, `trip.field.${end}`] as const,
  [`fields.runways.direction.${row}`, `trip.runway.${end}`] as const,
  [`fields.runways.${available}.${row}`, `trip.available.${end}`] as const,
]);

/**
 * A card's row told its one load too; now that is the first line of the history of loads, named as the card is. Rows of such a list beyond
 * these would be told as entries without a place.
 */
const cardRows = Array.from({ length: 400 }, (_, index) => index + 1);
const loadColumns = ['aircraft', 'card', 'database', 'effective', 'loadedOn', 'verified', 'loadedBy'];
const toLoads = cardRows.flatMap((row) => loadColumns.map((name) => [`ledger.loads.${name}.${row}`, `ledger.cards.${name}.${row}`] as const));

export const formerKeys: Readonly<Record<string, string>> = {
  'trip.groundspeed.departure': 'trip.cruiseSpeed',
  'trip.metars.report.1': 'trip.reports.report.1',
  'trip.metars.report.2': 'trip.reports.report.2',
  'start.takeoffFactor': 'trip.factor.departure',
  'start.landingFactor': 'trip.factor.destination',
  ...Object.fromEntries(toFields),
  ...Object.fromEntries(toLoads),
};

/**
 * Entries that came with a formula which read the report. Today the report is read on Trip working and what is typed takes its place, so
 * that the number of an old report must not stay there: a formula in them is told, and left out.
 */
export const readFromReport: readonly string[] = ['altimeter', 'temperature', 'windFrom', 'wind'].flatMap((name) =>
  ['departure', 'destination'].map((end) => `trip.${name}.${end}`),
);

/** Keys that are asked for still: they go to another place only out of a sheet that has this key too. */
export const onlyBeside: Readonly<Record<string, string>> = {
  'trip.field.departure': 'trip.latitude.departure',
  'trip.field.destination': 'trip.latitude.destination',
  ...Object.fromEntries(
    cardRows.flatMap((row) => loadColumns.slice(0, 3).map((name) => [`ledger.cards.${name}.${row}`, `ledger.cards.effective.${row}`] as const)),
  ),
};

export interface Retired {
  /** As in `formerKeys`; a list's columns without the number of the row. */
  readonly keys: readonly string[];
  /** What was asked for, and where it is asked for now. */
  readonly told: string;
}

const columns = (list: string, ...names: readonly string[]): string[] => names.map((name) => `${list}.${name}`);
const correction = ['name', 'percent', 'each', 'amount'];

/**
 * Entries that are not carried: what stands in them stays in the older sheet, and is told cell by cell. Corrections and taxi fuel are those of
 * an aircraft, and an older sheet does not say of which: in the row of another one they would look right and be wrong.
 */
export const retired: readonly Retired[] = [
  {
    keys: columns('trip.takeoffCorrections', ...correction),
    told: 'The take-off corrections are asked for with the aircraft now, under Corrections of Manual tables; its wind, surface and slope come from the day and the field, so leave those amounts blank',
  },
  {
    keys: columns('trip.landingCorrections', ...correction),
    told: 'The landing corrections are asked for there too',
  },
  {
    keys: columns('trip.databases', 'database', 'series', 'effective'),
    told: 'Navigation data is heard from the Data ledger now, or typed as a last good day on the Trip sheet',
  },
  { keys: ['balance.taxiFuel'], told: 'Taxi fuel is asked for with the aircraft now, in the list of Manual tables' },
  { keys: ['tables.inputs'], told: 'Nothing asks for this any more' },
];
