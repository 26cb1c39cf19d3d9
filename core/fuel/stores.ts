// Fuel and oxygen: weight of a volume, and how long a quantity lasts.
import { CoreError } from '../basics/errors';
import { litresFromUsGallons, minutesPerHour, usGallonsFromLitres } from '../basics/units';

export type FuelKind = 'avgas' | 'jet_a';
export type VolumeUnit = 'usGallons' | 'litres';
export type WeightUnit = 'pounds' | 'kilograms';

/**
 * Standard weights for loading, each as it is printed: pounds a US gallon and kilograms a litre do not convert exactly into
 * one another (6.7 lb a gallon is 0.803 kg a litre). Real fuel is within about 3 per cent, lighter when warm.
 * @source weight-balance-handbook, table of standard weights (jet fuel and kilograms a litre from memory).
 */
const weightPerVolume: Readonly<Record<FuelKind, { readonly poundsPerUsGallon: number; readonly kilogramsPerLitre: number }>> = {
  avgas: { poundsPerUsGallon: 6.0, kilogramsPerLitre: 0.72 },
  jet_a: { poundsPerUsGallon: 6.7, kilogramsPerLitre: 0.8 },
};

export function fuelWeight(volume: number, fuel: FuelKind, volumeUnit: VolumeUnit, weightUnit: WeightUnit): number {
  const { poundsPerUsGallon, kilogramsPerLitre } = weightPerVolume[fuel];
  if (weightUnit === 'pounds') return (volumeUnit === 'usGallons' ? volume : usGallonsFromLitres(volume)) * poundsPerUsGallon;
  return (volumeUnit === 'litres' ? volume : litresFromUsGallons(volume)) * kilogramsPerLitre;
}

/** Minutes until only the reserve is left; negative by how far the fuel is short of it. Quantity / rate, exact. */
export function enduranceMinutes(fuel: number, flowPerHour: number, reserveMinutes: number): number {
  return (fuel / flowPerHour) * minutesPerHour - reserveMinutes;
}

/**
 * Minutes of oxygen: gas in a cylinder is in proportion to its pressure at one temperature. Common practice, no source.
 * High-pressure gas departs from that by several per cent, and the flow is that of the regulator's setting.
 */
export function oxygenMinutes(pressure: number, fullPressure: number, capacityLitres: number, people: number, litresPerMinute: number): number {
  if (pressure > fullPressure) {
    throw new CoreError('outside-range', {
      quantity: 'pressure',
      unit: 'in the unit of full_pressure, no more than it',
      low: 0,
      high: fullPressure,
      received: pressure,
    });
  }
  return (capacityLitres * (pressure / fullPressure)) / (people * litresPerMinute);
}
