// The descent half of the Descent and hold card: crossing restrictions, and the plan by schedule and winds for one of them.
import { area, cell, filledOutside, inputRows, line, worstOf, type Content, type Field } from './build';
import type { FormatName } from './look';
import { formulaCall, type TemplateCell, type Validation } from './template';

const heads = (...words: readonly string[]): Field[] => words.map((word) => [word, 'columnHead'] as const);
/** A heading drawn across the whole sheet. */
export const headingAcross = (row: number, text: string): TemplateCell[] => line(row, 1, [text, 'heading'], ...Array.from({ length: 10 }, (): Field => ['', 'heading']));

export const crossings = { first: 12, last: 19 } as const;
export const schedule = { first: 24, last: 28 } as const;
export const winds = { first: 31, last: 36 } as const;
export const plan = { first: 40, last: 49 } as const;

type Rows = { readonly first: number; readonly last: number };
const rows = ({ first, last }: Rows, column: string, lastColumn = column): string => `${column}${first}:${lastColumn}${last}`;
/** The rows of a list that formulas read: with the blank row below, so that a row put in after the last is read too. */
const readRows = ({ first, last }: Rows): Rows => ({ first, last: last + 1 });
const read = (list: Rows, column: string, lastColumn = column): string => rows(readRows(list), column, lastColumn);
/** Formula text: whether something stands between the heads of a list and its first row, where it is not read. */
const strayAbove = (list: Rows, from: string, to: string): string => `${filledOutside(readRows(list), from, to, { above: list.first - 1 })}>0`;
const moveDown = (what: string): string => `"${what} stands right below the heads of its list, where it is not read: move it down"`;

/** Invented: fix, distance to go, miles before it, altitude, kind. */
const crossingValues: readonly (readonly Content[])[] = [
  ['Sorrel', 24, undefined, 8000, 'at or above'],
  ['Tansy', 42, 8, 7000, 'at'],
  ['Marrow', 58, undefined, 4500, 'at or below'],
];
const scheduleValues: readonly (readonly Content[])[] = [[12000, 150, 700], [8000, 140, 600], [4000, 120, 500]];
const windValues: readonly (readonly Content[])[] = [[3000, 240, 12], [6000, 255, 20], [9000, 265, 28], [12000, 270, 35]];

const padded = (values: readonly (readonly Content[])[], { first, last }: Rows, width: number): readonly (readonly Content[])[] => [
  ...values,
  ...Array.from({ length: last - first + 1 - values.length }, () => Array<Content>(width).fill(undefined)),
];

const crossingsCall = formulaCall('DESCENT_CROSSINGS', ...['A', 'B', 'C', 'D', 'E'].map((column) => read(crossings, column)), 'B7', 'B8', 'B9');
const starts = read(crossings, 'F');
const verdicts = read(crossings, 'J');
/** Row, within the restrictions, of the one that decides the start. */
const deciding = `MATCH(MIN(${starts}),${starts},0)`;
const ofDeciding = (column: string): string => `INDEX(${read(crossings, column)},${deciding})`;

const crossingCells: TemplateCell[] = [
  ...headingAcross(6, '1  Crossing restrictions'),
  ...line(7, 1, ['altitude now', 'label'], [11000, 'input', { format: 'whole' }], ['ft', 'unit']),
  ...line(8, 1, ['descent angle', 'label'], [1.9, 'input', { format: 'one', note: '3 degrees is 318 ft a mile. Left blank: 3. The angle of the plan below, typed here, makes both agree.' }], ['degrees', 'unit']),
  ...line(9, 1, ['groundspeed now', 'label'], [165, 'input', { format: 'whole', note: 'Until the start of the descent, for the minutes.' }], ['kt', 'unit']),
  ...line(7, 5, ['start down in', 'label'], [`=IF(COUNT(${starts})=0,"",MIN(${starts}))`, 'computed', { format: 'one', note: 'The smallest start of the column below: the restriction that decides.' }], ['NM', 'unit']),
  ...line(8, 5, ['that is in', 'label'], [`=IF(COUNT(${starts})=0,"",${ofDeciding('G')})`, 'computed', { format: 'one', note: 'At the groundspeed now.' }], ['minutes', 'unit']),
  ...line(9, 5, ['decided by', 'label'], [`=IF(COUNT(${starts})=0,"",${ofDeciding('A')})`, 'computedText']),
  ...line(crossings.first - 1, 1, ...heads('fix', 'to go, NM', 'cross before by, NM', 'altitude, ft', 'at, or below, or above', 'start in, NM', 'start in, min', 'then at, ft', 'angle, deg', 'verdict', 'reason')),
  ...inputRows(crossings.first, 1, padded(crossingValues, crossings, 5), (index) => (index === 3 ? 'whole' : 'one')),
  ...Array.from({ length: crossings.last - crossings.first + 1 }, (_, index) => index).flatMap((index) =>
    line(crossings.first + index, 6,
      [index === 0 ? `=${crossingsCall}` : undefined, 'computed', { format: 'one', ...(index === 0 && { note: 'DESCENT_CROSSINGS: how far from here each restriction alone lets the descent start.' }) }],
      [undefined, 'computed', { format: 'one' }], [undefined, 'computed', { format: 'whole' }], [undefined, 'computed', { format: 'one' }], [undefined, 'verdict'], [undefined, 'reason']),
  ),
];

/** Row, within the restrictions, of the one planned for: the named one, or the deciding one where none is named. */
const planned = `IF($B$23="",${deciding},MATCH($B$23,${read(crossings, 'A')},0))`;
const ofPlanned = (column: string): string => `INDEX(${read(crossings, column)},${planned})`;
const planCall = formulaCall('DESCENT_PLAN', 'B7', 'B25', read(schedule, 'E', 'G'), read(winds, 'E', 'G'), 'B28', 'B29', 'B26', 'B30');
const planLine = `COUNT(${rows(plan, 'A')})`;
/** With no plan there is no last row; INDEX with row 0 would be the whole column, which spills. */
const ofLastLine = (column: string): string => `IF(${planLine}=0,NA(),INDEX(${rows(plan, column)},${planLine}))`;
const planMiles = ofLastLine('H');
const planMinutes = ofLastLine('G');

const planEntry = (row: number, label: string, content: Content, unit: string, format: FormatName, note: string): TemplateCell[] => {
  const look = typeof content === 'string' ? 'computed' : 'input';
  return line(row, 1, [label, 'label'], [content, look, { format, note }], [unit, 'unit']);
};

const planFormats: readonly FormatName[] = ['whole', 'whole', 'whole', 'whole', 'whole', 'whole', 'one', 'one'];

const planCells: TemplateCell[] = [
  ...headingAcross(22, '2  Descent plan, by schedule and winds'),
  ...line(23, 1, ['plan for', 'label'], [undefined, 'inputText', { note: 'A fix of the table above; blank: the one that decides the start.' }], [`=IFERROR(${ofPlanned('A')},"no such fix")`, 'unit']),
  ...planEntry(25, 'cross at', `=IFERROR(${ofPlanned('D')},"")`, 'ft', 'whole', 'From the restriction planned for.'),
  ...planEntry(26, 'before the fix by', `=IFERROR(IF(${ofPlanned('C')}="",0,${ofPlanned('C')}),"")`, 'NM', 'one', 'From the restriction planned for; blank there is 0.'),
  ...planEntry(27, 'crossing point in', `=IFERROR(IF(AND(ISNUMBER(B25),ISNUMBER(B26),ISNUMBER(${ofPlanned('B')})),${ofPlanned('B')}-B26,""),"")`, 'NM', 'one', 'Distance to go to the fix, less the miles before it.'),
  ...planEntry(28, 'true course', 80, 'deg true', 'degrees', 'Winds aloft are forecast in degrees true, so the course is true too.'),
  ...planEntry(29, 'above standard', 8, 'deg C', 'whole', 'How much warmer than the standard temperature the air is; negative is colder. Blank: standard.'),
  ...planEntry(30, '250 kt, slow over', undefined, 'NM', 'one', 'Holds 250 kt indicated below 10,000 ft (14 CFR 91.117): miles flown level at 10,000 ft to slow down, 0 for none. Blank: the schedule as it stands.'),
  ...planEntry(32, 'start down in', `=IFERROR(IF(B27="","",B27+B26-${planMiles}),"")`, 'NM', 'one', 'From here: crossing point less the miles of the plan. Negative lies behind.'),
  ...planEntry(33, 'that is in', '=IFERROR(IF(OR(B32="",B9=""),"",B32/B9*60),"")', 'minutes', 'one', 'At the groundspeed now.'),
  ...planEntry(34, 'descent takes', `=IFERROR(IF(B27="","",${planMinutes}),"")`, 'minutes', 'one', 'From the last row of the plan.'),
  ...planEntry(35, 'angle of the plan', '=IFERROR((B7-B25)/(B27-B32)*180/(PI()*6076),"")', 'degrees', 'one', 'Mean angle over the ground: height over distance (6,076 ft a mile), as degrees; for slopes as small as these within a hundredth.'),
  ...line(23, 5, ...heads('from altitude down, ft', 'kt or Mach', 'ft/min')),
  ...inputRows(schedule.first, 5, padded(scheduleValues, schedule, 3), () => 'whole'),
  ...line(30, 5, ...heads('wind at, ft', 'from, true', 'kt')),
  ...inputRows(winds.first, 5, padded(windValues, winds, 3), (index) => (index === 1 ? 'degrees' : 'whole')),
  cell(38, 1, 'One row for each band; the last row is the whole descent, and its NM are those before the fix at which to start down.', 'subtitle'),
  ...line(39, 1, ...heads('from, ft', 'to, ft', 'true airspeed', 'headwind, kt', 'groundspeed, kt', 'ft/min', 'minutes', 'NM')),
  ...Array.from({ length: plan.last - plan.first + 1 }, (_, index) => index).flatMap((index) =>
    line(plan.first + index, 1, ...planFormats.map((format, column): Field => [index === 0 && column === 0 ? `=${planCall}` : undefined, 'computed', { format, ...(index === 0 && column === 0 && { note: 'DESCENT_PLAN: true airspeed and wind integrated by height.' }) }])),
  ),
];

export const descentCells: readonly TemplateCell[] = [...crossingCells, ...planCells];

/** Rows with any entry; each of them must have a verdict. */
const crossingsEntered = `(ROWS(${read(crossings, 'A')})-COUNTIFS(${['A', 'B', 'C', 'D', 'E'].map((column) => `${read(crossings, column)},""`).join(',')}))`;
const crossingAbove = strayAbove(crossings, 'A', 'E');
export const crossingsVerdict = `=IF(${crossingAbove},"UNKNOWN",${worstOf(verdicts, crossingsEntered).slice(1)})`;
/** Half a degree of difference moves the start by miles. Common practice, no source. */
const differs = 'IFERROR(ABS(B35-IF(B8="",3,B8))>1/2,FALSE)';
/**
 * The plan is judged by whether its start still lies ahead; it meets the one crossing it is made for. The others are judged at the
 * angle, so an angle that is not the plan's has to be looked at.
 */
const bandAbove = strayAbove(schedule, 'E', 'G');
const windAbove = strayAbove(winds, 'E', 'G');
export const planVerdict = `=IF(OR(${crossingAbove},${bandAbove},${windAbove}),"UNKNOWN",IFERROR(IF(ISNUMBER(B32),IF(B32<0,"NO",IF(${differs},"CHECK","OK")),"UNKNOWN"),"UNKNOWN"))`;
export const crossingsReason =
  `=IF(${crossingAbove},${moveDown('A restriction')},IF(${crossingsEntered}=0,"no restriction entered",` +
  `IF(COUNTIF(${verdicts},"OK")+COUNTIF(${verdicts},"NO")+COUNTIF(${verdicts},"UNKNOWN")=0,"not computed: altitude now, or the distance, altitude or kind of a restriction is missing or out of its range",` +
  `COUNTIF(${verdicts},"OK")&" of "&${crossingsEntered}&" met"&IF(F7="","; none asks for a descent","; start in "&ROUND(F7,1)&" NM, "&F9&" decides"))))`;
export const planReason =
  `=IF(${bandAbove},${moveDown('A row of the schedule')},IF(${windAbove},${moveDown('A wind')},IF(ISNUMBER(B32),IF(B32<0,"the start lies "&ROUND(-B32,1)&" NM behind","start down in "&ROUND(B32,1)&" NM for "&C23)` +
  `&IF(${differs},"; its angle is "&ROUND(B35,1)&", crossings are judged at "&IF(B8="",3,B8),""),"not computed: an entry is missing, or out of its range; the rows of schedule and winds must reach from the altitude now to the crossing")))`;

export const descentVerdictRanges: readonly string[] = [verdicts];

const numbers = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });
const altitudeHelp = 'Altitude in feet, -5,000 to 60,000.';

export const descentValidations: readonly Validation[] = [
  numbers('B7', -5000, 60000, altitudeHelp),
  numbers('B8', 0.5, 15, 'Angle of the path, 0.5 to 15 degrees.'),
  numbers('B9', 1, 1000, 'Groundspeed in knots.'),
  numbers(rows(crossings, 'B'), 0, 500, 'Distance to go in nautical miles.'),
  numbers(rows(crossings, 'C'), -500, 500, '8 is eight miles before the fix, -8 eight miles beyond it.'),
  numbers(rows(crossings, 'D'), -5000, 60000, altitudeHelp),
  { kind: 'list', range: rows(crossings, 'E'), choices: ['at', 'at or below', 'at or above'], help: 'How to cross.' },
  { kind: 'listFrom', range: 'B23', source: `$A$${crossings.first}:$A$${crossings.last}`, help: 'A fix of the restrictions above, or blank.' },
  numbers('B28', 0, 360, 'True course, 0 to 360 degrees.'),
  numbers('B29', -50, 50, 'Degrees Celsius warmer than standard.'),
  numbers('B30', 0, 50, 'Nautical miles, 0 to 50.'),
  numbers(area(schedule.first, 5, schedule.last, 5), -5000, 60000, altitudeHelp),
  numbers(area(schedule.first, 6, schedule.last, 6), 0.01, 600, 'Knots indicated, or a Mach number below 1.'),
  numbers(area(schedule.first, 7, schedule.last, 7), 1, 10000, 'Rate of descent in feet a minute, without a sign.'),
  numbers(area(winds.first, 5, winds.last, 5), -5000, 60000, altitudeHelp),
  numbers(area(winds.first, 6, winds.last, 6), 0, 360, 'Where the wind blows from, degrees true.'),
  numbers(area(winds.first, 7, winds.last, 7), 0, 300, 'Wind in knots.'),
];
