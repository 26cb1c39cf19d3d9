// The sheet function that folds a weighing record into the empty weight and arm of the day.
import { dayNumber } from '../../core/basics/civilDate';
import { civilDateFromDayNumber } from '../../core/basics/civilDate';
import { emptyWeightOn } from '../../core/loading/emptyWeight';
import { folding, result } from '../registry/declaration';
import { column } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { momentDivisor, momentsIn } from './readEnvelope';
import { armOrBlank, armsOf, stationMoments } from './readStations';
import { weighingKind } from './readWeighings';

export const EMPTY_WEIGHT = folding({
  name: 'EMPTY_WEIGHT',
  subject: 'Weight and balance',
  summary: "Today's empty weight and arm from the weighing record: the last weighing and the changes of equipment since.",
  parameters: {
    dates: column(date('Day of each weighing or change.')),
    kinds: column(weighingKind),
    weights: column(
      number({
        unit: '',
        minimum: -10_000_000,
        maximum: 10_000_000,
        help: 'Weight of the aircraft, or of what was put in; negative for what was taken out.',
      }),
    ),
    arms: armOrBlank,
    as_of: date('The day on which the empty weight is asked for. Later rows do not count yet.'),
    moments: stationMoments,
    moments_in: momentsIn,
  },
  results: {
    weight: result('as the weights', 'Empty weight.'),
    arm: result('as the arms', 'Its arm from the datum.'),
    moment: result('weight x arm', 'Its moment.'),
    weighed_on: result('date', 'Day of the weighing that counts.'),
    changes: result('', 'How many changes came since.'),
  },
  sources: ['weight-balance-handbook'],
  notes:
    'Any unit of weight and arm, the same ones throughout. Rows may come in any order of days; rows of one day count from top to bottom. A weighing takes the place of all that came before it. ' +
    'Each row has an arm or a moment.',
  examples: [
    {
      arguments: [
        [['2024-03-01'], ['2025-06-10'], ['2026-02-01']],
        [['weighing'], ['change'], ['change']],
        [[1500], [10], [-5]],
        [[40], [25], [60]],
        '2026-03-01',
      ],
      gives: [[1505, 59950 / 1505, 59950, '2024-03-01', 2]],
      tolerance: 1e-9,
      source: 'Invented record, by hand: 1,500 x 40 + 10 x 25 - 5 x 60 = 59,950 over 1,505',
      formula: '=EMPTY_WEIGHT(A2:A4, B2:B4, C2:C4, D2:D4, as_of)',
    },
  ],
  compute: ({ dates, kinds, weights, arms, as_of, moments, moments_in }, { rows }) => {
    const all = armsOf(weights, arms, moments, momentDivisor(moments_in), rows);
    const record = dates.map((day, index) => ({
      day: dayNumber(day),
      kind: kinds[index] ?? 'change',
      weight: weights[index] ?? 0,
      arm: all[index] ?? 0,
    }));
    const { weight, arm, moment, weighedOn, changes } = emptyWeightOn(record, dayNumber(as_of));
    return { weight, arm, moment, weighed_on: civilDateFromDayNumber(weighedOn), changes };
  },
});
