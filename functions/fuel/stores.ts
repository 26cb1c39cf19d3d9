// Sheet functions of fuel and oxygen: weight of a volume, and how long a quantity lasts.
import { enduranceMinutes, fuelWeight, oxygenMinutes, type VolumeUnit, type WeightUnit } from '../../core/fuel/stores';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { durationMinutes } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { choice } from '../registry/readText';

const subject = 'Fuel and oxygen';
const max = 1_000_000;

const unitChoices: Readonly<Record<'gal to lb' | 'L to kg' | 'L to lb' | 'gal to kg', readonly [VolumeUnit, WeightUnit]>> = {
  'gal to lb': ['usGallons', 'pounds'],
  'L to kg': ['litres', 'kilograms'],
  'L to lb': ['litres', 'pounds'],
  'gal to kg': ['usGallons', 'kilograms'],
};

const fuelChoice = choice({
  words: ['avgas', 'jet_a'],
  also: { '100LL': 'avgas', 'avgas 100LL': 'avgas', 'Jet A-1': 'jet_a', 'Jet A1': 'jet_a' },
  help: 'Kind of fuel, avgas or jet_a.',
});

const unitChoice = choice({
  words: ['gal to lb', 'L to kg', 'L to lb', 'gal to kg'],
  help: 'Units in and out: US gallons or litres, pounds or kilograms.',
});

export const FUEL_WEIGHT = mapping({
  name: 'FUEL_WEIGHT',
  subject,
  summary: 'Weight of a volume of fuel at the standard weight for loading.',
  parameters: {
    volume: number({ unit: '', minimum: 0, maximum: max, help: 'Volume of fuel, in US gallons or litres.' }),
    fuel: fuelChoice,
    unit: optional(unitChoice, 'gal to lb' as const, 'gal to lb'),
  },
  results: { weight: result('pounds or kilograms', 'Weight of the fuel, in the second unit.') },
  sources: ['weight-balance-handbook'],
  notes:
    'Avgas 6.0 pounds a US gallon or 0.72 kilograms a litre, jet fuel 6.7 or 0.80, as printed; the two do not convert exactly into one another. ' +
    'Pounds come from the first and kilograms from the second. Real fuel differs by some per cent and is lighter when warm.',
  examples: [
    { arguments: [75, 'avgas'], gives: 450, source: 'FAA-H-8083-25B figure 10-5: 75 gallons, 450 pounds' },
    {
      arguments: [100, 'jet_a', 'L to kg'],
      gives: 80,
      tolerance: 1e-9,
      source: '0.80 kg a litre, FAA-H-8083-1B table of standard weights (from memory)',
    },
  ],
  compute: ({ volume, fuel, unit }) => ({ weight: fuelWeight(volume, fuel, ...unitChoices[unit]) }),
});

export const FUEL_ENDURANCE = mapping({
  name: 'FUEL_ENDURANCE',
  subject,
  summary: 'Minutes that fuel lasts at a steady flow, down to a reserve.',
  parameters: {
    fuel: number({ unit: '', minimum: 0, maximum: max, help: 'Usable fuel on board, in any unit.' }),
    flow_per_hour: number({ unit: '', minimum: 0, maximum: max, aboveMinimum: true, help: 'Fuel flow an hour, in the same unit.' }),
    reserve_minutes: optional(durationMinutes({ help: 'Reserve to be left, at the same flow.', maximum: 1440 }), 0, 'no reserve is left'),
  },
  results: { minutes: result('minutes', 'Minutes until the reserve is reached; negative by how far the fuel is short of it.') },
  sources: ['phak'],
  notes: 'Quantity divided by flow, exact for a steady flow. Climb, taxi and unusable fuel are not in it.',
  examples: [
    { arguments: [18, 9], gives: 120, source: 'Study page example: 2.0 hours at 9 gallons an hour take 18 gallons' },
    { arguments: [22.5, 9, 30], gives: 120, source: 'The same with its 30 minutes of reserve, 4.5 gallons' },
  ],
  compute: ({ fuel, flow_per_hour, reserve_minutes }) => ({ minutes: enduranceMinutes(fuel, flow_per_hour, reserve_minutes) }),
});

export const OXYGEN_ENDURANCE = mapping({
  name: 'OXYGEN_ENDURANCE',
  subject,
  summary: 'Minutes that an oxygen cylinder lasts until it is empty.',
  parameters: {
    pressure: number({ unit: '', minimum: 0, maximum: max, help: 'Pressure on the gauge now, in any unit.' }),
    full_pressure: number({ unit: '', minimum: 0, maximum: max, aboveMinimum: true, help: 'Pressure of the full cylinder, in the same unit.' }),
    capacity_litres: number({
      unit: 'litres',
      minimum: 0,
      maximum: 100000,
      aboveMinimum: true,
      help: 'Free oxygen in the full cylinder, not its water volume.',
    }),
    people: number({ unit: 'people', minimum: 1, maximum: 100, whole: true, help: 'People breathing from it.' }),
    litres_per_minute: number({ unit: 'litres a minute', minimum: 0, maximum: 100, aboveMinimum: true, help: 'Flow to each of them.' }),
  },
  results: { minutes: result('minutes', 'Minutes until the cylinder is empty.') },
  sources: ['common-practice'],
  notes:
    'Common practice, no source. The gas left is taken in proportion to the pressure, which is within some per cent at the temperature of filling; a cold-soaked cylinder reads low. ' +
    'Nothing is kept back for the pressure that the regulator needs.',
  examples: [{ arguments: [900, 1800, 680, 2, 1], gives: 170, source: 'Worked by hand: half of 680 litres, shared by two at one litre a minute' }],
  compute: (given) => ({
    minutes: oxygenMinutes(given.pressure, given.full_pressure, given.capacity_litres, given.people, given.litres_per_minute),
  }),
});
