// Sheet function that lays out a whole hold: entry, headings, outbound leg in the wind, limits.
import { machFromCalibrated, trueAirspeedKnots } from '../../core/air/airspeed';
import { standardTemperatureCelsius } from '../../core/air/atmosphere';
import { CoreError } from '../../core/basics/errors';
import { entryHeadings, holdMeasures, tripleCorrectionHeading } from '../../core/hold/brief';
import { bankLimitDegrees, holdSpeedLimit, standardLegSeconds, type HoldRules, type TurnSide } from '../../core/hold/entry';
import { holdPattern, type HoldLeg, type HoldPattern } from '../../core/hold/pattern';
import { laying, result, type ResultCell } from '../registry/declaration';
import { entryInWords, holdRules, turnsChoice } from './entry';
import { optional } from '../registry/modifiers';
import { holdLeg, type GivenLeg } from './readLeg';
import { limitInWords, magneticDirection, number } from '../registry/readNumber';

const subject = 'Holding';
const magnetic = 'degrees magnetic';

interface HoldArguments {
  readonly heading_at_fix: number;
  readonly inbound_course: number;
  readonly turns: TurnSide;
  readonly altitude_ft: number;
  readonly indicated_kt: number;
  readonly leg: GivenLeg;
  readonly wind_from_deg: number;
  readonly wind_kt: number;
  readonly temperature_c: number | undefined;
  readonly rules: HoldRules;
}

const legOf = ({ leg, altitude_ft }: HoldArguments): HoldLeg =>
  leg.kind === 'standard' ? { kind: 'time', seconds: standardLegSeconds(altitude_ft) } : leg;

function trueAirspeedOf({ indicated_kt, altitude_ft, temperature_c }: HoldArguments): number {
  try {
    return trueAirspeedKnots(indicated_kt, altitude_ft, temperature_c ?? standardTemperatureCelsius(altitude_ft));
  } catch (thrown) {
    if (!(thrown instanceof CoreError) || thrown.code !== 'outside-range') throw thrown;
    // The airspeed is called by the name it has here.
    throw new CoreError('outside-range', { ...(thrown as CoreError<'outside-range'>).detail, quantity: 'indicatedKnots' });
  }
}

function patternOf(given: HoldArguments): HoldPattern {
  return holdPattern({
    inboundDegrees: given.inbound_course,
    turns: given.turns,
    trueAirspeedKnots: trueAirspeedOf(given),
    windFromDegrees: given.wind_from_deg,
    windKnots: given.wind_kt,
    bankLimitDegrees: bankLimitDegrees(given.rules),
    leg: legOf(given),
  });
}

/** Rows of the limit, and of the verdict on the speed with its reason. */
function speedRows({ altitude_ft, indicated_kt, rules }: HoldArguments): { readonly limit: ResultCell[]; readonly verdict: ResultCell[] } {
  const limit = holdSpeedLimit(altitude_ft, rules);
  if (limit.kind === 'indicated') {
    const over = indicated_kt - limit.knots;
    const reason =
      over > 0 ? `${limitInWords(Number(over.toPrecision(3)))} kt above the limit` : 'at or below the limit; a charted speed may be lower';
    return { limit: ['speed limit', limit.knots, 'kt indicated'], verdict: ['speed verdict', over > 0 ? 'NO' : 'OK', reason] };
  }
  const over = machFromCalibrated(indicated_kt, altitude_ft) > limit.mach;
  const reason = over ? `above Mach ${limit.mach}` : `at or below Mach ${limit.mach}; a charted speed may be lower`;
  return { limit: ['speed limit', limit.mach, 'Mach'], verdict: ['speed verdict', over ? 'NO' : 'OK', reason] };
}

const windReason = (isRacetrack: boolean): string =>
  isRacetrack
    ? 'the outbound leg leads outbound'
    : 'wind too strong for a racetrack: with this leg the aircraft would not fly outbound at all; ask for a longer leg';

function briefRows(given: HoldArguments): ResultCell[][] {
  const pattern = patternOf(given);
  const entry = entryHeadings(given.heading_at_fix, pattern);
  const measures = holdMeasures(pattern);
  const speed = speedRows(given);
  return [
    ['entry', entryInWords(entry.advice), ''],
    ['first heading', entry.firstHeadingDegrees, magnetic],
    ['second heading', entry.secondHeadingDegrees, magnetic],
    ['outbound heading', pattern.outboundHeadingDegrees, magnetic],
    ['outbound time', pattern.outboundSeconds, 'seconds'],
    ['inbound heading', pattern.inboundHeadingDegrees, magnetic],
    speed.limit,
    ['true airspeed', pattern.flight.trueAirspeedKnots, 'kt'],
    ['turn radius', pattern.turn.radiusNauticalMiles, 'NM'],
    ['bank', pattern.turn.bankDegrees, 'degrees'],
    ['lap minutes', pattern.lapSeconds / 60, 'minutes'],
    ['width', measures.widthNauticalMiles, 'NM'],
    ['first turn', entry.firstTurn, ''],
    ['second turn', entry.secondTurn, ''],
    ['outbound time from abeam', measures.outboundFromAbeamSeconds ?? '', 'seconds'],
    ['outbound end from fix', measures.outboundEndNauticalMiles, 'NM'],
    ['inbound time', pattern.inboundSeconds, 'seconds'],
    ['inbound length', pattern.inboundNauticalMiles, 'NM'],
    ['triple correction heading', tripleCorrectionHeading(pattern.flight), magnetic],
    speed.verdict,
    ['wind verdict', pattern.isRacetrack ? 'OK' : 'NO', windReason(pattern.isRacetrack)],
  ];
}

const still = [150, 360, 'right', 0, 120, '1 min', 0, 0] as const;
/** 120 kt at 3 degrees a second: radius 120 / 60 / pi = 0.6366 NM, bank atan(0.0027463 x 120) = 18.24 degrees. */
const stillRows = [
  ['entry', 'teardrop', ''],
  ['first heading', 150, magnetic],
  ['second heading', 360, magnetic],
  ['outbound heading', 180, magnetic],
  ['outbound time', 60, 'seconds'],
  ['inbound heading', 360, magnetic],
  ['speed limit', 200, 'kt indicated'],
  ['true airspeed', 120, 'kt'],
  ['turn radius', 0.6366, 'NM'],
  ['bank', 18.24, 'degrees'],
  ['lap minutes', 4, 'minutes'],
  ['width', 1.2732, 'NM'],
  ['first turn', 'right', ''],
  ['second turn', 'right', ''],
  ['outbound time from abeam', 60, 'seconds'],
  ['outbound end from fix', 2.3709, 'NM'],
  ['inbound time', 60, 'seconds'],
  ['inbound length', 2, 'NM'],
  ['triple correction heading', 180, magnetic],
  ['speed verdict', 'OK', 'at or below the limit; a charted speed may be lower'],
  ['wind verdict', 'OK', 'the outbound leg leads outbound'],
];

export const HOLD_BRIEF = laying({
  name: 'HOLD_BRIEF',
  subject,
  summary: 'A whole hold in one call: the entry with its headings, the outbound heading and time for the wind, speed, bank and width.',
  parameters: {
    heading_at_fix: magneticDirection('Heading on which the fix is reached.'),
    inbound_course: magneticDirection('Inbound course of the hold, toward the fix.'),
    turns: turnsChoice,
    altitude_ft: number({ unit: 'feet', minimum: -2000, maximum: 60000, help: 'Holding altitude, taken as pressure altitude.' }),
    indicated_kt: number({ unit: 'knots', minimum: 30, maximum: 400, help: 'Indicated airspeed, taken as calibrated.' }),
    leg: holdLeg(
      'The leg as it is given. "1 min" or "90 s": the time of the inbound leg. "6 NM" or "6-mile legs": the outbound leg ends 6 NM from the fix by DME or along-track distance (AIM 5-3-8). "6 NM inbound": the inbound leg is 6 NM long. "standard": 1 minute inbound up to 14,000 ft, 1.5 minutes above.',
    ),
    wind_from_deg: magneticDirection('Where the wind blows from, magnetic like the course; any direction for a calm.'),
    wind_kt: number({ unit: 'knots', minimum: 0, maximum: 250, help: 'Wind speed; below the true airspeed.' }),
    temperature_c: optional(
      number({ unit: 'degrees Celsius', minimum: -90, maximum: 60, help: 'Outside air temperature.' }),
      undefined,
      'the standard temperature at the altitude',
    ),
    rules: optional(holdRules, 'FAA' as const, 'FAA'),
  },
  results: { item: result('', 'What the row is.'), value: result('', 'Its value.'), unit: result('', 'Its unit; beside a verdict, the reason.') },
  sources: ['aim', 'icao-8168', 'usn-p821', 'common-practice'],
  notes:
    'The outbound heading and time make the leg come out as asked, the drift in both turns included. A leg in NM is the outbound one, as a controller or a chart gives it (AIM 5-3-8): it ends where the fix is so far away, straight from the fix, ' +
    'as a distance readout to the fix shows it; a DME station that is not at the fix shows it a little later (by about the square of the width over twice the leg). With "inbound" behind it, it is the length of the inbound leg. ' +
    'Outbound time runs from the end of the turn; the time from abeam the fix is a row of its own. Steady wind and turns begun at once are assumed; 3 degrees a second, or a bank of 30 degrees (ICAO 25) where that is less. ' +
    'First heading: for a direct entry the outbound heading, else corrected so that the track is the outbound course (parallel) or 30 degrees from it on the holding side (teardrop). ' +
    'Second heading: the inbound heading; after a parallel entry 45 degrees to the inbound course from the holding side, uncorrected (common practice, no source). Width is the greatest distance from the inbound course. ' +
    'Triple correction heading is the rule of thumb, for comparison. Where the wind verdict is NO the numbers still lead back to the fix, but not by a racetrack.',
  examples: [
    {
      arguments: still,
      gives: stillRows,
      tolerance: 0.005,
      source: 'Still air at the standard sea level, worked by hand: a racetrack of two half circles and two one-minute legs',
    },
  ],
  compute: briefRows,
});
