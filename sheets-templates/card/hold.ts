// The hold half of the Descent and hold card: the hold in words and numbers, briefed with its wind, and how long the fuel lasts.
import type { HoldItem } from '../../functions/facts';
import { line, type Content, type Field } from '../build';
import { headingAcross } from './descentLists';
import type { FormatName } from '../look';
import { entriesIn } from '../keys';
import { formulaCall, type TemplateCell, type Validation } from '../template';

export const holdTop = 52;
const brief = { first: holdTop + 2, last: holdTop + 22 } as const;
export const briefRange = `E${brief.first}:G${brief.last}`;
const points = { first: holdTop + 27, last: holdTop + 42 } as const;

const row = {
  heading: holdTop + 1,
  side: holdTop + 2,
  inbound: holdTop + 3,
  turns: holdTop + 4,
  altitude: holdTop + 5,
  speed: holdTop + 6,
  leg: holdTop + 7,
  windFrom: holdTop + 8,
  wind: holdTop + 9,
  temperature: holdTop + 10,
  now: holdTop + 12,
  clearance: holdTop + 13,
  fuel: holdTop + 14,
  flow: holdTop + 15,
  after: holdTop + 16,
  answer: holdTop + 18,
} as const;
export const holdPlaces = {
  heading: `B${row.heading}`,
  inbound: `B${row.inbound}`,
  turns: `B${row.turns}`,
  windFrom: `B${row.windFrom}`,
  wind: `B${row.wind}`,
  brief: briefRange,
} as const;

/** Formula text: the value of the brief's row with this item. */
const briefed = (item: HoldItem, column: 'F' | 'G' = 'F'): string =>
  `INDEX(${column}${brief.first}:${column}${brief.last},MATCH("${item}",E${brief.first}:E${brief.last},0))`;

const codes = ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'] as const;
const letterWords: Readonly<Record<string, string>> = { N: 'NORTH', E: 'EAST', S: 'SOUTH', W: 'WEST' };
const asWords = (code: string): string => [...code].map((letter) => letterWords[letter] ?? '').join('');

/** The side as typed, without "hold", "radial", blanks and hyphens; a compass point in letters or words, or degrees of a radial. */
const without = (text: string, ...words: readonly string[]): string => words.reduce((rest, word) => `SUBSTITUTE(${rest},"${word}","")`, text);
const side = without(`UPPER($B$${row.side})`, '-', ' ', 'HOLD', 'RADIAL');
const pointAmong = (column: string): string => `MATCH(${side},$${column}$${points.first}:$${column}$${points.last},0)`;
const reciprocal = (degrees: string): string => `IF(MOD(${degrees}+180,360)=0,360,MOD(${degrees}+180,360))`;
/** Degrees, as a number or in a cell that keeps what is typed as text; R270 is the 270 radial. */
const bearing = `VALUE(IF(LEFT(${side},1)="R",MID(${side},2,9),${side}))`;
const inboundFormula =
  `=IFERROR(IF($B$${row.side}="","",IF(ISNUMBER(${bearing}),IF(OR(${bearing}<0,${bearing}>360),"",${reciprocal(bearing)}),` +
  `${reciprocal(`(IFERROR(${pointAmong('A')},${pointAmong('B')})-1)*360/16`)})),"")`;

const briefCall = formulaCall(
  'HOLD_BRIEF',
  ...(['heading', 'inbound', 'turns', 'altitude', 'speed', 'leg', 'windFrom', 'wind', 'temperature'] as const).map((name) => `B${row[name]}`),
);
const untilCall = formulaCall(
  'HOLD_UNTIL',
  `B${row.now}`,
  `B${row.clearance}`,
  briefed('lap minutes'),
  `B${row.fuel}`,
  `B${row.flow}`,
  `B${row.after}`,
);

const entry = (at: number, label: string, content: Content, unit: string, note: string, format?: FormatName): TemplateCell[] => {
  const look = typeof content !== 'string' ? 'input' : content.startsWith('=') ? 'computed' : 'inputText';
  return line(at, 1, [label, 'label'], [content, look, { note, ...(format !== undefined && { format }) }], [unit, 'unit']);
};

const heads = (...words: readonly string[]): Field[] => words.map((word) => [word, 'columnHead'] as const);
/** Formats of the values that HOLD_BRIEF lays out, in its order. */
const briefFormats: readonly FormatName[] = [
  'text',
  'degrees',
  'degrees',
  'degrees',
  'whole',
  'degrees',
  'whole',
  'whole',
  'two',
  'one',
  'one',
  'two',
  'text',
  'text',
  'whole',
  'one',
  'whole',
  'one',
  'degrees',
  'text',
  'text',
];
const briefRows = Array.from({ length: brief.last - brief.first + 1 }, (_, index) => brief.first + index);

export const holdCells: readonly TemplateCell[] = [
  ...headingAcross(holdTop, '3  Hold'),
  ...entry(row.heading, 'heading at the fix', 62, 'deg mag', 'Heading on which the fix is reached.', 'degrees'),
  ...entry(
    row.side,
    'hold on the side',
    'north-east',
    'or radial',
    'A compass point (NE, north-east, hold west), or the radial (R270, 270 radial) or bearing from the fix in degrees. The controller says where to hold, not the inbound course.',
  ),
  ...entry(
    row.inbound,
    'inbound course',
    inboundFormula,
    'deg mag',
    'The reciprocal of the side (AIM 5-3-8). A course may be typed over it.',
    'degrees',
  ),
  ...entry(row.turns, 'turns', 'left', '', 'Right unless told otherwise.'),
  ...entry(row.altitude, 'altitude', 7000, 'ft', 'Decides the speed limit (AIM 5-3-8) and the true airspeed.', 'whole'),
  ...entry(row.speed, 'holding speed', 110, 'kt ind.', 'Indicated airspeed.', 'whole'),
  ...entry(
    row.leg,
    'leg',
    '4 NM',
    'min, NM',
    '"1 min" inbound; "4 NM" or "4-mile legs": outbound to 4 NM from the fix by DME or along-track (AIM 5-3-8); "4 NM inbound"; "standard": 1 minute to 14,000 ft, 1.5 above.',
  ),
  ...entry(row.windFrom, 'wind from', 260, 'deg mag', 'Magnetic, like the course. Forecast winds are true: take easterly variation off.', 'degrees'),
  ...entry(row.wind, 'wind', 22, 'kt', 'At the holding altitude.', 'whole'),
  ...entry(row.temperature, 'temperature', undefined, 'deg C', 'Blank: the standard temperature.', 'whole'),
  ...entry(row.now, 'time now', '1435Z', 'UTC', 'Four digits, with or without Z.'),
  ...entry(row.clearance, 'EFC', '1505Z', 'UTC', 'Expect further clearance. A time earlier in the day than now is tomorrow.'),
  ...entry(row.fuel, 'usable fuel now', 24, 'any unit', 'The same unit in all three rows.', 'one'),
  ...entry(row.flow, 'fuel flow', 9.5, 'an hour', 'In the hold.', 'one'),
  ...entry(row.after, 'fuel needed after', 15, 'same unit', 'To the destination, the alternate, and the reserve.', 'one'),
  ...line(row.answer - 1, 1, ...heads('laps until then', 'fuel then', 'leave by', 'verdict')),
  ...line(
    row.answer,
    1,
    [
      `=${untilCall}`,
      'computed',
      { format: 'one', note: 'HOLD_UNTIL: laps, fuel at the clearance time, latest time to leave with the fuel needed after.' },
    ],
    [undefined, 'computed', { format: 'one' }],
    [undefined, 'computedText'],
    [undefined, 'verdict'],
  ),
  ...line(holdTop + 1, 5, ...heads('the hold, worked out', 'value', 'unit')),
  ...briefRows.flatMap((at, index) =>
    line(
      at,
      5,
      [
        index === 0 ? `=${briefCall}` : undefined,
        'computedText',
        index === 0 ? { note: 'HOLD_BRIEF: the outbound leg is solved so that the leg comes out as asked in this wind, turns included.' } : {},
      ],
      [undefined, briefFormats[index] === 'text' ? 'computedText' : 'computed', { format: briefFormats[index] ?? 'one' }],
      [undefined, 'unit'],
    ),
  ),
  ...headingAcross(points.first - 2, 'Compass points, for the side to hold on'),
  ...line(points.first - 1, 1, ...heads('letters', 'words')),
  ...codes.flatMap((code, index) => line(points.first + index, 1, [code, 'unit'], [asWords(code), 'unit'])),
];

const speedVerdict = briefed('speed verdict');
const windVerdict = briefed('wind verdict');
const fuelVerdict = `$D$${row.answer}`;
const isVerdict = (expression: string): string => `OR(${expression}="OK",${expression}="NO")`;

const outside = (at: number, label: string, least: number, most: number, unit: string, mayBeBlank = false): string => {
  const place = `B${at}`;
  const wrong = `IF(ISNUMBER(${place}),OR(${place}<${least},${place}>${most}),TRUE)`;
  return `IF(${mayBeBlank ? `AND(${place}<>"",${wrong})` : wrong},"${label}: ${least} to ${most} ${unit}","")`;
};
const joined = (...texts: readonly string[]): string => `TEXTJOIN(", ",TRUE,${texts.join(',')})`;
const turnsTyped = `SUBSTITUTE(LOWER(TRIM(B${row.turns}))," turns","")`;
/** Which entry keeps the hold from being worked out; the leg where no other does, since only its reader knows its words. */
const entriesOff = joined(
  outside(row.heading, 'heading at the fix', 0, 360, 'degrees'),
  `IF(ISNUMBER(B${row.inbound}),IF(OR(B${row.inbound}<0,B${row.inbound}>360),"inbound course: 0 to 360 degrees",""),"hold on the side: a compass point such as NE, or a radial such as R270")`,
  `IF(OR(${['left', 'right', 'l', 'r', 'standard'].map((word) => `${turnsTyped}="${word}"`).join(',')}),"","turns: left or right")`,
  outside(row.altitude, 'altitude', -2000, 60000, 'ft'),
  outside(row.speed, 'holding speed', 30, 400, 'kt'),
  outside(row.windFrom, 'wind from', 0, 360, 'degrees'),
  outside(row.wind, 'wind', 0, 250, 'kt'),
  outside(row.temperature, 'temperature', -90, 60, 'C', true),
  `IF(B${row.leg}="","leg: 6 NM or 1 min","")`,
);
const holdLacks = `"not computed: write "&IF(${entriesOff}<>"",${entriesOff},"leg: 6 NM or 1 min; or the wind is too strong, or the speed not for this altitude")`;
const timeOff = (at: number, label: string): string => `IF(B${at}="","${label}: a time such as 1505Z","")`;
const amountOff = (at: number, label: string): string => `IF(ISNUMBER(B${at}),IF(B${at}<0,"${label}: 0 or more",""),"${label}: a number")`;
const fuelOff = joined(
  timeOff(row.now, 'time now'),
  timeOff(row.clearance, 'EFC'),
  amountOff(row.fuel, 'usable fuel now'),
  amountOff(row.flow, 'fuel flow'),
  amountOff(row.after, 'fuel needed after'),
);
const fuelLacks = `IF(${fuelOff}<>"","write "&${fuelOff},"time now and EFC: four digits, EFC within 12 hours; fuel flow above 0")`;

/** NO where the speed, the wind or the fuel says so; UNKNOWN where any of them is not there. */
export const holdVerdict = `=IFERROR(IF(NOT(AND(${isVerdict(speedVerdict)},${isVerdict(windVerdict)})),"UNKNOWN",IF(OR(${speedVerdict}="NO",${windVerdict}="NO",${fuelVerdict}="NO"),"NO",IF(${fuelVerdict}="OK","OK","UNKNOWN"))),"UNKNOWN")`;
export const holdReason =
  `=IFERROR(${briefed('entry')}&": "&${briefed('first turn')}&" to "&TEXT(${briefed('first heading')},"000")&", then "&${briefed('second turn')}&" to "&TEXT(${briefed('second heading')},"000")` +
  `&IF(${speedVerdict}="NO","; too fast","")&IF(${windVerdict}="NO","; wind too strong for a racetrack","")&IF(${fuelVerdict}="NO","; fuel: leave by "&C${row.answer},IF(${fuelVerdict}="OK","; leave by "&C${row.answer},"; fuel not computed: "&${fuelLacks})),${holdLacks})`;

export const holdVerdictRanges: readonly string[] = [`D${row.answer}`, `F${brief.first}:F${brief.last}`];

const numbers = (at: number, minimum: number, maximum: number, help: string): Validation => ({
  kind: 'number',
  range: `B${at}`,
  minimum,
  maximum,
  help,
});

export const holdValidations: readonly Validation[] = [
  numbers(row.heading, 0, 360, 'Heading, 0 to 360 degrees magnetic.'),
  { kind: 'list', range: `B${row.turns}`, choices: ['right', 'left'], help: 'Direction of the turns.' },
  numbers(row.altitude, -2000, 60000, 'Altitude in feet.'),
  numbers(row.speed, 30, 400, 'Indicated airspeed in knots.'),
  numbers(row.windFrom, 0, 360, 'Where the wind blows from, degrees magnetic.'),
  numbers(row.wind, 0, 250, 'Wind in knots.'),
  numbers(row.temperature, -90, 60, 'Temperature in degrees Celsius.'),
  numbers(row.fuel, 0, 1000000, 'Usable fuel.'),
  numbers(row.flow, 0, 1000000, 'Fuel flow an hour.'),
  numbers(row.after, 0, 1000000, 'Fuel needed after the hold.'),
];
export const holdLastRow = points.last;
/** Keys begin with the name of the half, since both halves have an altitude. */
export const holdEntries = Object.fromEntries(Object.entries(entriesIn(holdCells, row)).map(([key, cell]) => [`hold.${key}`, cell]));
