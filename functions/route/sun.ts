// The sheet function of sunrise, sunset and twilight, and of whether a moment is day or night.
import { dayNumber } from '../../core/basics/civilDate';
import { dayOrNight, sunTimes, type Crossing } from '../../core/route/sunTimes';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { date, timeOfDayZulu } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { zuluText } from '../registry/zuluText';

const minutesPerDay = 1440;

/** To the nearest minute, as almanacs print it. */
function timeInWords(minutes: number | undefined): string {
  if (minutes === undefined) return 'none';
  const whole = Math.round(minutes);
  const day = whole < 0 ? ' day before' : whole >= minutesPerDay ? ' next day' : '';
  return `${zuluText(whole)}${day}`;
}

function dayInWords(sun: Crossing, twilight: Crossing): string {
  const neither = ({ rising, setting }: Crossing): boolean => rising === undefined && setting === undefined;
  if (!neither(sun))
    return sun.rising !== undefined && sun.setting !== undefined ? 'sun rises and sets' : `sun does not ${sun.rising === undefined ? 'rise' : 'set'}`;
  if (sun.aboveAtNoon) return 'sun up all day';
  if (!neither(twilight)) return 'sun down all day, twilight';
  return twilight.aboveAtNoon ? 'sun down all day, never night' : 'night all day';
}

const word = (night: boolean): string => (night ? 'night' : 'day');

export const SUN_TIMES = mapping({
  name: 'SUN_TIMES',
  subject: 'Route',
  summary: 'Sunrise, sunset and civil twilight at a position on a date, and whether a time of that date is day or night.',
  parameters: {
    latitude: number({ unit: 'degrees', minimum: -90, maximum: 90, help: 'Latitude, south negative.' }),
    longitude: number({ unit: 'degrees', minimum: -180, maximum: 180, help: 'Longitude, west negative.' }),
    date: date('Date there; the times are those about its local noon.'),
    time_z: optional(timeOfDayZulu('Time to be judged, UTC, of the same date in UTC.'), undefined, 'no time is judged'),
  },
  results: {
    dawn_z: result('UTC', 'Beginning of morning civil twilight, as 0432Z; "none" where there is none.'),
    sunrise_z: result('UTC', 'Sunrise.'),
    sunset_z: result('UTC', 'Sunset.'),
    dusk_z: result('UTC', 'End of evening civil twilight.'),
    sun: result('', 'Whether the sun rises and sets, or what else it does there.'),
    civil: result('', 'day or night of time_z by civil twilight: 14 CFR 1.1, and Part-FCL where the state sets no other times.'),
    hour_rule: result('', 'day or night of time_z by 14 CFR 61.57(b): from one hour after sunset to one hour before sunrise.'),
  },
  sources: ['meeus-1998', 'usno-definitions', 'cfr-1-1', 'cfr-61-57', 'part-fcl'],
  notes:
    'For a level horizon at sea level, 34 minutes of arc of refraction and 16 of the sun. Within a minute of the almanac, but where the sun only grazes the horizon the refraction of the day moves it by minutes. ' +
    '"next day" and "day before" are days of UTC. At latitudes beyond 89 degrees a rise and a set within one hour can be missed.',
  examples: [
    {
      arguments: [59.9139, 10.7522, '2025-06-21', 1200],
      gives: [['0010Z', '0154Z', '2044Z', '2228Z', 'sun rises and sets', 'day', 'day']],
      source: 'US Naval Observatory, sun data for one day: 0010, 0154, 2044, 2228',
    },
    {
      arguments: [70, 0, '2025-12-21', 1600],
      gives: [['0955Z', 'none', 'none', '1402Z', 'sun down all day, twilight', 'night', 'night']],
      source: 'US Naval Observatory: continuously below the horizon, twilight 0955 to 1402',
    },
  ],
  compute: ({ latitude, longitude, date: given, time_z }) => {
    const place = { latitudeDegrees: latitude, longitudeDegrees: longitude };
    const day = dayNumber(given);
    const { sun, twilight } = sunTimes(place, day);
    const judged = time_z === undefined ? undefined : dayOrNight(place, day, time_z);
    return {
      dawn_z: timeInWords(twilight.rising),
      sunrise_z: timeInWords(sun.rising),
      sunset_z: timeInWords(sun.setting),
      dusk_z: timeInWords(twilight.setting),
      sun: dayInWords(sun, twilight),
      civil: judged === undefined ? '' : word(judged.civilNight),
      hour_rule: judged === undefined ? '' : word(judged.hourAfterSunset),
    };
  },
});
