// The left half of the Trip sheet: what the pilot types, and the few numbers worked out beside the entries.
import { cell, computed, entry, inputRows, line, on, type Content, type Field } from './build';
import type { FormatName } from './look';
import { ofAircraft, tableInUse } from './manualTables';
import { balanceCells, balanceRows, sheetNames } from './places';
import { formulaCall, type TemplateCell } from './template';

/** Rows of entries that must hold numbers, with the words for a missing one. */
export const fieldEntries: readonly { readonly row: number; readonly label: string; readonly values: readonly [Content, Content]; readonly unit: string; readonly format: FormatName }[] = [
  { row: 12, label: 'latitude, south negative', values: [-30.25, -31.4], unit: 'degrees', format: 'two' },
  { row: 13, label: 'longitude, west negative', values: [-15.5, -13.9], unit: 'degrees', format: 'two' },
  { row: 14, label: 'elevation', values: [420, 1310], unit: 'ft', format: 'whole' },
  { row: 15, label: 'altimeter setting', values: [1009, 1007], unit: 'hPa or inHg', format: 'two' },
  { row: 16, label: 'temperature', values: [18, 21], unit: 'degrees C', format: 'whole' },
  { row: 17, label: 'wind from', values: [240, 110], unit: 'deg, as runway', format: 'degrees' },
  { row: 18, label: 'wind', values: [12, 8], unit: 'kt', format: 'whole' },
  { row: 19, label: 'runway direction', values: [210, 80], unit: 'deg, as wind', format: 'degrees' },
  { row: 20, label: 'distance available', values: [3400, 3600], unit: 'as manual', format: 'whole' },
  { row: 21, label: 'safety factor', values: [1.5, 1.67], unit: 'times', format: 'two' },
];

export const singleEntries: readonly { readonly row: number; readonly label: string; readonly value: number; readonly unit: string; readonly format: FormatName; readonly note: string }[] = [
  { row: 30, label: 'climb gradient needed', value: 200, unit: 'ft/NM', format: 'whole', note: '200 ft/NM is the standard departure (AIM 5-2-9); more where the chart says so.' },
  { row: 31, label: 'groundspeed in the climb', value: 85, unit: 'kt', format: 'whole', note: 'With the wind: a tailwind needs a higher rate.' },
  { row: 36, label: 'cruise groundspeed', value: 118, unit: 'kt', format: 'whole', note: 'From true airspeed and the wind aloft.' },
  { row: 37, label: 'fuel flow', value: 10.5, unit: 'an hour', format: 'one', note: 'In the fuel unit of the aircraft list, an hour.' },
  { row: 38, label: 'reserve wanted', value: 45, unit: 'minutes', format: 'whole', note: '14 CFR 91.151: 30 minutes by day, 45 by night, for VFR; 91.167: 45 minutes for IFR.' },
  { row: 49, label: 'cruise altitude', value: 9000, unit: 'ft', format: 'whole', note: 'Where the descent begins.' },
  { row: 50, label: 'crossing altitude', value: 4000, unit: 'ft', format: 'whole', note: 'The altitude to reach.' },
  { row: 51, label: 'cross before the fix by', value: 8, unit: 'NM', format: 'one', note: '8 is eight miles before the fix, -8 eight miles after it, 0 over it.' },
  { row: 52, label: 'descent angle', value: 3, unit: 'degrees', format: 'one', note: '3 degrees is 318 ft a mile.' },
  { row: 53, label: 'descent groundspeed', value: 125, unit: 'kt', format: 'whole', note: 'With the wind.' },
  { row: 63, label: 'heading at the fix', value: 125, unit: 'deg magnetic', format: 'degrees', note: 'Heading on which the fix is reached.' },
  { row: 64, label: 'holding altitude', value: 5000, unit: 'ft', format: 'whole', note: 'Decides the speed limit.' },
  { row: 65, label: 'holding speed', value: 95, unit: 'kt indicated', format: 'whole', note: 'Indicated airspeed in the hold.' },
];

/** Correction rows: name, percent, for each, amount. A blank amount of headwind or tailwind is taken from the wind above. */
export const takeoffCorrections = { first: 25, last: 28 } as const;
export const landingCorrections = { first: 44, last: 47 } as const;

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

function corrections(row: number, values: readonly (readonly Content[])[], title: string): TemplateCell[] {
  return [cell(row - 2, 1, title, 'heading'), ...line(row - 1, 1, ...correctionHeads), ...inputRows(row, 1, values, () => 'one')];
}

const correctionNote = cell(29, 1, 'Percent for each so much of it; the amount of wind is filled in from the wind above.', 'subtitle');

const tripCells: TemplateCell[] = [
  cell(5, 1, '1  Trip', 'heading'),
  ...line(6, 1, ['aircraft', 'label'], ['=aircraft_in_use', 'computedText', { note: 'Chosen on the Start sheet.' }]),
  ...entry(7, 'pilot', 'A. Invented', ''),
  ...entry(8, 'first day', { date: '2026-11-28' }, 'date', { format: 'date' }),
  ...entry(9, 'last day', { date: '2026-11-29' }, 'date', { format: 'date' }),
  ...line(10, 1, ['2  Fields and weather', 'heading'], ['departure', 'columnHead'], ['destination', 'columnHead'], ['unit', 'columnHead']),
  ...line(11, 1, ['field', 'label'], ['Marrowfield', 'inputText'], ['Tansy Ridge', 'inputText'], ['invented', 'unit']),
  ...fieldEntries.flatMap(({ row, label, values, unit, format }) => line(row, 1, [label, 'label'], [values[0], 'input', { format }], [values[1], 'input', { format }], [unit, 'unit'])),
];

const climbRate = formulaCall('AFM_READ', tableInUse('climb'), '"rate of climb"', on(sheetNames.balance, `C${balanceRows.takeoff}`), 'INDEX(G24:G38,MATCH("pressure altitude",F24:F38,0))', 'B16');

const workedOut: TemplateCell[] = [
  ...computed(32, 'rate of climb needed', `=${formulaCall('CLIMB_RATE_NEEDED', 'B30', 'B31')}`, 'ft/min', 'whole', 'CLIMB_RATE_NEEDED: gradient x groundspeed / 60.'),
  ...computed(33, 'rate of climb, manual', `=${climbRate}`, 'ft/min', 'whole', 'AFM_READ: from the climb table at the field, today.'),
  cell(35, 1, '4  En route and fuel', 'heading'),
  ...computed(39, 'time en route', '=IFERROR(IF(B36>0,F21/B36*60,""),"")', 'minutes', 'whole', 'Distance of the leg / cruise groundspeed, without climb and approach.'),
  ...computed(40, 'trip fuel', '=IF(AND(ISNUMBER(B39),ISNUMBER(B37)),B37*B39/60,"")', 'fuel unit', 'one', 'Time en route x fuel flow.'),
  ...computed(41, 'fuel left at landing', `=IFERROR(IF(AND(COUNT(${on(sheetNames.balance, 'C22:C23')})=2,ISNUMBER(B40)),(${on(sheetNames.balance, balanceCells.fuelOnBoard)}-${on(sheetNames.balance, balanceCells.taxiFuel)}-B40)/B37*60,""),"")`, 'minutes', 'whole', 'On board less taxi less trip fuel, at the fuel flow.'),
  ...computed(54, 'start down before the fix', `=${formulaCall('DESCENT_START', 'B49', 'B50', 'B52', 'B51')}`, 'NM', 'one', 'DESCENT_START: the distance to lose the height at the angle, and the miles before the fix.'),
  ...computed(55, 'rate to fly', `=${formulaCall('DESCENT_RATE_NEEDED', 'B49', 'B50', 'B54-B51', 'B53')}`, 'ft/min', 'whole', 'DESCENT_RATE_NEEDED; the angle stands beside it.'),
  cell(55, 3, undefined, 'computed', { format: 'one' }),
  cell(55, 4, 'ft/min, degrees', 'unit'),
];

const holdCells: TemplateCell[] = [
  cell(60, 1, '6  Hold', 'heading'),
  ...entry(61, 'hold on the side', 'north-east', 'or radial'),
  ...entry(62, 'turns', 'right', ''),
];

export const fuelOnBoardUsable = ofAircraft('usable fuel');

export const leftHalf: TemplateCell[] = [
  ...tripCells,
  ...corrections(takeoffCorrections.first, takeoffValues, '3  Take-off and climb'),
  correctionNote,
  ...corrections(landingCorrections.first, landingValues, '5  Landing and descent'),
  ...singleEntries.flatMap(({ row, label, value, unit, format, note }) => entry(row, label, value, unit, { format, note })),
  ...workedOut,
  ...holdCells,
];
