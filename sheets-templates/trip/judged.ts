// The verdict of each item of the Trip sheet with its reason.
import { judgedOn, line, on, otherThanToday, verdictOf, worstOf, worstOfWords } from '../build';
import { fieldColumns } from '../fields/sheet';
import { aircraftEntryCount, aircraftEntryNames, aircraftEntryReasons, aircraftEntryVerdicts, numberOfAircraft, straysSaid } from '../manual/sheet';
import { besideCells, cardCells, sheetNames } from '../places';
import { keepsLedgerCell, keepsLogCell } from '../start/settings';
import type { TemplateCell } from '../template';
import { workingRows } from '../working/rows';
import { weatherCell } from '../working/weatherAnswers';
import { alternateLanding, brief, ofBrief } from './briefJudged';
import { alternateByRoute, alternateTyped, byRoute, notByRoute, ofRoute, working } from './entries';
import { flightBeforeItem } from './flightBefore';
import { entriesReason, entriesVerdict, typedReason, typedVerdict } from './entriesJudged';
import { allDays, endDay, firstDay, notJudged, type Item } from './item';
import { kept } from './listsJudged';
import { burnReason, burnVerdict, entriesOfLoading, pointOf } from './loadingJudged';
import { climbLacks, fuelLacks, landingLacks, takeoffLacks, weatherLacks } from './notComputed';
import { itemWords } from './overall';
import { placeColumns, placeNames, tripRows as rows, type PlaceColumn } from './rows';
import { windReason, windVerdict } from './windJudged';

const { judged } = rows;

const datesVerdict = `=IF(${allDays},IF(${endDay}<${firstDay},"NO",IF(OR(${otherThanToday},${firstDay}<as_of),"CHECK","OK")),"UNKNOWN")`;
const datesReason =
  `=IF(${allDays},IF(${endDay}<${firstDay},"the last day is before the first",` +
  `IF(${otherThanToday},${judgedOn},IF(${firstDay}<as_of,"the first day lies before as_of on Start","the trip is today or later"))),"a date is missing or invalid: first day, last day, or as_of on Start")`;

const ofWorking = (row: number, column: PlaceColumn): string => working(`${column}${row}`);
const weather = (column: PlaceColumn): Item => {
  const word = verdictOf(working(weatherCell(column, 'verdict')));
  const [said, lacks] = [working(weatherCell(column, 'reason')), weatherLacks(column)];
  const reason = `IFERROR(IF(${said}="",${lacks},${said}&""),${lacks})`;
  const label = `Weather, ${placeNames[column]}`;
  if (column !== 'D') return [label, word, `=${reason}`];
  return [label, `=IF(D${rows.field}="","${notJudged}",${word.slice(1)})`, `=IF(D${rows.field}="","no alternate is planned",${reason})`];
};

/** The rows of chosen fields in the list of fields. */
const fieldWord = (column: PlaceColumn): string => `IFERROR(INDEX(${fieldColumns.verdict},${ofWorking(workingRows.fieldRow, column)})&"","")`;
const fieldWords = placeColumns.map((column) => `IF(${column}${rows.field}="","OK",IF(${fieldWord(column)}="","UNKNOWN",${fieldWord(column)}))`);
const anyField = (word: string): string => `OR(${fieldWords.map((text) => `${text}="${word}"`).join(',')})`;
/** A row beside its list might be the one that is meant. */
const fieldBeside = on(sheetNames.fields, besideCells.fields);
const fieldsVerdict = `=IF(${anyField('NO')},"NO",IF(OR(${fieldBeside}<>"",${anyField('UNKNOWN')}),"UNKNOWN",IF(${anyField('CHECK')},"CHECK","OK")))`;
const fieldsReason = `=IF(${fieldBeside}="","",${fieldBeside}&" ")&IF(AND(${fieldWords.map((text) => `${text}="OK"`).join(',')}),"the fields chosen are complete, and nothing looks wrong",TEXTJOIN("; ",TRUE,${placeColumns
  .map(
    (column, index) =>
      `IF(${fieldWords[index] ?? ''}="OK","",${column}${rows.field}&": "&IFERROR(INDEX(${fieldColumns.reason},${ofWorking(workingRows.fieldRow, column)})&"","not on the Fields sheet"))`,
  )
  .join(',')}))`;

/** A row of no aircraft may be one of the aircraft in use: with it a distance would be another. */
const straysThere = `IFERROR(${straysSaid}<>"",TRUE)`;
const tablesVerdict = (listed: string): string => `=IF(AND(${straysThere},OR(${listed}="OK",${listed}="CHECK")),"UNKNOWN",${listed})`;
const tablesSaid = `IFERROR(TEXTJOIN("; ",TRUE,FILTER(${aircraftEntryNames}&": "&${aircraftEntryReasons},${aircraftEntryVerdicts}<>"OK")),IF(COUNTIF(${aircraftEntryVerdicts},"OK")=${aircraftEntryCount},"entries and tables of the aircraft are complete, and nothing looks wrong","not computed, see Manual tables"))`;
const tablesReason = `=IF(${straysThere},IFERROR("Manual tables, "&${straysSaid},"Manual tables: an error stands in a list")&"; ","")&${tablesSaid}`;

const card = (place: string): string => on(sheetNames.card, place);
const { crossings, descent, hold, schedule } = cardCells;
/** The crossings, and the plan where a schedule is entered: both begin from here. */
const descentWord = `IF(COUNTA(${card(schedule)})=0,${verdictOf(card(crossings.verdict)).slice(1)},${worstOf(card(`${crossings.verdict}:${descent.verdict}`)).slice(1)})`;
const descentSaid = `IFERROR(IF(OR(${card(crossings.verdict)}<>"OK",${card(descent.verdict)}="OK",COUNTA(${card(schedule)})=0),${card(crossings.reason)},${card(descent.reason)}),"not computed, see the card")`;
const switched = (row: number, label: string, word: string, reason: string): Item => [
  label,
  `=IF(B${row}="no","${notJudged}",${word})`,
  `=IF(B${row}="no","switched off on this sheet",${reason})`,
];

/** By the rule, and by the route where that is the way flown. */
const fuelWords = [verdictOf(ofBrief(workingRows.fuelBrief, 'B')).slice(1), `IF(${byRoute},${verdictOf(ofRoute('verdict')).slice(1)},"OK")`];
const fuelVerdict = `=${worstOfWords(fuelWords)}`;

/** By the route: what the way to the alternate is worked out from. */
const alternateSaid = `IF(OR(${notByRoute},D${rows.field}=""),"",IF(${alternateTyped},"; to the alternate by the "&IF(ISNUMBER(D${rows.minutesTyped}),"minutes","groundspeed")&" typed"&IF(ISNUMBER(${alternateByRoute}),", in the place of "&ROUND(${alternateByRoute},0)&" min by the route",""),IF(D${rows.minutesTyped}<>"","","; to the alternate by the route, from overhead")))`;

/** A reason may be a text about the cell of its verdict. */
const items: readonly Item[] = [
  ['Entries', entriesVerdict, entriesReason],
  ['Dates', datesVerdict, datesReason],
  flightBeforeItem,
  pointOf('Loading, take-off', 'take-off'),
  pointOf('Loading, landing', 'landing'),
  pointOf('Loading, zero fuel', 'zero fuel'),
  ['Loading, whole burn', burnVerdict, burnReason],
  entriesOfLoading,
  ['Aircraft tables', tablesVerdict(worstOf(aircraftEntryVerdicts).slice(1)), tablesReason],
  ['Fields', fieldsVerdict, fieldsReason],
  brief('Take-off runway', workingRows.takeoffBrief, takeoffLacks, workingRows.takeoffCorrections),
  brief('Landing runway', workingRows.landingBrief, landingLacks, workingRows.landingCorrections),
  alternateLanding(),
  brief('Climb', workingRows.climbBrief, climbLacks),
  ['Wind limits', windVerdict, windReason],
  weather('B'),
  weather('C'),
  weather('D'),
  ['Typed weather', typedVerdict, typedReason],
  [
    'Fuel',
    fuelVerdict,
    `=IFERROR(${ofBrief(workingRows.fuelBrief, 'C')}&"",${fuelLacks(numberOfAircraft('climb fuel, extra').slice(1))})&IF(${byRoute},"; trip fuel and time by the route: "&${ofRoute('reason')},"")&${alternateSaid}`,
  ],
  switched(rows.judgeDescent, 'Descent', descentWord, descentSaid),
  switched(rows.judgeHold, 'Hold', verdictOf(card(hold.verdict)).slice(1), `IFERROR(${card(hold.reason)}&"","not computed, see the card")`),
  kept('Pilot', workingRows.pilot, keepsLogCell, 'pilot'),
  kept('Aircraft', workingRows.aircraft, keepsLogCell, 'aircraft'),
  kept('Navigation data', workingRows.data, keepsLedgerCell, 'data'),
];
export const itemCount = items.length + 1;

const itemCells: TemplateCell[] = items.flatMap(([item, verdict, reason], index) =>
  line(
    judged.first + index,
    7,
    [item, 'label'],
    [typeof verdict === 'string' ? verdict : verdict(`I${judged.first + index}`), 'verdict'],
    [typeof reason === 'string' ? reason : reason(`H${judged.first + index}`), 'reason'],
  ),
);

export const judgedCells: TemplateCell[] = [
  ...line(rows.judgedHeads, 7, ['Judged', 'heading'], ['verdict', 'columnHead'], ['reason', 'columnHead']),
  ...itemCells,
];

export const tripVerdictRanges: readonly string[] = ['B3', itemWords];
