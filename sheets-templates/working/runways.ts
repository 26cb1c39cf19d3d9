// The runway sections: the winds on every runway of the field, what applies on the one chosen, and each step to the margin.
import { area, line, on, type Field } from '../build';
import { runwayColumns } from '../fields/sheet';
import type { Block } from '../layout';
import { listHeads, shownNumber, spillBlock, type Look } from '../lists';
import { ofAircraft } from '../manual/sheet';
import { correctionsInUse, tableInUse } from '../manual/tables';
import { balanceCells, sheetNames } from '../places';
import { landingFactorCell, limitCell, takeoffFactorCell } from '../start/settings';
import { formulaCall, type TemplateCell } from '../template';
import { tripRows as trip, type PlaceColumn } from '../trip/rows';
import { onTrip } from './places';
import { workingRows as rows } from './rows';

const spill = (block: Block, from: number, looks: readonly Look[], call: string): TemplateCell[] => spillBlock(block, from, looks, call);
const heading = (row: number, title: string): TemplateCell[] =>
  line(row, 1, [title, 'heading'], ...Array.from({ length: 5 }, (): Field => ['', 'heading']));
const correctionHeads = ['percent', 'for each', 'amount', 'verdict', 'from'];
/** With the heads of the corrections, which stand first; below them every step, and what would still fit. */
const runwayHeading = (row: number, title: string): TemplateCell[] =>
  line(row, 1, [title, 'heading'], ...correctionHeads.map((word): Field => [word, 'columnHead']));

const at = (column: PlaceColumn, row: number): string => `${column}${row}`;

/** Every runway of the field in the wind used, with its name before the answer. A variable wind has no best runway. */
function winds(column: PlaceColumn, block: Block): TemplateCell[] {
  const ofField = (range: string): string => `FILTER(${range},${runwayColumns.field}=${onTrip(column, trip.field)})`;
  /** A blank field would find every blank row of the list. */
  const whereChosen = (found: string): string => `IF(${onTrip(column, trip.field)}="","",${found})`;
  const gust = at(column, rows.gust);
  const call = formulaCall(
    'RUNWAY_WINDS',
    ofField(runwayColumns.direction),
    at(column, rows.windFrom),
    at(column, rows.wind),
    gust,
    limitCell('maximum crosswind'),
  );
  const note = 'RUNWAY_WINDS: the wind alone; length, slope and surface are judged below.';
  const names: Look = ['computedText', undefined, note];
  return [
    ...spill(block, 1, [names], `IFERROR(${whereChosen(ofField(runwayColumns.name))},"")`),
    ...spill(block, 2, [shownNumber('one'), shownNumber('one'), shownNumber('one'), ['verdict'], shownNumber('whole')], whereChosen(call)),
  ];
}

/** Formula text: the runway with the first place in the order of its winds. */
const best = (block: Block): string =>
  `=IFERROR(INDEX(${on(sheetNames.working, area(block.first, 1, block.last, 1))},MATCH(1,${on(sheetNames.working, area(block.first, 6, block.last, 6))},0))&"","")`;
export const bestRunway: Readonly<Record<'B' | 'C', string>> = { B: best(rows.takeoffWinds), C: best(rows.landingWinds) };

const withoutNote = ([style, format]: Look): Look => [style, format];

const correctionLooks: readonly Look[] = [
  ['computedText', undefined, "RUNWAY_CORRECTIONS: the manual's own where Manual tables has them, else the published factors."],
  shownNumber('one'),
  shownNumber('one'),
  shownNumber('one'),
  ['verdict'],
  ['computedText'],
];

interface Side {
  readonly column: PlaceColumn;
  readonly operation: 'take-off' | 'landing';
  readonly table: 'takeoff' | 'landing';
  readonly weight: string;
  readonly factor: string;
  readonly corrections: Block;
}

/** Where an alternate is planned: what is missing of its runway is then told, and not taken for no runway at all. */
const ofAlternate = (row: number): string => `IF(${onTrip('D', trip.field)}="","",IF(${at('D', row)}="","?",${at('D', row)}))`;

const corrections = ({ column, operation, table, corrections: block }: Side): TemplateCell[] => {
  const alternate = operation === 'landing' ? [ofAlternate(rows.surface), ofAlternate(rows.slope)] : [];
  const call = formulaCall(
    'RUNWAY_CORRECTIONS',
    `"${table}"`,
    at(column, rows.surface),
    at(column, rows.slope),
    correctionsInUse(operation),
    ...alternate,
  );
  return spill(block, 1, alternate.length === 0 ? correctionLooks : [...correctionLooks, ...correctionLooks.map(withoutNote)], call);
};

function given({ column, table, weight, factor, corrections: block }: Side): string[] {
  const entries = [rows.runway, rows.available, rows.elevation, rows.altimeter, rows.temperature, rows.windFrom, rows.wind].map((row) =>
    at(column, row),
  );
  const unsteady = [rows.gust, rows.variableFrom, rows.variableTo].map((row) => at(column, row));
  return [
    tableInUse(table),
    '"over 50 ft"',
    on(sheetNames.balance, weight),
    ...entries,
    factor,
    area(block.first, 1, block.last, 4),
    ...unsteady,
    ofAircraft('distance in'),
    ofAircraft('weight in'),
  ];
}

const balance = (place: string): string => on(sheetNames.balance, place);
/** Landing weight less the fuel to the alternate, and never less than without fuel. */
function alternateWeight(): string {
  const [landed, each, dry] = [balanceCells.landingWeight, balanceCells.fuelWeightEach, balanceCells.zeroFuelWeight].map(balance);
  const minutes = onTrip('D', trip.timeEnRoute);
  const known = [landed, each, dry, minutes, `$B$${rows.flow}`].map((place) => `ISNUMBER(${place ?? ''})`).join(',');
  return `=IF(${onTrip('D', trip.field)}="","",IF(AND(${known}),MAX(${dry ?? ''},${landed ?? ''}-${minutes}/60*$B$${rows.flow}*${each ?? ''}),""))`;
}

const alternateHeads = [
  'weight',
  'runway',
  'available',
  'elevation, ft',
  'altimeter',
  'temperature, C',
  'wind from',
  'wind, kt',
  'gust, kt',
  'variable from',
  'variable to',
];
const alternateFormats = ['whole', 'degrees', 'whole', 'whole', 'general', 'general', 'degrees', 'whole', 'whole', 'degrees', 'degrees'] as const;
const ofPlace = [
  rows.runway,
  rows.available,
  rows.elevation,
  rows.altimeter,
  rows.temperature,
  rows.windFrom,
  rows.wind,
  rows.gust,
  rows.variableFrom,
  rows.variableTo,
];
/** One row, as LANDING_BRIEF reads what of the alternate differs; blank where none is planned. */
const alternateCells: TemplateCell[] = [
  ...heading(rows.alternateHeading, '8  The landing at the alternate: what it takes'),
  ...listHeads(rows.alternateHeads, 1, ['place', ...alternateHeads]),
  ...line(
    rows.alternate,
    1,
    ['alternate', 'label'],
    [alternateWeight(), 'computed', { format: 'whole', note: 'The landing weight less the fuel from the destination to the alternate.' }],
    ...ofPlace.map((row, index): Field => [
      `=IF(${onTrip('D', trip.field)}="","",${at('D', row)})`,
      'computed',
      { format: alternateFormats[index + 1] ?? 'general' },
    ]),
  ),
];
const alternateArguments = [
  area(rows.alternate, 2, rows.alternate, alternateHeads.length + 1),
  area(rows.landingCorrections.first, 7, rows.landingCorrections.last, 10),
];

const takeoff: Side = {
  column: 'B',
  operation: 'take-off',
  table: 'takeoff',
  weight: balanceCells.takeoffWeight,
  factor: takeoffFactorCell,
  corrections: rows.takeoffCorrections,
};
const landing: Side = {
  column: 'C',
  operation: 'landing',
  table: 'landing',
  weight: balanceCells.landingWeight,
  factor: landingFactorCell,
  corrections: rows.landingCorrections,
};

const briefLooks = (note: string): readonly Look[] => [['computedText', undefined, note], ['computed', 'shown'], ['unit']];
const briefNote = 'Every factor of the distance, from the aircraft table to the margin. Corrections multiply one another (Safety Sense Leaflet 7).';
const limitNote = 'What the runway would still carry, other things as today: solved inside the table, never beyond it.';
/** Its last column says where the answer stops. */
const limitLooks: readonly Look[] = [...briefLooks(limitNote), ['computedText']];

export const climbCall = formulaCall(
  'CLIMB_BRIEF',
  tableInUse('climb'),
  '"rate of climb"',
  on(sheetNames.balance, balanceCells.takeoffWeight),
  ...[rows.elevation, rows.altimeter, rows.temperature].map((row) => at('B', row)),
  onTrip('B', trip.gradient),
  onTrip('B', trip.climbSpeed),
  ofAircraft('weight in'),
);

export const runwayCells: TemplateCell[] = [
  ...heading(rows.windsHeading, '5  The wind on every runway: departure, then destination'),
  ...listHeads(rows.windsHeads, 1, ['runway', 'headwind, kt', 'crosswind, kt', 'in gusts, kt', 'verdict', 'order']),
  ...winds('B', rows.takeoffWinds),
  ...winds('C', rows.landingWinds),
  ...runwayHeading(rows.takeoffHeading, '6  Take-off over 50 ft'),
  ...corrections(takeoff),
  ...spill(rows.takeoffBrief, 1, briefLooks(briefNote), formulaCall('TAKEOFF_BRIEF', ...given(takeoff))),
  ...spill(rows.takeoffLimits, 1, limitLooks, formulaCall('TAKEOFF_LIMITS', ...given(takeoff))),
  ...heading(rows.climbHeading, '7  Climb'),
  ...spill(rows.climbBrief, 1, briefLooks('CLIMB_BRIEF: the climb table at the field, today, against gradient x groundspeed / 60.'), climbCall),
  ...alternateCells,
  ...runwayHeading(rows.landingHeading, '9  Landing over 50 ft: destination, and alternate at the right'),
  ...line(rows.landingHeading, 7, ...['at the alternate', ...correctionHeads].map((word): Field => [word, 'columnHead'])),
  ...corrections(landing),
  ...spill(
    rows.landingBrief,
    1,
    [...briefLooks(briefNote), ...briefLooks('The same at the alternate, where one is planned.')],
    formulaCall('LANDING_BRIEF', ...given(landing), ...alternateArguments),
  ),
  ...spill(rows.landingLimits, 1, limitLooks, formulaCall('LANDING_LIMITS', ...given(landing))),
];
