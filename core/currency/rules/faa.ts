// Rules of the United States, Title 14 of the Code of Federal Regulations. Data only; rule.ts beside it says what each part means.
import { faaAircraft } from './parts/faaAircraft';
import type { Authority } from './rule';

const threeLandings = { counts: { of: 'landings' }, needed: 3 } as const;
const threeTakeoffs = { counts: { of: 'takeoffs' }, needed: 3 } as const;
const among90 = 'day of the flight among the 90 (stricter reading)';
const manipulator = 'as sole manipulator; training devices not counted';

/** @source 14 CFR 61.56(e): one or more phases of an FAA-sponsored pilot proficiency award program within the period. */
const awardPhases = [
  'pilot proficiency award program phase',
  'award program phase',
  'award programme phase',
  'proficiency award phase',
  'wings phase',
];

const basicMedCourse = { months: 24, to: 'month_end' } as const;
/** @source ac-68-1: 48 months, to the day; a legal article of March 2020 on 61.23(c)(3)(i)(D) says the same. */
const basicMedExamination = { months: 48, to: 'day' } as const;
/** @source cfr-61-113, paragraph (i), with the numbers of the amendment of 18 November 2024; 61.23(c)(3)(i). */
const basicMedLimits =
  'up to 7 occupants, 6 passengers, 12,500 lb, 18,000 ft MSL, 250 kt indicated, in the United States, not for hire; with a driving licence, a medical held after 14 July 2006, the checklist and course certificate in the logbook';

export const faa: Authority = {
  name: 'FAA',
  pilot: [
    {
      kind: 'days',
      item: 'passengers',
      neededFor: 'passengers',
      paragraph: '14 CFR 61.57(a)(1)',
      source: 'cfr-61-57',
      reading: `${among90}; ${manipulator}`,
      within: { days: 90 },
      tasks: [threeLandings, threeTakeoffs],
      same: 'class',
      typesCountForClass: true,
      devices: [],
      warnDays: 14,
    },
    {
      kind: 'days',
      item: 'passengers, tailwheel',
      neededFor: 'passengers',
      paragraph: '14 CFR 61.57(a)(1)(ii)',
      source: 'cfr-61-57',
      reading: `${among90}; to a full stop in a tailwheel`,
      within: { days: 90 },
      tasks: [{ counts: { of: 'landings', fullStop: true }, needed: 3 }, threeTakeoffs],
      same: 'class',
      typesCountForClass: true,
      tailwheel: true,
      devices: [],
      warnDays: 14,
    },
    {
      kind: 'days',
      item: 'passengers at night',
      neededFor: 'passengers at night',
      paragraph: '14 CFR 61.57(b)(1)',
      source: 'cfr-61-57',
      reading: `${among90}; to a full stop, 1 h after sunset to 1 h before sunrise`,
      within: { days: 90 },
      tasks: [
        { counts: { of: 'landings', night: true, fullStop: true, late: true }, needed: 3 },
        { counts: { of: 'takeoffs', night: true, late: true }, needed: 3 },
      ],
      same: 'class',
      typesCountForClass: true,
      devices: [],
      warnDays: 14,
    },
    {
      kind: 'months',
      item: 'instrument flight',
      neededFor: 'instrument flight',
      paragraph: '14 CFR 61.57(c)',
      source: 'cfr-61-57',
      reading: "CHECK where only this month's flights make it enough; actual or simulated conditions",
      months: 6,
      tasks: [
        { name: 'approaches', counts: { of: 'approaches' }, needed: 6 },
        { name: 'holding', counts: { of: 'holds' }, needed: 1 },
        { name: 'tracking', counts: { of: 'tracking' }, needed: 1 },
      ],
      same: 'category',
      typesCountForClass: true,
      devices: ['FFS', 'FTD', 'ATD'],
      warnDays: 30,
      notFor: {
        categories: ['glider', 'sailplane'],
        paragraph: '14 CFR 61.57(c)',
        source: 'cfr-61-57',
        reading: 'a glider has a paragraph of its own, by hours of instrument time, which the log does not hold',
      },
      check: {
        paper: 'instrument proficiency check',
        item: 'IFR, no check due',
        furtherMonths: 6,
        paragraph: '14 CFR 61.57(d)',
        source: 'cfr-61-57',
        reading: 'a check counts for the 6 months of (c), common practice',
      },
    },
    {
      kind: 'paper',
      item: 'flight review',
      neededFor: 'every flight',
      paragraph: '14 CFR 61.56(c), (d), (e)',
      source: 'cfr-61-56',
      papers: ['flight review', 'practical test', 'pilot proficiency check'],
      also: [...awardPhases, 'flight instructor practical test'],
      lasts: { months: 24, to: 'month_end' },
      warnDays: 30,
    },
    {
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
    },
    {
      kind: 'paper',
      item: 'pilot in command check',
      neededFor: 'no flight',
      paragraph: '14 CFR 61.58(a)(1)',
      source: 'cfr-61-58',
      papers: ['pilot in command check'],
      lasts: { months: 12, to: 'month_end' },
      onlyIfRecorded: true,
      warnDays: 30,
      reading:
        'aircraft with more than one required pilot, or turbojets; the check in the type of (a)(2), 24 months, and the month of grace of (i) are not judged',
    },
    {
      kind: 'paper',
      item: 'endorsement',
      neededFor: 'no flight',
      paragraph: '14 CFR 61.31(e) to (j)',
      source: 'cfr-61-31',
      papers: ['tailwheel endorsement', 'complex endorsement', 'high performance endorsement', 'high altitude endorsement'],
      onlyIfRecorded: true,
      neverLapses: true,
      warnDays: 0,
      reading: 'given once; from memory',
    },
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
  ],
  aircraft: faaAircraft,
};
