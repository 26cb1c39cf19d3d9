// Weight and balance: stations, fuel, the points of the flight and its whole burn against the envelope, and all of it drawn.
import { cornerCells, fuelCells, lateralHelp, momentColumn, momentHelp, momentsHelp, stationCells } from './entries';
import { block, cornerRows, envelopeInUse, ofRows, readRows, stationRows, tankRows, weighingRows } from './rows';
import { fuelWeightOfWhole } from './whole';
import { weighingCells, weighingValidations } from './weighings';
import { area, caution, cell, line, readTripInWords, typedOver, unlessFormula, type Field } from '../build';
import { callHeads, headWords } from '../lists';
import { limitsInUse, loadingWays, ofAircraft } from '../manual/sheet';
import { tableInUse } from '../manual/tables';
import { columnsFrom } from '../keys';
import { sheetNames } from '../places';
import { formulaCall, type ChartSeries, type DeclaredSheet, type TemplateCell, type Validation } from '../template';
import { whileDemo } from '../demo/inUse';

const points = { first: 44, last: 64 } as const;
const burnParts = '12';

const pointWords = ['point', 'verdict', 'weight', 'arm', 'forward margin', 'aft margin', 'weight margin', 'reason'];
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
  headWords(pointWords),
  'C4',
  'D4',
  ofRows(stationRows, 'F'),
  ...Object.values(loadingWays),
);

/** The call in the row of the heads, where no row that is deleted takes it away. */
const pointHeads = callHeads(points.first - 1, 1, pointWords, loadingCall, [
  'LOADING_BRIEF: on the line counts as inside; margins are negative outside; the whole burn is looked at, not only its ends.',
]);

/** Room for what LOADING_BRIEF spills. */
const pointCells: TemplateCell[] = Array.from({ length: points.last - points.first + 1 }, (_, index) => index).flatMap((index) =>
  line(
    points.first + index,
    1,
    [undefined, 'computedText'],
    [undefined, 'verdict'],
    [undefined, 'computed', { format: 'whole' }],
    [undefined, 'computed', { format: 'two' }],
    [undefined, 'computed', { format: 'two' }],
    [undefined, 'computed', { format: 'two' }],
    [undefined, 'computed', { format: 'whole' }],
    [undefined, 'computedText'],
  ),
);

const inUse: TemplateCell[] = line(
  4,
  1,
  ['aircraft in use', 'label'],
  ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }],
  [`=IFERROR(${ofAircraft('weight in')},"")`, 'unit'],
  [`=IFERROR(${ofAircraft('arm in')},"")`, 'unit'],
  ['category', 'label'],
  ['normal', 'inputText', { note: 'Which envelope of the aircraft: a category in the envelope table below.' }],
  [readTripInWords, 'computedText', { note: 'The Trip sheet that this sheet takes its trip fuel from.' }],
);

/** What verdicts rest on: all that is worked out but the moments beside the stations. */
const worked: TemplateCell[] = [
  ...inUse,
  ...stationCells.filter(({ row, column }) => column !== momentColumn || row < stationRows.first),
  ...fuelCells,
  ...pointHeads,
  ...pointCells,
];

const number = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });

export const weightAndBalanceSheet: DeclaredSheet = {
  key: 'balance',
  name: sheetNames.balance,
  version: 5,
  rows: weighingRows.last + 1,
  columns: 10,
  columnWidths: [104, 130, 80, 80, 80, 80, 130, 84, 330, 90],
  rowHeights: { 1: 32, 7: 34, 27: 34, 43: 34, 67: 34, 102: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Weight and balance', 'title'),
    cell(2, 1, whileDemo('Invented demonstration aircraft.', 'Empty weight and arm come from the last weighing of your own aircraft.'), 'subtitle'),
    cell(3, 1, caution, 'subtitle'),
    ...inUse,
    cell(5, 1, `=${typedOver(worked, unlessFormula('A41', 'the line below the fuel'))}`, 'computedText'),
    ...stationCells,
    ...fuelCells,
    ...line(42, 1, ['3  The points and the burn', 'heading'], ...Array.from({ length: 8 }, (): Field => ['', 'heading'])),
    ...pointHeads,
    cell(points.first - 1, 9, undefined, 'columnHead'),
    ...pointCells,
    ...cornerCells,
    ...weighingCells,
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
    number(area(stationRows.first, 6, stationRows.last, 6), -1e9, 1e9, momentHelp),
    number('C35', 0, 1000, 'Fuel burned before take-off, in the unit of the aircraft list.'),
    number(
      area(cornerRows.first, 3, cornerRows.last, 4),
      -100000,
      1000000,
      `A corner of the envelope: arm (or what the aircraft list says under "envelope in"), then weight. ${momentsHelp}`,
    ),
    ...weighingValidations,
  ],
  verdictRanges: [`B${points.first}:B${points.last}`, area(stationRows.first, 8, stationRows.last, 8)],
  names: [],
  keys: {
    entries: { category: 'F4' },
    lists: {
      stations: {
        head: stationRows.first - 1,
        ...stationRows,
        read: readRows(stationRows),
        columns: columnsFrom(1, 'aircraft', 'station', 'weight', 'arm', 'lateralArm', 'moment'),
      },
      tanks: {
        head: tankRows.first - 1,
        ...tankRows,
        read: readRows(tankRows),
        columns: columnsFrom(1, 'aircraft', 'tank', 'onBoard', 'burnOrder', 'lateralArm'),
      },
      corners: {
        head: cornerRows.first - 1,
        ...cornerRows,
        read: readRows(cornerRows),
        columns: columnsFrom(1, 'aircraft', 'category', 'arm', 'weight'),
      },
      weighings: {
        head: weighingRows.first - 1,
        ...weighingRows,
        read: readRows(weighingRows),
        columns: columnsFrom(1, 'aircraft', 'day', 'what', 'weight', 'arm', 'moment', 'remark'),
      },
    },
  },
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
        ...['zero fuel', 'take-off', 'landing'].map((title, index): ChartSeries => ({
          title,
          x: `D${points.first + index}`,
          y: `C${points.first + index}`,
          drawn: 'points',
        })),
      ],
    },
  ],
  print: { landscape: true },
};
