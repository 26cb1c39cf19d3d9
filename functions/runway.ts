// Sheet functions of runway margins: is it long enough, with a factor for safety.
import { landingFactor, runwayMargin, takeoffFactor } from '../core/runway';
import { mapping, result } from './registry/declaration';
import { optional } from './registry/modifiers';
import { number } from './registry/readNumber';

const subject = 'Runway';
const anyLength = 'feet or metres';

const factorNumber = number({ unit: '', minimum: 1, maximum: 5, help: 'The distance is multiplied by it before it is compared with the runway.' });
export const takeoffFactorParameter = optional(factorNumber, takeoffFactor, 'it is 1.5, half as much again (common practice)');
export const landingFactorParameter = optional(factorNumber, landingFactor, 'it is 1/0.6, so that the landing takes 60 percent of the runway (14 CFR 135.385, advisory for private flight)');

const lengths = {
  available: number({ unit: anyLength, minimum: 0, maximum: 1_000_000, help: 'Length of runway available; 0 where the runway is closed.' }),
  required: number({ unit: anyLength, minimum: 0, maximum: 1_000_000, aboveMinimum: true, help: 'Distance needed, every correction made, in the same unit.' }),
};

const marginResults = {
  factored: result('as given', 'Required distance times the factor.'),
  margin: result('as given', 'Available less factored; negative is what is missing.'),
  ratio: result('available / required', 'Before the factor.'),
  verdict: result('', 'OK when the factored distance fits, an exact fit too; else NO.'),
};

export const TAKEOFF_MARGIN = mapping({
  name: 'TAKEOFF_MARGIN',
  subject,
  summary: 'What is left of a runway after the take-off distance with its safety factor.',
  parameters: { ...lengths, factor: takeoffFactorParameter },
  results: marginResults,
  sources: ['common-practice'],
  notes: 'The factor 1.5 is common practice, no source. A published factor (UK CAA Safety Sense Leaflet 7: 1.33) or your own goes in the last argument.',
  examples: [
    { arguments: [3000, 1540], gives: [[2310, 690, 3000 / 1540, 'OK']], source: 'By hand: 1,540 x 1.5 = 2,310' },
    { arguments: [519, 390, 1.33], gives: [[518.7, 0.3, 519 / 390, 'OK']], tolerance: 1e-6, source: 'UK CAA Safety Sense Leaflet 7, worked example: 390 m x 1.33 = 519 m' },
  ],
  compute: ({ available, required, factor }) => ({ ...runwayMargin(available, required, factor) }),
});

export const LANDING_MARGIN = mapping({
  name: 'LANDING_MARGIN',
  subject,
  summary: 'What is left of a runway after the landing distance with its safety factor.',
  parameters: { ...lengths, factor: landingFactorParameter },
  results: marginResults,
  sources: ['cfr-135-385'],
  notes: 'The factor 1/0.6 is a rule for carriers, advisory for private flight. Another factor (UK CAA Safety Sense Leaflet 7: 1.43) goes in the last argument.',
  examples: [{ arguments: [5000, 2500], gives: [[4167, 833, 2, 'OK']], tolerance: 0.5, source: '14 CFR 135.385(b): 2,500 / 0.6 = 4,167' }],
  compute: ({ available, required, factor }) => ({ ...runwayMargin(available, required, factor) }),
});
