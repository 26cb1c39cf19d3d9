// Rules of the United States, Title 14 of the Code of Federal Regulations. Data only; core/rules/rule.ts says what each part means.
import type { Authority } from './rule';

const threeLandings = { counts: { of: 'landings' }, needed: 3 } as const;
const threeTakeoffs = { counts: { of: 'takeoffs' }, needed: 3 } as const;
const among90 = 'day of the flight among the 90 (stricter reading)';
const manipulator = 'as sole manipulator; training devices not counted';

export const faa: Authority = {
  name: 'FAA',
  pilot: [
    {
      kind: 'days', item: 'passengers', paragraph: '14 CFR 61.57(a)(1)', source: 'cfr-61-57', reading: `${among90}; ${manipulator}`,
      days: 90, tasks: [threeLandings, threeTakeoffs], same: 'class', typesCountForClass: true, devices: [], warnDays: 14,
    },
    {
      kind: 'days', item: 'passengers, tailwheel', paragraph: '14 CFR 61.57(a)(1)(ii)', source: 'cfr-61-57', reading: `${among90}; to a full stop in a tailwheel`,
      days: 90, tasks: [{ counts: { of: 'landings', fullStop: true }, needed: 3 }, threeTakeoffs], same: 'class', typesCountForClass: true, tailwheel: true, devices: [], warnDays: 14,
    },
    {
      kind: 'days', item: 'passengers at night', paragraph: '14 CFR 61.57(b)(1)', source: 'cfr-61-57', reading: `${among90}; to a full stop, 1 h after sunset to 1 h before sunrise`,
      days: 90, tasks: [{ counts: { of: 'landings', night: true, fullStop: true }, needed: 3 }, { counts: { of: 'takeoffs', night: true }, needed: 3 }], same: 'class', typesCountForClass: true, devices: [], warnDays: 14,
    },
    {
      kind: 'months', item: 'instrument flight', paragraph: '14 CFR 61.57(c)', source: 'cfr-61-57', reading: 'CHECK where only this month\'s flights make it enough; actual or simulated conditions',
      months: 6,
      tasks: [
        { name: 'approaches', counts: { of: 'approaches' }, needed: 6 },
        { name: 'holding', counts: { of: 'holds' }, needed: 1 },
        { name: 'tracking', counts: { of: 'tracking' }, needed: 1 },
      ],
      same: 'category', typesCountForClass: true, devices: ['FFS', 'FTD', 'ATD'], warnDays: 30,
      check: {
        paper: 'instrument proficiency check', item: 'IFR, no check due', furtherMonths: 6, paragraph: '14 CFR 61.57(d)', source: 'cfr-61-57',
        reading: 'a check counts for the 6 months of (c), common practice',
      },
    },
    {
      kind: 'paper', item: 'flight review', paragraph: '14 CFR 61.56(c), (d)', source: 'cfr-61-56', papers: ['flight review', 'practical test', 'pilot proficiency check'],
      lasts: { months: 24, to: 'month_end' }, warnDays: 30,
    },
    {
      kind: 'medical', item: 'medical', paragraph: '14 CFR 61.23(d)', source: 'cfr-61-23', rules: 'FAA', warnDays: 30, reading: 'age on the day of the examination',
      privileges: [{ privilege: 'atp', name: 'airline transport' }, { privilege: 'commercial', name: 'commercial' }, { privilege: 'private', name: 'private' }],
    },
    {
      kind: 'paper', item: 'BasicMed course', paragraph: '14 CFR 61.23(c)(3), 68.3', source: 'ac-68-1', papers: ['BasicMed course'], lasts: { months: 24, to: 'month_end' }, onlyIfRecorded: true, warnDays: 30,
    },
    {
      kind: 'paper', item: 'BasicMed examination', paragraph: '14 CFR 61.23(c)(3), 68.5', source: 'ac-68-1', papers: ['BasicMed examination'], lasts: { months: 48, to: 'day' }, onlyIfRecorded: true, warnDays: 30,
    },
  ],
  aircraft: [
    { item: 'annual inspection', also: ['annual'], paragraph: '14 CFR 91.409(a)(1)', source: 'cfr-91-409', lasts: { months: 12, to: 'month_end' }, warnDays: 30 },
    {
      item: '100 hour inspection', also: ['100 hour', '100 h', '100 hours', '100 h inspection'], paragraph: '14 CFR 91.409(b)', source: 'cfr-91-409', hours: 100, warnDays: 30,
      reading: 'for hire or instruction; the 10 h to reach a place of inspection are not counted as left; an overrun shortens the next',
    },
    { item: 'altimeter and static system', also: ['altimeter', 'pitot static'], paragraph: '14 CFR 91.411(a)(1)', source: 'cfr-91-411', lasts: { months: 24, to: 'month_end' }, warnDays: 30, reading: 'for IFR' },
    { item: 'transponder', paragraph: '14 CFR 91.413(a)', source: 'cfr-91-413', lasts: { months: 24, to: 'month_end' }, warnDays: 30 },
    { item: 'VOR check', also: ['VOR'], paragraph: '14 CFR 91.171(a)(2)', source: 'cfr-91-171', lasts: { days: 30 }, warnDays: 5, reading: 'for IFR; day of the flight among the 30 (stricter reading)' },
    { item: 'ELT inspection', also: ['ELT'], paragraph: '14 CFR 91.207(d)', source: 'cfr-91-207', lasts: { months: 12, to: 'month_end' }, warnDays: 30 },
    { item: 'ELT battery', paragraph: '14 CFR 91.207(c)', source: 'cfr-91-207', warnDays: 30, reading: 'the date marked for 50 % of its life; also after 1 h of use' },
    { item: 'oxygen bottle 3AA', also: ['oxygen bottle'], paragraph: '49 CFR 180.209(a)', source: 'cfr-49-180-209', lasts: { months: 60, to: 'day' }, warnDays: 60, reading: '5 years, from memory; what the maker and the stamp say holds' },
    { item: 'oxygen bottle 3HT', paragraph: '49 CFR 180.209(a)', source: 'cfr-49-180-209', lasts: { months: 36, to: 'day' }, warnDays: 60, reading: '3 years, from memory; what the maker and the stamp say holds' },
  ],
};
