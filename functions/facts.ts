// What sheets must know of the answers of functions: the names of the rows that briefs lay out and sheets read. A word that is not
// among them does not compile; a test holds them to what the functions lay out.
import { papersNamedBy } from '../core/currency/pilotList';
import { authorities } from '../core/currency/rules';
import { flightNeeds } from '../core/currency/rules/rule';
import { units, whats } from './currency/readRuleRow';

export const holdItems = [
  'entry',
  'first heading',
  'second heading',
  'outbound heading',
  'outbound time',
  'inbound heading',
  'speed limit',
  'lap minutes',
  'first turn',
  'second turn',
  'speed verdict',
  'wind verdict',
] as const;
export type HoldItem = (typeof holdItems)[number];

export const runwayItems = ['headwind', 'crosswind', 'verdict'] as const;
export type RunwayItem = (typeof runwayItems)[number];

export const loadingPoints = ['zero fuel', 'take-off', 'landing', 'during the flight'] as const;
export type LoadingPoint = (typeof loadingPoints)[number];

/** The authorities whose rules the lists know, as they are chosen. */
export const authorityNames: readonly string[] = authorities.map(({ name }) => name);

const unique = (names: readonly string[]): string => [...new Set(names)].join(', ');

/** "flight review, practical test (FAA); class rating valid to (EASA)": what each authority's rules know by name. */
export const papersKnown: string = authorities.map((authority) => `${unique(papersNamedBy(authority))} (${authority.name})`).join('; ');
export const itemsKnown: string = authorities
  .filter(({ aircraft }) => aircraft.length > 0)
  .map(({ name, aircraft }) => `${unique(aircraft.map(({ item }) => item))} (${name})`)
  .join('; ');

/** What a rule of one's own can count, over which windows, and for which flights. */
export const ruleChoices = { what: whats, of: units, neededFor: flightNeeds } as const;

/** What a row of the diary is for. */
export type DiaryDoing = 'load' | 'renew' | 'look';
