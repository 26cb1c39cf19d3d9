// The navigation data and the papers of the Trip sheet, and whether each is good to the last day of the trip.
import { area, cell, filledOutside, line, worstOf, type Content, type Field } from './build';
import { formulaCall, type TemplateCell } from './template';
import { blockRows, entryRows as rows } from './tripRows';

const { databases } = blockRows;
const [firstDay, endDay] = [`B${rows.firstDay}`, `B${rows.lastDay}`];

/** A paper or a recency with a last good day, against the last day of the trip. */
const lastDay = `$B$${rows.lastDay}`;
/** A day in the years of flying: a date typed without its hyphens, 20261231, is a number too, of the year 57370. */
export const isDay = (cell: string): string => `AND(ISNUMBER(${cell}),${cell}>=DATE(1950,1,1),${cell}<DATE(2101,1,1))`;
const through = (day: string): string => `=IF(AND(${isDay(day)},${isDay(lastDay)}),IF(${day}>=${lastDay},"OK","NO"),"UNKNOWN")`;
const throughReason = (day: string): string => `=IF(AND(${isDay(day)},${isDay(lastDay)}),"good through "&TEXT(${day},"yyyy-mm-dd")&", the trip ends "&TEXT(${lastDay},"yyyy-mm-dd"),"a date is missing, or is none such as 2026-11-28")`;

export const dataSpill = `G${databases.first}:G${databases.last}`;
/** Rows with any of name, series and date: each of them must have a verdict. */
const dataRows = `(ROWS(A${databases.first}:A${databases.last})-COUNTIFS(${['A', 'B', 'C'].map((column) => `${column}${databases.first}:${column}${databases.last},""`).join(',')}))`;
const dataOutside = filledOutside(databases, 'A', 'C', { above: databases.first - 1, below: databases.last + 1 });
export const dataVerdict = `=IF(${dataOutside}>0,"UNKNOWN",${worstOf(dataSpill, dataRows).slice(1)})`;
export const dataReason =
  `=IF(${dataOutside}>0,"a database stands outside its list: insert rows between its first and its last",` +
  `IF(${dataRows}=0,"no database listed",COUNTIF(${dataSpill},"OK")&" of "&${dataRows}&" current from the first to the last day"))`;

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

export const dataCells: TemplateCell[] = [
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
