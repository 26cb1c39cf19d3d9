// Sheet functions that change a loading: weight to shift, ballast to add, and the track of the loading as fuel burns.
import { burnTrack, weightToAdd, weightToShift } from '../../core/loading/balanceChange';
import { armOfItem, wholeArm, wholeWeight } from './balance';
import { laying, mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { numberRows } from '../registry/readTable';

const subject = 'Weight and balance';
const unitNote = 'Any unit of weight and any unit of arm, the same ones throughout.';
const mostFuel = 1_000_000;

const arm = (help: string) => ({ ...armOfItem, help });

export const BALANCE_SHIFT = mapping({
  name: 'BALANCE_SHIFT',
  subject,
  summary: 'Weight to shift from one station to another for a wanted centre of gravity.',
  parameters: {
    weight: wholeWeight,
    arm: wholeArm,
    target_arm: arm('Centre of gravity that is wanted.'),
    from_arm: arm('Arm of the station the weight is taken from.'),
    to_arm: arm('Arm of the station the weight is put in.'),
  },
  results: { weight_to_move: result('as the weight', 'Weight to shift from from_arm to to_arm; negative: as much the other way.') },
  sources: ['weight-balance-handbook', 'phak'],
  notes: `${unitNote} More than the whole weight is refused. Whether the stations hold and may hold that much is for the manual to say.`,
  examples: [
    { arguments: [7800, 81.5, 80.5, 150, 30], gives: 65, source: 'FAA-H-8083-25 chapter on weight and balance, weight shift example (from memory)' },
    { arguments: [7800, 81.5, 80.5, 30, 150], gives: -65, source: 'The same with the stations exchanged' },
  ],
  compute: (given) => ({ weight_to_move: weightToShift(given.weight, given.arm, given.target_arm, given.from_arm, given.to_arm) }),
});

export const BALANCE_ADD = mapping({
  name: 'BALANCE_ADD',
  subject,
  summary: 'Weight to add at a station (ballast) for a wanted centre of gravity.',
  parameters: {
    weight: wholeWeight,
    arm: wholeArm,
    target_arm: arm('Centre of gravity that is wanted.'),
    at_arm: arm('Arm of the station the weight is added at.'),
  },
  results: { weight_to_add: result('as the weight', 'Weight to add at at_arm; negative: as much to take out there.') },
  sources: ['weight-balance-handbook', 'phak'],
  notes: `${unitNote} The total grows by the answer, so check it with BALANCE_CHECK.`,
  examples: [
    { arguments: [1876, 32.2, 33, 228], gives: 7.7, tolerance: 0.05, source: 'FAA-H-8083-1B, ballast example (from memory)' },
    {
      arguments: [6100, 78, 76.8, 150],
      gives: -100,
      tolerance: 1e-6,
      source: 'FAA-H-8083-25 chapter on weight and balance, weight removal example turned round (from memory)',
    },
  ],
  compute: (given) => ({ weight_to_add: weightToAdd(given.weight, given.arm, given.target_arm, given.at_arm) }),
});

const fuelTable = numberRows({
  columns: ['quantity', 'arm'],
  help: 'Two columns, quantity and arm: the centre of gravity of that much fuel in the tanks.',
});

const quantity = (help: string) => number({ unit: 'units of fuel', minimum: 0, maximum: mostFuel, help });

export const BALANCE_TRACK = laying({
  name: 'BALANCE_TRACK',
  subject,
  summary: 'The loading as fuel burns: fuel, weight and centre of gravity from the starting fuel to the last.',
  parameters: {
    zero_fuel_weight: { ...wholeWeight, help: 'Weight of the loaded aircraft without usable fuel.' },
    zero_fuel_arm: arm('Centre of gravity without usable fuel.'),
    fuel_table: fuelTable,
    fuel_start: quantity('Fuel at the start, in the unit of the fuel table.'),
    fuel_end: quantity('Fuel at the end, no more than at the start.'),
    steps: number({ unit: '', minimum: 1, maximum: 1000, whole: true, help: 'Number of equal parts of the burn; there is one row more.' }),
    weight_per_unit: optional(
      number({ unit: '', minimum: 0, maximum: 100, aboveMinimum: true, help: 'Weight of one unit of fuel, such as 6 pounds a gallon.' }),
      1,
      'the fuel is given in the unit of weight',
    ),
  },
  results: {
    fuel: result('as the fuel table', 'Fuel on board.'),
    weight: result('as the weight', 'Weight with that fuel.'),
    arm: result('as the arms', 'Centre of gravity with that fuel.'),
  },
  sources: ['weight-balance-handbook'],
  notes:
    `${unitNote} The arm of the fuel is on the straight line between the table's rows and never beyond them; empty tanks need no row. ` +
    'Between the rows laid out the centre of gravity may bend: choose steps that meet the quantities of the fuel table.',
  examples: [
    {
      arguments: [
        2000,
        40,
        [
          [0, 48],
          [20, 48],
          [40, 49],
        ],
        40,
        0,
        2,
        6,
      ],
      formula: '=BALANCE_TRACK(2000, 40, A2:B4, 40, 0, 2, 6)',
      gives: [
        [40, 2240, 91760 / 2240],
        [20, 2120, 85760 / 2120],
        [0, 2000, 40],
      ],
      tolerance: 1e-9,
      source: 'Worked by hand: 2,000 at 40 with 240 of fuel at 49, then 120 at 48, then none',
    },
  ],
  compute: (given) =>
    burnTrack({
      zeroFuelWeight: given.zero_fuel_weight,
      zeroFuelArm: given.zero_fuel_arm,
      fuelTable: given.fuel_table.map(([amount = 0, at = 0]) => ({ quantity: amount, arm: at })),
      fuelStart: given.fuel_start,
      fuelEnd: given.fuel_end,
      steps: given.steps,
      weightPerUnit: given.weight_per_unit,
    }).map((point) => [point.fuel, point.weight, point.arm]),
});
