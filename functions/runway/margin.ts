// Sheet functions of runway margins: is it long enough, with a factor for safety.
import { runwayMargin } from '../../core/runway/margin';
import { mapping, result } from '../registry/declaration';
import { number } from '../registry/readNumber';
import { landing, takeoff, type Operation } from './operation';

const subject = 'Runway';
const anyLength = 'feet or metres';

const lengths = {
  available: number({ unit: anyLength, minimum: 0, maximum: 1_000_000, help: 'Length of runway available; 0 where the runway is closed.' }),
  required: number({
    unit: anyLength,
    minimum: 0,
    maximum: 1_000_000,
    aboveMinimum: true,
    help: 'Distance needed, every correction made, in the same unit.',
  }),
};

const marginResults = {
  factored: result('as given', 'Required distance times the factor.'),
  margin: result('as given', 'Available less factored; negative is what is missing.'),
  ratio: result('available / required', 'Before the factor.'),
  verdict: result('', 'OK when the factored distance fits, an exact fit too; else NO.'),
};

const marginOf = ({ noun, factor, factorNote, factorSource }: Operation, anotherFactor: string) => ({
  subject,
  summary: `What is left of a runway after the ${noun} distance with its safety factor.`,
  parameters: { ...lengths, factor },
  results: marginResults,
  sources: [factorSource],
  notes: `${factorNote} ${anotherFactor} goes in the last argument.`,
  compute: (args: { readonly available: number; readonly required: number; readonly factor: number }) => ({
    ...runwayMargin(args.available, args.required, args.factor),
  }),
});

export const TAKEOFF_MARGIN = mapping({
  name: 'TAKEOFF_MARGIN',
  ...marginOf(takeoff, 'A published factor (UK CAA Safety Sense Leaflet 7: 1.33) or your own'),
  examples: [
    { arguments: [3000, 1540], gives: [[2310, 690, 3000 / 1540, 'OK']], source: 'By hand: 1,540 x 1.5 = 2,310' },
    {
      arguments: [519, 390, 1.33],
      gives: [[518.7, 0.3, 519 / 390, 'OK']],
      tolerance: 1e-6,
      source: 'UK CAA Safety Sense Leaflet 7, worked example: 390 m x 1.33 = 519 m',
    },
  ],
});

export const LANDING_MARGIN = mapping({
  name: 'LANDING_MARGIN',
  ...marginOf(landing, 'Another factor (UK CAA Safety Sense Leaflet 7: 1.43)'),
  examples: [{ arguments: [5000, 2500], gives: [[4167, 833, 2, 'OK']], tolerance: 0.5, source: '14 CFR 135.385(b): 2,500 / 0.6 = 4,167' }],
});
