// Sheet functions of the holding pattern: where it lies, how to enter it, how fast it may be flown.
import { holdEntry, holdSpeedLimitKnots, inboundCourseOfSide, sideOnRadial, type EntryAdvice } from '../../core/hold/entry';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { holdSide } from './readSide';
import { magneticDirection, number } from '../registry/readNumber';
import { choice } from '../registry/readText';

const subject = 'Holding';

export const turnsChoice = choice({
  words: ['right', 'left'],
  also: { R: 'right', L: 'left', 'right turns': 'right', 'left turns': 'left', standard: 'right' },
  help: 'Direction of the turns, right or left.',
});

export const holdRules = choice({
  words: ['FAA', 'ICAO', 'ICAO_AB'],
  help: 'Whose limits: FAA, ICAO, or ICAO_AB (ICAO, a pattern published for aircraft categories A and B only).',
});

export const HOLD_INBOUND = mapping({
  name: 'HOLD_INBOUND',
  subject,
  summary: 'Inbound course of a hold from the side of the fix on which it lies.',
  parameters: {
    where: holdSide('The side on which to hold. A radial is read as the side of the station it lies on.'),
  },
  results: { inbound_course: result('degrees magnetic', 'Inbound course; north is 360, never 0.') },
  sources: ['aim'],
  notes:
    'The reciprocal of the side, more than 0 and up to 360: north is 360. A compass point alone gives the course to that point only; where a radial or course is ' +
    'given, use it. A radial alone is taken for a fix at the station. At a fix away from the station give both, such as "W on 086 radial": of the two ends of ' +
    'that line, the one toward the compass point is used.',
  examples: [
    { arguments: ['S'], gives: 360, source: 'Worked by hand: a hold south of the fix is flown inbound northward' },
    { arguments: ['180 radial'], gives: 360, source: 'Worked by hand: on the 180 radial the course to the station is its reciprocal' },
    { arguments: ['W on 086 radial'], gives: 86, source: 'FAA instrument test, figure 112: 15 DME fix on the 086 radial, hold west, inbound 086' },
    { arguments: ['north-east'], gives: 225, source: 'Worked by hand: the reciprocal of 045' },
  ],
  compute: ({ where }) => ({
    inbound_course: inboundCourseOfSide(where.kind === 'direction' ? where.degrees : sideOnRadial(where.point, where.radial)),
  }),
});

export const entryInWords = ({ entry, other }: EntryAdvice): string => (other === undefined ? entry : `${entry} (or ${other})`);

export const HOLD_ENTRY = mapping({
  name: 'HOLD_ENTRY',
  subject,
  summary: 'Entry to a holding pattern: direct, parallel or teardrop, from the heading on which the fix is reached.',
  parameters: {
    heading_at_fix: magneticDirection('Heading on which the fix is reached.'),
    inbound_course: magneticDirection('Inbound course of the hold, toward the fix.'),
    turns: optional(turnsChoice, 'right' as const, 'right turns'),
  },
  results: { entry: result('', 'direct, parallel or teardrop; the other entry in brackets within 5 degrees of a sector line.') },
  sources: ['aim', 'usn-p821'],
  notes:
    'Sectors of 70 degrees (teardrop), 110 (parallel) and 180 (direct). Within 5 degrees of a sector line, 5 included, the entry across the line is named ' +
    'too, such as "direct (or teardrop)", and either is accepted. Exactly on a line the first named is direct, or teardrop where the heading is the outbound course.',
  examples: [
    {
      arguments: [350, 86, 'left'],
      gives: 'direct',
      source: 'FAA instrument test, figure 112: hold west of the 15 DME fix on the 086 radial, left turns',
    },
    { arguments: [150, 360], gives: 'teardrop', source: 'AIM 5-3-8, figure 5-3-4, worked by hand: outbound course 30 degrees right of the heading' },
    {
      arguments: [250, 70, 'right'],
      gives: 'teardrop (or parallel)',
      source: 'Exact reciprocal: the line between the two sectors, either accepted (CNATRA P-821)',
    },
  ],
  compute: ({ heading_at_fix, inbound_course, turns }) => ({ entry: entryInWords(holdEntry(heading_at_fix, inbound_course, turns)) }),
});

export const HOLD_SPEED_LIMIT = mapping({
  name: 'HOLD_SPEED_LIMIT',
  subject,
  summary: 'Highest indicated airspeed in a holding pattern at an altitude.',
  parameters: {
    altitude_ft: number({ unit: 'feet', minimum: -2000, maximum: 60000, help: 'Holding altitude or flight level, in feet.' }),
    rules: optional(holdRules, 'FAA' as const, 'FAA'),
  },
  results: { limit: result('knots indicated', 'Highest holding airspeed.') },
  sources: ['aim', 'icao-8168'],
  notes:
    'FAA: 200 to 6,000 ft, 230 to 14,000 ft, 265 above; ICAO: 230 to 14,000 ft (ICAO_AB 170), 240 to 20,000 ft, 265 to 34,000 ft, in normal conditions. ' +
    'Above 34,000 ft the ICAO limit is Mach 0.83, which is no indicated airspeed, so the answer there is an error sentence that says so. A speed on the chart ' +
    'takes the place of these: 175 or 210 knots where so marked, 310 at US Air Force and 230 at US Navy fields. Between the printed bands (6,000 to 6,001 ft) the lower limit stands.',
  examples: [
    { arguments: [6000], gives: 200, source: 'AIM 5-3-8, table of maximum holding airspeeds' },
    { arguments: [6001], gives: 230, source: 'AIM 5-3-8, table of maximum holding airspeeds' },
    { arguments: [9000, 'ICAO_AB'], gives: 170, source: 'ICAO Doc 8168 by way of AFMAN 11-217V1, table 18.4' },
  ],
  compute: ({ altitude_ft, rules }) => ({ limit: holdSpeedLimitKnots(altitude_ft, rules) }),
});
