// Sheet functions of the standard atmosphere.
import {
  densityAltitudeFeet,
  highestAltitudeFeet,
  lowestAltitudeFeet,
  pressureAltitudeFeet,
  standardTemperatureCelsius,
} from '../../core/air/atmosphere';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { altimeterSetting, number } from '../registry/readNumber';

const subject = 'Atmosphere';

const elevation = number({ unit: 'feet', minimum: lowestAltitudeFeet, maximum: 30000, help: 'Elevation of the field above mean sea level.' });
const pressureAltitude = number({
  unit: 'feet',
  minimum: lowestAltitudeFeet,
  maximum: highestAltitudeFeet,
  help: 'Pressure altitude: what an altimeter set to 29.92 inHg or 1013.25 hPa reads.',
});
const temperature = number({ unit: 'degrees Celsius', minimum: -90, maximum: 60, help: 'Outside air temperature.' });

export const PRESSURE_ALTITUDE = mapping({
  name: 'PRESSURE_ALTITUDE',
  subject,
  summary: 'Pressure altitude of a field from its elevation and the altimeter setting.',
  parameters: {
    elevation_ft: elevation,
    altimeter_setting: altimeterSetting('25 to 32.5 is read as inches of mercury, 850 to 1,090 as hectopascals.'),
  },
  results: { pressure_altitude: result('feet', 'Pressure altitude.') },
  sources: ['icao-7488'],
  notes: 'The exact relation of the standard atmosphere, not the thousand-feet-an-inch rule.',
  examples: [
    { arguments: [5883, 30.1], gives: 5718, tolerance: 1, source: 'FAA-H-8083-25A, page 10-19, sample problem 1' },
    { arguments: [0, 1013.25], gives: 0, tolerance: 0.001, source: 'ICAO Doc 7488: the sea level of the standard atmosphere' },
  ],
  compute: ({ elevation_ft, altimeter_setting }) => ({ pressure_altitude: pressureAltitudeFeet(elevation_ft, altimeter_setting) }),
});

export const DENSITY_ALTITUDE = mapping({
  name: 'DENSITY_ALTITUDE',
  subject,
  summary: 'Density altitude: the height in the standard atmosphere at which the air is as thin as it is here today.',
  parameters: {
    pressure_altitude_ft: pressureAltitude,
    temperature_c: temperature,
    dew_point_c: optional(
      number({ unit: 'degrees Celsius', minimum: -90, maximum: 40, help: 'Dew point; moist air is lighter.' }),
      undefined,
      'the air is taken as dry',
    ),
  },
  results: { density_altitude: result('feet', 'Density altitude.') },
  sources: ['icao-7488', 'alduchov-1996', 'wmo-8'],
  notes: 'Exact for dry air. With a dew point the virtual temperature is used.',
  examples: [
    { arguments: [8000, 18], gives: 10145, tolerance: 5, source: 'Aviation Formulary (E. Williams): about 10,150 ft; the exact relation 10,145 ft' },
    { arguments: [0, 15], gives: 0, tolerance: 0.001, source: 'ICAO Doc 7488: the sea level of the standard atmosphere' },
  ],
  compute: ({ pressure_altitude_ft, temperature_c, dew_point_c }) => ({
    density_altitude: densityAltitudeFeet(pressure_altitude_ft, temperature_c, dew_point_c),
  }),
});

export const ISA_TEMPERATURE = mapping({
  name: 'ISA_TEMPERATURE',
  subject,
  summary: 'Temperature in the ICAO standard atmosphere at a pressure altitude.',
  parameters: { pressure_altitude_ft: pressureAltitude },
  results: { temperature: result('degrees Celsius', 'Standard temperature.') },
  sources: ['icao-7488'],
  notes: 'To 65,617 ft (20 km), the top of the isothermal layer.',
  examples: [{ arguments: [10000], gives: -4.81, tolerance: 0.005, source: 'ICAO Doc 7488, recomputed from its constants' }],
  compute: ({ pressure_altitude_ft }) => ({ temperature: standardTemperatureCelsius(pressure_altitude_ft) }),
});
