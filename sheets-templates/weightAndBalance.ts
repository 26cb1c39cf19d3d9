// Weight and balance: stations, fuel, the points of the flight and its whole burn against the envelope, and all of it drawn.
import { block, cornerCells, cornerRows, envelopeInUse, fuelCells, fuelWeightOfWhole, lateralHelp, ofRows, stationCells, stationRows, tankRows } from './balanceEntries';
import { area, caution, cell, line, type Field } from './build';
import { limitsInUse, ofAircraft, tableInUse } from './manualTables';
import { sheetNames } from './places';
import { formulaCall, type ChartSeries, type SheetTemplate, type TemplateCell, type Validation } from './template';

const points = { first: 44, last: 64 } as const;
const burnParts = '12';

const loadingCall = formulaCall(
  'LOADING_BRIEF',
  ofRows(stationRows, 'B'),
  ofRows(stationRows, 'C'),
  ofRows(stationRows, 'D'),
  ofRows(tankRows, 'B', 'E'),
  tableInUse('tankArms'),
  fuelWeightOfWhole,
  'C35',
  'C36',
  envelopeInUse,
  limitsInUse,
  ofRows(stationRows, 'E'),
  burnParts,
);

const pointHeads: readonly string[] = ['point', 'verdict', 'weight', 'arm', 'forward margin', 'aft margin', 'weight margin', 'reason', ''];

/** The spill of LOADING_BRIEF: its first cell holds the call, the others only their look. */
const pointCells: TemplateCell[] = Array.from({ length: points.last - points.first + 1 }, (_, index) => index).flatMap((index) =>
  line(points.first + index, 1,
    [index === 0 ? `=${loadingCall}` : undefined, 'computedText', index === 0 ? { note: 'LOADING_BRIEF: on the line counts as inside; margins are negative outside; the whole burn is looked at, not only its ends.' } : {}],
    [undefined, 'verdict'], [undefined, 'computed', { format: 'whole' }], [undefined, 'computed', { format: 'two' }], [undefined, 'computed', { format: 'two' }],
    [undefined, 'computed', { format: 'two' }], [undefined, 'computed', { format: 'whole' }], [undefined, 'computedText']),
);

const number = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });

export const weightAndBalanceSheet: SheetTemplate = {
  key: 'balance',
  name: sheetNames.balance,
  version: 2,
  rows: cornerRows.last + 1,
  columns: 9,
  columnWidths: [104, 130, 74, 74, 80, 80, 130, 84, 330],
  rowHeights: { 1: 32, 7: 34, 27: 34, 43: 34, 67: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Weight and balance', 'title'),
    cell(2, 1, 'Invented demonstration aircraft. Empty weight and arm come from the last weighing of your own aircraft.', 'subtitle'),
    cell(3, 1, caution, 'subtitle'),
    ...line(4, 1, ['aircraft in use', 'label'], ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }], [`=IFERROR(${ofAircraft('weight in')},"")`, 'unit'], [`=IFERROR(${ofAircraft('arm in')},"")`, 'unit'],
      ['category', 'label'], ['normal', 'inputText', { note: 'Which envelope of the aircraft: a category in the envelope table below.' }]),
    ...stationCells,
    ...fuelCells,
    ...line(42, 1, ['3  The points and the burn', 'heading'], ...Array.from({ length: 8 }, (): Field => ['', 'heading'])),
    ...line(43, 1, ...pointHeads.map((head): Field => [head, 'columnHead'])),
    ...pointCells,
    ...cornerCells,
  ],
  merges: [],
  validations: [
    { kind: 'listFrom', range: 'F4', source: block(cornerRows, 'B'), help: 'A category of the envelope table, such as normal or utility.' },
    number(area(stationRows.first, 3, stationRows.last, 3), 0, 100000, 'Weight, in the unit of the aircraft list. An empty seat weighs 0.'),
    number(area(stationRows.first, 4, stationRows.last, 4), -100000, 100000, 'Arm from the datum, in the unit of the aircraft list.'),
    number(area(stationRows.first, 5, stationRows.last, 5), -100000, 100000, lateralHelp),
    number(area(tankRows.first, 3, tankRows.last, 3), 0, 100000, 'Usable fuel in the tank, in the unit of the aircraft list.'),
    number(area(tankRows.first, 4, tankRows.last, 4), 1, 99, 'Tanks burn in rising order; tanks with the same number burn together.'),
    number(area(tankRows.first, 5, tankRows.last, 5), -100000, 100000, lateralHelp),
    number('C35', 0, 1000, 'Fuel burned before take-off, in the unit of the aircraft list.'),
    number(area(cornerRows.first, 3, cornerRows.last, 4), -100000, 1000000, 'A corner of the envelope: arm, then weight.'),
  ],
  verdictRanges: [`B${points.first}:B${points.last}`, area(stationRows.first, 8, stationRows.last, 8)],
  names: [],
  charts: [
    {
      title: 'Loading in the envelope',
      description: 'Weight against arm: the outline of the envelope, the burn from take-off to empty tanks, and the points judged.',
      xTitle: 'arm',
      yTitle: 'weight',
      row: 26,
      column: 6,
      width: 505,
      height: 318,
      series: [
        { title: 'envelope', x: `F${cornerRows.first}:F${cornerRows.last}`, y: `G${cornerRows.first}:G${cornerRows.last}`, drawn: 'line' },
        { title: 'burn', x: `D${points.first + 5}:D${points.last}`, y: `C${points.first + 5}:C${points.last}`, drawn: 'line' },
        ...['zero fuel', 'take-off', 'landing'].map((title, index): ChartSeries => ({ title, x: `D${points.first + index}`, y: `C${points.first + index}`, drawn: 'points' })),
      ],
    },
  ],
  print: { landscape: true },
};
