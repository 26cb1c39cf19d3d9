// Sheet functions of airspeed and Mach number.
import { trueAirspeedKnots } from '../core/airspeed';
import { highestAltitudeFeet, lowestAltitudeFeet } from '../core/atmosphere';
import { mapping, result } from './registry/declaration';
import { number } from './registry/readNumber';

const subject = 'Airspeed';

const temperature = number({ unit: 'degrees Celsius', minimum: -90, maximum: 60, help: 'Outside air temperature, static: freed of the heating by speed.' });

export const TRUE_AIRSPEED = mapping({
  name: 'TRUE_AIRSPEED',
  subject,
  summary: 'True airspeed from calibrated airspeed, pressure altitude and the real temperature.',
  parameters: {
    calibrated_kt: number({ unit: 'knots', minimum: 0, maximum: 700, help: 'Calibrated airspeed: what the indicator reads, less its own and its installation error.' }),
    pressure_altitude_ft: number({
      unit: 'feet',
      minimum: lowestAltitudeFeet,
      maximum: highestAltitudeFeet,
      help: 'Pressure altitude: what an altimeter set to 29.92 inHg or 1013.25 hPa reads.',
    }),
    temperature_c: temperature,
  },
  results: { true_airspeed: result('knots', 'True airspeed.') },
  sources: ['nasa-rp-1046', 'icao-7488'],
  notes: 'Compressible flow; below the speed of sound only. Rules without compressibility read up to a knot more at light-aircraft speeds, and several knots more when fast and high.',
  examples: [
    { arguments: [120, 5500, 4], gives: 130, tolerance: 0.5, source: 'EASA question bank: 120 kt calibrated at flight level 55 in the standard atmosphere is 130 kt' },
    { arguments: [200, 0, 15], gives: 200, tolerance: 1e-9, source: 'By definition: calibrated and true airspeed agree at the sea level of the standard atmosphere' },
  ],
  compute: ({ calibrated_kt, pressure_altitude_ft, temperature_c }) => ({
    true_airspeed: trueAirspeedKnots(calibrated_kt, pressure_altitude_ft, temperature_c),
  }),
});
