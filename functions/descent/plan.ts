// The sheet function that plans a descent by the aircraft's own schedule through the winds of the day.
import { descentPlan, type DescentBand, type DescentPlan } from '../../core/descent/plan';
import type { ScheduleRow } from '../../core/descent/schedule';
import type { WindLevel } from '../../core/air/windsAloft';
import { ArgumentError } from '../registry/argumentError';
import { inWords, type CellValue } from '../registry/cellValues';
import { laying, result, type Parameter, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { number, numberFromCell, trueDirection } from '../registry/readNumber';
import { limitedRows } from '../registry/readRows';
import { altitude, beforeFix } from './parameters';

const level = { name: 'altitude', cell: altitude('') };

const slowestKnots = 20;
const fastestKnots = 600;
/** 1 to 20 is neither a Mach number below 1 nor an airspeed that anything descends at. */
const speedCell = {
  read: (raw: CellValue): number => {
    const speed = numberFromCell(raw) ?? 0;
    if (speed > 0 && (speed < 1 || (speed >= slowestKnots && speed <= fastestKnots))) return speed;
    throw new ArgumentError(`a Mach number below 1, or ${slowestKnots} to ${fastestKnots} knots indicated`, inWords(raw));
  },
};

const plainSchedule = limitedRows({
  help: 'Three columns: altitude (feet), speed (knots indicated, or a Mach number below 1), rate of descent (feet per minute). A row holds from its altitude down to the next row, so the highest must be at from_ft or above. Two rows at one altitude, a Mach number and an indicated speed, are flown as the slower of both: the changeover.',
  columns: [
    level,
    { name: 'speed', cell: speedCell },
    { name: 'rate of descent', cell: number({ unit: 'feet per minute', minimum: 0, aboveMinimum: true, maximum: 10000, help: '' }) },
  ],
});
export const schedule: Parameter<readonly ScheduleRow[]> & { readonly shape: 'table' } = {
  ...plainSchedule,
  optional: undefined,
  read: (raw, dates) =>
    plainSchedule.read(raw, dates).map(([altitudeFeet = 0, speed = 0, rateFeetPerMinute = 0]) => ({
      altitudeFeet,
      speed: speed < 1 ? { kind: 'mach', mach: speed } : { kind: 'indicated', knots: speed },
      rateFeetPerMinute,
    })),
};

const plainWinds = limitedRows({
  help: 'Three columns: altitude (feet), where the wind blows from (degrees true), knots. The rows must reach from to_ft or below to from_ft or above; still air is 0 knots.',
  columns: [
    level,
    { name: 'direction', cell: trueDirection('') },
    { name: 'knots', cell: number({ unit: 'knots', minimum: 0, maximum: 300, help: '' }) },
  ],
});
const winds: Parameter<readonly WindLevel[]> & { readonly shape: 'table' } = {
  ...plainWinds,
  optional: undefined,
  read: (raw, dates) => plainWinds.read(raw, dates).map(([altitudeFeet = 0, fromDegrees = 0, knots = 0]) => ({ altitudeFeet, fromDegrees, knots })),
};

const cellsOf = (band: DescentBand): ResultCell[] => [
  band.fromFeet,
  band.toFeet,
  band.trueAirspeedKnots,
  band.headwindKnots,
  band.groundspeedKnots,
  band.rateFeetPerMinute,
  band.minutes,
  band.nauticalMiles,
];

/** The bands, then all together with the start of the descent as its distance. */
function rowsOf({ bands, whole, startNauticalMiles }: DescentPlan, levelFeet: number): ResultCell[][] {
  const total: ResultCell[] = whole === undefined ? [levelFeet, levelFeet, '', '', '', '', 0] : cellsOf(whole).slice(0, -1);
  return [...bands.map(cellsOf), [...total, startNauticalMiles]];
}

export const DESCENT_PLAN = laying({
  name: 'DESCENT_PLAN',
  subject: 'Descent',
  summary: 'A descent by a schedule of speeds and rates through winds that change with height, band by band, and how far before the fix it starts.',
  parameters: {
    from_ft: altitude('Altitude now, before the descent.'),
    to_ft: altitude('Altitude to be at; no higher than from_ft.'),
    schedule,
    winds,
    course_true: trueDirection('True course flown in the descent; winds aloft are forecast in degrees true.'),
    isa_deviation_c: optional(
      number({ unit: 'degrees Celsius', minimum: -50, maximum: 50, help: 'How much warmer than standard the air is, at every height.' }),
      0,
      'standard temperature',
    ),
    before_fix_nm: beforeFix,
    slow_down_nm: optional(
      number({
        unit: 'nautical miles',
        minimum: 0,
        maximum: 50,
        help: 'Holds 250 knots indicated below 10,000 ft (14 CFR 91.117): the distance flown level at 10,000 ft to slow down to it; 0 without a level part.',
      }),
      undefined,
      'the schedule is flown as it stands, with no speed limit',
    ),
    headings: headingsAbove,
  },
  results: {
    from_ft: result('feet', 'Top of the band.'),
    to_ft: result('feet', 'Bottom of the band.'),
    true_airspeed: result('knots', 'Mean true airspeed.'),
    headwind: result('knots', 'Mean headwind; negative is a tailwind.'),
    groundspeed: result('knots', 'Mean groundspeed along the course.'),
    rate: result('feet per minute', 'Rate of descent; 0 in a level band.'),
    minutes: result('minutes', 'Time in the band.'),
    nm: result('nautical miles', 'Distance over the ground; in the last row the distance before the fix at which to start down.'),
  },
  sources: ['icao-7488', 'nasa-rp-1046', 'phak', 'cfr-91-117', 'common-practice'],
  notes:
    'One row for each band of the schedule, highest first; the last row is the whole descent, with mean speeds, and its nm is the sum of the bands plus before_fix_nm: the distance before the fix at which to start down, negative beyond it. ' +
    'Altitudes are taken as pressure altitudes and indicated airspeed as calibrated. Wind is interpolated by height as a vector, never beyond its rows (common practice, no source). The slope of the path is left out of the groundspeed, as handbooks do: at 4 degrees it would be 0.2 % less. Slowing down elsewhere than at 10,000 ft takes extra miles.',
  examples: [
    {
      arguments: [
        10000,
        4000,
        [[12000, 0.2, 600]],
        [
          [0, 90, 30],
          [12000, 90, 30],
        ],
        90,
        0,
        8,
      ],
      gives: [
        [10000, 4000, 129.07, 30, 99.07, 600, 10, 16.512],
        [10000, 4000, 129.07, 30, 99.07, 600, 10, 24.512],
      ],
      tolerance: 0.001,
      source:
        'By hand: at a steady Mach number the true airspeed goes with the root of the temperature, whose mean over the height has a closed form: 129.07 kt; 10 minutes at 99.07 kt',
      formula: '=DESCENT_PLAN(10000, 4000, A1:C1, E1:G2, 90, 0, 8)',
    },
    {
      arguments: [
        5000,
        5000,
        [[9000, 120, 500]],
        [
          [0, 360, 0],
          [9000, 360, 0],
        ],
        90,
        0,
        8,
      ],
      gives: [[5000, 5000, '', '', '', '', 0, 8]],
      source: 'No height to lose: the answer is before_fix_nm itself',
    },
  ],
  compute: (given) =>
    rowsOf(
      descentPlan({
        fromFeet: given.from_ft,
        toFeet: given.to_ft,
        schedule: given.schedule,
        winds: given.winds,
        courseTrueDegrees: given.course_true,
        isaDeviationCelsius: given.isa_deviation_c,
        beforeFixNauticalMiles: given.before_fix_nm,
        slowDownNauticalMiles: given.slow_down_nm,
      }),
      given.to_ft,
    ),
});
