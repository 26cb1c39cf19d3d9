// Weight and balance: stations, fuel, the three points of the flight against the envelope, and the envelope drawn.
import { area, caution, cell, inputRows, line, on, type Content, type Field } from './build';
import { invented, ofAircraft } from './manualTables';
import { balanceRows, sheetNames, tripCells } from './places';
import { formulaCall, type SheetTemplate, type TemplateCell } from './template';

const firstStation = 8;
const lastStation = 19;
const firstCorner = 36;
const lastCorner = 47;
const { zeroFuel, takeoff, landing } = balanceRows;
const stations = (column: string): string => `$${column}$${firstStation}:$${column}$${lastStation}`;

/** Invented: the aircraft's weighing, its seats and its baggage. */
const stationValues: readonly (readonly Content[])[] = [
  [invented, 'empty aircraft, oil', 1702, 84.2],
  [invented, 'front seats', 345, 86.5],
  [invented, 'rear seats', 160, 118],
  [invented, 'baggage', 45, 142],
];

/** Invented: arm and weight of each corner, in order round the outline, the first again at the end. */
const cornerValues: readonly (readonly Content[])[] = [
  [invented, 'forward, light', 82, 1650],
  [invented, 'forward, to 2,150', 82, 2150],
  [invented, 'forward, heaviest', 85.5, 2650],
  [invented, 'aft, heaviest', 92, 2650],
  [invented, 'aft, light', 92, 1650],
  [invented, 'first corner again', 82, 1650],
];

/** True when every station of the aircraft in use has a weight and an arm, and no filled row lacks an aircraft. */
const stationsWhole =
  `AND(COUNTIF(${stations('A')},aircraft_in_use)>0,` +
  `SUMPRODUCT((${stations('A')}=aircraft_in_use)*ISNUMBER(${stations('C')})*ISNUMBER(${stations('D')}))=COUNTIF(${stations('A')},aircraft_in_use),` +
  `SUMPRODUCT((${stations('A')}="")*(${stations('C')}<>""))=0)`;

const blankRows = (count: number): Content[][] => Array.from({ length: count }, () => [undefined, undefined, undefined, undefined]);

function stationCells(): TemplateCell[] {
  const rows = lastStation - firstStation + 1;
  const moments = Array.from({ length: rows }, (_, index) => firstStation + index).map((row) =>
    cell(row, 5, `=IF(AND(ISNUMBER(C${row}),ISNUMBER(D${row})),C${row}*D${row},"")`, 'computed', { format: 'whole' }),
  );
  return [
    cell(6, 1, '1  Stations', 'heading'),
    ...line(7, 1, ['aircraft', 'columnHead'], ['station', 'columnHead'], ['weight', 'columnHead'], ['arm', 'columnHead'], ['moment', 'columnHead']),
    ...inputRows(firstStation, 1, [...stationValues, ...blankRows(rows - stationValues.length)], (index) => (index === 3 ? 'one' : 'whole')),
    ...moments,
    cell(20, 1, `=IF(${stationsWhole},"Every station of the aircraft in use has a weight and an arm.","A station lacks a weight, an arm or its aircraft: the points below stay UNKNOWN. An empty seat weighs 0.")`, 'subtitle'),
  ];
}

function fuelLine(row: number, label: string, content: Content, unit: string, note: string): TemplateCell[] {
  const typed = typeof content === 'number';
  return line(row, 1, [label, 'label'], [undefined, 'plain'], [content, typed ? 'input' : 'computed', { format: 'one', note }], [unit, 'unit']);
}

const fuelCells: TemplateCell[] = [
  cell(21, 1, '2  Fuel', 'heading'),
  ...fuelLine(22, 'fuel on board at start', 48, `=IFERROR(${ofAircraft('fuel in')},"")`, 'Usable fuel in the tanks before the engine starts.'),
  ...fuelLine(23, 'taxi and run-up', 1.4, `=IFERROR(${ofAircraft('fuel in')},"")`, 'Burned before take-off.'),
  ...fuelLine(24, 'trip fuel', `=${on(sheetNames.trip, tripCells.tripFuel)}`, `=IFERROR(${ofAircraft('fuel in')},"")`, 'From the Trip sheet: time en route x fuel flow.'),
  ...fuelLine(25, 'weight of one unit of fuel', `=IFERROR(${ofAircraft('fuel weight, each')},"")`, `=IFERROR(${ofAircraft('weight in')},"")`, 'From the aircraft list in Manual tables. Avgas: 6.0 lb a US gallon (FAA-H-8083-1B).'),
  ...fuelLine(26, 'fuel arm', `=IFERROR(${ofAircraft('fuel arm')},"")`, `=IFERROR(${ofAircraft('arm in')},"")`, 'From the aircraft list in Manual tables.'),
];

interface Point {
  readonly row: number;
  readonly name: string;
  readonly what: string;
  readonly weight: string;
  readonly arm: string;
  readonly limit: string;
}

const zeroFuelMoment = `$C$${zeroFuel}*$D$${zeroFuel}`;

function fuelPoint(row: number, name: string, what: string, fuel: string, needed: string, limit: string): Point {
  return {
    row,
    name,
    what,
    // Fuel below zero means that the trip needs more than there is: no weight then, so no verdict but UNKNOWN.
    weight: `=IF(AND(ISNUMBER($C$${zeroFuel}),COUNT(${needed})=ROWS(${needed}),ISNUMBER($C$25)),IF(${fuel}<0,"",$C$${zeroFuel}+(${fuel})*$C$25),"")`,
    arm: `=IF(AND(ISNUMBER(C${row}),ISNUMBER($C$26)),(${zeroFuelMoment}+(${fuel})*$C$25*$C$26)/C${row},"")`,
    limit,
  };
}

const points: readonly Point[] = [
  {
    row: zeroFuel,
    name: 'zero fuel',
    what: 'stations only',
    weight: `=IF(${stationsWhole},SUMIF(${stations('A')},aircraft_in_use,${stations('C')}),"")`,
    arm: `=IF(ISNUMBER(C${zeroFuel}),SUMPRODUCT((${stations('A')}=aircraft_in_use)*${stations('C')}*${stations('D')})/C${zeroFuel},"")`,
    limit: ofAircraft('most zero-fuel weight'),
  },
  fuelPoint(takeoff, 'take-off', 'after taxi', '$C$22-$C$23', '$C$22:$C$23', ofAircraft('most take-off weight')),
  fuelPoint(landing, 'landing', 'after the trip', '$C$22-$C$23-$C$24', '$C$22:$C$24', ofAircraft('most landing weight')),
];

export const envelopeInUse = `FILTER($C$${firstCorner}:$D$${lastCorner},$A$${firstCorner}:$A$${lastCorner}=aircraft_in_use)`;

function pointCells({ row, name, what, weight, arm, limit }: Point): TemplateCell[] {
  const verdict = `=IFERROR(IF(OR(G${row}="OK",G${row}="CHECK",G${row}="NO"),IF(AND(ISNUMBER(E${row}),C${row}>E${row}),"NO",G${row}),"UNKNOWN"),"UNKNOWN")`;
  const limitFormula = `=IFERROR(IF(ISNUMBER(${limit}),${limit},""),"")`;
  return line(row, 1, [name, 'label'], [what, 'unit'], [weight, 'computed', { format: 'whole' }], [arm, 'computed', { format: 'two' }],
    [limitFormula, 'computed', { format: 'whole' }], [verdict, 'verdict', { note: 'NO when outside the envelope or above the most allowed weight; UNKNOWN when anything is missing.' }]);
}

const check = `=${formulaCall('BALANCE_CHECK', `C${zeroFuel}:C${landing}`, `D${zeroFuel}:D${landing}`, envelopeInUse)}`;

const pointHeads: readonly string[] = ['point', '', 'weight', 'arm', 'most allowed', 'verdict', 'envelope', 'arm, forward margin', 'arm, aft margin', 'weight margin'];

/** The spill of BALANCE_CHECK: its first cell holds the call, the others only their look. */
function checkCells(): TemplateCell[] {
  return [zeroFuel, takeoff, landing].flatMap((row) =>
    line(row, 7, [row === zeroFuel ? check : undefined, 'computedText', { note: 'BALANCE_CHECK: on the line counts as inside; margins are negative outside.' }],
      [undefined, 'computed', { format: 'two' }], [undefined, 'computed', { format: 'two' }], [undefined, 'computed', { format: 'whole' }]),
  );
}

function envelopeCells(): TemplateCell[] {
  const rows = lastCorner - firstCorner + 1;
  return [
    cell(34, 1, '4  Envelope', 'heading'),
    ...line(35, 1, ['aircraft', 'columnHead'], ['corner, in order round the outline', 'columnHead'], ['arm', 'columnHead'], ['weight', 'columnHead']),
    ...inputRows(firstCorner, 1, [...cornerValues, ...blankRows(rows - cornerValues.length)], (index) => (index === 2 ? 'one' : 'whole')),
    ...line(35, 6, ['drawn: arm', 'columnHead'], ['drawn: weight', 'columnHead']),
    cell(firstCorner, 6, `=${envelopeInUse}`, 'computed', { format: 'one', note: 'The corners of the aircraft in use, for the drawing.' }),
  ];
}

export const weightAndBalanceSheet: SheetTemplate = {
  key: 'balance',
  name: sheetNames.balance,
  version: 1,
  rows: 50,
  columns: 10,
  columnWidths: [120, 150, 84, 84, 92, 92, 92, 92, 92, 92],
  rowHeights: { 1: 32, 29: 34, 35: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Weight and balance', 'title'),
    cell(2, 1, 'Invented demonstration aircraft. Empty weight and arm come from the last weighing of your own aircraft.', 'subtitle'),
    cell(3, 1, caution, 'subtitle'),
    ...line(4, 1, ['aircraft in use', 'label'], ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }], [`=IFERROR(${ofAircraft('weight in')},"")`, 'unit'], [`=IFERROR(${ofAircraft('arm in')},"")`, 'unit']),
    ...stationCells(),
    ...fuelCells,
    cell(28, 1, '3  The three points', 'heading'),
    ...line(29, 1, ...pointHeads.map((head): Field => [head, 'columnHead'])),
    ...points.flatMap(pointCells),
    ...checkCells(),
    ...envelopeCells(),
  ],
  merges: [],
  validations: [
    { kind: 'number', range: area(firstStation, 3, lastStation, 3), minimum: 0, maximum: 100000, help: 'Weight, in the unit of the aircraft list. An empty seat weighs 0.' },
    { kind: 'number', range: area(firstStation, 4, lastStation, 4), minimum: -10000, maximum: 100000, help: 'Arm from the datum, in the unit of the aircraft list.' },
    { kind: 'number', range: 'C22:C23', minimum: 0, maximum: 100000, help: 'Fuel, in the unit of the aircraft list.' },
    { kind: 'number', range: area(firstCorner, 3, lastCorner, 4), minimum: -10000, maximum: 1000000, help: 'A corner of the envelope: arm, then weight.' },
  ],
  verdictRanges: [`F${zeroFuel}:G${landing}`],
  names: [],
  charts: [
    {
      title: 'Loading in the envelope',
      description: 'Weight against arm: the outline of the envelope and the line from zero fuel to take-off and landing.',
      xTitle: 'arm',
      yTitle: 'weight',
      row: 6,
      column: 6,
      width: 455,
      height: 440,
      series: [
        { title: 'envelope', x: `F${firstCorner}:F${lastCorner}`, y: `G${firstCorner}:G${lastCorner}`, drawn: 'line' },
        { title: 'zero fuel, take-off, landing', x: `D${zeroFuel}:D${landing}`, y: `C${zeroFuel}:C${landing}`, drawn: 'points' },
      ],
    },
  ],
  print: { landscape: true },
};
