// Rules of the European Union: Part-FCL and Part-MED of Regulation 1178/2011. Data only; rule.ts beside it says what each part means.
import { airworthinessReview, commonTasks, experienceTasks, medicalRules, passengersRules, ratingRules, revalidationRule } from './parts/partFcl';
import type { Authority } from './rule';

const lightLicence = ['LAPL'];

export const easa: Authority = {
  name: 'EASA',
  pilot: [
    ...passengersRules('part-fcl'),
    ...ratingRules('part-fcl', { notWith: lightLicence }),
    revalidationRule('part-fcl', {
      reading: '12 months from the day after the same date (stricter reading)',
      monthsBefore: 12,
      tasks: commonTasks,
      notWith: lightLicence,
    }),
    {
      kind: 'days',
      item: 'light aircraft licence',
      neededFor: 'every flight',
      paragraph: 'FCL.140.A(a)(1)',
      source: 'part-fcl',
      reading:
        '2 years from the day after the same date (stricter reading); hours in command, or with or under an instructor; aeroplanes and touring motor gliders together',
      within: { months: 24 },
      tasks: [
        experienceTasks.hours(12),
        experienceTasks.landings(12),
        experienceTasks.takeoffs(12),
        { name: 'hours with instructor', counts: { of: 'trainingHours' }, needed: 1 },
      ],
      same: 'category',
      typesCountForClass: true,
      devices: [],
      warnDays: 60,
      onlyWith: lightLicence,
      afterCheck: { paper: 'LAPL proficiency check', months: 24 },
    },
    ...medicalRules('part-med'),
  ],
  aircraft: airworthinessReview('part-ml'),
};
