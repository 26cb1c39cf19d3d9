// Sheet functions of weight and balance: totals, centre of gravity, chord, and the envelope.
import { percentOfChord, placeInEnvelope, totalLoading } from '../../core/loading/balance';
import { folding, mapping, result } from '../registry/declaration';
import { column } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { envelopeHelp, envelopeOf, envelopeParameters, envelopeTable, longestArm } from './readEnvelope';

const subject = 'Weight and balance';

const heaviest = 10_000_000;
const unitNote = 'Any unit of weight and any unit of arm, the same ones throughout.';

const weightOfItem = number({
  unit: '',
  minimum: -heaviest,
  maximum: heaviest,
  help: 'Weight of each item; negative for what is taken out, such as fuel burned. An empty station is 0, not a blank.',
});
export const armOfItem = number({ unit: '', minimum: -longestArm, maximum: longestArm, help: 'Arm of each item from the datum, aft positive.' });
export const wholeWeight = number({ unit: '', minimum: 0, maximum: heaviest, aboveMinimum: true, help: 'Weight of the whole aircraft as loaded.' });
export const wholeArm = number({
  unit: '',
  minimum: -longestArm,
  maximum: longestArm,
  help: 'Centre of gravity: arm of the whole aircraft from the datum.',
});

const itemsOf = (weights: readonly number[], arms: readonly number[]) => weights.map((weight, index) => ({ weight, arm: arms[index] ?? 0 }));

const loadingExample = [
  [[340], [350], [450], [80], [2100]],
  [[85], [121], [75], [150], [78.3]],
] as const;
const loadingFormula = (name: string): string => `=${name}(B2:B6, C2:C6)`;
const loadingSource = 'FAA-H-8083-25B figure 10-5: 3,320 lb, centre of gravity 84.8 inches';

export const BALANCE_TOTAL = folding({
  name: 'BALANCE_TOTAL',
  subject,
  summary: 'Total weight, moment and centre of gravity of a loading.',
  parameters: { weights: column(weightOfItem), arms: column(armOfItem) },
  results: {
    weight: result('as the weights', 'Total weight.'),
    moment: result('weight x arm', 'Total moment.'),
    arm: result('as the arms', 'Centre of gravity, from the datum.'),
  },
  sources: ['weight-balance-handbook', 'phak'],
  notes: `${unitNote} A row with a weight and no arm, or an arm and no weight, is an error that names the row. The weights must add up to more than zero.`,
  examples: [
    { arguments: loadingExample, formula: loadingFormula('BALANCE_TOTAL'), gives: [[3320, 281430, 84.77]], tolerance: 0.05, source: loadingSource },
  ],
  compute: ({ weights, arms }) => ({ ...totalLoading(itemsOf(weights, arms)) }),
});

export const BALANCE_CG = folding({
  name: 'BALANCE_CG',
  subject,
  summary: 'Centre of gravity of a loading, as an arm from the datum.',
  parameters: { weights: column(weightOfItem), arms: column(armOfItem) },
  results: { arm: result('as the arms', 'Centre of gravity, from the datum.') },
  sources: ['weight-balance-handbook', 'phak'],
  notes: `${unitNote} The arm of BALANCE_TOTAL alone.`,
  examples: [{ arguments: loadingExample, formula: loadingFormula('BALANCE_CG'), gives: 84.8, tolerance: 0.05, source: loadingSource }],
  compute: ({ weights, arms }) => ({ arm: totalLoading(itemsOf(weights, arms)).arm }),
});

export const BALANCE_MAC = mapping({
  name: 'BALANCE_MAC',
  subject,
  summary: 'Centre of gravity in per cent of the mean aerodynamic chord.',
  parameters: {
    arm: wholeArm,
    leading_edge: number({ unit: '', minimum: -longestArm, maximum: longestArm, help: 'Arm of the leading edge of the mean aerodynamic chord.' }),
    chord: number({ unit: '', minimum: 0, maximum: longestArm, aboveMinimum: true, help: 'Length of the mean aerodynamic chord.' }),
  },
  results: { percent: result('per cent', 'Per cent of the chord aft of its leading edge; negative ahead of it.') },
  sources: ['weight-balance-handbook'],
  notes: 'Any unit of arm, the same one throughout.',
  examples: [
    { arguments: [645.775, 625.6, 134.5], gives: 15, tolerance: 0.0005, source: 'EASA type question: 15 per cent of 134.5 aft of 625.6 is 645.78' },
  ],
  compute: ({ arm, leading_edge, chord }) => ({ percent: percentOfChord(arm, leading_edge, chord) }),
});

export const BALANCE_CHECK = mapping({
  name: 'BALANCE_CHECK',
  subject,
  summary: 'Whether a loading lies inside its envelope, and how far it is from the limits.',
  parameters: {
    weight: wholeWeight,
    arm: wholeArm,
    envelope: envelopeTable(envelopeHelp),
    ...envelopeParameters,
  },
  results: {
    verdict: result('', 'OK inside the envelope or on its line, else NO.'),
    forward_margin: result('as the arms', 'Arm from the forward limit at this weight; negative when ahead of it.'),
    aft_margin: result('as the arms', 'Arm to the aft limit at this weight; negative when behind it.'),
    weight_margin: result('as the weights', 'Weight to the upper limit at this arm; negative when above it.'),
  },
  sources: ['weight-balance-handbook', 'shimrat-1962', 'cormen-algorithms'],
  notes:
    'Straight lines between the corners, of arms or, in a moment envelope, of moments; the envelope may have notches, and its outline may not cross or touch itself. On the line counts as inside, within one part ' +
    'in a thousand million of the largest arm or weight, so that rounding decides nothing. A weight above or below the whole envelope has no arm limits, and an arm ' +
    'ahead of or behind it no weight limit: that margin is blank beside NO. Where a notch gives several limits, the margins are those of the part that holds the loading, or the nearest.',
  examples: [
    {
      arguments: [
        2300,
        42,
        [
          [35, 1500],
          [35, 1950],
          [39.5, 2400],
          [47, 2400],
          [47, 1500],
        ],
      ],
      formula: '=BALANCE_CHECK(2300, 42, A2:B6)',
      gives: [['OK', 3.5, 5, 100]],
      source: 'Invented envelope, worked by hand: at 2,300 the forward limit is 35 + 350 / 450 x 4.5 = 38.5',
    },
    {
      arguments: [
        2300,
        38,
        [
          [35, 1500],
          [35, 1950],
          [39.5, 2400],
          [47, 2400],
          [47, 1500],
        ],
      ],
      formula: '=BALANCE_CHECK(2300, 38, A2:B6)',
      gives: [['NO', -0.5, 9, -50]],
      source: 'Invented envelope, worked by hand: half an inch ahead of the limit, and 50 above the 2,250 allowed at 38',
    },
  ],
  compute: ({ weight, arm, envelope, ...ways }) => {
    const place = placeInEnvelope(envelopeOf(envelope, ways), weight, arm);
    return {
      verdict: place.inside ? 'OK' : 'NO',
      forward_margin: place.forwardMargin ?? '',
      aft_margin: place.aftMargin ?? '',
      weight_margin: place.weightMargin ?? '',
    };
  },
});
