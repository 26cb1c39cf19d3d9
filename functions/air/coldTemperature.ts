// The sheet function of altimeter corrections in cold air.
import { coldTemperatureCorrectionFeet } from '../../core/air/coldTemperature';
import { mapping, result } from '../registry/declaration';
import { number } from '../registry/readNumber';

export const COLD_TEMPERATURE_CORRECTION = mapping({
  name: 'COLD_TEMPERATURE_CORRECTION',
  subject: 'Atmosphere',
  summary: 'Feet to add to a published minimum altitude or height when the air is colder than standard.',
  parameters: {
    height_above_source_ft: number({
      unit: 'feet',
      minimum: 0,
      maximum: 5000,
      help: 'Height above the altimeter setting source: the published altitude less the elevation of the source.',
    }),
    source_elevation_ft: number({
      unit: 'feet',
      minimum: -1500,
      maximum: 10000,
      help: 'Elevation of the altimeter setting source, normally the aerodrome.',
    }),
    temperature_c: number({
      unit: 'degrees Celsius',
      minimum: -50,
      maximum: 60,
      help: 'Temperature reported at the altimeter setting source, not aloft.',
    }),
  },
  results: { correction: result('feet to add', 'What to add; 0 where the air is not colder than standard.') },
  sources: ['icao-8168', 'aim'],
  notes:
    'The formula of ICAO Doc 8168, good to 5 % for sources up to 10,000 ft and heights up to 5,000 ft above them; its table ends at -50 degrees, and nothing is extrapolated. Not rounded: the printed tables round up to the next 10 ft and take the source to be at sea level, which asks for a little more at a high aerodrome. Rules on when a correction is due, and whom to tell, differ by country.',
  examples: [
    {
      arguments: [1000, 0, -10],
      gives: 95.4,
      tolerance: 0.05,
      source: 'FAA AIM, ICAO Cold Temperature Error Table: 100 ft, rounded up; 95.4 by hand, 1,000 x 25 / (263 - 0.99)',
    },
    { arguments: [1500, 0, 20], gives: 0, source: 'By definition: no correction in air warmer than standard' },
  ],
  compute: ({ height_above_source_ft, source_elevation_ft, temperature_c }) => ({
    correction: coldTemperatureCorrectionFeet(height_above_source_ft, source_elevation_ft, temperature_c),
  }),
});
