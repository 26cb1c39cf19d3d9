// Sheet functions that judge a whole loading: its points, its burn, its entries, and what to change.
import { judgeLoading, trackBetween, type LoadingCase, type LoadingPoint, type Station } from '../../core/loading/flight';
import { remedyFor } from '../../core/loading/remedy';
import { totalFuel } from '../../core/loading/tanks';
import { laying, result, type ResultCell, type Values } from '../registry/declaration';
import { envelopeHelp, envelopeOf, envelopeParameters, envelopeTable, momentDivisor, momentsIn } from './readEnvelope';
import { armOrBlank, armsOf, stationMoments } from './readStations';
import { headingsAbove } from '../registry/headings';
import { column, optional } from '../registry/modifiers';
import { lateralRow, pointReason, remedyInWords, shown, type Units } from './flightWords';
import { furthestArm, limitRow, mostFuel, noLimits, tankArmRows, tankRows, tanksOf } from './readLoading';
import { number } from '../registry/readNumber';
import { shownName } from '../registry/readText';

const subject = 'Weight and balance';
const mostWeight = 10_000_000;

const stationNames = column(
  shownName({
    mustBe: 'the name of a station',
    help: 'Names of the stations, one to a row. The heaviest is taken for the empty aircraft when a move is looked for.',
  }),
);
const stationWeights = column(
  number({ unit: '', minimum: 0, maximum: mostWeight, help: 'Weight at each station. An empty seat is 0, not a blank.' }),
);

const fuelQuantity = (help: string) => number({ unit: 'as the tanks', minimum: 0, maximum: mostFuel, help });
const fuelWeightEach = number({
  unit: 'weight of one unit of fuel',
  minimum: 0,
  maximum: 100,
  aboveMinimum: true,
  help: 'Weight of one unit of fuel, such as 6.0 lb a US gallon or 0.72 kg a litre of avgas.',
});

const unitOf = (what: string, such: string) =>
  optional(
    shownName({ mustBe: `a unit of ${what}, such as ${such}`, help: `The unit of ${what} in use, such as ${such}, for the reasons.` }),
    '',
    'the reasons give no unit',
  );

const parameters = {
  stations: stationNames,
  weights: stationWeights,
  arms: armOrBlank,
  tanks: tankRows,
  tank_arms: tankArmRows,
  fuel_weight_each: fuelWeightEach,
  taxi_fuel: fuelQuantity('Fuel burned before take-off.'),
  trip_fuel: fuelQuantity('Fuel burned from take-off to landing.'),
  envelope: envelopeTable(envelopeHelp),
  limits: optional(limitRow, noLimits, 'only the envelope limits the weight'),
  lateral_arms: optional(
    column(
      number({
        unit: '',
        minimum: -furthestArm,
        maximum: furthestArm,
        help: 'Lateral arm of each station, right positive, 0 on the centre line. While one is blank, lateral balance is UNKNOWN where there are lateral limits.',
      }),
    ),
    undefined,
    'lateral balance is UNKNOWN where there are lateral limits',
  ),
  track_steps: optional(
    number({
      unit: '',
      minimum: 0,
      maximum: 200,
      whole: true,
      help: 'Parts into which the burn is cut for drawing: a row for each end of a part, from take-off to empty tanks.',
    }),
    0,
    'there are no such rows',
  ),
  headings: headingsAbove,
  weight_unit: unitOf('weight', 'lb'),
  arm_unit: unitOf('arm', 'in'),
  moments: stationMoments,
  moments_in: momentsIn,
  ...envelopeParameters,
};

function loadingCase(values: Values<typeof parameters>, rows: readonly number[]): LoadingCase {
  const { weights, lateral_arms: lateralArms, limits } = values;
  const arms = armsOf(weights, values.arms, values.moments, momentDivisor(values.moments_in), rows);
  const stations: Station[] = values.stations.map((name, index) => ({
    name,
    weight: weights[index] ?? 0,
    arm: arms[index] ?? 0,
    lateralArm: lateralArms[index],
  }));
  const { left, right } = limits;
  return {
    stations,
    tanks: tanksOf(values.tanks, values.tank_arms),
    weightPerUnit: values.fuel_weight_each,
    taxiFuel: values.taxi_fuel,
    tripFuel: values.trip_fuel,
    envelope: envelopeOf(values.envelope, values),
    limits,
    lateralLimits: left === undefined || right === undefined ? undefined : { left, right },
  };
}

const pointRow = (name: string, point: LoadingPoint, reason: string): ResultCell[] => [
  name,
  point.verdict,
  point.weight,
  point.arm,
  point.forwardMargin ?? '',
  point.aftMargin ?? '',
  point.weightMargin ?? '',
  reason,
];

/** The burn from take-off to empty tanks, to draw. */
function trackRows(loading: LoadingCase, steps: number): ResultCell[][] {
  if (steps === 0) return [];
  const points = trackBetween(loading, loading.taxiFuel, totalFuel(loading.tanks), steps);
  // Fuel is left from landing on: outside there, only a longer flight gets there.
  const atLanding = totalFuel(loading.tanks) - loading.taxiFuel - loading.tripFuel;
  const outside = (fuel: number): 'NO' | 'CHECK' => (fuel < atLanding * (1 - 1e-9) ? 'CHECK' : 'NO');
  return points.map((point) =>
    pointRow('burn', { ...point, verdict: point.inside ? 'OK' : outside(point.fuel) }, `${shown(point.fuel)} of fuel on board`),
  );
}

const exampleGiven = [
  [['empty'], ['front'], ['rear'], ['bags']],
  [[1000], [200], [100], [40]],
  [[40], [42], [70], [95]],
  [['wing', 30, 1, '']],
  [
    ['wing', 0, 48],
    ['wing', 40, 48],
  ],
  6,
  2,
  18,
  [
    [38, 900],
    [38, 1400],
    [40, 1700],
    [50, 1700],
    [50, 900],
  ],
] as const;

const notes =
  'Any unit of weight, arm and fuel, the same ones throughout. The burn is looked at in 400 steps from take-off to landing and 400 more to empty tanks: a loading that is inside at both ' +
  'ends and outside in between is NO; outside only beyond the landing fuel is CHECK. On a line counts as inside. Equal draw from tanks that burn together: common practice, no source. A move does not know how much a station may carry.';

export const LOADING_BRIEF = laying({
  name: 'LOADING_BRIEF',
  subject,
  summary: 'A whole loading judged: zero fuel, take-off, landing, the whole burn between them, lateral balance, and what to change.',
  parameters,
  results: {
    point: result(
      '',
      'Zero fuel, take-off, landing, during the flight, burning into the reserve, lateral (where there are limits), suggested change; then the burn, with the fuel on board as the reason.',
    ),
    verdict: result('', 'OK, NO, CHECK (outside only beyond the landing fuel) or UNKNOWN.'),
    weight: result('as the weights', 'Weight at the point.'),
    arm: result('as the arms', 'Centre of gravity at the point.'),
    forward_margin: result('as the arms', 'To the forward limit; negative ahead of it.'),
    aft_margin: result('as the arms', 'To the aft limit; negative behind it.'),
    weight_margin: result('as the weights', 'To the lower of the envelope and the maximum weight; negative above it.'),
    reason: result('', 'Why, in plain numbers.'),
  },
  sources: ['weight-balance-handbook', 'common-practice'],
  notes,
  examples: [
    {
      arguments: exampleGiven,
      formula: '=LOADING_BRIEF(B2:B5, C2:C5, D2:D5, B8:E8, B11:D12, 6, 2, 18, G2:H6)',
      gives: [
        ['zero fuel', 'OK', 1340, 44.179, 6.179, 5.821, 360, '360 under the limit; CG 6.18 behind the forward limit, 5.82 ahead of the aft limit'],
        ['take-off', 'OK', 1508, 44.605, 5.885, 5.395, 192, '192 under the limit; CG 5.88 behind the forward limit, 5.4 ahead of the aft limit'],
        ['landing', 'OK', 1400, 44.343, 6.343, 5.657, 300, '300 under the limit; CG 6.34 behind the forward limit, 5.66 ahead of the aft limit'],
        [
          'during the flight',
          'OK',
          1508,
          44.605,
          5.885,
          5.395,
          192,
          'worst of the burn, 192 under the limit; CG 5.88 behind the forward limit, 5.4 ahead of the aft limit',
        ],
        [
          'burning into the reserve',
          'OK',
          1400,
          44.343,
          6.343,
          5.657,
          300,
          'worst beyond landing, 300 under the limit; CG 6.34 behind the forward limit, 5.66 ahead of the aft limit',
        ],
        ['suggested change', '', '', '', '', '', '', 'nothing to change'],
      ],
      tolerance: 0.001,
      source: 'Invented loading, worked by hand: 1,340 at 59,200 / 1,340; 28 x 6 of fuel at 48 gives 1,508 at 67,264 / 1,508',
    },
  ],
  compute: (values, { rows }) => {
    const loading = loadingCase(values, rows);
    const judged = judgeLoading(loading);
    const { lateralLimits } = loading;
    const units: Units = { weight: values.weight_unit, arm: values.arm_unit };
    const lateral = judged.lateral === undefined || lateralLimits === undefined ? [] : [lateralRow(judged.lateral, lateralLimits, units)];
    return [
      pointRow('zero fuel', judged.zeroFuel, pointReason(judged.zeroFuel, units, 'zero-fuel')),
      pointRow('take-off', judged.takeoff, pointReason(judged.takeoff, units, 'take-off')),
      pointRow('landing', judged.landing, pointReason(judged.landing, units, 'landing')),
      pointRow('during the flight', judged.onTheWay, `worst of the burn, ${pointReason(judged.onTheWay, units)}`),
      pointRow('burning into the reserve', judged.reserve, `worst beyond landing, ${pointReason(judged.reserve, units)}`),
      ...lateral,
      ['suggested change', '', '', '', '', '', '', remedyInWords(remedyFor(loading, judged), units)],
      ...trackRows(loading, values.track_steps),
    ];
  },
});
