// The sheet function of the magnetic variation.
import { magneticVariationDegrees } from '../../core/navigation/magnetism';
import { mapping, result } from '../registry/declaration';
import { headingsOfRows } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { number } from '../registry/readNumber';

export const MAGNETIC_VARIATION = mapping({
  name: 'MAGNETIC_VARIATION',
  subject: 'Position and course',
  summary: 'Magnetic variation at a position and date: degrees from true to magnetic north, east positive.',
  parameters: {
    latitude: number({ unit: 'degrees', minimum: -90, maximum: 90, help: 'Latitude, decimal degrees, south negative.' }),
    longitude: number({ unit: 'degrees', minimum: -180, maximum: 180, help: 'Longitude, decimal degrees, west negative.' }),
    date: date('Date, 2025-01-01 to 2029-12-31.'),
    altitude_ft: optional(number({ unit: 'feet', minimum: -3000, maximum: 2_788_000, help: 'Height above sea level.' }), 0, 'sea level'),
    headings: headingsOfRows,
  },
  results: { variation: result('degrees', 'Variation, east positive: magnetic = true - variation.') },
  sources: ['wmm-2025'],
  notes:
    'World Magnetic Model 2025, for the five years it is made for; beyond them an error, never a number. The field changes by up to half a degree a year in places, so give the date. ' +
    'The model is within about half a degree of the real field at most places. Near the magnetic poles (WMM blackout zones, roughly beyond 80 degrees north off Canada and off Wilkes Land in the south) it is not to be navigated by. ' +
    'A chart, VOR radial or runway may carry the variation of an older year.',
  examples: [
    { arguments: [33, -118, '2025-07-02', 144357], gives: 11.1, tolerance: 0.005, source: 'NOAA, WMM2025 test values: 2025.5, 44 km, 33 N 118 W' },
    {
      arguments: [0, 120, '2025-01-01'],
      gives: -0.16,
      tolerance: 0.005,
      source: 'NOAA and BGS, WMM2025 report, test values: 2025.0, 0 km, 0 N 120 E',
    },
  ],
  compute: ({ latitude, longitude, date: day, altitude_ft }) => ({
    variation: magneticVariationDegrees({ latitudeDegrees: latitude, longitudeDegrees: longitude }, day, altitude_ft),
  }),
});
