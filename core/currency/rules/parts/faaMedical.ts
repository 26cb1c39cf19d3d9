// A private pilot's medical by 14 CFR 61.23: by certificate, by BasicMed, by driving licence. Data only.
import type { PilotRule } from '../rule';

const basicMedCourse = { months: 24, to: 'month_end' } as const;
/** @source ac-68-1: 48 months, to the day; a legal article of March 2020 on 61.23(c)(3)(i)(D) says the same. */
const basicMedExamination = { months: 48, to: 'day' } as const;
/** @source cfr-61-113, paragraph (i), with the numbers of the amendment of 18 November 2024; 61.23(c)(3)(i). */
const basicMedLimits =
  'up to 7 occupants, 6 passengers, 12,500 lb, 18,000 ft MSL, 250 kt indicated, in the United States, not for hire; with a driving licence, a medical held after 14 July 2006, the checklist and course certificate in the logbook';

export const faaMedical: PilotRule = {
  kind: 'medical',
  item: 'medical',
  neededFor: 'every flight',
  paragraph: '14 CFR 61.23(d)',
  source: 'cfr-61-23',
  rules: 'FAA',
  warnDays: 30,
  reading: 'age on the day of the examination',
  privileges: [
    { privilege: 'atp', name: 'airline transport' },
    { privilege: 'commercial', name: 'commercial' },
    { privilege: 'private', name: 'private' },
  ],
  least: 'private',
  instead: [
    {
      name: 'private, by BasicMed',
      freesFrom: 'private',
      paragraph: '14 CFR 61.23(c)(3), 61.113(i)',
      source: 'cfr-61-113',
      reading: basicMedLimits,
      papers: [
        { paper: 'BasicMed course', lasts: basicMedCourse },
        { paper: 'BasicMed examination', lasts: basicMedExamination },
      ],
    },
    {
      name: 'private, by driving licence',
      freesFrom: 'private',
      paragraph: '14 CFR 61.23(c)(1)(i), 61.303',
      source: 'fr-2025-13972',
      reading:
        'within the privileges of a sport pilot only: one passenger, by day without a medical, clean stalling speed 59 kt at most; the last medical application must not have been refused (text of 22 October 2025, from quotations)',
      papers: [{ paper: 'driving licence valid to' }],
      limited: true,
    },
  ],
};

/** Its papers, each with its own last day. */
export const basicMedPapers: readonly PilotRule[] = [
  {
    kind: 'paper',
    item: 'BasicMed course',
    neededFor: 'no flight',
    paragraph: '14 CFR 61.23(c)(3), 68.3',
    source: 'ac-68-1',
    papers: ['BasicMed course'],
    lasts: basicMedCourse,
    onlyIfRecorded: true,
    warnDays: 30,
  },
  {
    kind: 'paper',
    item: 'BasicMed examination',
    neededFor: 'no flight',
    paragraph: '14 CFR 61.23(c)(3), 68.5',
    source: 'ac-68-1',
    papers: ['BasicMed examination'],
    lasts: basicMedExamination,
    onlyIfRecorded: true,
    warnDays: 30,
    reading: '48 months to the day (stricter reading)',
  },
];
