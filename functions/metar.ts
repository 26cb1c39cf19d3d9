// The sheet function that reads a weather report.
import { readMetar } from '../core/metar';
import { mapping, result, type ResultCell } from './registry/declaration';
import { text } from './registry/readText';
import { metarMustBe } from './registry/sharedWords';

const twoDigits = (value: number): string => String(value).padStart(2, '0');
const orBlank = (value: number | undefined): ResultCell => value ?? '';

export const METAR_READ = mapping({
  name: 'METAR_READ',
  subject: 'Weather',
  summary: 'Wind, temperature, dew point and altimeter setting from a METAR or SPECI report.',
  parameters: { text: text({ mustBe: metarMustBe, help: 'The whole report, pasted into one cell.' }) },
  results: {
    station: result('', 'Station of the report.'),
    day_time_z: result('UTC', 'Day of the month and time of day as reported: 311156Z is the 31st at 1156.'),
    wind_from_true: result('degrees true', 'Where the wind blows from; blank when variable (VRB) or missing, 0 in a calm.'),
    wind_kt: result('knots', 'Wind speed; 0 in a calm.'),
    gust_kt: result('knots', 'Gust, the whole speed; blank without one.'),
    temperature_c: result('degrees Celsius', 'Temperature; blank when missing.'),
    dew_point_c: result('degrees Celsius', 'Dew point; blank when missing.'),
    altimeter_hpa: result('hectopascals', 'Altimeter setting (QNH); blank when missing.'),
  },
  sources: ['icao-annex-3', 'fmh-1'],
  notes:
    'Wind in a report is true, runways are magnetic: turn one into the other with the variation. A variable wind (VRB) has no direction, and takes a crosswind from any side; where a range such as 180V240 is given, the direction is the mean. ' +
    'Where the remarks hold the temperature in tenths (T00781018) these are given. Metres per second become knots, inches of mercury hectopascals. What is missing stays blank; a group of wind, temperature or pressure that cannot be read is an error, never passed over. Remarks and trend forecasts are not otherwise read.',
  examples: [
    {
      arguments: ['ABCD 311156Z 12015G22KT 10SM SCT350 OVC420 08/M02 A2999 RMK A02 SLP136 T00781018 P0012'],
      gives: [['ABCD', '311156Z', 120, 15, 22, 7.8, -1.8, 1015.6]],
      tolerance: 0.05,
      source: 'Report of a university course page on METAR, its station changed: wind 120 at 15 gusting 22, 7.8 and -1.8 degrees, 29.99 inHg, which is 1,015.6 hPa',
    },
    { arguments: ['ABCD 011955Z VRB02KT CAVOK 12/05 Q1013'], gives: [['ABCD', '011955Z', '', 2, '', 12, 5, 1013]], source: 'Invented report, read by hand' },
  ],
  compute: ({ text: report }) => {
    const read = readMetar(report);
    return {
      station: read.station,
      day_time_z: `${twoDigits(read.day)}${twoDigits(read.hour)}${twoDigits(read.minute)}Z`,
      wind_from_true: orBlank(read.windFromDegrees),
      wind_kt: orBlank(read.windKnots),
      gust_kt: orBlank(read.gustKnots),
      temperature_c: orBlank(read.temperatureCelsius),
      dew_point_c: orBlank(read.dewPointCelsius),
      altimeter_hpa: orBlank(read.altimeterHectopascals),
    };
  },
});
