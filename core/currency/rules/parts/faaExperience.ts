// Recent experience by 14 CFR 61.57: with passengers, at night, in a tailwheel aircraft, on instruments. Data only.
import type { PilotRule } from '../rule';

const threeLandings = { counts: { of: 'landings' }, needed: 3 } as const;
const threeTakeoffs = { counts: { of: 'takeoffs' }, needed: 3 } as const;
const among90 = 'day of the flight among the 90 (stricter reading)';
const manipulator = 'as sole manipulator; training devices not counted';

export const faaExperience: readonly PilotRule[] = [
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
];
