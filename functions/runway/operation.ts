// What tells a take-off from a landing in functions of the runway that are otherwise one: the factor, and where it comes from.
import type { SourceId } from '../../core/basics/sources';
import { landingFactor, takeoffFactor } from '../../core/runway/margin';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import type { NamedTable } from '../registry/wordCoreError';

const factorNumber = number({ unit: '', minimum: 1, maximum: 5, help: 'The distance is multiplied by it before it is compared with the runway.' });

export const takeoff = {
  noun: 'take-off',
  table: 'take-off table' as NamedTable['name'],
  factor: optional(factorNumber, takeoffFactor, 'it is 1.5, half as much again (common practice)'),
  factorNote: 'The factor 1.5 is common practice, no source.',
  factorSource: 'common-practice' as SourceId,
};

export type Operation = Readonly<typeof takeoff>;

export const landing: Operation = {
  noun: 'landing',
  table: 'landing table',
  factor: optional(
    factorNumber,
    landingFactor,
    'it is 1/0.6, so that the landing takes 60 percent of the runway (14 CFR 135.385, advisory for private flight)',
  ),
  factorNote: 'The factor 1/0.6 is a rule for carriers, advisory for private flight.',
  factorSource: 'cfr-135-385',
};
