// Sheet functions of the flight afterwards: its times and landing, and its cost.
import { dayNumber } from '../../core/basics/civilDate';
import { amountOfUnits, splitUnits } from '../../core/ledger/shares';
import { flightRecord } from '../../core/route/record';
import { dayOrNight } from '../../core/route/sunTimes';
import { laying, mapping, result, type ResultCell } from '../registry/declaration';
import { column, optional } from '../registry/modifiers';
import { date, timeOfDayZulu } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { choice } from '../registry/readText';

const subject = 'Route';
const minutesPerHour = 60;
const latitude = (which: string) => number({ unit: 'degrees', minimum: -90, maximum: 90, help: `Latitude of the ${which}, south negative.` });
const longitude = (which: string) => number({ unit: 'degrees', minimum: -180, maximum: 180, help: `Longitude of the ${which}, west negative.` });

export const FLIGHT_RECORD = mapping({
  name: 'FLIGHT_RECORD',
  subject,
  summary: 'Block and flight time of a flight from its four times, and whether it took off and landed by day or by night.',
  parameters: {
    date: date('Date in UTC on which the aircraft first moved.'),
    off_block_z: timeOfDayZulu('First movement, UTC.'),
    take_off_z: timeOfDayZulu('Take-off.'),
    landing_z: timeOfDayZulu('Landing.'),
    on_block_z: timeOfDayZulu('Standing still.'),
    from_latitude: latitude('take-off'),
    from_longitude: longitude('take-off'),
    to_latitude: latitude('landing'),
    to_longitude: longitude('landing'),
    rules: optional(
      choice<'FAA' | 'EASA'>({
        words: ['FAA', 'EASA'],
        help: 'Whose night counts for landings: FAA (61.57(b), the hour after sunset) or EASA (civil twilight).',
      }),
      'FAA',
      'FAA',
    ),
  },
  results: {
    block_hours: result('hours', 'From first movement to rest.'),
    flight_hours: result('hours', 'From take-off to landing.'),
    take_off: result('', 'day or night.'),
    landing: result('', 'day or night.'),
    day_landings: result('', '1 or 0, for the log.'),
    night_landings: result('', '1 or 0.'),
  },
  sources: ['cfr-61-57', 'part-fcl', 'meeus-1998', 'common-practice'],
  notes:
    'Times may cross midnight: each is the next of its name after the one before it, at most 4 hours of taxiing and 20 of flight (common practice, no source). Flight time in the logs of both authorities runs from first movement to rest, which is the block time here.',
  examples: [
    {
      arguments: ['2025-06-21', 2310, 2322, 41, 50, 51.5074, -0.1278, 51.5074, -0.1278],
      gives: [[1.66667, 1.31667, 'night', 'night', 0, 1]],
      tolerance: 0.0001,
      source: 'By hand: 100 and 79 minutes across midnight; US Naval Observatory: sunset 2022, sunrise 0343',
    },
  ],
  compute: (given) => {
    const day = dayNumber(given.date);
    const { blockMinutes, flightMinutes, takeOffMinutes, landingMinutes } = flightRecord(
      given.off_block_z,
      given.take_off_z,
      given.landing_z,
      given.on_block_z,
    );
    const nightAt = (latitudeDegrees: number, longitudeDegrees: number, minutes: number): boolean => {
      const { civilNight, hourAfterSunset } = dayOrNight({ latitudeDegrees, longitudeDegrees }, day, minutes);
      return given.rules === 'FAA' ? hourAfterSunset : civilNight;
    };
    const landedByNight = nightAt(given.to_latitude, given.to_longitude, landingMinutes);
    return {
      block_hours: blockMinutes / minutesPerHour,
      flight_hours: flightMinutes / minutesPerHour,
      take_off: nightAt(given.from_latitude, given.from_longitude, takeOffMinutes) ? 'night' : 'day',
      landing: landedByNight ? 'night' : 'day',
      day_landings: landedByNight ? 0 : 1,
      night_landings: landedByNight ? 1 : 0,
    };
  },
});

const most = 1_000_000;
const amount = (unit: string, help: string) => number({ unit, minimum: 0, maximum: most, help });

export const FLIGHT_COST = laying({
  name: 'FLIGHT_COST',
  subject,
  summary: 'What a flight cost, by a wet or dry rate, fuel and fees, and the share of each on board, to the last cent.',
  parameters: {
    hours: number({ unit: 'hours', minimum: 0, maximum: 48, help: 'The hours that the rate is for, block or flight.' }),
    rate_per_hour: amount('currency', 'Rate of the aircraft an hour.'),
    rate: choice<'wet' | 'dry'>({ words: ['wet', 'dry'], help: 'Wet: fuel is in the rate; dry: it is not.' }),
    fuel: amount('', 'Fuel burned, in any unit.'),
    fuel_price: amount('currency', 'Price of one unit of it.'),
    fees: amount('currency', 'Landing and other fees together.'),
    parts: optional(
      column(number({ unit: '', minimum: 0, maximum: most, help: 'Part of each on board, one a row: 1 each for equal parts.' })),
      undefined,
      'not shared',
    ),
    decimals: optional(number({ unit: '', whole: true, minimum: 0, maximum: 3, help: 'Decimals of the currency.' }), 2, '2'),
  },
  results: {
    item: result('', 'aircraft, fuel, fees, total, then share 1, share 2, ...'),
    amount: result('currency', 'Its amount.'),
  },
  sources: ['largest-remainder', 'common-practice'],
  notes:
    'Each item is rounded to the smallest coin; the shares are those of COST_SPLIT. Who may be asked to pay, and how much, is for the rules in force (14 CFR 61.113(c): no less than an equal part for the pilot, from memory).',
  examples: [
    {
      arguments: [1.5, 120, 'dry', 14.2, 6.15, 21, [[1], [1], [1]]],
      gives: [
        ['aircraft', 180],
        ['fuel', 87.33],
        ['fees', 21],
        ['total', 288.33],
        ['share 1', 96.11],
        ['share 2', 96.11],
        ['share 3', 96.11],
      ],
      source: 'By hand: 1.5 x 120, 14.2 x 6.15, and the whole in three',
      formula: '=FLIGHT_COST(1.5, 120, "dry", 14.2, 6.15, 21, A2:A4)',
    },
  ],
  compute: ({ hours, rate_per_hour, rate, fuel, fuel_price, fees, parts, decimals }) => {
    const units = (value: number): number => Math.round(value * 10 ** decimals + 1e-7);
    const items: readonly (readonly [string, number])[] = [
      ['aircraft', units(hours * rate_per_hour)],
      ['fuel', rate === 'wet' ? 0 : units(fuel * fuel_price)],
      ['fees', units(fees)],
    ];
    const total = items.reduce((sum, [, value]) => sum + value, 0);
    const ofEach = parts.flatMap((part) => (part === undefined ? [] : [part]));
    const shares = ofEach.length === 0 ? [] : splitUnits(total, ofEach);
    const row = (item: string, value: number): ResultCell[] => [item, amountOfUnits(value, decimals)];
    return [
      ...items.map(([item, value]) => row(item, value)),
      row('total', total),
      ...shares.map((share, index) => row(`share ${index + 1}`, share)),
    ];
  },
});
