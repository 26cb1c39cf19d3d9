// What the pilot types on the Trip sheet, and the few numbers shown beside it.
import { entry, line, on } from '../build';
import { demoTrip, onTrip as movesWithTrip } from '../demo/day';
import { fieldColumns, runwayColumns } from '../fields/sheet';
import type { FormatName } from '../look';
import { numberOfAircraft, ofAircraft } from '../manual/sheet';
import { routeCells, sheetNames } from '../places';
import type { TemplateCell } from '../template';
import { bestRunway } from '../working/runways';
import { workingRows } from '../working/rows';
import { across, forPlaces, places, shown, single } from './entryLines';
import { tripRows as rows, type PlaceColumn } from './rows';

export const working = (place: string): string => on(sheetNames.working, place);
const eachPlace = <Value>(value: Value): Record<PlaceColumn, Value> => ({ B: value, C: value, D: value });
const yesNo = 'yes or no';

const tripCells: TemplateCell[] = [
  ...line(rows.tripHeading, 1, ...across('1  Trip')),
  ...line(rows.aircraft, 1, ['aircraft', 'label'], ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }]),
  ...entry(rows.pilot, 'pilot', 'A. Invented', ''),
  ...single(rows.firstDay, 'first day', movesWithTrip(demoTrip.firstDay), 'date', 'date'),
  ...single(rows.lastDay, 'last day', movesWithTrip(demoTrip.lastDay), 'date', 'date'),
  ...single(
    rows.takeoffTime,
    'take-off, UTC',
    1430,
    'Z, as 1430',
    'clock',
    'Time of take-off in UTC, on the first day. The reports are judged against it.',
  ),
  ...single(rows.passengers, 'passengers', 'yes', yesNo, 'text', 'Whether recent landings are needed for passengers.'),
  ...single(rows.night, 'night', 'no', yesNo, 'text', 'Whether any part is flown at night: the fuel rule and the night landings.'),
  ...single(
    rows.instrument,
    'instrument flight',
    'no',
    yesNo,
    'text',
    'Whether any part is flown under instrument rules: fuel rule, recency, VOR and altimeter checks.',
  ),
  ...single(rows.judgeDescent, 'judge the descent', 'yes', yesNo, 'text', 'no: the descent of the card is not judged, and the verdict says so.'),
  ...single(rows.judgeHold, 'judge the hold', 'yes', yesNo, 'text', 'no: the hold of the card is not judged, and the verdict says so.'),
];

const fieldCells: TemplateCell[] = [
  ...line(rows.fieldsHeading, 1, ...places('2  Fields and runways')),
  ...forPlaces(
    rows.field,
    'field',
    { B: 'Marrowfield', C: 'Tansy Ridge', D: 'Sorrel Plain' },
    '',
    'text',
    'By its name on the Fields sheet. No alternate: leave it blank, and the verdict says so.',
  ),
  ...forPlaces(rows.runwayName, 'runway', { B: '21', C: '08', D: '12' }, '', 'text', 'By its name on the Fields sheet.'),
  ...shown(rows.bestRunway, 'best into the wind', { B: bestRunway.B, C: bestRunway.C }, '', 'text', 'RUNWAY_WINDS on Trip working: the wind alone.'),
  ...shown(
    rows.available,
    'length available',
    { B: `=${working(`B${workingRows.available}`)}`, C: `=${working(`C${workingRows.available}`)}`, D: `=${working(`D${workingRows.available}`)}` },
    `=IFERROR(${ofAircraft('distance in')}&"","")`,
    'whole',
    "From Fields, in the unit of the aircraft's tables: take-off, then landing.",
  ),
];

const leg = (row: number): string => working(`G${row}`);
const distance = (row: number): string => `=IF(ISNUMBER(${leg(row)}),${leg(row)},"")`;
export const timesFromChoices = ['typed', 'route'] as const;
/** Formula text: the way to the destination is that of the Route sheet. */
export const byRoute = `B${rows.timesFrom}="route"`;
/** The local engine gives an error for NOT of a comparison. */
export const notByRoute = `B${rows.timesFrom}<>"route"`;
export const ofRoute = (part: keyof typeof routeCells): string => on(sheetNames.route, routeCells[part]);
const orOfRoute = (formula: string, part: 'distance' | 'minutes'): string =>
  `=IF(${byRoute},IF(ISNUMBER(${ofRoute(part)}),${ofRoute(part)},""),${formula.slice(1)})`;
const fuelPerHour = `=IFERROR(${ofAircraft('fuel in')}&" an hour","an hour")`;

/** Typed minutes where there are any, else the distance at the groundspeed. */
const minutes = (column: 'B' | 'D'): string =>
  `=IFERROR(IF(ISNUMBER(${column}${rows.minutesTyped}),${column}${rows.minutesTyped},IF(AND(ISNUMBER(${column}${rows.distance}),${column}${rows.groundspeed}>0),${column}${rows.distance}/${column}${rows.groundspeed}*60,"")),"")`;

/** Formula text: minutes to the alternate by the route, from overhead the destination at the level, the cruise and the wind of its last leg. */
export const alternateByRoute = `IFERROR(INDEX(${ofRoute('legMinutes')},MATCH("alternate",${ofRoute('legs')},0)),"")`;
/** Formula text: what is typed of the way to the alternate takes the place of the route's. */
export const alternateTyped = `OR(ISNUMBER(D${rows.minutesTyped}),N(D${rows.groundspeed})>0)`;
const alternateMinutes = `=IF(OR(${notByRoute},D${rows.field}="",${alternateTyped},D${rows.minutesTyped}<>""),${minutes('D').slice(1)},IF(ISNUMBER(${alternateByRoute}),${alternateByRoute},""))`;

const fuelCells: TemplateCell[] = [
  ...line(
    rows.fuelHeading,
    1,
    ['3  En route and fuel', 'heading'],
    ['to destination', 'columnHead'],
    ['', 'columnHead'],
    ['to alternate', 'columnHead'],
    ['unit', 'columnHead'],
  ),
  ...shown(
    rows.distance,
    'distance',
    { B: orOfRoute(distance(workingRows.legs.first), 'distance'), D: distance(workingRows.legs.last) },
    'NM',
    'one',
    'COURSE_LEG on Trip working: geodesic on the WGS84 ellipsoid.',
  ),
  ...forPlaces(rows.groundspeed, 'groundspeed', { B: 118, D: 112 }, 'kt', 'whole', 'From true airspeed and the wind aloft.'),
  ...forPlaces(
    rows.minutesTyped,
    'or minutes, typed',
    { B: undefined, D: undefined },
    'minutes',
    'whole',
    'For a local flight, or in the place of distance / groundspeed. To the alternate: 0 where the rule asks for none.',
  ),
  ...forPlaces(
    rows.timesFrom,
    'the way, from',
    { B: 'typed' },
    '',
    'text',
    'typed: straight, at the groundspeed or minutes above. route: distance, time and fuel of the Route sheet, which is judged with the fuel; the card takes its groundspeed, course and winds from there.',
  ),
  ...shown(
    rows.timeEnRoute,
    'time en route',
    { B: orOfRoute(minutes('B'), 'minutes'), D: alternateMinutes },
    'minutes',
    'whole',
    'As typed; else distance / groundspeed, without approach. By the route: to the alternate from overhead the destination, where nothing is typed of it.',
  ),
  ...forPlaces(rows.fuelFlow, 'fuel flow, typed', { B: undefined }, fuelPerHour, 'one', 'Blank: the cruise fuel flow of the aircraft list.'),
  ...forPlaces(rows.contingency, 'contingency', { B: 5 }, '% of trip fuel', 'whole', 'For what cannot be foreseen; your own.'),
  ...forPlaces(rows.holding, 'planned holding', { B: 0 }, 'minutes', 'whole'),
  ...forPlaces(
    rows.reserve,
    'reserve required',
    { B: 45 },
    'minutes',
    'whole',
    'Your own final reserve; less than the rule asks for is NO (14 CFR 91.151, 91.167; NCO.OP.125).',
  ),
];

const climbCells: TemplateCell[] = [
  ...line(rows.climbHeading, 1, ...across('4  Climb')),
  ...single(
    rows.gradient,
    'climb gradient required',
    200,
    'ft/NM',
    'whole',
    '200 ft/NM is the standard departure (AIM 5-2-9); more where the chart says so.',
  ),
  ...single(rows.climbSpeed, 'groundspeed in the climb', 85, 'kt', 'whole', 'With the wind: a tailwind needs a higher rate.'),
];

const typedCells: TemplateCell[] = [
  ...line(rows.typedHeading, 1, ...places('5  Weather, typed')),
  ...forPlaces(
    rows.altimeter,
    'altimeter setting',
    eachPlace(undefined),
    'hPa or inHg',
    'general',
    'Blank: as reported. What is typed is compared with the report.',
  ),
  ...forPlaces(rows.temperature, 'temperature', eachPlace(undefined), 'degrees C', 'general'),
  ...forPlaces(rows.windFrom, 'wind from', eachPlace(undefined), 'deg magnetic', 'degrees', 'Magnetic, as the runway; VRB for any direction.'),
  ...forPlaces(rows.wind, 'wind', eachPlace(undefined), 'kt', 'whole', 'A typed wind takes the place of the reported one, with its gust.'),
  ...forPlaces(rows.gust, 'gust', eachPlace(undefined), 'kt', 'whole', 'The whole speed of the gust.'),
];

/** Last good days, for whoever keeps no log or no ledger here. */
export const typedDays = [
  { row: rows.landingsRecent, label: 'recent landings through', of: 'pilot', most: 90, why: 'no rule of 90 days reaches that far' },
  { row: rows.review, label: 'flight review or rating through', of: 'pilot', most: 762, why: 'no review or rating of 24 months reaches that far' },
  { row: rows.medical, label: 'medical through', of: 'pilot', most: 1858, why: 'no medical of 60 months reaches that far' },
  { row: rows.inspections, label: 'inspections through', of: 'aircraft', most: 762, why: 'no inspection of 24 months reaches that far' },
  { row: rows.data, label: 'navigation data through', of: 'data', most: 56, why: 'no data of 56 days reaches that far' },
] as const;

const daysCells: TemplateCell[] = [
  ...line(rows.datesHeading, 1, ...across('6  Last good days, where no log or ledger is kept')),
  ...typedDays.flatMap(({ row, label }, index) =>
    single(row, label, undefined, 'date', 'date', index === 0 ? 'Only where Start says that it is not kept in this workbook.' : undefined),
  ),
];

/** A label, a value and its unit on the right half. */
export const summaryLine = (row: number, label: string, formula: string, unit: string, format: FormatName): TemplateCell[] => [
  ...line(row, 7, [label, 'label'], [formula, format === 'text' ? 'computedText' : 'computed', { format }], [unit, 'unit']),
];

export const leftHalf: TemplateCell[] = [...tripCells, ...fieldCells, ...fuelCells, ...climbCells, ...typedCells, ...daysCells];
export const aircraftFlow = numberOfAircraft('cruise fuel flow, an hour').slice(1);
export const aircraftSpeed = numberOfAircraft('cruise true airspeed, kt').slice(1);
export const fieldNames = fieldColumns.names;
export const runwayNames = runwayColumns.name;
