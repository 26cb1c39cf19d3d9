// Rules of the European Union: Part-FCL and Part-MED of Regulation 1178/2011. Data only; core/rules/rule.ts says what each part means.
import type { Authority } from './rule';

const among90 = 'day of the flight among the 90 (stricter reading)';

export const easa: Authority = {
  name: 'EASA',
  pilot: [
    {
      kind: 'days', item: 'passengers', paragraph: 'FCL.060(b)(1)', source: 'part-fcl', reading: `${among90}; approaches as many as landings; a full flight simulator counts`,
      days: 90, tasks: [{ counts: { of: 'landings' }, needed: 3 }, { counts: { of: 'takeoffs' }, needed: 3 }], same: 'class', typesCountForClass: false, devices: ['FFS'], warnDays: 14,
    },
    {
      kind: 'days', item: 'passengers at night', paragraph: 'FCL.060(b)(2)', source: 'part-fcl', reading: `${among90}; one at night, or a valid instrument rating (from memory)`,
      days: 90, tasks: [{ counts: { of: 'landings', night: true }, needed: 1 }, { counts: { of: 'takeoffs', night: true }, needed: 1 }], same: 'class', typesCountForClass: false, devices: ['FFS'], warnDays: 14,
      unlessValid: 'instrument rating valid to',
    },
    { kind: 'paper', item: 'instrument rating', paragraph: 'FCL.625', source: 'part-fcl', papers: ['instrument rating valid to'], onlyIfRecorded: true, warnDays: 60, reading: 'the date on the licence' },
    { kind: 'paper', item: 'class rating', paragraph: 'FCL.740(a)', source: 'part-fcl', papers: ['class rating valid to'], warnDays: 60, reading: 'the date on the licence' },
    {
      kind: 'revalidation', item: 'class rating by experience', paragraph: 'FCL.740.A(b)(1)', source: 'part-fcl', reading: '12 months from the day after the same date (stricter reading)',
      paper: 'class rating valid to', monthsBefore: 12, check: { paper: 'class rating proficiency check', monthsBefore: 3 },
      tasks: [
        { name: 'hours', counts: { of: 'hours' }, needed: 12 },
        { name: 'hours in command', counts: { of: 'commandHours' }, needed: 6 },
        { name: 'landings', counts: { of: 'landings' }, needed: 12 },
        { name: 'take-offs', counts: { of: 'takeoffs' }, needed: 12 },
        { name: 'hours with instructor', counts: { of: 'trainingHours' }, needed: 1 },
      ],
      same: 'class', typesCountForClass: false, devices: [], warnDays: 60,
      classes: ['sel', 'single engine land', 'single engine sea', 'single engine piston', 'sep', 'sep land', 'sep (land)', 'sep sea', 'sep (sea)', 'tmg', 'touring motor glider'],
    },
    {
      kind: 'medical', item: 'medical', paragraph: 'MED.A.045', source: 'part-med', rules: 'EASA', warnDays: 45, reading: 'stricter readings as in MEDICAL_THROUGH; the certificate holds',
      privileges: [{ privilege: 'commercial', name: 'commercial' }, { privilege: 'private', name: 'private' }],
    },
    { kind: 'paper', item: 'medical, as printed', paragraph: 'MED.A.045', source: 'part-med', papers: ['medical valid to'], onlyIfRecorded: true, warnDays: 45, reading: 'the date on the certificate' },
  ],
  aircraft: [
    { item: 'airworthiness review certificate', also: ['ARC'], paragraph: 'ML.A.901', source: 'part-ml', warnDays: 30, reading: 'the date on the certificate; from memory' },
  ],
};
