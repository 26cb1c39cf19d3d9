// What is said of the rows of the pilot's list and of the aircraft's, by every function that shows them.
import type { AircraftRemark, AircraftStanding } from '../../core/currency/aircraftList';
import type { ListItem, Remark } from '../../core/currency/experience';
import { faa } from '../../core/currency/rules/faa';
import type { Citation } from '../../core/currency/rules/rule';
import { optional } from '../registry/modifiers';
import type { Window } from '../../core/currency/window';
import type { FleetRow } from './readFleet';
import type { FlownAircraft, Tally } from '../../core/currency/flightLog';
import { dayInWords } from '../registry/dayWords';
import { limitInWords } from '../registry/readNumber';
import { chosenAuthorities } from './readPapers';

export const ruleWords =
  'Rules are read as of the paragraphs named beside each answer, and may have changed: look them up. Where the words can be read two ways the stricter reading is taken, and the row says so.';
export const rulesOrFaa = (help: string) => optional(chosenAuthorities(help), [faa], 'FAA');

export const citationText = ({ paragraph, reading }: Citation): string => (reading === undefined ? paragraph : `${paragraph}; ${reading}`);

const remarks: Readonly<Record<Remark, string>> = {
  'no-column': 'the log has no column for this',
  'log-empty': 'the log is empty',
  'no-aircraft': 'no aircraft of a category is listed',
  'check-first': 'lapsed more than 6 months: an instrument proficiency check is needed first',
  'by-paper': 'exempt',
  'class-missing': 'no class in the list of the aircraft, so nobody can say what it counts with',
  'by-check': 'by the proficiency check',
  'by-other-check': 'by a check in another class',
  'not-recorded': 'not written down in the papers',
  'no-date': 'written down, but not as a date that can be read',
  'date-ahead': 'done on a day still to come',
  'no-class': 'cannot be read as one of 1, 2, 3, LAPL',
  'born-too-late': 'less than 14 years before the medical examination',
  'nothing-qualifies': 'the class written down gives no privilege here',
  'window-not-begun': 'the qualifying period has not started',
  'own-row': 'your own item',
  'own-last-day': 'your own item, its date taken as the last good day',
  'not-listed': 'not in the list of the aircraft, or without a category there',
  'is-device': 'a training device in the list of the aircraft',
  'no-rule': 'no rule for this is known here',
  'nothing-named': 'nothing in the list of the aircraft is so named',
  unreadable: 'this row is not a rule',
  'not-judged': 'not judged here',
  'never-lapses': 'does not lapse',
  'within-limits': 'good only within the limits said here',
  'pilot-not-said': 'the log names several pilots: choose whose flights count',
  'pilot-not-in-log': 'no flight of the log names the pilot chosen, only these',
  'names-nobody': 'they name no pilot, in a log that names pilots',
  'place-not-listed': 'no position of these places is listed, so night is as written in the log',
  'against-the-sun': 'the landings by night do not go with the times: the fewer count',
};

/** The remark of a row, with the papers it is about; none where there is no remark. */
export const remarkTexts = ({ remark, papers }: ListItem): string[] =>
  remark === undefined ? [] : [`${remarks[remark]}${papers === undefined ? '' : `: ${papers.join(', ')}`}`];

const one: Readonly<Record<Tally['of'], readonly [one: string, more: string]>> = {
  landings: ['landing', 'landings'],
  takeoffs: ['take-off', 'take-offs'],
  approaches: ['approach', 'approaches'],
  holds: ['holding', 'holdings'],
  tracking: ['tracking of a course', 'trackings of a course'],
  hours: ['hour', 'hours'],
  commandHours: ['hour in command', 'hours in command'],
  nightHours: ['hour at night', 'hours at night'],
  instrumentHours: ['hour under instruments', 'hours under instruments'],
  trainingHours: ['hour with an instructor', 'hours with an instructor'],
  flights: ['flight', 'flights'],
  trainingFlights: ['flight with an instructor', 'flights with an instructor'],
};

/** "landings at night to a full stop", or the word for one of them. */
export const tallyWords = ({ of, night, fullStop }: Tally, count = 2): string =>
  `${one[of][count === 1 ? 0 : 1]}${fullStop === true ? ' to a full stop' : ''}${night === true ? ' at night' : ''}`;

/** "2 more landings to a full stop at night by 14 December 2026"; nothing where nothing is to be done. */
export function todoTexts({ todo }: ListItem): string[] {
  if (todo === undefined) return [];
  const tasks = todo.tasks.map(({ counts, more }) => `${limitInWords(more)} more ${tallyWords(counts, more)}`);
  const ways = [tasks.join(' and '), ...todo.papers].filter((way) => way !== '');
  return [`to do: ${ways.join(', or ')}${todo.byDay === undefined ? '' : ` by ${dayInWords(todo.byDay)}`}`];
}

/** "90 days", "6 months", "12 calendar months". */
export function windowWords(within: Exclude<Window, { readonly sinceDay: number }>): string {
  const [count, unit] =
    'days' in within ? [within.days, 'day'] : 'months' in within ? [within.months, 'month'] : [within.calendarMonths, 'calendar month'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}

export const ownRulesHelp =
  'Rules of your own, a club or an insurer under one header row, one thing asked a row: rule, what (landings, take-offs, hours, hours in command, hours with instructor, hours at night, instrument hours, flights, flights with instructor, approaches, holds, tracking, paper), at least, within, of (days, months, calendar months, since), in (a name of an aircraft, class, type or category; same class, same category, same aircraft; blank for all), needed for, night, full stop, tailwheel, set by. Rows of one name are asked together.';

/** What a row is about: the item, and for which category, class or type. */
export const itemText = ({ item, about }: ListItem): string => (about === undefined ? item : `${item}, ${about}`);

export const withCategory = (row: FleetRow): FlownAircraft[] => (row.category === undefined ? [] : [{ ...row, category: row.category }]);

export const aircraftRemarks: Readonly<Record<AircraftRemark, string>> = {
  'own-row': 'your own item',
  'own-last-day': 'your own item, its date taken as the last good day',
  'by-other': 'the annual inspection counts, done at later hours',
  'no-landings': 'no log of landings',
  'no-date': 'no date written down',
  'date-ahead': 'done on a day still to come',
  'no-hours': 'no hours written down at which it was done',
  'no-hours-now': 'no hours now of this aircraft',
  'hours-before-done': 'hours now are fewer than when it was done',
};

/** What the log adds to hours or landings left. */
export function useTexts({ forecastDay, landingsLeft }: Pick<AircraftStanding, 'forecastDay' | 'landingsLeft'>): string[] {
  return [
    ...(landingsLeft === undefined ? [] : [`${landingsLeft} landings left by this log`]),
    ...(forecastDay === undefined ? [] : [`comes up about ${dayInWords(forecastDay)} at the rate of this log`]),
  ];
}

export const logHelp =
  'The flights, as for PILOT_STATUS: hours after the day under "hours read on" are added, landings counted, and the day told on which hours come up at the rate of the last 180 days (of a shorter log, of its days, 30 at least). It knows only what is in it.';

/** What the rules for a pilot cite. */
export const pilotSources = [
  'cfr-61-57',
  'cfr-61-56',
  'cfr-61-23',
  'cfr-61-113',
  'cfr-61-58',
  'ac-68-1',
  'fr-2025-13972',
  'part-fcl',
  'part-med',
  'uk-part-fcl',
  'uk-part-med',
  'uk-ano-2016',
  'uk-medical-declaration',
  'eu-1182-71',
] as const;
/** What the rules for an aircraft cite. */
export const aircraftSources = [
  'cfr-91-409',
  'cfr-91-411',
  'cfr-91-413',
  'cfr-91-171',
  'cfr-91-207',
  'cfr-49-180-209',
  'part-ml',
  'uk-part-ml',
  'fr-2022-25289',
  'common-practice',
] as const;
