// Sheet functions of the climb: gradient to rate and back.
import { climbRateFeetPerMinute } from '../core/climb';
import { mapping, result } from './registry/declaration';
import { number } from './registry/readNumber';

const subject = 'Climb';

const groundspeed = number({ unit: 'knots', minimum: 0, aboveMinimum: true, maximum: 1000, help: 'Groundspeed in the climb: true airspeed less the headwind.' });

export const CLIMB_RATE_NEEDED = mapping({
  name: 'CLIMB_RATE_NEEDED',
  subject,
  summary: 'Rate of climb that a required climb gradient takes at a groundspeed.',
  parameters: {
    gradient_ft_per_nm: number({ unit: 'feet per nautical mile', minimum: 0, maximum: 3000, help: 'Required climb gradient, as a departure procedure prints it.' }),
    groundspeed_kt: groundspeed,
  },
  results: { rate_fpm: result('feet per minute', 'Rate of climb needed.') },
  sources: ['terminal-procedures', 'aim'],
  notes: 'Gradient times groundspeed over 60. The rate must be held at that groundspeed: a tailwind raises it. Where nothing is published, an IFR departure assumes 200 feet per nautical mile (AIM 5-2-9).',
  examples: [
    { arguments: [200, 90], gives: 300, source: 'FAA Terminal Procedures, rate of climb table: 200 ft/NM at 90 kt is 300 ft/min' },
    { arguments: [200.5, 100], gives: 334.2, tolerance: 0.05, source: 'ATPL question: 3.3 % (200.5 ft/NM) at 100 kt' },
  ],
  compute: ({ gradient_ft_per_nm, groundspeed_kt }) => ({ rate_fpm: climbRateFeetPerMinute(gradient_ft_per_nm, groundspeed_kt) }),
});
