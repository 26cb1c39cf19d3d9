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

/** Entries for both fields; each must hold a number. */
export const fieldEntries: readonly FieldEntry[] = [
  { row: rows.latitude, label: 'latitude, south negative', values: [-30.25, -31.4], unit: 'degrees', format: 'two' },
  { row: rows.longitude, label: 'longitude, west negative', values: [-15.5, -13.9], unit: 'degrees', format: 'two' },
  { row: rows.elevation, label: 'elevation', values: [420, 1310], unit: 'ft', format: 'whole' },
  { row: rows.altimeter, label: 'altimeter setting', values: [1009, 1007], unit: 'hPa or inHg', format: 'general' },
  { row: rows.temperature, label: 'temperature', values: [18, 21], unit: 'degrees C', format: 'general' },
  { row: rows.windFrom, label: 'wind from', values: [240, 110], unit: 'deg, as runway', format: 'degrees' },
  { row: rows.wind, label: 'wind', values: [12, 8], unit: 'kt', format: 'whole' },
  { row: rows.runway, label: 'runway direction', values: [210, 80], unit: 'deg, as wind', format: 'degrees' },
  { row: rows.available, label: 'distance available', values: [3400, 3600], unit: 'as manual', format: 'whole' },
  { row: rows.factor, label: 'safety factor', values: [1.5, 1.67], unit: 'times', format: 'two' },
];

interface SingleEntry {
  readonly row: number;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly format: FormatName;
  readonly note: string;
}

export const singleEntries: readonly SingleEntry[] = [
  { row: rows.gradient, label: 'climb gradient needed', value: 200, unit: 'ft/NM', format: 'whole', note: '200 ft/NM is the standard departure (AIM 5-2-9); more where the chart says so.' },
  { row: rows.climbSpeed, label: 'groundspeed in the climb', value: 85, unit: 'kt', format: 'whole', note: 'With the wind: a tailwind needs a higher rate.' },
  { row: rows.cruiseSpeed, label: 'cruise groundspeed', value: 118, unit: 'kt', format: 'whole', note: 'From true airspeed and the wind aloft.' },
  { row: rows.fuelFlow, label: 'fuel flow', value: 10.5, unit: 'an hour', format: 'one', note: 'In the fuel unit of the aircraft list, an hour.' },
  { row: rows.reserve, label: 'reserve wanted', value: 45, unit: 'minutes', format: 'whole', note: '14 CFR 91.151: 30 minutes by day, 45 by night, for VFR; 91.167: 45 minutes for IFR.' },
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

const correctionHeads: readonly Field[] = ['correction', 'percent', 'for each', 'amount'].map((head) => [head, 'columnHead'] as const);
const wide = (title: string): Field[] => [[title, 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading']];

const corrections = (row: number, values: readonly (readonly Content[])[], title: string): TemplateCell[] => [
  ...line(row - 2, 1, ...wide(title)),
  ...line(row - 1, 1, ...correctionHeads),
  ...inputRows(row, 1, values, () => 'one'),
];

const tripCells: TemplateCell[] = [
  ...line(5, 1, ...wide('1  Trip')),
  ...line(rows.aircraft, 1, ['aircraft', 'label'], ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }]),
  ...entry(rows.pilot, 'pilot', 'A. Invented', ''),
  ...entry(rows.firstDay, 'first day', { date: '2026-11-28' }, 'date', { format: 'date' }),
  ...entry(rows.lastDay, 'last day', { date: '2026-11-29' }, 'date', { format: 'date' }),
  ...line(10, 1, ['2  Fields and weather', 'heading'], ['departure', 'columnHead'], ['destination', 'columnHead'], ['unit', 'columnHead']),
  ...line(rows.field, 1, ['field', 'label'], ['Marrowfield', 'inputText'], ['Tansy Ridge', 'inputText'], ['invented', 'unit']),
  ...fieldEntries.flatMap(({ row, label, values, unit, format }) => line(row, 1, [label, 'label'], [values[0], 'input', { format }], [values[1], 'input', { format }], [unit, 'unit'])),
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
  ...computed(rows.tripFuel, 'trip fuel', `=IF(AND(ISNUMBER(${time}),ISNUMBER(${flow})),${flow}*${time}/60,"")`, 'fuel unit', 'one', 'Time en route x fuel flow.'),
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

export const usableFuel = ofAircraft('usable fuel');
export const crosswindShown = ofAircraft('crosswind shown, kt');

export const leftHalf: TemplateCell[] = [
  ...tripCells,
  ...corrections(blockRows.takeoffCorrections.first, takeoffValues, '3  Take-off and climb'),
  cell(blockRows.takeoffCorrections.last + 1, 1, 'Percent for each so much; a blank wind is filled in.', 'subtitle'),
  ...corrections(blockRows.landingCorrections.first, landingValues, '5  Landing'),
  ...singleEntries.flatMap(({ row, label, value, unit, format, note }) => entry(row, label, value, unit, { format, note })),
  ...climbCells,
  ...fuelCells,
  ...descentAndHold,
];
