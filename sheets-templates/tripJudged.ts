// The verdict of each item of the Trip sheet with its reason, and the navigation data and papers.
import { area, cell, line, on, verdictOf, worstOf, type Content, type Field } from './build';
import { balanceCells, cardCells, sheetNames } from './places';
import { formulaCall, type TemplateCell } from './template';
import { crosswindShown, fieldEntries, singleEntries, usableFuel } from './tripEntries';
import { blockRows, entryRows as rows, type Block } from './tripRows';

const balance = (place: string): string => on(sheetNames.balance, place);
const { judged, databases } = blockRows;

/** "label (departure)" for each entry that is not a number; nothing when all are there. */
const missingEntries = `TEXTJOIN(", ",TRUE,${[
  ...fieldEntries.flatMap(({ row, label }) => [`IF(ISNUMBER(B${row}),"","${label} (departure)")`, `IF(ISNUMBER(C${row}),"","${label} (destination)")`]),
  ...singleEntries.map(({ row, label }) => `IF(ISNUMBER(B${row}),"","${label}")`),
].join(',')})`;

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
const entriesReason = `=IFERROR(INDEX(${balance(balanceCells.entryNames)},MATCH("CHECK",${entryVerdicts},0))&": "&INDEX(${balance(balanceCells.entryReasons)},MATCH("CHECK",${entryVerdicts},0)),IF(COUNTIF(${entryVerdicts},"OK")>0,"nothing looks swapped, doubled or in another unit",${loadingNotComputed}))`;

const [left, reserve] = [rows.fuelLeft, rows.reserve].map((row) => `B${row}`);
const onBoard = balance(balanceCells.fuelOnBoard);

/** A paper or a recency with a last good day, against the last day of the trip. */
const lastDay = `$B$${rows.lastDay}`;
const through = (day: string): string => `=IF(AND(ISNUMBER(${day}),ISNUMBER(${lastDay})),IF(${day}>=${lastDay},"OK","NO"),"UNKNOWN")`;
const throughReason = (day: string): string => `=IF(AND(ISNUMBER(${day}),ISNUMBER(${lastDay})),"good through "&TEXT(${day},"yyyy-mm-dd")&", the trip ends "&TEXT(${lastDay},"yyyy-mm-dd"),"a date is missing")`;

const fuelVerdict =
  `=IFERROR(IF(AND(ISNUMBER(${left}),ISNUMBER(${reserve}),ISNUMBER(${onBoard}),ISNUMBER(${usableFuel})),` +
  `IF(OR(${left}<${reserve},${onBoard}>${usableFuel}),"NO","OK"),"UNKNOWN"),"UNKNOWN")`;
const fuelReason =
  `=IFERROR(IF(AND(ISNUMBER(${left}),ISNUMBER(${reserve}),ISNUMBER(${onBoard})),IF(${onBoard}>${usableFuel},"more fuel entered than is usable",` +
  `ROUND(${left},0)&" minutes left at landing, "&ROUND(${reserve},0)&" wanted"),"not computed: an entry of fuel is missing"),"not computed: an entry of fuel is missing")`;


const dataSpill = `G${databases.first}:G${databases.last}`;
const dataNames = `A${databases.first}:A${databases.last}`;
const dataReason = `=IF(COUNTA(${dataNames})=0,"no database listed",COUNTIF(${dataSpill},"OK")&" of "&COUNTA(${dataNames})&" current from the first to the last day")`;

const [firstDay, endDay] = [`B${rows.firstDay}`, `B${rows.lastDay}`];
/** A report of another day of the month than the first day of the trip. */
const otherDay = ({ first, last }: Block): string => `OR(${[first, last].map((row) => `IF(B${row}="",FALSE,VALUE(LEFT(B${row},2))<>DAY(${firstDay}))`).join(',')})`;
const oldReport = `IFERROR(${otherDay(blockRows.reportValues)},FALSE)`;
const datesVerdict = `=IF(AND(ISNUMBER(${firstDay}),ISNUMBER(${endDay}),ISNUMBER(as_of)),IF(${endDay}<${firstDay},"NO",IF(OR(${firstDay}<as_of,${oldReport}),"CHECK","OK")),"UNKNOWN")`;
const datesReason =
  `=IF(AND(ISNUMBER(${firstDay}),ISNUMBER(${endDay}),ISNUMBER(as_of)),IF(${endDay}<${firstDay},"the last day is before the first",` +
  `IF(${firstDay}<as_of,"the first day lies before as_of on Start",IF(${oldReport},"a weather report is of another day than the first","the trip lies ahead of as_of"))),"a day is missing")`;

const brief = (label: string, block: Block, item: string, value: string, unit: string): readonly [string, string, string] => [
  label,
  verdictOf(ofBrief(block, item, value)),
  `=IFERROR(${ofBrief(block, item, unit)},${notComputed})`,
];

const crosswind = ({ first, last }: Block): string => `ABS(INDEX(G${first}:G${last},MATCH("crosswind",F${first}:F${last},0)))`;
const [crossTakeoff, crossLanding] = [crosswind(blockRows.takeoffBrief), crosswind(blockRows.landingBrief)];
/** The crosswind shown in the manual is no limit, so beyond it the word is CHECK. */
const crosswindVerdict = `=IFERROR(IF(AND(ISNUMBER(${crosswindShown}),ISNUMBER(${crossTakeoff}),ISNUMBER(${crossLanding})),IF(MAX(${crossTakeoff},${crossLanding})>${crosswindShown},"CHECK","OK"),"UNKNOWN"),"UNKNOWN")`;
const crosswindReason = `=IFERROR(IF(ISNUMBER(${crosswindShown}),ROUND(${crossTakeoff},0)&" kt on departure, "&ROUND(${crossLanding},0)&" at the destination; shown in the manual "&${crosswindShown},"the aircraft list has no crosswind"),${notComputed})`;

const ofCard = (label: string, { verdict, reason }: { readonly verdict: string; readonly reason: string }): readonly [string, string, string] => [
  label,
  verdictOf(on(sheetNames.card, verdict)),
  `=IFERROR(${on(sheetNames.card, reason)}&"",${notComputed})`,
];

/** A reason may be a text about the cell of its verdict. */
const items: readonly (readonly [item: string, verdict: string, reason: string | ((verdictCell: string) => string)])[] = [
  ['Entries', `=IF(${missingEntries}="","OK","UNKNOWN")`, `=IF(${missingEntries}="","every entry holds a number","not a number: "&${missingEntries})`],
  ['Dates', datesVerdict, datesReason],
  loading('Loading, take-off', 'take-off'),
  loading('Loading, landing', 'landing'),
  loading('Loading, zero fuel', 'zero fuel'),
  ['Loading, whole burn', burnVerdict, burnReason],
  ['Loading, entries', worstOf(entryVerdicts, `COUNTA(${balance(balanceCells.entryNames)})-COUNTIF(${balance(balanceCells.entryNames)},"")`), entriesReason],
  brief('Take-off runway', blockRows.takeoffBrief, 'F', 'G', 'H'),
  brief('Landing runway', blockRows.landingBrief, 'F', 'G', 'H'),
  ['Crosswind', crosswindVerdict, crosswindReason],
  brief('Climb', blockRows.climbBrief, 'A', 'B', 'C'),
  ['Fuel', fuelVerdict, fuelReason],
  ofCard('Descent', cardCells.crossings),
  ofCard('Hold', cardCells.hold),
  ['Navigation data', worstOf(dataSpill, `COUNTA(${dataNames})`), dataReason],
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

const databaseValues: readonly (readonly Content[])[] = [
  ['navigation, panel', '28-day', { date: '2026-11-26' }],
  ['obstacles', '56-day', { date: '2026-10-29' }],
  ['charts, tablet', '28-day', { date: '2026-11-26' }],
  [undefined, undefined, undefined],
];

const coversCall = formulaCall('CYCLE_COVERS', area(databases.first, 3, databases.last, 3), area(databases.first, 2, databases.last, 2), firstDay, endDay);

const paper = (row: number, label: string, value: string, note: string): TemplateCell[] => [
  ...line(row, 1, [label, 'label'], [undefined, 'plain'], [{ date: value }, 'input', { format: 'date', note }], [through(`C${row}`), 'verdict']),
  cell(row, 6, throughReason(`C${row}`), 'computedText'),
];

const dataCells: TemplateCell[] = [
  ...line(databases.first - 2, 1, ['7  Navigation data and papers', 'heading'], ...Array.from({ length: 8 }, (): Field => ['', 'heading'])),
  ...line(databases.first - 1, 1, ['database', 'columnHead'], ['series', 'columnHead'], ['loaded, effective', 'columnHead']),
  ...line(databases.first - 1, 7, ['on the trip', 'columnHead'], ['out of date on', 'columnHead']),
  ...databaseValues.flatMap((row, index) =>
    line(databases.first + index, 1, ...row.map((content, column): Field => (column === 2 ? [content, 'input', { format: 'date' }] : [content, 'inputText']))),
  ),
  ...databaseValues.flatMap((_, index) =>
    line(databases.first + index, 7, [index === 0 ? `=${coversCall}` : undefined, 'verdict', index === 0 ? { note: 'CYCLE_COVERS: current from the first to the last day of the trip.' } : {}], [undefined, 'computedText', { format: 'date' }]),
  ),
  ...paper(rows.landingsRecent, 'landings recent through', '2027-01-14', 'Last day on which passengers may be carried (14 CFR 61.57 or FCL.060).'),
  ...paper(rows.medical, 'medical valid through', '2027-06-30', 'Last day of the medical certificate in the class needed.'),
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
