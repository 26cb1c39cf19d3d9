// Rules of the United Kingdom: Part-FCL and Part-MED as they stand there. Data only; rule.ts beside it says what each part means.
// Not judged: the experience that revalidates a rating of a national licence (Air Navigation Order 2016, schedule 8, amended on 1 October 2025)
// and the light aircraft licence, whose validity was to change until October 2026: no text in force was found of either.
import { airworthinessReview, commonTasks, medicalRules, passengersRules, ratingRules, revalidationRule } from './parts/partFcl';
import type { Authority, MedicalRule } from './rule';

/** Who has this written down flies by a national licence, and needs no class rating of Part-FCL. */
const nationalLicence = ['NPPL'];

/** @source uk-medical-declaration: to the 70th birthday, then for three years each; the privileges of a light aircraft licence at most. */
const declaration: NonNullable<MedicalRule['instead']>[number] = {
  name: 'private, by declaration',
  freesFrom: 'private',
  paragraph: 'UK pilot medical declaration',
  source: 'uk-medical-declaration',
  reading:
    'once to the 70th birthday, then for 3 years each; in the United Kingdom, to 2,000 kg and 3 passengers; the conditions of the declaration and of the licence are not judged (the page of the authority, from quotations)',
  papers: [{ paper: 'medical declaration valid to' }],
  limited: true,
};

export const uk: Authority = {
  name: 'UK',
  pilot: [
    ...passengersRules('uk-part-fcl'),
    ...ratingRules('uk-part-fcl', { notWith: nationalLicence }),
    {
      kind: 'paper',
      item: 'NPPL class rating',
      neededFor: 'every flight',
      paragraph: 'ANO 2016, schedule 8, part 3',
      source: 'uk-ano-2016',
      papers: ['NPPL class rating valid to'],
      onlyWith: nationalLicence,
      warnDays: 60,
      reading:
        'the date on the licence, 24 months on; the hours that revalidate it are not judged, since the text as amended on 1 October 2025 was not found; nor is whether the rating is that of the aircraft',
    },
    revalidationRule('uk-part-fcl', {
      reading:
        'the 24 months of validity, and 6 h in the last 12, each from the day after the same date (stricter reading); law since 1 October 2025, as the authority gives it',
      monthsBefore: 24,
      tasks: [...commonTasks, { name: 'hours in the last 12 months', counts: { of: 'hours' }, needed: 6, monthsBefore: 12 }],
      inForce: { from: '2025-10-01' },
      notWith: nationalLicence,
    }),
    revalidationRule('uk-part-fcl', {
      reading: '12 months from the day after the same date (stricter reading); the rule before 1 October 2025',
      monthsBefore: 12,
      tasks: commonTasks,
      inForce: { until: '2025-09-30' },
      notWith: nationalLicence,
    }),
    ...medicalRules('uk-part-med', [declaration]),
  ],
  aircraft: airworthinessReview('uk-part-ml'),
};
