// Sheet functions of airspeed and Mach number.
import { machFromTrue, trueAirspeedKnots } from '../../core/air/airspeed';
import { highestAltitudeFeet, lowestAltitudeFeet } from '../../core/air/atmosphere';
import { mapping, result } from '../registry/declaration';
import { number } from '../registry/readNumber';

const subject = 'Airspeed';

const temperature = number({
  unit: 'degrees Celsius',
  minimum: -90,
  maximum: 60,
  help: 'Outside air temperature, static: freed of the heating by speed.',
});

export const TRUE_AIRSPEED = mapping({
  name: 'TRUE_AIRSPEED',
  subject,
  summary: 'True airspeed from calibrated airspeed, pressure altitude and the real temperature.',
  parameters: {
    calibrated_kt: number({
      unit: 'knots',
      minimum: 0,
      maximum: 700,
      help: 'Calibrated airspeed: what the indicator reads, less its own and its installation error.',
    }),
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
  notes:
    'Compressible flow; below the speed of sound only. Rules without compressibility read up to a knot more at the speeds of light aircraft, and ten more at 250 kt and 25,000 ft.',
  examples: [
    {
      arguments: [120, 5500, 4],
      gives: 130,
      tolerance: 0.5,
      source: 'EASA question bank: 120 kt calibrated at flight level 55 in the standard atmosphere is 130 kt',
    },
    {
      arguments: [200, 0, 15],
      gives: 200,
      tolerance: 1e-9,
      source: 'By definition: calibrated and true airspeed agree at the sea level of the standard atmosphere',
    },
  ],
  compute: ({ calibrated_kt, pressure_altitude_ft, temperature_c }) => ({
    true_airspeed: trueAirspeedKnots(calibrated_kt, pressure_altitude_ft, temperature_c),
  }),
});

export const MACH_NUMBER = mapping({
  name: 'MACH_NUMBER',
  subject,
  summary: 'Mach number from true airspeed and temperature.',
  parameters: {
    true_airspeed_kt: number({ unit: 'knots', minimum: 0, maximum: 2000, help: 'True airspeed.' }),
    temperature_c: temperature,
  },
  results: { mach_number: result('', 'True airspeed over the local speed of sound.') },
  sources: ['nasa-rp-1046', 'icao-7488'],
  notes: 'The speed of sound of dry air depends on temperature alone.',
  examples: [
    { arguments: [463, -41], gives: 0.78, tolerance: 0.005, source: 'FAA airline transport pilot question: Mach 0.78 at -41 degrees is 463 kt true' },
    { arguments: [661.48, 15], gives: 1, tolerance: 0.00001, source: 'ICAO Doc 7488: the speed of sound at the standard sea level is 661.48 kt' },
  ],
  compute: ({ true_airspeed_kt, temperature_c }) => ({ mach_number: machFromTrue(true_airspeed_kt, temperature_c) }),
});
