// The sheet function that looks over everything of one aircraft that its owner typed from its manual.
import { aircraftEntriesStanding, usualFullTanksHours, type AircraftEntries, type AircraftFinding } from '../../core/manual/aircraftEntries';
import { CoreError } from '../../core/basics/errors';
import { openTable, type AircraftTable } from '../../core/manual/openTable';
import { ArgumentError } from '../registry/argumentError';
import type { CellValue } from '../registry/cellValues';
import { laying, result, type Parameter, type ResultCell } from '../registry/declaration';
import { limitInWords } from '../registry/readNumber';
import { namedText } from '../registry/readText';
import { wordCore } from '../registry/wordCoreError';
import { typedTable } from './readTypedTable';
import { isHeadsOnly } from './table';
import { aircraftRows } from './readAircraftList';
import { mustCover, sheetRows, tableAnswer, type SheetRows } from './tableCheck';

const names: Readonly<Record<keyof AircraftEntries, string>> = {
  weightUnit: 'weight unit (lb or kg)',
  fuelUnit: 'fuel unit (US gal, L, lb or kg)',
  fuelWeightEach: 'weight of one unit of fuel',
  usableFuel: 'usable fuel',
  maximumZeroFuelWeight: 'maximum zero-fuel weight',
  maximumTakeoffWeight: 'maximum take-off weight',
  maximumLandingWeight: 'maximum landing weight',
  crosswindKnots: 'demonstrated crosswind',
  cruiseKnots: 'cruise true airspeed',
  fuelFlowPerHour: 'cruise fuel flow',
  taxiFuel: 'taxi fuel',
};

const short = (value: number): string => limitInWords(Number(value.toPrecision(4)));

function inSentence(finding: AircraftFinding, unit: string, fuelUnit: string): string {
  switch (finding.kind) {
    case 'missing':
      return `${names[finding.what]} is missing or cannot be read`;
    case 'fuel-weight':
      return `${short(finding.each)} ${finding.weightUnit} is no weight of 1 ${finding.fuelUnit} of fuel: avgas is 6.0 lb a US gallon, 0.72 kg a litre; jet fuel 6.7 lb, 0.80 kg`;
    case 'above-takeoff':
      return `${names[finding.what]} ${short(finding.weight)} ${unit} is above the maximum take-off weight ${short(finding.takeoff)} ${unit}`;
    case 'takeoff-weight':
      return `maximum take-off weight of ${short(finding.weight)} ${finding.unit}: digits or unit?`;
    case 'fuel-share':
      return `full tanks weigh ${short(finding.fuelWeight)} ${unit}, more than half of the maximum take-off weight ${short(finding.takeoff)} ${unit}`;
    case 'endurance':
      return `at ${short(finding.flow)} ${fuelUnit} an hour ${short(finding.usable)} ${fuelUnit} would last ${short(finding.hours)} h, usually ${usualFullTanksHours[0]} to ${usualFullTanksHours[1]} h`;
    case 'unusual': {
      const knots = finding.what === 'taxiFuel' ? fuelUnit : 'kt';
      return `${names[finding.what]} of ${short(finding.value)} ${knots}, usually ${short(finding.usual[0])} to ${short(finding.usual[1])} ${knots}`;
    }
  }
}

type TableOrReason = AircraftTable | string;

/** A table that cannot be read spoils its own row of the answer only. */
function tableOrReason(help: string): Parameter<TableOrReason> & { readonly shape: 'table' } {
  const base = typedTable(help);
  const read = (raw: CellValue, dates: Parameters<typeof base.read>[1]): TableOrReason => {
    try {
      return openTable(base.read(raw, dates));
    } catch (thrown) {
      if (thrown instanceof ArgumentError) return `it must be ${thrown.mustBe}; got ${thrown.got}`;
      throw thrown;
    }
  };
  return { ...base, optional: undefined, read };
}

/** Headings alone: the aircraft has no such table, and need not have one. */
const none = Symbol('none');

function cruiseOrNone(help: string): Parameter<TableOrReason | typeof none | undefined> & { readonly shape: 'table' } {
  const base = tableOrReason(help);
  const read = (raw: CellValue, dates: Parameters<typeof base.read>[1]): TableOrReason | typeof none =>
    isHeadsOnly(raw) ? none : base.read(raw, dates);
  return { ...base, optional: { value: undefined, words: 'none is looked over' }, read };
}

function cruiseRows(table: TableOrReason | typeof none | undefined, rows: SheetRows): ResultCell[][] {
  if (table === undefined) return [];
  return [
    table === none ? ['cruise table', 'OK', 'none: one speed and one flow for every leg'] : tableRow('cruise table', table, 'cruise_rows', rows),
  ];
}

function tableRow(name: string, table: TableOrReason, argument: string, rows: SheetRows): ResultCell[] {
  if (typeof table === 'string') return [name, 'UNKNOWN', table];
  try {
    const { verdict, reasons } = tableAnswer(table.typed, 'by-heading', mustCover(argument, table.typed, rows));
    return [name, verdict, reasons];
  } catch (thrown) {
    if (thrown instanceof CoreError) return [name, 'UNKNOWN', wordCore(thrown)];
    throw thrown;
  }
}

export const AIRCRAFT_ENTRIES = laying({
  name: 'AIRCRAFT_ENTRIES',
  subject: 'Aircraft tables',
  summary: 'Everything typed of one aircraft looked over: its row of the aircraft list and its tables; what is missing or looks like a typing error.',
  parameters: {
    list: aircraftRows(
      'The aircraft list under one header row: aircraft, weight in, fuel in, fuel weight each, usable fuel, maximum zero-fuel, take-off and landing weight, demonstrated crosswind, cruise true airspeed, cruise fuel flow, taxi fuel.',
    ),
    aircraft: namedText({ help: 'Which aircraft of the list.', mustBe: 'the name of an aircraft in the list' }),
    takeoff: tableOrReason('Its take-off table with the header row: weight, pressure altitude, temperature, then distances.'),
    landing: tableOrReason('Its landing table, likewise.'),
    climb: tableOrReason('Its climb table, likewise.'),
    takeoff_rows: sheetRows('The rows of the sheet that the take-off table stands in, its headings included.'),
    landing_rows: sheetRows('Those of the landing table.'),
    climb_rows: sheetRows('Those of the climb table.'),
    cruise: cruiseOrNone('Its cruise table: power, pressure altitude, temperature, then true airspeed, fuel flow; headings alone where it has none.'),
    cruise_rows: sheetRows('Those of the cruise table.'),
  },
  results: {
    item: result('', 'aircraft list, take-off table, landing table, climb table; cruise table where one is given.'),
    verdict: result('', 'OK; CHECK where something looks wrong; UNKNOWN where something is missing; NO where a table cannot be read.'),
    reason: result('', 'What is missing or looks wrong.'),
  },
  sources: ['weight-balance-handbook', 'common-practice'],
  notes:
    'The tables as in AFM_CHECK. In the list: fuel of 0.67 to 0.86 kg a litre, a take-off weight of 200 to 6,000 kg, full tanks of half of it at most and lasting 1.5 to 14 h, no other maximum above that of take-off (common practice, no source). It cannot see a slip that stays within these.',
  examples: [
    {
      arguments: [
        [
          ['aircraft', 'weight in', 'fuel in', 'fuel weight, each', 'usable fuel', 'maximum take-off weight', 'maximum landing weight'],
          ['North', 'lb', 'US gal', 0.72, 40, 2300, 2300],
        ],
        'North',
        [
          ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
          [2300, 0, 15, 1500],
        ],
        [
          ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
          [2300, 0, 15, 1200],
        ],
        [
          ['weight', 'pressure altitude', 'temperature', 'rate of climb'],
          [2300, 0, 15, ''],
        ],
      ],
      gives: [
        [
          'aircraft list',
          'CHECK',
          '0.72 lb is no weight of 1 US gal of fuel: avgas is 6.0 lb a US gallon, 0.72 kg a litre; jet fuel 6.7 lb, 0.80 kg',
        ],
        ['take-off table', 'OK', 'grid whole: 1 weight x 1 pressure altitude x 1 temperature'],
        ['landing table', 'OK', 'grid whole: 1 weight x 1 pressure altitude x 1 temperature'],
        ['climb table', 'CHECK', '"rate of climb" is blank at weight 2,300, pressure altitude 0, temperature 15 (row 2)'],
      ],
      source: 'FAA-H-8083-1B, standard weights: avgas 6.0 lb a US gallon; invented aircraft',
      formula: '=AIRCRAFT_ENTRIES(A1:G2, "North", I1:L9, N1:Q9, S1:V9)',
    },
  ],
  compute: ({ list, aircraft, takeoff, landing, climb, takeoff_rows, landing_rows, climb_rows, cruise, cruise_rows }) => {
    const row = list.find((one) => one.aircraft.key === aircraft.key);
    const { verdict, findings } = row === undefined ? { verdict: 'UNKNOWN' as const, findings: [] } : aircraftEntriesStanding(row.entries);
    const [unit, fuelUnit] = [row?.entries.weightUnit ?? '', row?.entries.fuelUnit ?? ''];
    const said =
      row === undefined ? `"${aircraft.name}" is not in the aircraft list` : findings.map((one) => inSentence(one, unit, fuelUnit)).join('; ');
    return [
      ['aircraft list', verdict, said === '' ? 'complete, and nothing looks wrong' : said],
      tableRow('take-off table', takeoff, 'takeoff_rows', takeoff_rows),
      tableRow('landing table', landing, 'landing_rows', landing_rows),
      tableRow('climb table', climb, 'climb_rows', climb_rows),
      ...cruiseRows(cruise, cruise_rows),
    ];
  },
});
