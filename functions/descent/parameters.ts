// Arguments that the functions of a descent share.
import { lowestAltitudeFeet } from '../../core/air/atmosphere';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';

export const altitude = (help: string) => number({ unit: 'feet', minimum: lowestAltitudeFeet, maximum: 60000, help });

export const beforeFix = optional(
  number({
    unit: 'nautical miles',
    minimum: -500,
    maximum: 500,
    help: 'Where to be at to_ft: 8 is eight miles before the fix, -8 eight miles beyond it.',
  }),
  0,
  'the descent ends at the fix',
);
