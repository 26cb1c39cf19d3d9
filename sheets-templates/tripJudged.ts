// The right half of the Trip sheet: the verdict of each item with its reason, and the two runway briefs step by step.
import { area, cell, line, on, verdictOf, worstOf, type Content, type Field } from './build';
import { tableInUse } from './manualTables';
import { balanceRows, sheetNames } from './places';
import { formulaCall, type TemplateCell } from './template';
import { fieldEntries, fuelOnBoardUsable, landingCorrections, singleEntries, takeoffCorrections } from './tripEntries';

const { zeroFuel, takeoff, landing } = balanceRows;
const balance = (place: string): string => on(sheetNames.balance, place);

export const judgedRows = { first: 6, last: 18 } as const;
const takeoffBrief = { first: 24, last: 38 } as const;
const landingBrief = { first: 43, last: 57 } as const;
const dataRows = { first: 71, last: 74 } as const;

/** "label (departure)" for each entry that is not a number; nothing when all are there. */
const missingEntries = `TEXTJOIN(", ",TRUE,${[
  ...fieldEntries.flatMap(({ row, label }) => [
    `IF(ISNUMBER(B${row}),"","${label} (departure)")`,
    `IF(ISNUMBER(C${row}),"","${label} (destination)")`,
  ]),
  ...singleEntries.map(({ row, label }) => `IF(ISNUMBER(B${row}),"","${label}")`),
].join(',')})`;

const briefCell = (rows: { readonly first: number; readonly last: number }, column: 'G' | 'H'): string =>
  `INDEX(${column}${rows.first}:${column}${rows.last},MATCH("verdict",F${rows.first}:F${rows.last},0))`;

const notComputed = '"not computed: an entry is missing, or out of its range"';

const loadingReason = (row: number): string => {
  const [forward, aft, weight] = ['H', 'I', 'J'].map((column) => balance(`${column}${row}`));
  return `=IFERROR("margins: arm forward "&ROUND(${forward},1)&", arm aft "&ROUND(${aft},1)&", weight "&ROUND(${weight},0),"see Weight and balance")`;
};

const enough = (has: string, needs: string): string => `=IF(AND(ISNUMBER(${has}),ISNUMBER(${needs})),IF(${has}>=${needs},"OK","NO"),"UNKNOWN")`;

/** A paper or a recency with a last good day, against the last day of the trip. */
const through = (day: string): string => `=IF(AND(ISNUMBER(${day}),ISNUMBER($B$9)),IF(${day}>=$B$9,"OK","NO"),"UNKNOWN")`;
const throughReason = (day: string): string => `=IF(ISNUMBER(${day}),"good through "&TEXT(${day},"yyyy-mm-dd")&", last day of the trip "&TEXT($B$9,"yyyy-mm-dd"),"no date entered")`;

const fuelVerdict =
  `=IFERROR(IF(AND(ISNUMBER(B41),ISNUMBER(B38),ISNUMBER(${balance('C22')}),ISNUMBER(${fuelOnBoardUsable})),` +
  `IF(OR(B41<B38,${balance('C22')}>${fuelOnBoardUsable}),"NO","OK"),"UNKNOWN"),"UNKNOWN")`;
const fuelReason =
  `=IFERROR(IF(${balance('C22')}>${fuelOnBoardUsable},"more fuel entered than is usable",ROUND(B41,0)&" minutes left at landing, "&ROUND(B38,0)&" wanted"),"an entry of fuel is missing")`;

const dataSpill = `G${dataRows.first}:G${dataRows.last}`;
const dataNames = `A${dataRows.first}:A${dataRows.last}`;
const dataReason =
  `=IF(COUNTA(${dataNames})=0,"no database listed",COUNTIF(${dataSpill},"OK")&" of "&COUNTA(${dataNames})&" current from the first to the last day")`;

const datesVerdict = '=IF(AND(ISNUMBER(B8),ISNUMBER(B9),ISNUMBER(as_of)),IF(B9<B8,"NO",IF(B8<as_of,"CHECK","OK")),"UNKNOWN")';
const datesReason = '=IF(AND(ISNUMBER(B8),ISNUMBER(B9)),IF(B9<B8,"the last day is before the first",IF(B8<as_of,"the first day lies before as_of on the Start sheet","the trip lies ahead of as_of")),"a day is missing")';

const items: readonly (readonly [item: string, verdict: string, reason: string])[] = [
  ['Entries', `=IF(${missingEntries}="","OK","UNKNOWN")`, `=IF(${missingEntries}="","every entry holds a number","not a number: "&${missingEntries})`],
  ['Dates', datesVerdict, datesReason],
  ['Loading, zero fuel', verdictOf(balance(`F${zeroFuel}`)), loadingReason(zeroFuel)],
  ['Loading, take-off', verdictOf(balance(`F${takeoff}`)), loadingReason(takeoff)],
  ['Loading, landing', verdictOf(balance(`F${landing}`)), loadingReason(landing)],
  ['Take-off runway', verdictOf(briefCell(takeoffBrief, 'G')), `=IFERROR(${briefCell(takeoffBrief, 'H')},${notComputed})`],
  ['Landing runway', verdictOf(briefCell(landingBrief, 'G')), `=IFERROR(${briefCell(landingBrief, 'H')},${notComputed})`],
  ['Climb', enough('B33', 'B32'), '=IFERROR("needs "&ROUND(B32,0)&" ft/min, the manual gives "&ROUND(B33,0),"not computed: beyond the climb table, or an entry is missing")'],
  ['Fuel', fuelVerdict, fuelReason],
  ['Hold speed', enough('G64', 'B65'), '=IFERROR(ROUND(B65,0)&" kt indicated, limit "&ROUND(G64,0),"not computed")'],
  ['Navigation data', worstOf(dataSpill, `COUNTA(${dataNames})`), dataReason],
  ['Landings recent', through('C75'), throughReason('C75')],
  ['Medical', through('C76'), throughReason('C76')],
];

const itemCells: TemplateCell[] = items.flatMap(([item, verdict, reason], index) =>
  line(judgedRows.first + index, 6, [item, 'label'], [verdict, 'verdict'], [reason, 'reason']),
);

const itemRows = items.map((_, index) => judgedRows.first + index);
/** Every item that is not OK, with its reason. */
const allReasons = `=IF(B3="OK","Every item below is OK.",TEXTJOIN("; ",TRUE,${itemRows.map((row) => `IF(G${row}="OK","",F${row}&" "&G${row}&": "&H${row})`).join(',')}))`;

function briefCells(name: 'TAKEOFF_BRIEF' | 'LANDING_BRIEF', rows: { readonly first: number; readonly last: number }, weightRow: number, column: 'B' | 'C', title: string): TemplateCell[] {
  const at = (row: number): string => `${column}${row}`;
  const table = tableInUse(name === 'TAKEOFF_BRIEF' ? 'takeoff' : 'landing');
  const corrections = name === 'TAKEOFF_BRIEF' ? takeoffCorrections : landingCorrections;
  const call = formulaCall(name, table, '"over 50 ft"', balance(`C${weightRow}`), at(19), at(20), at(14), at(15), at(16), at(17), at(18), at(21), area(corrections.first, 1, corrections.last, 4));
  const looks = Array.from({ length: rows.last - rows.first + 1 }, (_, index) => index).flatMap((index) =>
    line(rows.first + index, 6, [index === 0 ? `=${call}` : undefined, 'computedText'], [undefined, 'computed', { format: 'two' }], [undefined, 'unit']),
  );
  return [...line(rows.first - 1, 6, [title, 'heading'], ['', 'heading'], ['', 'heading']), ...looks];
}

const leg: TemplateCell[] = [
  ...line(20, 6, ['leg, NM', 'columnHead'], ['true course', 'columnHead'], ['true course at the end', 'columnHead']),
  ...line(21, 6, [`=${formulaCall('COURSE_LEG', 'B12', 'B13', 'C12', 'C13')}`, 'computed', { format: 'one', note: 'COURSE_LEG: geodesic on the WGS84 ellipsoid.' }], [undefined, 'computed', { format: 'degrees' }], [undefined, 'computed', { format: 'degrees' }]),
];

const holdResults: TemplateCell[] = [
  ...line(60, 6, ['Hold, worked out', 'heading'], ['', 'heading'], ['', 'heading']),
  ...line(61, 6, ['inbound course', 'label'], [`=${formulaCall('HOLD_INBOUND', 'B61')}`, 'computed', { format: 'degrees', note: 'HOLD_INBOUND: the reciprocal of the side to hold on.' }], ['degrees magnetic', 'unit']),
  ...line(62, 6, ['entry', 'label'], [`=${formulaCall('HOLD_ENTRY', 'B63', 'G61', 'B62')}`, 'computedText', { note: 'HOLD_ENTRY: AIM 5-3-8.' }], ['', 'unit']),
  ...line(64, 6, ['speed limit', 'label'], [`=${formulaCall('HOLD_SPEED_LIMIT', 'B64')}`, 'computed', { format: 'whole', note: 'HOLD_SPEED_LIMIT: AIM 5-3-8, US limits.' }], ['kt indicated', 'unit']),
];

const databases: readonly (readonly Content[])[] = [
  ['navigation, panel', '28-day', { date: '2026-11-26' }],
  ['obstacles', '56-day', { date: '2026-10-29' }],
  ['charts, tablet', '28-day', { date: '2026-11-26' }],
  [undefined, undefined, undefined],
];

const databaseHeads: readonly Field[] = ['database', 'series', 'loaded, effective'].map((head) => [head, 'columnHead'] as const);

const dataCells: TemplateCell[] = [
  cell(69, 1, '7  Navigation data and papers', 'heading'),
  ...line(70, 1, ...databaseHeads),
  ...line(70, 7, ['on the trip', 'columnHead'], ['first day out of date', 'columnHead']),
  ...databases.flatMap((row, index) =>
    line(dataRows.first + index, 1, ...row.map((content, column): Field => (column === 2 ? [content, 'input', { format: 'date' }] : [content, 'inputText']))),
  ),
  ...databases.flatMap((_, index) => {
    const columns = ['B', 'C'].map((letter) => `${letter}${dataRows.first}:${letter}${dataRows.last}`);
    const call = `=${formulaCall('CYCLE_COVERS', columns[1] ?? '', columns[0] ?? '', 'B8', 'B9')}`;
    return line(dataRows.first + index, 7, [index === 0 ? call : undefined, 'verdict', { note: 'CYCLE_COVERS: current from the first to the last day of the trip.' }], [undefined, 'computedText', { format: 'date' }]);
  }),
  ...line(75, 1, ['landings recent through', 'label'], [undefined, 'plain'], [{ date: '2027-01-14' }, 'input', { format: 'date', note: 'Last day on which passengers may be carried (14 CFR 61.57 or FCL.060).' }]),
  ...line(76, 1, ['medical valid through', 'label'], [undefined, 'plain'], [{ date: '2027-06-30' }, 'input', { format: 'date', note: 'Last day of the medical certificate in the class needed.' }]),
];

export const verdictCell = cell(3, 2, worstOf(area(judgedRows.first, 7, judgedRows.last, 7)), 'bigVerdict', { note: 'The worst of the items: NO, then UNKNOWN, then CHECK, then OK.' });

export const rightHalf: TemplateCell[] = [
  cell(3, 1, 'Verdict', 'title'),
  verdictCell,
  cell(3, 6, allReasons, 'reason'),
  ...line(5, 6, ['Judged', 'heading'], ['verdict', 'columnHead'], ['reason', 'columnHead']),
  ...itemCells,
  ...leg,
  ...briefCells('TAKEOFF_BRIEF', takeoffBrief, takeoff, 'B', 'Take-off, step by step'),
  ...briefCells('LANDING_BRIEF', landingBrief, landing, 'C', 'Landing, step by step'),
  ...holdResults,
  ...dataCells,
];

export const tripVerdictRanges: readonly string[] = ['B3', area(judgedRows.first, 7, judgedRows.last, 7), `G${takeoffBrief.first}:G${takeoffBrief.last}`, `G${landingBrief.first}:G${landingBrief.last}`, dataSpill];
