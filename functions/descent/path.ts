// Sheet functions of a straight descent: where to start down, at an angle or at a rate, and the rate or angle that a distance takes.
import { descentRateNeeded, descentStartAtRate, descentStartNauticalMiles, pathAngle } from '../../core/descent/path';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { altitude, beforeFix } from './parameters';

const subject = 'Descent';

const from = altitude('Altitude now, before the descent.');
const to = altitude('Altitude to be at; no higher than from_ft, and both from the same altimeter setting.');
const groundspeed = number({
  unit: 'knots',
  minimum: 0,
  aboveMinimum: true,
  maximum: 1000,
  help: 'Groundspeed in the descent: true airspeed less the headwind.',
});
const start = result('nautical miles', 'Distance before the fix at which to start down; negative is beyond the fix.');

export const DESCENT_START = mapping({
  name: 'DESCENT_START',
  subject,
  summary: 'How far before a fix to start down, on a path of a given angle.',
  parameters: {
    from_ft: from,
    to_ft: to,
    angle_deg: optional(
      number({ unit: 'degrees', minimum: 0.5, maximum: 15, help: 'Angle of the path below the horizon.' }),
      3,
      'the angle is 3 degrees',
    ),
    before_fix_nm: beforeFix,
  },
  results: { start_nm: start },
  sources: ['terminal-procedures'],
  notes:
    'Geometry of a straight path over the ground; slowing down and levelling off take extra miles. At equal altitudes there is nothing to lose, and the answer is before_fix_nm itself.',
  examples: [
    { arguments: [318, 0], gives: 1, tolerance: 0.005, source: 'FAA Terminal Procedures, descent table: 3.0 degrees is 318 ft/NM' },
    { arguments: [15350, 7000, 3, 8], gives: 34.2, tolerance: 0.1, source: 'By hand: (15,350 - 7,000) / 318.4 ft/NM = 26.2 NM, and 8 NM more' },
  ],
  compute: ({ from_ft, to_ft, angle_deg, before_fix_nm }) => ({ start_nm: descentStartNauticalMiles(from_ft, to_ft, angle_deg, before_fix_nm) }),
});

const rate = number({
  unit: 'feet per minute',
  minimum: 0,
  aboveMinimum: true,
  maximum: 10000,
  help: 'Rate of descent, without a sign: 500 is five hundred feet a minute down.',
});

export const DESCENT_START_AT_RATE = mapping({
  name: 'DESCENT_START_AT_RATE',
  subject,
  summary: 'How far before a fix to start down at a given rate of descent, and how long the descent takes.',
  parameters: { from_ft: from, to_ft: to, rate_fpm: rate, groundspeed_kt: groundspeed, before_fix_nm: beforeFix },
  results: { start_nm: start, minutes: result('minutes', 'Time from the start of the descent to to_ft.') },
  sources: ['terminal-procedures'],
  notes:
    'Steady rate and groundspeed all the way down. At equal altitudes there is nothing to lose: no time, and the answer is before_fix_nm itself.',
  examples: [
    {
      arguments: [8000, 0, 1000, 180],
      gives: [[24, 8]],
      source: 'FAA-H-8083-6, chapter 3: 8,000 ft at 1,000 ft/min takes 8 minutes and starts 24 NM before the fix',
    },
    {
      arguments: [9000, 0, 500, 120, 8],
      gives: [[44, 18]],
      source: 'Training article: 9,000 ft at 500 ft/min and 120 kt is 18 minutes and 36 NM; here with the crossing 8 NM before the fix',
    },
  ],
  compute: ({ from_ft, to_ft, rate_fpm, groundspeed_kt, before_fix_nm }) => {
    const { startNauticalMiles, minutes } = descentStartAtRate(from_ft, to_ft, rate_fpm, groundspeed_kt, before_fix_nm);
    return { start_nm: startNauticalMiles, minutes };
  },
});

const distance = number({
  unit: 'nautical miles',
  minimum: 0,
  aboveMinimum: true,
  maximum: 1000,
  help: 'Distance from here to where to_ft must be reached.',
});

export const DESCENT_RATE_NEEDED = mapping({
  name: 'DESCENT_RATE_NEEDED',
  subject,
  summary: 'Rate of descent, and angle of the path, that bring the aircraft down within a distance.',
  parameters: {
    from_ft: from,
    to_ft: to,
    distance_nm: distance,
    groundspeed_kt: groundspeed,
  },
  results: {
    rate_fpm: result('feet per minute', 'Rate of descent, without a sign.'),
    angle_deg: result('degrees', 'Angle of the path below the horizon.'),
  },
  sources: ['terminal-procedures'],
  notes: 'Steady groundspeed, straight path. Whether the aircraft can and should descend that steeply is not judged here.',
  examples: [
    {
      arguments: [318, 0, 1, 120],
      gives: [[636, 3]],
      tolerance: 0.005,
      source: 'FAA Terminal Procedures, descent table: 3.0 degrees, 318 ft/NM, at 120 kt 636 ft/min',
    },
    {
      arguments: [9000, 0, 36, 120],
      gives: [[500, 2.356]],
      tolerance: 0.001,
      source: 'Training article: 9,000 ft in 36 NM at 120 kt is 500 ft/min; the angle by hand, atan(250 / 6076.1)',
    },
  ],
  compute: ({ from_ft, to_ft, distance_nm, groundspeed_kt }) => {
    const { rateFeetPerMinute, angleDegrees } = descentRateNeeded(from_ft, to_ft, distance_nm, groundspeed_kt);
    return { rate_fpm: rateFeetPerMinute, angle_deg: angleDegrees };
  },
});

export const DESCENT_ANGLE = mapping({
  name: 'DESCENT_ANGLE',
  subject,
  summary: 'Vertical path angle from one altitude to another over a distance, and the same as feet per nautical mile.',
  parameters: { from_ft: from, to_ft: to, distance_nm: distance },
  results: {
    angle_deg: result('degrees', 'Angle of the path below the horizon.'),
    gradient_ft_per_nm: result('feet per nautical mile', 'Height lost over each mile.'),
  },
  sources: ['terminal-procedures'],
  notes: 'Geometry of a straight path over level ground; wind does not come into it.',
  examples: [
    { arguments: [318, 0, 1], gives: [[3, 318]], tolerance: 0.005, source: 'FAA Terminal Procedures, descent table: 3.0 degrees is 318 ft/NM' },
    { arguments: [9000, 0, 36], gives: [[2.356, 250]], tolerance: 0.001, source: 'By hand: atan(250 / 6,076.1)' },
  ],
  compute: ({ from_ft, to_ft, distance_nm }) => {
    const { angleDegrees, feetPerNauticalMile } = pathAngle(from_ft, to_ft, distance_nm);
    return { angle_deg: angleDegrees, gradient_ft_per_nm: feetPerNauticalMile };
  },
});
