// Sheet functions that judge a whole loading: its points, its burn, its entries, and what to change.
import { judgeLoading, trackBetween, type LateralLimits, type LateralSpan, type LoadingCase, type LoadingPoint, type Station } from '../core/loading';
import { remedyFor, type Remedy } from '../core/loadingRemedy';
import { totalFuel } from '../core/tanks';
import { armOfItem, envelopeTable } from './balance';
import { inWords } from './registry/cellValues';
import { laying, result, type ResultCell, type Values } from './registry/declaration';
import { column, optional } from './registry/modifiers';
import { furthestArm, limitRow, mostFuel, noLimits, tankArmRows, tankRows, tanksOf } from './registry/readLoading';
import { limitInWords, number } from './registry/readNumber';
import { text } from './registry/readText';
import { firstFew } from './registry/sharedWords';

const subject = 'Weight and balance';
const mostWeight = 10_000_000;

const stationNames = column(text({ mustBe: 'the name of a station', help: 'Names of the stations, one to a row. The heaviest is taken for the empty aircraft when a move is looked for.' }));
const stationWeights = column(number({ unit: '', minimum: 0, maximum: mostWeight, help: 'Weight at each station. An empty seat is 0, not a blank.' }));
const stationArms = column(armOfItem);

const fuelQuantity = (help: string) => number({ unit: 'as the tanks', minimum: 0, maximum: mostFuel, help });
const fuelWeightEach = number({ unit: 'weight of one unit of fuel', minimum: 0, maximum: 100, aboveMinimum: true, help: 'Weight of one unit of fuel, such as 6.0 lb a US gallon or 0.72 kg a litre of avgas.' });

const parameters = {
  stations: stationNames,
  weights: stationWeights,
  arms: stationArms,
  tanks: tankRows,
  tank_arms: tankArmRows,
  fuel_weight_each: fuelWeightEach,
  taxi_fuel: fuelQuantity('Fuel burned before take-off.'),
  trip_fuel: fuelQuantity('Fuel burned from take-off to landing.'),
  envelope: envelopeTable('Two columns, arm and weight: the corners of the limits in order round them.'),
  limits: optional(limitRow, noLimits, 'only the envelope limits the weight'),
  lateral_arms: optional(column(number({ unit: '', minimum: -furthestArm, maximum: furthestArm, help: 'Lateral arm of each station, right positive, 0 on the centre line. While one is blank, lateral balance is UNKNOWN where there are lateral limits.' })), undefined, 'lateral balance is UNKNOWN where there are lateral limits'),
  track_steps: optional(number({ unit: '', minimum: 0, maximum: 200, whole: true, help: 'Parts into which the burn is cut for drawing: a row for each end of a part, from take-off to empty tanks.' }), 0, 'there are no such rows'),
};

function loadingCase(values: Values<typeof parameters>): LoadingCase {
  const { weights, arms, lateral_arms: lateralArms, limits } = values;
  const stations: Station[] = values.stations.map((name, index) => ({ name, weight: weights[index] ?? 0, arm: arms[index] ?? 0, lateralArm: lateralArms[index] }));
  const { left, right } = limits;
  return {
    stations,
    tanks: tanksOf(values.tanks, values.tank_arms),
    weightPerUnit: values.fuel_weight_each,
    taxiFuel: values.taxi_fuel,
    tripFuel: values.trip_fuel,
    envelope: values.envelope,
    limits,
    lateralLimits: left === undefined || right === undefined ? undefined : { left, right },
  };
}

/** Four digits, more for large whole numbers. */
const shown = (value: number): string => limitInWords(Math.abs(value) >= 1000 ? Math.round(value) : Number(value.toPrecision(4)));

/** Three digits, rounded down, so that no margin is made to look wider than it is. */
function spare(margin: number): string {
  const step = 10 ** Math.min(0, Math.floor(Math.log10(Math.max(margin, 1e-3))) - 2);
  return limitInWords(Number((Math.floor(margin / step + 1e-6) * step).toFixed(5)));
}
const spareInWords = (margin: number | undefined, side: string): string => `${side} ${margin === undefined ? 'none' : spare(margin)}`;

/** Why a point is OK or not, in plain numbers. */
function pointReason({ inside, limit, weight, forwardMargin, aftMargin, weightMargin }: LoadingPoint): string {
  if (limit !== undefined && weight > limit && (weightMargin ?? 0) < 0) return `${shown(weight - limit)} above the most allowed, ${shown(limit)}`;
  if (inside) return `to spare: ${spareInWords(forwardMargin, 'forward')}, ${spareInWords(aftMargin, 'aft')}, weight ${spare(weightMargin ?? 0)}`;
  if ((forwardMargin ?? 0) < 0) return `${shown(-(forwardMargin ?? 0))} ahead of the forward limit`;
  if ((aftMargin ?? 0) < 0) return `${shown(-(aftMargin ?? 0))} behind the aft limit`;
  return (weightMargin ?? 0) < 0 ? `${shown(-(weightMargin ?? 0))} above the envelope` : 'outside the envelope';
}

const pointRow = (name: string, point: LoadingPoint, reason: string): ResultCell[] => [
  name, point.verdict, point.weight, point.arm, point.forwardMargin ?? '', point.aftMargin ?? '', point.weightMargin ?? '', reason,
];

const mostNamed = 3;

/** Which lateral arms are missing: the first few by name, and how many more. */
function unplacedInWords(stations: readonly string[], tanks: readonly string[]): string {
  const items = [...stations.map((name) => `station ${inWords(name)}`), ...tanks.map((name) => `tank ${inWords(name)}`)];
  return `${firstFew(items, mostNamed)} ${items.length === 1 ? 'has' : 'have'} no lateral arm`;
}

function lateralRow(span: LateralSpan, { left, right }: LateralLimits): ResultCell[] {
  const reason =
    span.verdict === 'UNKNOWN'
      ? unplacedInWords(span.stations, span.tanks)
      : `from ${shown(span.left)} to ${shown(span.right)}, limits ${shown(left)} to ${shown(right)}`;
  return ['lateral', span.verdict, '', '', '', '', '', reason];
}

/** Four digits, rounded up, so that what is said to be enough is enough. */
function enough(weight: number): string {
  const step = 10 ** Math.min(0, Math.floor(Math.log10(weight)) - 3);
  return limitInWords(Number((Math.ceil(weight / step - 1e-6) * step).toPrecision(12)));
}

function remedyInWords(remedy: Remedy): string {
  switch (remedy.kind) {
    case 'none-needed': return 'nothing to change';
    case 'take-out': return `take ${enough(remedy.weight)} out: too heavy at ${remedy.point}`;
    case 'put-in': return `put ${enough(remedy.weight)} in: lighter at zero fuel than the envelope begins`;
    case 'none-found': return `no move between two stations is enough: bring load ${remedy.direction}`;
    case 'lateral': return `bring load to the ${remedy.direction}`;
    case 'lateral-unknown': return 'nothing fore and aft; lateral balance is not known';
    case 'move': return `move ${enough(remedy.weight)} from ${remedy.from} to ${remedy.to}${remedy.settles ? '' : '; that is not all, look at the other points'}`;
  }
}

/** The burn from take-off to empty tanks, to draw. */
function trackRows(loading: LoadingCase, steps: number): ResultCell[][] {
  if (steps === 0) return [];
  const points = trackBetween(loading, loading.taxiFuel, totalFuel(loading.tanks), steps);
  // Fuel is left from landing on: outside there, only a longer flight gets there.
  const atLanding = totalFuel(loading.tanks) - loading.taxiFuel - loading.tripFuel;
  const outside = (fuel: number): 'NO' | 'CHECK' => (fuel < atLanding * (1 - 1e-9) ? 'CHECK' : 'NO');
  return points.map((point) => pointRow('burn', { ...point, verdict: point.inside ? 'OK' : outside(point.fuel) }, `${shown(point.fuel)} of fuel on board`));
}

const exampleGiven = [
  [['empty'], ['front'], ['rear'], ['bags']],
  [[1000], [200], [100], [40]],
  [[40], [42], [70], [95]],
  [['wing', 30, 1, '']],
  [['wing', 0, 48], ['wing', 40, 48]],
  6,
  2,
  18,
  [[38, 900], [38, 1400], [40, 1700], [50, 1700], [50, 900]],
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
    point: result('', 'Zero fuel, take-off, landing, on the way, reserve, lateral (where there are limits), to change; then the burn, with the fuel on board as the reason.'),
    verdict: result('', 'OK, NO, CHECK (outside only beyond the landing fuel) or UNKNOWN.'),
    weight: result('as the weights', 'Weight at the point.'),
    arm: result('as the arms', 'Centre of gravity at the point.'),
    forward_margin: result('as the arms', 'To the forward limit; negative ahead of it.'),
    aft_margin: result('as the arms', 'To the aft limit; negative behind it.'),
    weight_margin: result('as the weights', 'To the lower of the envelope and the most allowed weight; negative above it.'),
    reason: result('', 'Why, in plain numbers.'),
  },
  sources: ['weight-balance-handbook', 'common-practice'],
  notes,
  examples: [
    {
      arguments: exampleGiven,
      formula: '=LOADING_BRIEF(B2:B5, C2:C5, D2:D5, B8:E8, B11:D12, 6, 2, 18, G2:H6)',
      gives: [
        ['zero fuel', 'OK', 1340, 44.179, 6.179, 5.821, 360, 'to spare: forward 6.17, aft 5.82, weight 360'],
        ['take-off', 'OK', 1508, 44.605, 5.885, 5.395, 192, 'to spare: forward 5.88, aft 5.39, weight 192'],
        ['landing', 'OK', 1400, 44.343, 6.343, 5.657, 300, 'to spare: forward 6.34, aft 5.65, weight 300'],
        ['on the way', 'OK', 1508, 44.605, 5.885, 5.395, 192, 'worst of the burn, to spare: forward 5.88, aft 5.39, weight 192'],
        ['reserve', 'OK', 1400, 44.343, 6.343, 5.657, 300, 'worst beyond landing, to spare: forward 6.34, aft 5.65, weight 300'],
        ['to change', '', '', '', '', '', '', 'nothing to change'],
      ],
      tolerance: 0.001,
      source: 'Invented loading, worked by hand: 1,340 at 59,200 / 1,340; 28 x 6 of fuel at 48 gives 1,508 at 67,264 / 1,508',
    },
  ],
  compute: (values) => {
    const loading = loadingCase(values);
    const judged = judgeLoading(loading);
    const { lateralLimits } = loading;
    const lateral = judged.lateral === undefined || lateralLimits === undefined ? [] : [lateralRow(judged.lateral, lateralLimits)];
    return [
      pointRow('zero fuel', judged.zeroFuel, pointReason(judged.zeroFuel)),
      pointRow('take-off', judged.takeoff, pointReason(judged.takeoff)),
      pointRow('landing', judged.landing, pointReason(judged.landing)),
      pointRow('on the way', judged.onTheWay, `worst of the burn, ${pointReason(judged.onTheWay)}`),
      pointRow('reserve', judged.reserve, `worst beyond landing, ${pointReason(judged.reserve)}`),
      ...lateral,
      ['to change', '', '', '', '', '', '', remedyInWords(remedyFor(loading, judged))],
      ...trackRows(loading, values.track_steps),
    ];
  },
});
