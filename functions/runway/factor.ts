// The sheet function of published runway factors.
import {
  publishedFactors,
  runwayConditions,
  runwayFactor,
  runwayOperations,
  type RunwayCondition,
  type RunwayOperation,
} from '../../core/runway/factor';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { limitInWords, number } from '../registry/readNumber';
import { choice } from '../registry/readText';

const printed = (factor: number | undefined): string => (factor === undefined ? 'none' : factor.toFixed(2));

const factorList = runwayConditions
  .map((condition) => {
    const { takeoff, landing, per } = publishedFactors[condition];
    return `${condition} ${printed(takeoff)} / ${printed(landing)}${per === undefined ? '' : ` for ${limitInWords(per.amount)} ${per.unit}`}`;
  })
  .join('; ');

export const RUNWAY_FACTOR = mapping({
  name: 'RUNWAY_FACTOR',
  subject: 'Runway',
  summary: 'The published factor by which a condition of runway or air lengthens a take-off or a landing.',
  parameters: {
    operation: choice<RunwayOperation>({ words: runwayOperations, also: { 'take-off': 'takeoff' }, help: 'Which distance.' }),
    condition: choice<RunwayCondition>({
      words: runwayConditions,
      also: { 'dry grass': 'grass_dry', 'wet grass': 'grass_wet', snow: 'soft', 'soft ground': 'soft', 'wet paved': 'paved_wet' },
      help: 'Grass to 20 cm on firm soil; soft is soft ground or snow; slope is uphill for take-off, downhill for landing; safety is the overall factor.',
    }),
    amount: optional(
      number({ unit: '', minimum: 0, maximum: 10_000, help: 'How much of it, for slope, tailwind, weight, elevation and temperature.' }),
      undefined,
      'it is the amount the factor was published for',
    ),
  },
  results: { factor: result('', 'Multiply the distance by it; several conditions multiply one another.') },
  sources: ['safety-sense-7', 'eu-965-2012'],
  notes:
    `UK CAA Safety Sense Leaflet 7 (take-off / landing): ${factorList}. ` +
    'From EU 965/2012 instead: grass_wet_very_short (GM1 CAT.POL.A.335, "as much as") and paved_wet (CAT.POL.A.335). ' +
    'soft is the least: "25 percent or more". Less than the published amount counts in proportion, more is refused. ' +
    "Dry grass has also been published as 1.20 for landing (UK AIC 67/2002). Nothing is published for light aeroplanes on slush, standing water or ice, and so nothing is given. The aircraft's own manual goes first.",
  examples: [
    { arguments: ['takeoff', 'slope', 2], gives: 1.1, source: 'UK CAA Safety Sense Leaflet 7, table of factors' },
    { arguments: ['takeoff', 'elevation', 500], gives: 1.05, source: 'UK CAA Safety Sense Leaflet 7, worked example' },
    { arguments: ['landing', 'grass_wet'], gives: 1.35, source: 'UK CAA Safety Sense Leaflet 7, table of factors' },
  ],
  compute: ({ operation, condition, amount }) => ({ factor: runwayFactor(operation, condition, amount) }),
});
