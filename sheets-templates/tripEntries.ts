// The left half of the Trip sheet: what the pilot types, and the few numbers worked out beside the entries.
import { cell, computed, entry, inputRows, line, on, type Content, type Field } from './build';
import type { FormatName } from './look';
import { ofAircraft, tableInUse } from './manualTables';
import { balanceCells, cardCells, sheetNames } from './places';
import { formulaCall, type TemplateCell } from './template';
import { blockRows, entryRows as rows } from './tripRows';

interface FieldEntry {
  readonly row: number;
  readonly label: string;
  readonly values: readonly [departure: Content, destination: Content];
  readonly unit: string;
  readonly format: FormatName;
}

/** A value of the METAR below, until the pilot types over it. */
const reported = (column: string, rounded = true): readonly [Content, Content] => {
  const of = (row: number): string => `=IF(ISNUMBER(${column}${row}),${rounded ? `ROUND(${column}${row},0)` : `${column}${row}`},"")`;
  return [of(blockRows.reportValues.first), of(blockRows.reportValues.last)];
};

/** The wind of a report is true, the runway magnetic: magnetic = true less easterly variation. */
const reportedWind = (row: number, column: string): string => `=IF(AND(ISNUMBER(C${row}),ISNUMBER(${column}${rows.variation})),ROUND(MOD(C${row}-${column}${rows.variation}+360,360),0),"")`;

/** Entries for both fields; each must hold a number. */
export const fieldEntries: readonly FieldEntry[] = [
  { row: rows.latitude, label: 'latitude, south negative', values: [-30.25, -31.4], unit: 'degrees', format: 'two' },
  { row: rows.longitude, label: 'longitude, west negative', values: [-15.5, -13.9], unit: 'degrees', format: 'two' },
  { row: rows.elevation, label: 'elevation', values: [420, 1310], unit: 'ft', format: 'whole' },
  { row: rows.altimeter, label: 'altimeter setting', values: reported('H', false), unit: 'hPa or inHg', format: 'general' },
  { row: rows.temperature, label: 'temperature', values: reported('F', false), unit: 'degrees C', format: 'general' },
  { row: rows.windFrom, label: 'wind from', values: [reportedWind(blockRows.reportValues.first, 'B'), reportedWind(blockRows.reportValues.last, 'C')], unit: 'deg magnetic', format: 'degrees' },
  { row: rows.wind, label: 'wind', values: reported('D'), unit: 'kt', format: 'whole' },
  { row: rows.runway, label: 'runway direction', values: [210, 80], unit: 'deg magnetic', format: 'degrees' },
  { row: rows.available, label: 'distance available', values: [3400, 3600], unit: `=IFERROR(${ofAircraft('distance in')}&"","as manual")`, format: 'whole' },
  { row: rows.factor, label: 'safety factor', values: [1.5, 1.67], unit: 'times', format: 'two' },
];

interface SingleEntry {
  readonly row: number;
  readonly label: string;
  readonly value: number;
  /** What a light aircraft flies with, widely taken; a number beyond is looked at. */
  readonly usual: readonly [least: number, most: number];
  readonly unit: string;
  readonly format: FormatName;
  readonly note: string;
}

export const singleEntries: readonly SingleEntry[] = [
  { row: rows.gradient, label: 'climb gradient needed', value: 200, usual: [0, 3000], unit: 'ft/NM', format: 'whole', note: '200 ft/NM is the standard departure (AIM 5-2-9); more where the chart says so.' },
  { row: rows.climbSpeed, label: 'groundspeed in the climb', value: 85, usual: [20, 400], unit: 'kt', format: 'whole', note: 'With the wind: a tailwind needs a higher rate.' },
  { row: rows.cruiseSpeed, label: 'cruise groundspeed', value: 118, usual: [20, 600], unit: 'kt', format: 'whole', note: 'From true airspeed and the wind aloft.' },
  { row: rows.fuelFlow, label: 'fuel flow', value: 10.5, usual: [1, 1000], unit: `=IFERROR(${ofAircraft('fuel in')}&" an hour","an hour")`, format: 'one', note: 'In the fuel unit of the aircraft list, an hour.' },
  { row: rows.reserve, label: 'reserve wanted', value: 45, usual: [10, 600], unit: 'minutes', format: 'whole', note: '14 CFR 91.151: 30 minutes by day, 45 by night, for VFR; 91.167: 45 minutes for IFR.' },
];

/** Name, percent, for each, amount. A blank amount of headwind or tailwind is taken from the wind above. */
const takeoffValues: readonly (readonly Content[])[] = [
  ['headwind', -10, 12, undefined],
  ['tailwind', 10, 2, undefined],
  ['dry grass', 20, 1, 1],
  ['slope, up', 5, 1, 0.5],
];
const landingValues: readonly (readonly Content[])[] = [
  ['headwind', -10, 12, undefined],
  ['tailwind', 10, 2, undefined],
  ['dry grass', 15, 1, 1],
  ['slope, down', 5, 1, 0],
];

const correctionHeads: readonly Field[] = [['correction', 'columnHead'], ['percent', 'columnHead', { note: 'Of the distance, for each so much of the amount; 20 percent is typed 20.' }], ['for each', 'columnHead'], ['amount', 'columnHead', { note: 'A blank amount of headwind or tailwind is filled in from the wind above.' }]];
const wide = (title: string): Field[] => [[title, 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading']];

const corrections = (row: number, values: readonly (readonly Content[])[], title: string): TemplateCell[] => [
  ...line(row - 2, 1, ...wide(title)),
  ...line(row - 1, 1, ...correctionHeads),
  ...inputRows(row, 1, values, () => 'one'),
];

const noteOf = (content: Content): { readonly note?: string } =>
  typeof content === 'string' && content.startsWith('=') ? { note: 'Read from the METAR at the foot of the sheet. Type over it where there is none, or a later word.' } : {};

const tripCells: TemplateCell[] = [
  ...line(5, 1, ...wide('1  Trip')),
  ...line(rows.aircraft, 1, ['aircraft', 'label'], ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }]),
  ...entry(rows.pilot, 'pilot', 'A. Invented', ''),
  ...entry(rows.firstDay, 'first day', { date: '2026-11-28' }, 'date', { format: 'date' }),
  ...entry(rows.lastDay, 'last day', { date: '2026-11-29' }, 'date', { format: 'date' }),
  ...line(10, 1, ['2  Fields and weather', 'heading'], ['departure', 'columnHead'], ['destination', 'columnHead'], ['unit', 'columnHead']),
  ...line(rows.field, 1, ['field', 'label'], ['Marrowfield', 'inputText'], ['Tansy Ridge', 'inputText'], ['invented', 'unit']),
  ...fieldEntries.flatMap(({ row, label, values, unit, format }) => line(row, 1, [label, 'label'], [values[0], 'input', { format, ...noteOf(values[0]) }], [values[1], 'input', { format }], [unit, 'unit'])),
  ...line(rows.variation, 1, ['variation, east positive', 'label'],
    [`=${formulaCall('MAGNETIC_VARIATION', `B${rows.latitude}:C${rows.latitude}`, `B${rows.longitude}:C${rows.longitude}`, `B${rows.firstDay}`)}`, 'computed', { format: 'one', note: 'MAGNETIC_VARIATION: World Magnetic Model 2025, on the first day.' }],
    [undefined, 'computed', { format: 'one' }], ['degrees', 'unit']),
];

const climbCall = formulaCall(
  'CLIMB_BRIEF', tableInUse('climb'), '"rate of climb"', on(sheetNames.balance, balanceCells.takeoffWeight),
  `B${rows.elevation}`, `B${rows.altimeter}`, `B${rows.temperature}`, `B${rows.gradient}`, `B${rows.climbSpeed}`,
);

const climbCells: TemplateCell[] = Array.from({ length: blockRows.climbBrief.last - blockRows.climbBrief.first + 1 }, (_, index) => index).flatMap((index) =>
  line(blockRows.climbBrief.first + index, 1,
    [index === 0 ? `=${climbCall}` : undefined, 'computedText', index === 0 ? { note: 'CLIMB_BRIEF: the climb table at the field, today, against gradient x groundspeed / 60.' } : {}],
    [undefined, 'computed', { format: 'whole' }], [undefined, 'unit']),
);

const [flow, time, fuel] = [`B${rows.fuelFlow}`, `B${rows.timeEnRoute}`, `B${rows.tripFuel}`];
const [onBoard, taxi] = [on(sheetNames.balance, balanceCells.fuelOnBoard), on(sheetNames.balance, balanceCells.taxiFuel)];

const fuelCells: TemplateCell[] = [
  ...line(39, 1, ...wide('4  En route and fuel')),
  ...computed(rows.timeEnRoute, 'time en route', `=IFERROR(IF(AND(ISNUMBER(F${rows.leg}),B${rows.cruiseSpeed}>0),F${rows.leg}/B${rows.cruiseSpeed}*60,""),"")`, 'minutes', 'whole', 'Distance of the leg / cruise groundspeed, without climb and approach.'),
  ...computed(rows.tripFuel, 'trip fuel', `=IF(AND(ISNUMBER(${time}),ISNUMBER(${flow})),${flow}*${time}/60,"")`, `=IFERROR(${ofAircraft('fuel in')}&"","fuel unit")`, 'one', 'Time en route x fuel flow.'),
  ...computed(rows.fuelLeft, 'fuel left at landing', `=IFERROR(IF(AND(ISNUMBER(${onBoard}),ISNUMBER(${taxi}),ISNUMBER(${fuel})),(${onBoard}-${taxi}-${fuel})/${flow}*60,""),"")`, 'minutes', 'whole', 'On board less taxi less trip fuel, at the fuel flow.'),
];

const card = (place: string): string => on(sheetNames.card, place);
const fromCard = (row: number, label: string, formula: string, unit: string, format: FormatName): TemplateCell[] =>
  computed(row, label, formula, unit, format, 'From the Descent and hold card, where its entries stand.');

const ofHold = (item: string): string => `=IFERROR(INDEX(${card(cardCells.briefValues)},MATCH("${item}",${card(cardCells.briefItems)},0)),"")`;

/** What the card works out, so that the trip prints on one page. */
const descentAndHold: TemplateCell[] = [
  ...line(rows.startDown - 1, 1, ...wide('6  Descent and hold, from the card')),
  ...fromCard(rows.startDown, 'start down in', `=${card(cardCells.startDown)}`, 'NM', 'one'),
  ...fromCard(rows.startDecided, 'decided by', `=${card(cardCells.startDecided)}`, '', 'text'),
  ...fromCard(rows.holdInbound, 'hold, inbound heading', ofHold('inbound heading'), 'deg magnetic', 'degrees'),
  ...fromCard(rows.holdEntry, 'hold, entry', ofHold('entry'), '', 'text'),
  ...fromCard(rows.holdOutbound, 'hold, outbound heading', ofHold('outbound heading'), 'deg magnetic', 'degrees'),
  ...fromCard(rows.holdOutboundTime, 'hold, outbound time', ofHold('outbound time'), 'seconds', 'whole'),
  ...fromCard(rows.holdLimit, 'hold, speed limit', ofHold('speed limit'), 'kt indicated', 'whole'),
];

const reportHeads: readonly Field[] = ['station', 'day, time Z', 'from, true', 'wind, kt', 'gust', 'temperature', 'dew point', 'altimeter, hPa'].map((head) => [head, 'columnHead'] as const);

/** Invented reports. */
const reports: readonly string[] = ['METAR ZZXA 281350Z 22012KT 9999 FEW040 18/09 Q1009', 'METAR ZZXB 281350Z 09008KT CAVOK 21/12 Q1007'];

const reportCells: TemplateCell[] = [
  ...line(blockRows.reports.first - 2, 1, ['8  Weather reports, pasted', 'heading'], ...Array.from({ length: 8 }, (): Field => ['', 'heading'])),
  cell(blockRows.reports.first - 1, 1, 'One METAR a cell. The wind of a report is true; the entries above turn it to magnetic. Invented reports.', 'subtitle'),
  ...reports.flatMap((report, index) => [
    cell(blockRows.reports.first + index, 1, report, 'inputText', { note: index === 0 ? 'Departure.' : 'Destination.' }),
    ...line(blockRows.reportValues.first + index, 1,
      [index === 0 ? `=${formulaCall('METAR_READ', `A${blockRows.reports.first}:A${blockRows.reports.last}`)}` : undefined, 'computedText', index === 0 ? { note: 'METAR_READ.' } : {}],
      [undefined, 'computedText'], [undefined, 'computed', { format: 'degrees' }], [undefined, 'computed', { format: 'whole' }], [undefined, 'computed', { format: 'whole' }],
      [undefined, 'computed', { format: 'general' }], [undefined, 'computed', { format: 'general' }], [undefined, 'computed', { format: 'general' }]),
  ]),
  ...line(blockRows.reportValues.first - 1, 1, ...reportHeads),
];

export const usableFuel = ofAircraft('usable fuel');
export const crosswindShown = ofAircraft('crosswind shown, kt');

export const leftHalf: TemplateCell[] = [
  ...tripCells,
  ...corrections(blockRows.takeoffCorrections.first, takeoffValues, '3  Take-off and climb'),
  ...corrections(blockRows.landingCorrections.first, landingValues, '5  Landing'),
  ...singleEntries.flatMap(({ row, label, value, unit, format, note }) => entry(row, label, value, unit, { format, note })),
  ...climbCells,
  ...fuelCells,
  ...descentAndHold,
  ...reportCells,
];
