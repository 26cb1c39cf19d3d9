// The World Magnetic Model 2025 at a moment: coefficients and spherical harmonics of the package geomagnetism.
// A module of its own, so that a host can start it at its first use.
import coefficients from 'geomagnetism/data/wmm-2025.json';
import Model from 'geomagnetism/lib/model.js';

/** The package lets the model lapse five years after its release; the model itself is valid to the end of 2029. @source wmm-2025. */
const model = new Model({ ...coefficients, start_date: '2025-01-01T00:00:00Z', end_date: '2030-01-01T00:00:00Z' });

/** The model of the last moment asked for: a column of positions is usually of one date. */
let latest: { readonly utcMilliseconds: number; readonly at: ReturnType<typeof model.getTimedModel> } | undefined;

/** Magnetic variation in degrees, east positive; height above the ellipsoid. */
export function modelVariationDegrees(utcMilliseconds: number, latitudeDegrees: number, longitudeDegrees: number, heightMetres: number): number {
  if (latest?.utcMilliseconds !== utcMilliseconds) latest = { utcMilliseconds, at: model.getTimedModel(new Date(utcMilliseconds)) };
  return latest.at.point([latitudeDegrees, longitudeDegrees, heightMetres / 1000]).decl;
}
