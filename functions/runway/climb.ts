// Sheet functions of the climb: gradient to rate and back.
import { climbGradientFeetPerNauticalMile, climbRateFeetPerMinute, gradientPercent } from '../../core/runway/climb';
import { mapping, result } from '../registry/declaration';
import { number } from '../registry/readNumber';

const subject = 'Climb';

export const climbGroundspeed = number({
  unit: 'knots',
  minimum: 0,
  aboveMinimum: true,
  maximum: 1000,
  help: 'Groundspeed in the climb: true airspeed less the headwind.',
});

export const climbGradientNeeded = number({
  unit: 'feet per nautical mile',
  minimum: 0,
  maximum: 3000,
  help: 'Required climb gradient, as a departure procedure prints it.',
});

export const CLIMB_RATE_NEEDED = mapping({
  name: 'CLIMB_RATE_NEEDED',
  subject,
  summary: 'Rate of climb that a required climb gradient takes at a groundspeed.',
  parameters: {
    gradient_ft_per_nm: climbGradientNeeded,
    groundspeed_kt: climbGroundspeed,
  },
  results: { rate_fpm: result('feet per minute', 'Rate of climb needed.') },
  sources: ['terminal-procedures', 'aim'],
  notes:
    'Gradient times groundspeed over 60. The rate must be held at that groundspeed: a tailwind raises it. Where nothing is published, an IFR departure assumes 200 feet per nautical mile (AIM 5-2-9).',
  examples: [
    { arguments: [200, 90], gives: 300, source: 'FAA Terminal Procedures, rate of climb table: 200 ft/NM at 90 kt is 300 ft/min' },
    { arguments: [200.5, 100], gives: 334.2, tolerance: 0.05, source: 'ATPL question: 3.3 % (200.5 ft/NM) at 100 kt' },
  ],
  compute: ({ gradient_ft_per_nm, groundspeed_kt }) => ({ rate_fpm: climbRateFeetPerMinute(gradient_ft_per_nm, groundspeed_kt) }),
});

export const CLIMB_GRADIENT = mapping({
  name: 'CLIMB_GRADIENT',
  subject,
  summary: 'Climb gradient over the ground that a rate of climb gives at a groundspeed.',
  parameters: {
    rate_fpm: number({ unit: 'feet per minute', minimum: -10000, maximum: 10000, help: 'Rate of climb; negative where the aircraft sinks.' }),
    groundspeed_kt: climbGroundspeed,
  },
  results: {
    gradient_ft_per_nm: result('feet per nautical mile', 'Climb gradient over the ground.'),
    percent: result('percent', 'The same gradient as height over distance.'),
  },
  sources: ['terminal-procedures', 'aim'],
  notes: 'Over the ground, so a headwind steepens it: compare it with a gradient that a procedure prints, not with a still-air gradient of a manual.',
  examples: [
    {
      arguments: [300, 90],
      gives: [[200, 3.29]],
      tolerance: 0.005,
      source: 'FAA Terminal Procedures, rate of climb table: 300 ft/min at 90 kt is 200 ft/NM; in percent by hand, 200 / 6,076.1',
    },
    { arguments: [152, 60], gives: [[152, 2.5]], tolerance: 0.005, source: 'FAA AIM 5-2-9: the 40 to 1 obstacle slope, 2.5 %, is 152 ft/NM' },
  ],
  compute: ({ rate_fpm, groundspeed_kt }) => {
    const gradient = climbGradientFeetPerNauticalMile(rate_fpm, groundspeed_kt);
    return { gradient_ft_per_nm: gradient, percent: gradientPercent(gradient) };
  },
});
