// The sheet functions that read a weather report.
import { ceilingOf } from '../../core/air/report/conditions';
import { sectorOf } from '../../core/air/report/judge';
import { readMeasured, readMetar } from '../../core/air/report/metar';
import { mapping, result } from '../registry/declaration';
import { text } from '../registry/readText';
import { metarMustBe } from '../registry/sharedWords';
import { ceilingCell, cloudsInWords, dayTimeInWords, listInWords, orBlank, runwayStateInWords, visibilityCell } from './weatherWords';

const report = text({ mustBe: metarMustBe, help: 'The whole report, pasted into one cell.' });

export const METAR_READ = mapping({
  name: 'METAR_READ',
  subject: 'Weather',
  summary: 'Wind, temperature, dew point and altimeter setting from a METAR or SPECI report.',
  parameters: { text: report },
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
    'Where the remarks hold the temperature in tenths (T00781018) these are given. Metres a second and kilometres an hour become knots, inches of mercury hectopascals. What is missing stays blank; a group of wind, temperature or pressure that cannot be read is an error, never passed over. Remarks and trend forecasts are not otherwise read.',
  examples: [
    {
      arguments: ['ABCD 311156Z 12015G22KT 10SM SCT350 OVC420 08/M02 A2999 RMK A02 SLP136 T00781018 P0012'],
      gives: [['ABCD', '311156Z', 120, 15, 22, 7.8, -1.8, 1015.6]],
      tolerance: 0.05,
      source:
        'Report of a university course page on METAR, its station changed: wind 120 at 15 gusting 22, 7.8 and -1.8 degrees, 29.99 inHg, which is 1,015.6 hPa',
    },
    {
      arguments: ['ABCD 011955Z VRB02KT CAVOK 12/05 Q1013'],
      gives: [['ABCD', '011955Z', '', 2, '', 12, 5, 1013]],
      source: 'Invented report, read by hand',
    },
  ],
  compute: ({ text: pasted }) => {
    const { station, time, observed } = readMeasured(pasted);
    return {
      station,
      day_time_z: dayTimeInWords(time),
      wind_from_true: orBlank(observed.wind?.fromDegrees),
      wind_kt: orBlank(observed.wind?.knots),
      gust_kt: orBlank(observed.wind?.gustKnots),
      temperature_c: orBlank(observed.temperatureCelsius),
      dew_point_c: orBlank(observed.dewPointCelsius),
      altimeter_hpa: orBlank(observed.altimeterHectopascals),
    };
  },
});

export const METAR_WEATHER = mapping({
  name: 'METAR_WEATHER',
  subject: 'Weather',
  summary: 'Visibility, ceiling, weather, clouds, variable wind, wind shear and the state of the runways from a METAR or SPECI report.',
  parameters: { text: report },
  results: {
    visibility_m: result(
      'metres',
      'Prevailing visibility, the least that the report can mean: 10000 for 9999 and CAVOK, 0 for M1/4SM; blank when missing.',
    ),
    ceiling_ft: result('feet above the field', 'Lowest broken or overcast layer, or vertical visibility; "none" without one, blank when not known.'),
    weather: result('', 'Present weather in words, with its code; "none" without any, blank when missing.'),
    clouds: result('', 'Every layer; "none" for NSC, NCD, SKC, CLR and CAVOK, blank when missing.'),
    variable_from_true: result('degrees true', 'Beginning of the range of a variable wind, clockwise; 0 for VRB; blank for a steady direction.'),
    variable_to_true: result('degrees true', 'End of that range; 360 for VRB.'),
    wind_shear: result('', 'Wind shear as reported; blank without any.'),
    runway_state: result('', 'State of the runways in words, with its code; blank without any.'),
    trend: result('', 'Groups that begin a trend, NOSIG, or blank without a trend.'),
    unread: result('', 'Every group that cannot be read, as written: the report says more than the other columns. Blank where all is read.'),
  },
  sources: ['icao-annex-3', 'wmo-306', 'fmh-1', 'aim'],
  notes:
    'Every group in front of the remarks is either read or named as unread. Statute miles become metres (1 SM is 1,609.344 m). Remarks are passed over. ' +
    'A lower visibility in one direction, runway visual ranges and recent weather are read and judged by WEATHER_BRIEF.',
  examples: [
    {
      arguments: ['ABCD 091955Z COR 22015G25KT 3/4SM R28L/2600FT TSRA OVC010CB 18/16 A2992 RMK SLP045 T01820159'],
      gives: [[1207, 1000, 'thunderstorm with rain (TSRA)', 'OVC 1,000 ft CB', '', '', '', '', '', '']],
      source:
        'FAA key to METAR in AIM 7-1, its station changed: three quarters of a statute mile, overcast at 1,000 ft with CB, thunderstorm with rain',
    },
    {
      arguments: ['ABCD 011955Z VRB02KT CAVOK 12/05 Q1013 NOSIG'],
      gives: [[10000, 'none', 'none', 'none', 0, 360, '', '', 'NOSIG', '']],
      source: 'Invented report, read by hand',
    },
    {
      arguments: ['ABCD 281350Z 04012KT 0200 FZFG VVO01 M02/M02 Q1021 R21/490535'],
      gives: [
        [
          200,
          '',
          'freezing fog (FZFG)',
          '',
          '',
          '',
          '',
          'runway 21 dry snow on 51 to 100 %, 5 mm deep, friction coefficient 0.35 (R21/490535)',
          '',
          'VVO01',
        ],
      ],
      source: 'Invented report with a typing error, read by hand with WMO No. 306, code tables 0919, 0519, 1079 and 0366',
    },
  ],
  compute: ({ text: pasted }) => {
    const { observed, trends } = readMetar(pasted);
    const { visibility, weather, clouds, windShear = [], runwayStates = [], unread } = observed;
    const sector = sectorOf(observed);
    return {
      visibility_m: visibilityCell(visibility),
      ceiling_ft: ceilingCell(clouds === undefined ? undefined : ceilingOf(clouds)),
      weather: listInWords(weather),
      clouds: cloudsInWords(clouds),
      variable_from_true: orBlank(sector?.fromDegrees),
      variable_to_true: orBlank(sector?.toDegrees),
      wind_shear: windShear.join(', '),
      runway_state: runwayStates.map(runwayStateInWords).join('; '),
      trend: trends === undefined ? '' : trends.length === 0 ? 'NOSIG' : trends.map(({ written }) => written).join(', '),
      unread: [...unread, ...(trends ?? []).flatMap(({ conditions }) => conditions.unread)].join(' '),
    };
  },
});
