// The sheet function that lays out the climb section of a sheet.
import { climbBrief } from '../../core/runway/climbBrief';
import { CoreError } from '../../core/basics/errors';
import { unitNamed } from '../manual/columnWords';
import { aircraftTable, formsInWords, wantedHeader } from '../manual/table';
import { basisInWords, uncountedWarmthInWords } from './basisWords';
import { climbGradientNeeded, climbGroundspeed } from './climb';
import { laying, result } from '../registry/declaration';
import { limitInWords } from '../registry/readNumber';
import { wholeDown, wholeUp } from '../registry/sharedWords';
import { tableReason } from '../registry/wordCoreError';
import { briefParameters, weightUnitParameter } from './brief';

/** Whole feet a minute to the careful side; what is missing is never nothing. */
const wholeFeet = (margin: number): string => limitInWords(margin >= 0 ? wholeDown(margin) : Math.max(1, wholeUp(-margin)));

export const CLIMB_BRIEF = laying({
  name: 'CLIMB_BRIEF',
  subject: 'Climb',
  summary: "The climb out of a field today: the manual's rate against the one that the departure's gradient takes.",
  parameters: {
    table: aircraftTable("The aircraft's climb table with its header row, read as in TAKEOFF_BRIEF."),
    wanted: wantedHeader('Header of the column with the rate of climb, in feet per minute unless its heading says m/s.'),
    weight: briefParameters.weight,
    elevation_ft: briefParameters.elevation_ft,
    altimeter_setting: briefParameters.altimeter_setting,
    temperature_c: briefParameters.temperature_c,
    gradient_ft_per_nm: climbGradientNeeded,
    groundspeed_kt: climbGroundspeed,
    weight_unit: weightUnitParameter,
  },
  results: {
    item: result('', 'What the row is.'),
    value: result('', 'Its value; UNKNOWN where the table does not cover the case.'),
    unit: result('', 'Its unit; beside the verdict, the reason.'),
  },
  sources: ['terminal-procedures', 'aim', 'icao-7488'],
  notes:
    'Rows: pressure altitude, rate needed, rate in the manual, climb gradient that gives, margin, verdict. OK when the rate reaches the one needed. The rate is that at the field; it falls with height. Nothing is extrapolated. ' +
    formsInWords,
  examples: [
    {
      arguments: [
        [
          ['weight', 'altitude', 'temperature', 'rate'],
          [900, 0, 0, 800],
          [900, 0, 30, 700],
          [900, 4000, 0, 600],
          [900, 4000, 30, 500],
        ],
        'rate',
        900,
        0,
        1013.25,
        15,
        200,
        90,
      ],
      formula: '=CLIMB_BRIEF(A1:D5, "rate", 900, 0, 1013.25, 15, 200, 90)',
      gives: [
        ['pressure altitude', 0, 'ft'],
        ['rate needed', 300, 'ft/min'],
        ['rate in the manual', 750, 'ft/min'],
        ['climb gradient that gives', 500, 'ft/NM'],
        ['margin', 450, 'ft/min'],
        ['verdict', 'OK', '450 ft/min more than needed'],
      ],
      tolerance: 1e-6,
      source: 'Invented table, by hand: 200 x 90 / 60 = 300 (FAA climb table); 750 x 60 / 90 = 500',
    },
  ],
  compute: ({ elevation_ft, altimeter_setting, temperature_c, gradient_ft_per_nm, groundspeed_kt, table, wanted, weight, weight_unit }) => {
    const brief = climbBrief({
      table,
      wanted,
      weight,
      weightUnit: unitNamed(weight_unit),
      elevationFeet: elevation_ft,
      altimeterSettingHectopascals: altimeter_setting,
      temperatureCelsius: temperature_c,
      gradientFeetPerNauticalMile: gradient_ft_per_nm,
      groundspeedKnots: groundspeed_kt,
    });
    const { book, rateNeededFeetPerMinute: needed, uncountedWarmthCelsius: warmth, verdict } = brief;
    const known = !(book instanceof CoreError);
    const difference = known ? book.rateFeetPerMinute - needed : 0;
    const margin = verdict === 'OK' || verdict === 'CHECK' ? Math.max(0, difference) : difference;
    const reason = known
      ? `${wholeFeet(margin)} ft/min ${margin >= 0 ? 'more than needed' : 'short of what is needed'}${warmth === 0 ? '' : `, but ${uncountedWarmthInWords(warmth)}`}${basisInWords(book.basis)}`
      : tableReason(book, { name: 'climb table', weightUnit: weight_unit, lengthUnit: '' });
    return [
      ['pressure altitude', brief.pressureAltitudeFeet, 'ft'],
      ['rate needed', needed, 'ft/min'],
      ['rate in the manual', known ? book.rateFeetPerMinute : 'UNKNOWN', 'ft/min'],
      ['climb gradient that gives', known ? book.gradientFeetPerNauticalMile : 'UNKNOWN', 'ft/NM'],
      ['margin', known ? margin : 'UNKNOWN', 'ft/min'],
      ['verdict', verdict, reason],
    ];
  },
});
