// Magnetic variation: the angle from true to magnetic north, by the World Magnetic Model.
import { dayNumber, isoDate, type CivilDate } from '../basics/civilDate';
import { CoreError } from '../basics/errors';
import type { Position } from './geodesy';
import { modelVariationDegrees } from './magneticModel';
import { metresFromFeet } from '../basics/units';

export const firstModelDate: CivilDate = { year: 2025, month: 1, day: 1 };
/** The last day is 31 December 2029: the model ends at 2030.0. */
export const lastModelDate: CivilDate = { year: 2029, month: 12, day: 31 };

const millisecondsPerDay = 86_400_000;
const unixDayZero = dayNumber({ year: 1970, month: 1, day: 1 });

/**
 * Degrees, east positive, at the start of the day (0000 UTC). Height above sea level is taken for height above the ellipsoid: both
 * differ by at most 110 m, which moves the variation by less than 0.001 degree.
 * @source wmm-2025, sections on the model and on its error: standard error 0.26 degree at most places, more near the magnetic poles.
 */
export function magneticVariationDegrees({ latitudeDegrees, longitudeDegrees }: Position, date: CivilDate, altitudeFeet: number): number {
  const day = dayNumber(date);
  if (day < dayNumber(firstModelDate) || day > dayNumber(lastModelDate)) {
    throw new CoreError('model-years', { first: isoDate(firstModelDate), last: isoDate(lastModelDate), received: isoDate(date) });
  }
  return modelVariationDegrees((day - unixDayZero) * millisecondsPerDay, latitudeDegrees, longitudeDegrees, metresFromFeet(altitudeFeet));
}
