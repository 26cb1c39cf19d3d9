// Published factors by which a condition of the runway or the air lengthens a light aeroplane's distances.
import { CoreError } from '../basics/errors';

export const runwayOperations = ['takeoff', 'landing'] as const;
export type RunwayOperation = (typeof runwayOperations)[number];

export const runwayConditions = [
  'grass_dry',
  'grass_wet',
  'grass_wet_very_short',
  'soft',
  'slope',
  'tailwind',
  'weight',
  'elevation',
  'temperature',
  'paved_wet',
  'safety',
] as const;
export type RunwayCondition = (typeof runwayConditions)[number];

export interface PublishedFactor {
  readonly takeoff: number | undefined;
  readonly landing: number | undefined;
  /** The amount that the factor was published for; undefined where the condition has none. */
  readonly per: { readonly amount: number; readonly unit: string } | undefined;
}

const both = (takeoff: number, landing: number, per?: { readonly amount: number; readonly unit: string }): PublishedFactor => ({
  takeoff,
  landing,
  per,
});

/**
 * @source safety-sense-7, table of factors: firm soil, grass to 20 cm; slope uphill for take-off, downhill for landing;
 * soft ground or snow "25 percent or more", so that 1.25 is the least. Very short wet grass and a wet paved runway:
 * @source eu-965-2012, GM1 CAT.POL.A.335 and CAT.POL.A.335(a), landing only.
 */
export const publishedFactors: Readonly<Record<RunwayCondition, PublishedFactor>> = {
  grass_dry: both(1.2, 1.15),
  grass_wet: both(1.3, 1.35),
  grass_wet_very_short: { takeoff: undefined, landing: 1.6, per: undefined },
  soft: both(1.25, 1.25),
  slope: both(1.1, 1.1, { amount: 2, unit: 'percent of slope' }),
  tailwind: both(1.2, 1.2, { amount: 10, unit: 'percent of the lift-off or landing speed' }),
  weight: both(1.2, 1.1, { amount: 10, unit: 'percent more weight' }),
  elevation: both(1.1, 1.05, { amount: 1000, unit: 'feet higher' }),
  temperature: both(1.1, 1.05, { amount: 10, unit: 'degrees Celsius warmer' }),
  paved_wet: { takeoff: undefined, landing: 1.15, per: undefined },
  safety: both(1.33, 1.43),
};

/**
 * The factor, in proportion for less than the published amount, as the leaflet's own worked example takes 1.05 for
 * 500 ft where 1.10 is published for 1,000. More than the published amount is not covered.
 */
export function runwayFactor(operation: RunwayOperation, condition: RunwayCondition, amount: number | undefined): number {
  const { per, ...factors } = publishedFactors[condition];
  const factor = factors[operation];
  if (factor === undefined) {
    const published = runwayConditions.filter((other) => publishedFactors[other][operation] !== undefined);
    throw new CoreError('factor-not-published', { operation, condition, published });
  }
  if (amount === undefined) return factor;
  if (per === undefined) throw new CoreError('factor-has-no-amount', { condition, received: amount });
  if (amount < 0 || amount > per.amount) {
    throw new CoreError('outside-range', {
      quantity: 'amount',
      unit: `${per.unit}, all that is published`,
      low: 0,
      high: per.amount,
      received: amount,
    });
  }
  return 1 + ((factor - 1) * amount) / per.amount;
}
