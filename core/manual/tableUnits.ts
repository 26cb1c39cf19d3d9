// Units in which manuals print their tables, and the exact way from one to another.
import {
  feetFromMetres,
  kilogramsFromPounds,
  knotsFromKilometresPerHour,
  knotsFromMetresPerSecond,
  litresFromUsGallons,
  metresFromFeet,
  metresFromStatuteMiles,
  metresPerSecondFromKnots,
  nauticalMilesFromFeet,
  feetFromNauticalMiles,
  nauticalMilesFromMetres,
  metresFromNauticalMiles,
  poundsFromKilograms,
  usGallonsFromLitres,
} from '../basics/units';

export type Quantity = 'weight' | 'length' | 'temperature' | 'speed' | 'volume';

interface UnitOf {
  readonly quantity: Quantity;
  readonly toFirst: (value: number) => number;
  readonly fromFirst: (value: number) => number;
}

const same = (value: number): number => value;
const minutesPerHour = 60;

/** Each unit by the way to the first one of its quantity and back. */
const units = {
  lb: { quantity: 'weight', toFirst: same, fromFirst: same },
  kg: { quantity: 'weight', toFirst: poundsFromKilograms, fromFirst: kilogramsFromPounds },
  ft: { quantity: 'length', toFirst: same, fromFirst: same },
  m: { quantity: 'length', toFirst: feetFromMetres, fromFirst: metresFromFeet },
  '°C': { quantity: 'temperature', toFirst: same, fromFirst: same },
  '°F': { quantity: 'temperature', toFirst: (value) => ((value - 32) * 5) / 9, fromFirst: (value) => (value * 9) / 5 + 32 },
  kt: { quantity: 'speed', toFirst: same, fromFirst: same },
  'km/h': { quantity: 'speed', toFirst: knotsFromKilometresPerHour, fromFirst: (value) => metresFromNauticalMiles(value) / 1000 },
  mph: {
    quantity: 'speed',
    toFirst: (value) => nauticalMilesFromMetres(metresFromStatuteMiles(value)),
    fromFirst: (value) => metresFromNauticalMiles(value) / metresFromStatuteMiles(1),
  },
  'm/s': { quantity: 'speed', toFirst: knotsFromMetresPerSecond, fromFirst: metresPerSecondFromKnots },
  'ft/min': {
    quantity: 'speed',
    toFirst: (value) => nauticalMilesFromFeet(value * minutesPerHour),
    fromFirst: (value) => feetFromNauticalMiles(value) / minutesPerHour,
  },
  'US gal': { quantity: 'volume', toFirst: same, fromFirst: same },
  L: { quantity: 'volume', toFirst: usGallonsFromLitres, fromFirst: litresFromUsGallons },
} as const satisfies Record<string, UnitOf>;

export type TableUnit = keyof typeof units;
export const tableUnits = Object.keys(units) as readonly TableUnit[];

export const quantityOf = (unit: TableUnit): Quantity => units[unit].quantity;

/** The unit of an input whose heading names none. A weight has no usual one. */
export const usualUnits: Readonly<Record<string, TableUnit>> = {
  'pressure altitude': 'ft',
  'density altitude': 'ft',
  temperature: '°C',
  'isa deviation': '°C',
  headwind: 'kt',
};

/** From one unit of a quantity to another. Where either is not known, or they are of two quantities, the value stays what it was. */
export function converted(value: number, from: TableUnit | undefined, to: TableUnit | undefined): number {
  if (from === undefined || to === undefined || from === to || quantityOf(from) !== quantityOf(to)) return value;
  return units[to].fromFirst(units[from].toFirst(value));
}

/** A difference of temperatures has the size of its degrees alone. */
export const convertedDifference = (value: number, from: TableUnit, to: TableUnit): number => converted(value, from, to) - converted(0, from, to);
