// The World Magnetic Model 2025 at a moment: coefficients and spherical harmonics of the package geomagnetism.
// A module of its own, so that a host can start it at its first use.
import coefficients from 'geomagnetism/data/wmm-2025.json';
import Model from 'geomagnetism/lib/model.js';

/** The package lets the model lapse five years after its release; the model itself is valid to the end of 2029. @source wmm-2025. */
const model = new Model({ ...coefficients, start_date: '2025-01-01T00:00:00Z', end_date: '2030-01-01T00:00:00Z' });

/** The model of each moment asked for: a column of positions has few dates, and five years have fewer days than this. */
const timed = new Map<number, ReturnType<typeof model.getTimedModel>>();
const maxKept = 2000;

function modelAt(utcMilliseconds: number): ReturnType<typeof model.getTimedModel> {
  const known = timed.get(utcMilliseconds);
  if (known !== undefined) return known;
  if (timed.size >= maxKept) timed.clear();
  const made = model.getTimedModel(new Date(utcMilliseconds));
  timed.set(utcMilliseconds, made);
  return made;
}

/** Magnetic variation in degrees, east positive; height above the ellipsoid. */
export const modelVariationDegrees = (utcMilliseconds: number, latitudeDegrees: number, longitudeDegrees: number, heightMetres: number): number =>
  modelAt(utcMilliseconds).point([latitudeDegrees, longitudeDegrees, heightMetres / 1000]).decl;
