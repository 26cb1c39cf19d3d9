// The sheet functions that read a forecast: all of it, and for one time.
import { dayNumber } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { ceilingOf } from '../../core/air/report/conditions';
import { inForce } from '../../core/air/report/inForce';
import { marginMinutes } from '../../core/air/report/brief';
import { momentOf, placeTaf } from '../../core/air/report/moments';
import { readTaf, tafUnreadable } from '../../core/air/report/taf';
import { worstOf } from '../../core/air/report/worstOf';
import { laying, mapping, result, type ResultCell } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { date, durationMinutes, timeOfDayZulu } from '../registry/readDate';
import { text } from '../registry/readText';
import { tafMustBe } from '../registry/sharedWords';
import { ceilingCell, cloudsInWords, dayTimeInWords, listInWords, orBlank, visibilityCell } from './weatherWords';

const forecast = text({ mustBe: tafMustBe, help: 'The whole forecast, pasted into one cell; its lines may stay.' });

export const TAF_READ = laying({
  name: 'TAF_READ',
  subject: 'Weather',
  summary: 'The groups of a forecast (TAF), one a row, with the time each is for.',
  parameters: { text: forecast },
  results: {
    group: result('', 'FROM for the beginning and for FM; BECMG, TEMPO, PROB30 and so on.'),
    from_z: result('UTC', 'Day of the month and time from which it is for, such as 091930Z.'),
    to_z: result('UTC', 'Until when: for FROM the next FM or the end of the forecast. 2400Z is the end of that day.'),
    wind_from_true: result('degrees true', 'Where the wind will blow from; blank when variable or not said.'),
    wind_kt: result('knots', 'Wind speed; blank when not said.'),
    gust_kt: result('knots', 'Gust, the whole speed.'),
    visibility_m: result('metres', 'The least that the group can mean: 10000 for 9999 and CAVOK, 9656 for P6SM; blank when not said.'),
    ceiling_ft: result('feet above the field', 'Lowest broken or overcast layer, or vertical visibility; "none" without one, blank when not said.'),
    weather: result('', 'In words, with its code; "none" for NSW; blank when not said.'),
    clouds: result('', 'Every layer; blank when not said.'),
    wind_shear: result('', 'Wind shear near the ground as written: WS020/24045KT is 240 degrees true at 45 kt, 2,000 ft above the field.'),
    unread: result('', 'Every part of the group that cannot be read, as written.'),
  },
  sources: ['icao-annex-3-taf', 'wmo-306', 'aim'],
  notes:
    'In BECMG, TEMPO and PROB groups a blank means not said: it stays as before. TX and TN, remarks and "AMD NOT SKED" are passed over. A group whose times cannot be read ' +
    'makes a last row of its own, with all of it under unread. Forecasts in the form before 2008, with hours only, are refused.',
  examples: [
    {
      arguments: ['TAF ABCD 151800Z 1600/1618 13005KT 9000 BKN020 TEMPO 1608/1612 17006G12KT 1000 TSRA SCT010CB BKN020 FM161230 15004KT 9999 BKN020'],
      gives: [
        ['FROM', '160000Z', '161230Z', 130, 5, '', 9000, 2000, '', 'BKN 2,000 ft', '', ''],
        ['TEMPO', '160800Z', '161200Z', 170, 6, 12, 1000, 2000, 'thunderstorm with rain (TSRA)', 'SCT 1,000 ft CB, BKN 2,000 ft', '', ''],
        ['FROM', '161230Z', '161800Z', 150, 4, '', 10000, 2000, '', 'BKN 2,000 ft', '', ''],
      ],
      source: 'ICAO Annex 3, appendix 5, example A5-1, its station and the unit of its winds changed and BECMG left out, read by hand',
    },
  ],
  compute: ({ text: pasted }) => {
    const taf = readTaf(pasted);
    const rows = taf.groups.map(({ name, from, to, conditions }): ResultCell[] => [
      name === '' || name === 'FM' ? 'FROM' : name,
      dayTimeInWords(from),
      dayTimeInWords(to),
      orBlank(conditions.wind?.fromDegrees),
      orBlank(conditions.wind?.knots),
      orBlank(conditions.wind?.gustKnots),
      visibilityCell(conditions.visibility),
      ceilingCell(conditions.clouds === undefined ? undefined : ceilingOf(conditions.clouds)),
      listInWords(conditions.weather),
      cloudsInWords(conditions.clouds),
      (conditions.windShear ?? []).join(', '),
      conditions.unread.join(' '),
    ]);
    return [...rows, ...taf.withoutTimes.map((written) => [...Array<ResultCell>(11).fill(''), written])];
  },
});

export const TAF_AT = mapping({
  name: 'TAF_AT',
  subject: 'Weather',
  summary: 'The worst of what a forecast (TAF) has for one time, an hour early or late included.',
  parameters: {
    text: forecast,
    date: date('Date of the time, in UTC.'),
    time_z: timeOfDayZulu('Time of arrival, or of any other use of the field, UTC.'),
    margin_minutes: optional(
      durationMinutes({ maximum: 720, help: 'How much earlier or later it can be: every group in force in that time counts.' }),
      marginMinutes,
      'one hour before to one hour after, as 14 CFR 91.169 has it',
    ),
  },
  results: {
    visibility_m: result('metres', 'Lowest visibility, the least that its group can mean; blank when no group says it.'),
    ceiling_ft: result('feet above the field', 'Lowest ceiling; "none" where no group has one, blank when not known.'),
    wind_from_true: result('degrees true', 'Direction of the strongest wind; blank when variable.'),
    wind_kt: result('knots', 'Speed of the strongest wind.'),
    gust_kt: result('knots', 'Its gust; blank without one.'),
    weather: result('', 'All the weather that can be, in words, with its code; "none" without any.'),
    wind_shear: result('', 'Wind shear near the ground, as written.'),
    groups: result('', 'The groups that can be in force, as each begins; "first" is the beginning of the forecast.'),
    unread: result('', 'What cannot be read anywhere in the forecast, as written: with anything here the answer may be too good.'),
  },
  sources: ['icao-annex-3-taf', 'wmo-306', 'cfr-91-169', 'aim'],
  notes:
    'While a BECMG is going on, what was before and what is to come both count; after it what it names is new. TEMPO and PROB count in all of their time, whatever the probability. ' +
    'The day of the month is set on the calendar nearest to the date, also across midnight and the end of a month. A time outside the forecast is refused; before its beginning and behind its end nothing is assumed.',
  examples: [
    {
      arguments: [
        'TAF ABCD 091730Z 0918/1024 15005KT 5SM HZ FEW020 WS010/31022KT FM091930 30015G25KT 3SM SHRA OVC015 TEMPO 0920/0922 1/2SM +TSRA OVC008CB FM100100 27008KT 5SM SHRA BKN020 OVC040',
        new Date('2026-04-09T00:00:00Z'),
        '2030',
      ],
      gives: [[804, 800, 300, 15, 25, 'rain showers (SHRA), thunderstorm with heavy rain (+TSRA)', '', 'FM091930, TEMPO 0920/0922', '']],
      source: 'FAA key to TAF in AIM 7-1, its station changed, read by hand: half a statute mile, overcast at 800 ft with CB',
    },
  ],
  compute: ({ text: pasted, date: day, time_z, margin_minutes }) => {
    const wanted = momentOf(dayNumber(day), time_z);
    const taf = readTaf(pasted);
    const placed = placeTaf(taf, wanted);
    if (placed === undefined) throw tafUnreadable(pasted, 'validity');
    const { from, to, changes, outside } = placed;
    if (wanted < from || wanted > to) throw new CoreError('taf-not-covering', { from, to, wanted });
    const held = inForce(changes, wanted - margin_minutes, wanted + margin_minutes);
    const { visibility, ceiling, wind, weather, windShear } = worstOf(held.map(({ conditions }) => conditions));
    return {
      visibility_m: visibilityCell(visibility),
      ceiling_ft: ceilingCell(ceiling),
      wind_from_true: orBlank(wind?.fromDegrees),
      wind_kt: orBlank(wind?.knots),
      gust_kt: orBlank(wind?.gustKnots),
      weather: listInWords(weather ?? []),
      wind_shear: windShear.join(', '),
      groups: held.map(({ written }) => (written === '' ? 'first' : written)).join(', '),
      unread: [...taf.unread, ...outside].join(' '),
    };
  },
});
