// The descent plan on the card, by schedule and winds, for one of the crossing restrictions.
import { cell, inputRows, line, type Content, type Field } from '../build';
import { callHeads, headWords } from '../lists';
import type { FormatName } from '../look';
import { formulaCall, type TemplateCell } from '../template';
import { crossingAbove, deciding } from './crossings';
import { differsFromRoute, used, usedCells } from './fromRoute';
import { crossings, headingAcross, heads, moveDown, padded, plan, read, rows, schedule, strayAbove, winds } from './descentLists';

const scheduleValues: readonly (readonly Content[])[] = [
  [12000, 150, 700],
  [8000, 140, 600],
  [4000, 120, 500],
];

const windValues: readonly (readonly Content[])[] = [
  [3000, 240, 12],
  [6000, 255, 20],
  [9000, 265, 28],
  [12000, 270, 35],
];

/** Row, within the restrictions, of the one planned for: the named one, or the deciding one where none is named. */
const planned = `IF($B$23="",${deciding},MATCH($B$23,${read(crossings, 'A')},0))`;

const ofPlanned = (column: string): string => `INDEX(${read(crossings, column)},${planned})`;

const planHeads = ['from, ft', 'to, ft', 'true airspeed', 'headwind, kt', 'groundspeed, kt', 'ft/min', 'minutes', 'NM'];

const planCall = formulaCall(
  'DESCENT_PLAN',
  'B7',
  'B25',
  read(schedule, 'E', 'G'),
  used.winds,
  used.course,
  'B29',
  'B26',
  'B30',
  headWords(planHeads),
);

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

export const planCells: TemplateCell[] = [
  ...usedCells,
  ...headingAcross(22, '2  Descent plan, by schedule and winds'),
  ...line(
    23,
    1,
    ['plan for', 'label'],
    [undefined, 'inputText', { note: 'A fix of the table above; blank: the one that decides the start.' }],
    [`=IFERROR(${ofPlanned('A')},"no such fix")`, 'unit'],
  ),
  ...planEntry(25, 'cross at', `=IFERROR(${ofPlanned('D')},"")`, 'ft', 'whole', 'From the restriction planned for.'),
  ...planEntry(
    26,
    'NM before the fix',
    `=IFERROR(IF(${ofPlanned('C')}="",0,${ofPlanned('C')}),"")`,
    'NM',
    'one',
    'From the restriction planned for; blank there is 0.',
  ),
  ...planEntry(
    27,
    'crossing point in',
    `=IFERROR(IF(AND(ISNUMBER(B25),ISNUMBER(B26),ISNUMBER(${ofPlanned('B')})),${ofPlanned('B')}-B26,""),"")`,
    'NM',
    'one',
    'Distance to go to the fix, less the miles before it.',
  ),
  ...planEntry(
    28,
    'true course',
    80,
    'deg true',
    'degrees',
    'Winds aloft are forecast in degrees true, so the course is true too. Blank where the trip goes by the route: that of its last leg.',
  ),
  ...planEntry(29, 'ISA +/-', 8, 'deg C', 'whole', 'How much warmer than the standard atmosphere the air is; negative is colder. Blank: standard.'),
  ...planEntry(
    30,
    'level to slow to 250 kt',
    undefined,
    'NM',
    'one',
    'Holds 250 kt indicated below 10,000 ft (14 CFR 91.117): miles flown level at 10,000 ft to slow down, 0 for none. Blank: the schedule as it stands.',
  ),
  ...planEntry(
    32,
    'start, by schedule',
    `=IFERROR(IF(B27="","",B27+B26-${planMiles}),"")`,
    'NM',
    'one',
    'By your schedule and the winds, from here: crossing point less the miles of the plan. Negative lies behind.',
  ),
  ...planEntry(
    33,
    'that is in',
    `=IFERROR(IF(OR(B32="",${used.groundspeed}=""),"",B32/${used.groundspeed}*60),"")`,
    'minutes',
    'one',
    'At the groundspeed now.',
  ),
  ...planEntry(34, 'descent takes', `=IFERROR(IF(B27="","",${planMinutes}),"")`, 'minutes', 'one', 'From the last row of the plan.'),
  ...planEntry(
    35,
    'angle of the plan',
    '=IFERROR((B7-B25)/(B27-B32)*180/(PI()*6076),"")',
    'degrees',
    'one',
    'Mean angle over the ground: height over distance (6,076 ft a mile), as degrees; for slopes as small as these within a hundredth.',
  ),
  ...line(23, 5, ...heads('from altitude down, ft', 'kt or Mach', 'ft/min')),
  ...inputRows(schedule.first, 5, padded(scheduleValues, schedule, 3), () => 'whole'),
  ...line(30, 5, ...heads('wind at, ft', 'from, true', 'kt')),
  ...inputRows(winds.first, 5, padded(windValues, winds, 3), (index) => (index === 1 ? 'degrees' : 'whole')),
  cell(38, 1, 'One row for each band; the last row is the whole descent, and its NM are those before the fix at which to start down.', 'subtitle'),
  ...callHeads(plan.first - 1, 1, planHeads, planCall, ['DESCENT_PLAN: true airspeed and wind integrated by height.']),
  ...Array.from({ length: plan.last - plan.first + 1 }, (_, index) => index).flatMap((index) =>
    line(plan.first + index, 1, ...planFormats.map((format): Field => [undefined, 'computed', { format }])),
  ),
];

/** Half a degree of difference moves the start by miles. Common practice, no source. */
const differs = 'IFERROR(ABS(B35-IF(B8="",3,B8))>1/2,FALSE)';

/**
 * The plan is judged by whether its start still lies ahead; it meets the one crossing it is made for. The others are judged at the
 * angle, so an angle that is not the plan's has to be looked at.
 */
const bandAbove = strayAbove(schedule, 'E', 'G');

const windAbove = strayAbove(winds, 'E', 'G');

export const planVerdict = `=IF(OR(${crossingAbove},${bandAbove},${windAbove}),"UNKNOWN",IFERROR(IF(ISNUMBER(B32),IF(B32<0,"NO",IF(OR(${differs},${differsFromRoute}<>""),"CHECK","OK")),"UNKNOWN"),"UNKNOWN"))`;

export const planReason =
  `=IF(${bandAbove},${moveDown('A row of the schedule')},IF(${windAbove},${moveDown('A wind')},"by your schedule and the winds: "&IF(ISNUMBER(B32),IF(B32<0,"the start lies "&ROUND(-B32,1)&" NM behind","start in "&ROUND(B32,1)&" NM for "&C23)` +
  `&IF(${differs},"; its angle is "&ROUND(B35,1)&", crossings are judged at "&IF(B8="",3,B8),"")&IF(${differsFromRoute}="","","; "&${differsFromRoute}),"not computed: enter altitude now, true course, schedule and winds, both from the altitude now down to the crossing")))`;
