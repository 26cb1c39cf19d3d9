// Reviews, checks and endorsements by 14 CFR 61.56, 61.58 and 61.31. Data only.
import type { PilotRule } from '../rule';

/** @source 14 CFR 61.56(e): one or more phases of an FAA-sponsored pilot proficiency award program within the period. */
const awardPhases = [
  'pilot proficiency award program phase',
  'award program phase',
  'award programme phase',
  'proficiency award phase',
  'wings phase',
];

export const flightReview: PilotRule = {
  kind: 'paper',
  item: 'flight review',
  neededFor: 'every flight',
  paragraph: '14 CFR 61.56(c), (d), (e)',
  source: 'cfr-61-56',
  papers: ['flight review', 'practical test', 'pilot proficiency check'],
  also: [...awardPhases, 'flight instructor practical test'],
  lasts: { months: 24, to: 'month_end' },
  warnDays: 30,
};

export const checksAndEndorsements: readonly PilotRule[] = [
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
];
