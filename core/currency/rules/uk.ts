// Rules of the United Kingdom: Part-FCL and Part-MED as they stand there. Data only; rule.ts beside it says what each part means.
// National licences (NPPL, microlights) and the medical declaration are not judged: no text in force was found.
import { airworthinessReview, commonTasks, medicalRules, passengersRules, ratingRules, revalidationRule } from './parts/partFcl';
import type { Authority } from './rule';

export const uk: Authority = {
  name: 'UK',
  pilot: [
    ...passengersRules('uk-part-fcl'),
    ...ratingRules('uk-part-fcl', {}),
    revalidationRule('uk-part-fcl', {
      reading:
        'the 24 months of validity, and 6 h in the last 12, each from the day after the same date (stricter reading); law since 1 October 2025, as the authority gives it',
      monthsBefore: 24,
      tasks: [...commonTasks, { name: 'hours in the last 12 months', counts: { of: 'hours' }, needed: 6, monthsBefore: 12 }],
      inForce: { from: '2025-10-01' },
    }),
    revalidationRule('uk-part-fcl', {
      reading: '12 months from the day after the same date (stricter reading); the rule before 1 October 2025',
      monthsBefore: 12,
      tasks: commonTasks,
      inForce: { until: '2025-09-30' },
    }),
    ...medicalRules('uk-part-med'),
  ],
  aircraft: airworthinessReview('uk-part-ml'),
};
