// The sheet function that judges the weather of a whole trip, a row for each field.
import { dayNumber, type CivilDate } from '../../core/basics/civilDate';
import { freshMinutes, weatherBrief, type WeatherBrief } from '../../core/air/report/brief';
import { ceilingOf } from '../../core/air/report/conditions';
import { sectorOf } from '../../core/air/report/judge';
import { momentOf } from '../../core/air/report/moments';
import { worstOf } from '../../core/air/report/worstOf';
import { ArgumentError } from '../registry/argumentError';
import { mapping, result } from '../registry/declaration';
import { blankMeansUndefined, optional } from '../registry/modifiers';
import { date, timeOfDayZulu } from '../registry/readDate';
import { trueDirection } from '../registry/readNumber';
import { choice, text } from '../registry/readText';
import { metarMustBe, tafMustBe } from '../registry/sharedWords';
import { NamedArgumentError } from '../registry/wordError';
import { findingInWords, type Told } from './findingWords';
import { weatherLimits } from './readWeatherLimits';
import { ceilingCell, conditionsInWords, dayTimeInWords, listInWords, orBlank, visibilityCell } from './weatherWords';

const mayBeBlank = (mustBe: string, help: string) => blankMeansUndefined(text({ mustBe, help }));

/** A forecast that was judged for a time to come is what counts, else the report. */
function goodConditions({ metar, ageMinutes = Infinity, forecast }: WeatherBrief, role: string): string {
  const isNow = metar !== undefined && (forecast.length === 0 || role === 'departure' || ageMinutes <= freshMinutes);
  if (isNow) return conditionsInWords({ ...metar.observed, ceiling: ceilingOf(metar.observed.clouds ?? []) });
  return `forecast ${conditionsInWords(worstOf(forecast.map(({ conditions }) => conditions)))}`;
}

function reasonOf(brief: WeatherBrief, told: Told): string {
  const { findings } = brief;
  if (findings.length > 0) return [...new Set(findings.map((one) => findingInWords(one, told)))].join('; ');
  return `within your limits: ${goodConditions(brief, told.role)}`;
}

/** What the report says, blank where there is none. */
function reported({ metar, ageMinutes }: WeatherBrief) {
  const observed = metar?.observed;
  const sector = observed === undefined ? undefined : sectorOf(observed);
  return {
    report_time_z: metar === undefined ? '' : dayTimeInWords(metar.time),
    age_minutes: orBlank(ageMinutes),
    wind_from_true: orBlank(observed?.wind?.fromDegrees),
    wind_kt: orBlank(observed?.wind?.knots),
    gust_kt: orBlank(observed?.wind?.gustKnots),
    variable_from_true: orBlank(sector?.fromDegrees),
    variable_to_true: orBlank(sector?.toDegrees),
    temperature_c: orBlank(observed?.temperatureCelsius),
    dew_point_c: orBlank(observed?.dewPointCelsius),
    altimeter_hpa: orBlank(observed?.altimeterHectopascals),
    visibility_m: visibilityCell(observed?.visibility),
    ceiling_ft: ceilingCell(observed?.clouds === undefined ? undefined : ceilingOf(observed.clouds)),
    weather: listInWords(observed?.weather),
  };
}

/** The worst of the forecast for the time of use, blank where there is none. */
function forecastFor({ forecast }: WeatherBrief) {
  const { wind, sector, visibility, ceiling, weather } = worstOf(forecast.map(({ conditions }) => conditions));
  return {
    forecast_wind_from_true: orBlank(wind?.fromDegrees),
    forecast_wind_kt: orBlank(wind?.knots),
    forecast_gust_kt: orBlank(wind?.gustKnots),
    forecast_variable_from_true: orBlank(sector?.fromDegrees),
    forecast_variable_to_true: orBlank(sector?.toDegrees),
    forecast_visibility_m: visibilityCell(visibility),
    forecast_ceiling_ft: ceilingCell(ceiling),
    forecast_weather: forecast.length === 0 ? '' : listInWords(weather ?? []),
  };
}

const role = choice<'departure' | 'arrival' | 'alternate'>({
  words: ['departure', 'arrival', 'alternate'],
  also: { destination: 'arrival' },
  help: 'What the field is for on this trip. A row without a role and without reports is not judged, and stays blank.',
});

/** A row that is not judged. */
function notJudged(): ReturnType<typeof reported> & ReturnType<typeof forecastFor> {
  const none: WeatherBrief = { verdict: 'UNKNOWN', findings: [], metar: undefined, ageMinutes: undefined, forecast: [] };
  return { ...reported(none), ...forecastFor(none) };
}

export const WEATHER_BRIEF = mapping({
  name: 'WEATHER_BRIEF',
  subject: 'Weather',
  summary: "The weather of each field of a trip at the time it is used, from its METAR and TAF, judged against the pilot's own limits.",
  parameters: {
    station: mayBeBlank(
      'the code of a station, such as ABCD',
      'Station whose report is expected; blank: nobody knows whose report it is, which is CHECK.',
    ),
    metar: mayBeBlank(metarMustBe, 'The newest METAR or SPECI, pasted into one cell; blank where there is none.'),
    taf: mayBeBlank(tafMustBe, 'The newest TAF, pasted into one cell; blank where there is none.'),
    date: blankMeansUndefined(date('Date on which the field is used, in UTC.')),
    time_z: blankMeansUndefined(timeOfDayZulu('Time of take-off or landing there, UTC.')),
    role: blankMeansUndefined(role),
    limits: weatherLimits(
      "The pilot's own limits: minimum ceiling in ft, minimum visibility in m (or km, SM), maximum gust spread, and where the runway is given maximum crosswind and tailwind, in kt; maximum wind as wished.",
    ),
    as_of: optional(
      date('The day on which it is judged: a report is never of a later day.'),
      undefined,
      'a report is taken to be of the nearest day it can be of',
    ),
    runway_true: optional(
      trueDirection('True direction of the runway to be used, for the crosswind and tailwind of every wind that is reported or forecast.'),
      undefined,
      'crosswind and tailwind are not judged here',
    ),
  },
  results: {
    verdict: result('', 'NO against a limit or in weather that rules a flight out; UNKNOWN where something is missing or cannot be read; CHECK; OK.'),
    reason: result('', 'Everything that is not OK, worst first.'),
    report_time_z: result('UTC', 'Day of the month and time of the METAR, such as 281350Z.'),
    age_minutes: result('minutes', 'Age of the METAR at the time of use; negative where it is of later.'),
    wind_from_true: result('degrees true', 'METAR: where the wind blows from; blank when variable or missing.'),
    wind_kt: result('knots', 'METAR: wind speed.'),
    gust_kt: result('knots', 'METAR: gust, the whole speed; blank without one.'),
    variable_from_true: result('degrees true', 'METAR: beginning of the range of a variable wind, clockwise; 0 for VRB.'),
    variable_to_true: result('degrees true', 'METAR: end of that range; 360 for VRB.'),
    temperature_c: result('degrees Celsius', 'METAR: temperature.'),
    dew_point_c: result('degrees Celsius', 'METAR: dew point.'),
    altimeter_hpa: result('hectopascals', 'METAR: altimeter setting (QNH).'),
    visibility_m: result('metres', 'METAR: prevailing visibility, the least that the report can mean.'),
    ceiling_ft: result('feet above the field', 'METAR: ceiling; "none" without one, blank when not known.'),
    weather: result('', 'METAR: weather in words, with its code; "none" without any.'),
    forecast_wind_from_true: result('degrees true', 'TAF: direction of the strongest wind that can be; blank when variable.'),
    forecast_wind_kt: result('knots', 'TAF: speed of the strongest wind.'),
    forecast_gust_kt: result('knots', 'TAF: its gust.'),
    forecast_variable_from_true: result('degrees true', 'TAF: 0 where the strongest wind is VRB.'),
    forecast_variable_to_true: result('degrees true', 'TAF: 360 where the strongest wind is VRB.'),
    forecast_visibility_m: result('metres', 'TAF: lowest visibility that can be.'),
    forecast_ceiling_ft: result('feet above the field', 'TAF: lowest ceiling that can be; "none" without one.'),
    forecast_weather: result('', 'TAF: all the weather that can be; "none" without any.'),
  },
  sources: ['icao-annex-3', 'icao-annex-3-taf', 'wmo-306', 'aim', 'cfr-91-169', 'icao-annex-14', 'common-practice'],
  notes:
    'Ceiling is the lowest broken or overcast layer or the vertical visibility. NO by itself: thunderstorm, hail, freezing rain or drizzle, ice pellets, funnel cloud, squall, volcanic ash, sandstorm or duststorm, ' +
    'a runway that is closed or whose braking is poor. CHECK: these in the vicinity or in the past hour, heavy precipitation, snow, fog, blowing snow, cumulonimbus, towering cumulus, wind shear, any other deposit on a runway, ' +
    'a lower visibility in one direction or runway visual range. What is missing or cannot be read is UNKNOWN, never fair weather. ' +
    'A METAR serves a departure for 90 minutes, common practice, no source; an arrival or alternate later than that (two hours with a trend) wants a TAF, which is then judged from one hour before to one hour after; the METAR counts no more than CHECK there. ' +
    'TEMPO counts in full; PROB30 and PROB40 make CHECK. A departure within 90 minutes of its METAR takes the TAF for its own time. The day of the month of a report is set on the date nearest to the time of use, and never after as_of.',
  examples: [
    {
      arguments: [
        'ABCD',
        'METAR ABCD 281350Z 22012KT 9999 FEW040 18/09 Q1009',
        '',
        new Date('2026-11-28T00:00:00Z'),
        '1430',
        'departure',
        [
          ['minimum ceiling', 1500],
          ['minimum visibility', 5000],
          ['maximum gust spread', 10],
        ],
      ],
      gives: [
        [
          'OK',
          'within your limits: wind 220 at 12 kt, visibility 10,000 m or more, no ceiling',
          '281350Z',
          40,
          220,
          12,
          '',
          '',
          '',
          18,
          9,
          1009,
          10000,
          'none',
          'none',
          ...Array<string>(8).fill(''),
        ],
      ],
      source: 'Invented report, read by hand',
      formula: '=WEATHER_BRIEF(A2, B2, C2, D2, E2, F2, H2:I4)',
    },
  ],
  compute: ({ station, metar, taf, date: day, time_z, role: usedFor, limits, as_of, runway_true }) => {
    if (usedFor === undefined) {
      if (metar === undefined && taf === undefined) return { verdict: '', reason: '', ...notJudged() };
      throw new NamedArgumentError('role', new ArgumentError(role.mustBe, 'a blank'));
    }
    const use = momentOfUse(day, time_z);
    const asOfDay = as_of === undefined ? undefined : dayNumber(as_of);
    const brief = weatherBrief({ station, metar, taf, use, role: usedFor, limits, asOfDay, runwayDegrees: runway_true });
    return { verdict: brief.verdict, reason: reasonOf(brief, { station, role: usedFor, use }), ...reported(brief), ...forecastFor(brief) };
  },
});

const momentOfUse = (day: CivilDate | undefined, minutes: number | undefined): number | undefined =>
  day === undefined || minutes === undefined ? undefined : momentOf(dayNumber(day), minutes);
