// The verdict of each item of the Trip sheet with its reason.
import { area, cell, line, on, verdictOf, worstOf } from './build';
import { balanceCells, cardCells, sheetNames } from './places';
import { formulaCall, type TemplateCell } from './template';
import { entriesReason, entriesVerdict } from './tripEntriesJudged';
import { crosswindShown, usableFuel } from './tripEntries';
import { dataCells, dataReason, dataSpill, dataVerdict, isDay } from './tripPapers';
import { blockRows, entryRows as rows, type Block } from './tripRows';

const balance = (place: string): string => on(sheetNames.balance, place);
const { judged } = blockRows;

/** The verdict row of a brief that lies in columns item, value, unit. */
const ofBrief = ({ first, last }: Block, item: string, value: string): string => `INDEX(${value}${first}:${value}${last},MATCH("verdict",${item}${first}:${item}${last},0))`;
const notComputed = '"not computed: an entry is missing, or out of its range"';
const loadingNotComputed = '"not computed: see Weight and balance"';

const ofPoint = (cells: string, point: string): string => `INDEX(${balance(cells)},MATCH("${point}",${balance(balanceCells.pointNames)},0))`;
const loading = (label: string, point: string): readonly [string, string, string] => [
  label,
  verdictOf(ofPoint(balanceCells.pointVerdicts, point)),
  `=IFERROR(${ofPoint(balanceCells.pointReasons, point)},${loadingNotComputed})`,
];

/** Points, lateral balance and burn together; fewer OK than the five points means that nothing was computed. */
const allLoading = balance(balanceCells.loadingVerdicts);
const burnVerdict = `=IF(COUNTIF(${allLoading},"NO")>0,"NO",IF(OR(COUNTIF(${allLoading},"UNKNOWN")>0,COUNTIF(${allLoading},"OK")<4),"UNKNOWN",IF(COUNTIF(${allLoading},"CHECK")>0,"CHECK","OK")))`;
/** What no other item tells: the burn, the fuel beyond landing, the lateral balance; each that is not OK, by name. */
const burnReason = (verdict: string): string => {
  const [names, verdicts, reasons] = [balance(balanceCells.burnNames), balance(balanceCells.burnVerdicts), balance(balanceCells.burnReasons)];
  const told = `TEXTJOIN("; ",TRUE,FILTER(${names}&": "&${reasons},(${verdicts}<>"OK")*(${verdicts}<>"")))`;
  const untold = `IF(COUNTIF(${allLoading},"OK")>0,"take-off, landing or zero fuel is not OK",${loadingNotComputed})`;
  return `=IF(${verdict}="OK",${ofPoint(balanceCells.pointReasons, 'on the way')},IFERROR(${told},${untold}))`;
};

const entryVerdicts = balance(balanceCells.entryVerdicts);
const loadingEntriesReason = `=IFERROR(INDEX(${balance(balanceCells.entryNames)},MATCH("CHECK",${entryVerdicts},0))&": "&INDEX(${balance(balanceCells.entryReasons)},MATCH("CHECK",${entryVerdicts},0)),IF(COUNTIF(${entryVerdicts},"OK")>0,"nothing looks swapped, doubled or in another unit",${loadingNotComputed}))`;

const [left, reserve] = [rows.fuelLeft, rows.reserve].map((row) => `B${row}`);
const onBoard = balance(balanceCells.fuelOnBoard);

const fuelVerdict =
  `=IFERROR(IF(AND(ISNUMBER(${left}),ISNUMBER(${reserve}),ISNUMBER(${onBoard}),ISNUMBER(${usableFuel})),` +
  `IF(OR(${left}<${reserve},${onBoard}>${usableFuel}),"NO","OK"),"UNKNOWN"),"UNKNOWN")`;
const fuelReason =
  `=IFERROR(IF(AND(ISNUMBER(${left}),ISNUMBER(${reserve}),ISNUMBER(${onBoard})),IF(${onBoard}>${usableFuel},"more fuel entered than is usable",` +
  `ROUNDDOWN(${left},0)&" minutes left at landing, "&ROUND(${reserve},0)&" wanted"),"not computed: an entry of fuel is missing"),"not computed: an entry of fuel is missing")`;


const [firstDay, endDay] = [`B${rows.firstDay}`, `B${rows.lastDay}`];
/** A report of another day of the month than the first day of the trip. */
const otherDay = ({ first, last }: Block): string => `OR(${[first, last].map((row) => `IF(B${row}="",FALSE,VALUE(LEFT(B${row},2))<>DAY(${firstDay}))`).join(',')})`;
const oldReport = `IFERROR(${otherDay(blockRows.reportValues)},FALSE)`;
const allDays = `AND(${[firstDay, endDay, 'as_of'].map(isDay).join(',')})`;
const datesVerdict = `=IF(${allDays},IF(${endDay}<${firstDay},"NO",IF(OR(${firstDay}<as_of,${oldReport}),"CHECK","OK")),"UNKNOWN")`;
const datesReason =
  `=IF(${allDays},IF(${endDay}<${firstDay},"the last day is before the first",` +
  `IF(${firstDay}<as_of,"the first day lies before as_of on Start",IF(${oldReport},"a weather report is of another day than the first","the trip lies ahead of as_of"))),"a day is missing, or is none: first day, last day, or as_of on Start")`;

/** The weights come from Weight and balance, so that a reason there must not be looked for here. */
const weightless = (weight: string): string => `IF(ISNUMBER(${balance(weight)}),${notComputed},"not computed: no weight, see Weight and balance")`;
const brief = (label: string, block: Block, [item, value, unit]: readonly [string, string, string], weight: string): readonly [string, string, string] => [
  label,
  verdictOf(ofBrief(block, item, value)),
  `=IFERROR(${ofBrief(block, item, unit)},${weightless(weight)})`,
];

/** The part across of the wind, or of the gusts that the report tells where they are more. */
const crosswind = ({ first, last }: Block, column: 'B' | 'C', reportRow: number): string => {
  const steady = `ABS(INDEX(G${first}:G${last},MATCH("crosswind",F${first}:F${last},0)))`;
  return `(${steady}*IF(${column}${rows.wind}>0,MAX(${column}${rows.wind},E${reportRow})/${column}${rows.wind},1))`;
};
const { reportValues } = blockRows;
const [crossTakeoff, crossLanding] = [crosswind(blockRows.takeoffBrief, 'B', reportValues.first), crosswind(blockRows.landingBrief, 'C', reportValues.last)];
/** Rounded to the careful side; a hair of binary rounding aside. */
const wholeKnots = (knots: string): string => `ROUNDUP(ROUND(${knots},6),0)`;
/** The crosswind shown in the manual is no limit, so beyond it the word is CHECK. */
const crosswindVerdict = `=IFERROR(IF(AND(ISNUMBER(${crosswindShown}),ISNUMBER(${crossTakeoff}),ISNUMBER(${crossLanding})),IF(ROUND(MAX(${crossTakeoff},${crossLanding}),6)>${crosswindShown},"CHECK","OK"),"UNKNOWN"),"UNKNOWN")`;
const crosswindReason = `=IFERROR(IF(ISNUMBER(${crosswindShown}),${wholeKnots(crossTakeoff)}&" kt on departure, "&${wholeKnots(crossLanding)}&" at the destination"&IF(COUNT(E${reportValues.first}:E${reportValues.last})>0,", gusts taken in","")&"; shown in the manual "&${crosswindShown},"the aircraft list has no crosswind"),"not computed: see the runways above")`;

const card = (place: string): string => on(sheetNames.card, place);
const { crossings, descent, hold, schedule } = cardCells;
/** The crossings, and the plan where a schedule is entered: both begin from here. */
const descentVerdict = `=IF(COUNTA(${card(schedule)})=0,${verdictOf(card(crossings.verdict)).slice(1)},${worstOf(card(`${crossings.verdict}:${descent.verdict}`)).slice(1)})`;
const descentReason = `=IFERROR(IF(OR(${card(crossings.verdict)}<>"OK",${card(descent.verdict)}="OK",COUNTA(${card(schedule)})=0),${card(crossings.reason)},"the plan by schedule: "&${card(descent.reason)}),${notComputed})`;

/** A reason may be a text about the cell of its verdict. */
const items: readonly (readonly [item: string, verdict: string, reason: string | ((verdictCell: string) => string)])[] = [
  ['Entries', entriesVerdict, entriesReason],
  ['Dates', datesVerdict, datesReason],
  loading('Loading, take-off', 'take-off'),
  loading('Loading, landing', 'landing'),
  loading('Loading, zero fuel', 'zero fuel'),
  ['Loading, whole burn', burnVerdict, burnReason],
  ['Loading, entries', worstOf(entryVerdicts, `COUNTIF(${balance(balanceCells.stationAircraft)},aircraft_in_use)`), loadingEntriesReason],
  brief('Take-off runway', blockRows.takeoffBrief, ['F', 'G', 'H'], balanceCells.takeoffWeight),
  brief('Landing runway', blockRows.landingBrief, ['F', 'G', 'H'], balanceCells.landingWeight),
  ['Crosswind', crosswindVerdict, crosswindReason],
  brief('Climb', blockRows.climbBrief, ['A', 'B', 'C'], balanceCells.takeoffWeight),
  ['Fuel', fuelVerdict, fuelReason],
  ['Descent', descentVerdict, descentReason],
  ['Hold', verdictOf(card(hold.verdict)), `=IFERROR(${card(hold.reason)}&"",${notComputed})`],
  ['Navigation data', dataVerdict, dataReason],
  ['Pilot', worstOf(`D${rows.landingsRecent}:D${rows.medical}`), `=IF(D${rows.landingsRecent}<>"OK","landings: "&F${rows.landingsRecent},IF(D${rows.medical}<>"OK","medical: "&F${rows.medical},"landings and medical last beyond the trip"))`],
];

const itemCells: TemplateCell[] = items.flatMap(([item, verdict, reason], index) =>
  line(judged.first + index, 6, [item, 'label'], [verdict, 'verdict'], [typeof reason === 'string' ? reason : reason(`G${judged.first + index}`), 'reason']),
);

/** Every item that is not OK, with its reason. */
const allReasons = `=IF(B3="OK","Every item below is OK.",TEXTJOIN("; ",TRUE,${items
  .map((_, index) => judged.first + index)
  .map((row) => `IF(G${row}="OK","",F${row}&" "&G${row}&": "&H${row})`)
  .join(',')}))`;

const leg: TemplateCell[] = [
  ...line(rows.leg - 1, 6, ['leg, NM', 'columnHead'], ['true course', 'columnHead'], ['at the end', 'columnHead']),
  ...line(rows.leg, 6, [`=${formulaCall('COURSE_LEG', `B${rows.latitude}`, `B${rows.longitude}`, `C${rows.latitude}`, `C${rows.longitude}`)}`, 'computed', { format: 'one', note: 'COURSE_LEG: geodesic on the WGS84 ellipsoid.' }], [undefined, 'computed', { format: 'degrees' }], [undefined, 'computed', { format: 'degrees' }]),
];

export const judgedCells: TemplateCell[] = [
  cell(3, 1, 'Verdict', 'title'),
  cell(3, 2, worstOf(area(judged.first, 7, judged.last, 7)), 'bigVerdict', { note: 'The worst of the items: NO, then UNKNOWN, then CHECK, then OK.' }),
  cell(3, 6, allReasons, 'reason'),
  ...line(5, 6, ['Judged', 'heading'], ['verdict', 'columnHead'], ['reason', 'columnHead'], ['', 'columnHead']),
  ...itemCells,
  ...leg,
  ...dataCells,
];

const ofColumn = (column: string, { first, last }: Block): string => `${column}${first}:${column}${last}`;

export const tripVerdictRanges: readonly string[] = [
  'B3', ofColumn('G', judged), ofColumn('G', blockRows.takeoffBrief), ofColumn('G', blockRows.takeoffLimits), ofColumn('G', blockRows.landingBrief), ofColumn('G', blockRows.landingLimits),
  ofColumn('B', blockRows.climbBrief), dataSpill, `D${rows.landingsRecent}:D${rows.medical}`,
];
