// Fuel by rule, the way there, and the lists that this flight must hear: pilot, aircraft, data cards.
import { line, on, type Content, type Field } from '../build';
import { currencyTables, pilotOfLog, placesOfLog, rulesChosen } from '../currency/places';
import { ledgerColumns } from '../ledger/places';
import type { Block } from '../layout';
import { listHeads, spillBlock, type Look } from '../lists';
import { numberOfAircraft, ofAircraft, usableFuel } from '../manual/sheet';
import { balanceCells, sheetNames, tripCells } from '../places';
import { formulaCall, type TemplateCell } from '../template';
import { tripRows as trip } from '../trip/rows';
import { byRoute, climbExtra } from './climbExtra';
import { onTrip } from './places';
import { workingRows as rows } from './rows';

const spill = (block: Block, looks: readonly Look[], call: string): TemplateCell[] => spillBlock(block, 1, looks, call);
const heading = (row: number, title: string): TemplateCell[] =>
  line(row, 1, [title, 'heading'], ...Array.from({ length: 5 }, (): Field => ['', 'heading']));

const legHeads = ['leg', 'from latitude', 'from longitude', 'to latitude', 'to longitude'];
const leg = (row: number, name: string, from: 'B' | 'C', to: 'C' | 'D'): TemplateCell[] =>
  line(
    row,
    1,
    [name, 'label'],
    ...[
      [from, rows.latitude],
      [from, rows.longitude],
      [to, rows.latitude],
      [to, rows.longitude],
    ].map(([column, of]): Field => [`=${column}${of}`, 'computed', { format: 'general' }]),
  );
const legs = (column: string): string => `${column}${rows.legs.first}:${column}${rows.legs.last}`;

const legCells: TemplateCell[] = [
  ...heading(rows.legHeading, '4  The way there, and to the alternate'),
  ...listHeads(rows.legHeads, 1, legHeads),
  ...listHeads(rows.legHeads, 7, ['distance, NM', 'true course', 'at the end']),
  ...leg(rows.legs.first, 'to the destination', 'B', 'C'),
  ...leg(rows.legs.last, 'to the alternate', 'C', 'D'),
  ...spillBlock(
    rows.legs,
    7,
    [
      ['computed', 'one', 'COURSE_LEG: geodesic on the WGS84 ellipsoid.'],
      ['computed', 'degrees'],
      ['computed', 'degrees'],
    ],
    formulaCall('COURSE_LEG', legs('B'), legs('C'), legs('D'), legs('E')),
  ),
];

const yes = (row: number): string => `${onTrip('B', row)}="yes"`;
/** The rule that sets the final reserve: of the first authority chosen, by day, by night, or under instrument rules. */
const fuelRule = `=IF(ISNUMBER(SEARCH("FAA",${rulesChosen})),"faa",IF(OR(ISNUMBER(SEARCH("EASA",${rulesChosen})),ISNUMBER(SEARCH("UK",${rulesChosen}))),"nco","?"))&IF(${yes(trip.instrument)},"_ifr",IF(${yes(trip.night)},"_vfr_night","_vfr_day"))`;

const balance = (place: string): string => on(sheetNames.balance, place);
const ofList = (formula: string): string => formula.slice(1);
const fuelCall = formulaCall(
  'FUEL_BRIEF',
  `B${rows.fuelRule}`,
  onTrip('B', trip.timeEnRoute),
  `B${rows.flow}`,
  balance(balanceCells.fuelOnBoard),
  ofList(usableFuel),
  onTrip('D', trip.timeEnRoute),
  balance(balanceCells.taxiFuel),
  climbExtra,
  onTrip('B', trip.contingency),
  onTrip('B', trip.holding),
  onTrip('B', trip.reserve),
  ofAircraft('fuel in'),
  `IF(${byRoute},${on(sheetNames.trip, tripCells.tripFuel)},"")`,
);

const fuelUnit = `=IFERROR(${ofAircraft('fuel in')}&" an hour","an hour")`;
const flow: Content = `=IF(ISNUMBER(${onTrip('B', trip.fuelFlow)}),${onTrip('B', trip.fuelFlow)},${ofList(numberOfAircraft('cruise fuel flow, an hour'))})`;

const fuelCells: TemplateCell[] = [
  ...heading(rows.fuelHeading, '10  Fuel by rule'),
  ...line(
    rows.fuelRule,
    1,
    ['fuel rule', 'label'],
    [fuelRule, 'computedText', { note: 'By the authority chosen in the Currency log, and the entries night and instrument flight of the trip.' }],
  ),
  ...line(
    rows.flow,
    1,
    ['fuel flow used', 'label'],
    [flow, 'computed', { format: 'one', note: 'Typed on the trip, else that of the aircraft list.' }],
    [fuelUnit, 'unit'],
  ),
  ...spill(
    rows.fuelBrief,
    [
      [
        'computedText',
        undefined,
        'FUEL_BRIEF: the greater of the rule and your own reserve is wanted. By the route, the trip is its fuel, the climb included.',
      ],
      ['computed', 'shown'],
      ['unit'],
    ],
    fuelCall,
  ),
];

const listLooks = (note: string): readonly Look[] => [['computedText', undefined, note], ['verdict'], ['computed', 'date'], ['computedText']];
const flightHeads = ['item', 'on the last day', 'good through', 'reason'];
const flown = 'aircraft_in_use';
const [firstDay, lastDay] = [onTrip('B', trip.firstDay), onTrip('B', trip.lastDay)];
const { log, fleet, papers, items, ownRules } = currencyTables;

const pilotCall = formulaCall(
  'PILOT_FOR_FLIGHT',
  log,
  fleet,
  papers,
  flown,
  lastDay,
  'as_of',
  rulesChosen,
  ...[trip.passengers, trip.night, trip.instrument].map((row) => onTrip('B', row)),
  firstDay,
  ownRules,
  pilotOfLog,
  placesOfLog,
);
/** With what it has flown before on the day, where that is entered; what cannot be read there is told by the item Flight before. */
const hours = `IF(ISNUMBER(${onTrip('B', trip.timeEnRoute)}),(${onTrip('B', trip.timeEnRoute)}+IF(ISNUMBER(${onTrip('B', trip.beforeMinutes)}),${onTrip('B', trip.beforeMinutes)},0))/60,"")`;
const aircraftCall = formulaCall('AIRCRAFT_FOR_FLIGHT', items, fleet, flown, lastDay, 'as_of', rulesChosen, hours, onTrip('B', trip.instrument), log);
const { aircraft, database, series, loaded, verified, licences, changesAt, loadedOn, box } = ledgerColumns;
const dataCall = formulaCall(
  'LEDGER_FOR_FLIGHT',
  aircraft,
  database,
  series,
  loaded,
  verified,
  licences,
  changesAt,
  flown,
  firstDay,
  lastDay,
  'as_of',
  loadedOn,
  box,
);

export const listCells: TemplateCell[] = [
  ...legCells,
  ...fuelCells,
  ...heading(rows.pilotHeading, "11  The pilot's items that this flight needs, from the Currency log"),
  ...listHeads(rows.pilotHeads, 1, flightHeads),
  ...spill(rows.pilot, listLooks('PILOT_FOR_FLIGHT: for the aircraft in use, to the last day of the trip.'), pilotCall),
  ...heading(rows.aircraftHeading, "12  The aircraft's items, from the Currency log"),
  ...listHeads(rows.aircraftHeads, 1, flightHeads),
  ...spill(rows.aircraft, listLooks('AIRCRAFT_FOR_FLIGHT: to the last day of the trip, and for its hours.'), aircraftCall),
  ...heading(rows.dataHeading, '13  The data cards of the aircraft, from the Data ledger'),
  ...listHeads(rows.dataHeads, 1, flightHeads),
  ...spill(rows.data, listLooks('LEDGER_FOR_FLIGHT: current on every day of the trip.'), dataCall),
];
