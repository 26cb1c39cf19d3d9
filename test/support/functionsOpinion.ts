// What the sheet functions say of a random trip, called as the sheets call them, on the demo aircraft.
import { quillon } from '../../sheets-templates/demo/aircraft/quillon';
import { call, day } from './call';
import { effectiveDay, lastDay, weightAndArm, type RandomTrip } from './ownOpinion';

type Rows = readonly (readonly unknown[])[];
const rowsOf = (answer: unknown): Rows => (Array.isArray(answer) ? (answer as Rows) : []);
/** The words of the rows with these names; UNKNOWN where the call says why it cannot. */
function wordsOf(names: readonly string[], called: () => unknown): string[] {
  try {
    const rows = rowsOf(called());
    return names.map((name) => String(rows.find(([one]) => one === name)?.[1]));
  } catch {
    return names.map(() => 'UNKNOWN');
  }
}
const worded = (row: string, called: () => unknown): string => wordsOf([row], called)[0] ?? '';
const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const dateOf = (dayNumber: number): Date => new Date(dayNumber * 86_400_000);
const daysBefore = (trip: RandomTrip, days: number): Date => dateOf(lastDay(trip) - trip.daysAhead - days);
const asOf = (trip: RandomTrip): Date => daysBefore(trip, 0);

const [flow, taxi, climb, usable] = [10.5, 1.4, 0.8, 60];
const envelope = quillon.corners.filter(([category]) => category === 'normal').map((corner) => corner.slice(1));

export function loadingWords(trip: RandomTrip): Readonly<Record<'takeoff' | 'landing' | 'zeroFuel', string>> {
  const answer = (): unknown =>
    call(
      'LOADING_BRIEF',
      column(quillon.stations.map(([name]) => name)),
      column(trip.weights),
      column(quillon.stations.map(([, , arm]) => arm)),
      trip.tanks.map((gallons, index) => [quillon.tanks[index]?.[0], gallons, 1, '']),
      quillon.tankArms,
      6,
      taxi,
      (flow * trip.minutes) / 60,
      envelope,
      [[2500, 2650, 2650, '', '']],
    );
  const [takeoff = '', landing = '', zeroFuel = ''] = wordsOf(['take-off', 'landing', 'zero fuel'], answer);
  return { takeoff, landing, zeroFuel };
}

const takeoffTable = [['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'], ...quillon.takeoff];
const ownCorrections = quillon.corrections.filter(([of]) => of === 'take-off').map((row) => row.slice(1).map((value) => value ?? ''));

export function takeoffWord(trip: RandomTrip): string {
  return worded('verdict', () => {
    const corrections = rowsOf(call('RUNWAY_CORRECTIONS', 'takeoff', trip.surface, trip.slope, ownCorrections)).map((row) => row.slice(0, 4));
    const { weight } = weightAndArm(trip, taxi);
    const field = [210, trip.length, 420, trip.setting, trip.temperature] as const;
    return call(
      'TAKEOFF_BRIEF',
      takeoffTable,
      'over 50 ft',
      weight,
      ...field,
      trip.windFrom,
      trip.wind,
      1.5,
      corrections,
      trip.gust ?? '',
      '',
      '',
      'ft',
    );
  });
}

export function fuelWord(trip: RandomTrip): string {
  const aboard = trip.tanks[0] + trip.tanks[1];
  const parts = [taxi, climb, trip.contingencyPercent, trip.holdingMinutes, trip.reserveMinutes] as const;
  const rule = trip.isNight ? 'faa_vfr_night' : 'faa_vfr_day';
  return worded('verdict', () => call('FUEL_BRIEF', rule, trip.minutes, flow, aboard, usable, trip.alternateMinutes, ...parts, 'US gal'));
}

const two = (value: number): string => String(value).padStart(2, '0');
export function metarOf({ windFrom, wind, gust, visibility, ceiling, weather, temperature, setting }: RandomTrip, station = 'ZZXA'): string {
  const blows = `${String(windFrom).padStart(3, '0')}${two(wind)}${gust === undefined ? '' : `G${two(gust)}`}KT`;
  const clouds = ceiling === undefined ? 'FEW045' : `BKN${String(ceiling / 100).padStart(3, '0')}`;
  const degrees = temperature < 0 ? `M${two(-temperature)}` : two(temperature);
  const dewPoint = temperature < 8 ? `M${two(8 - temperature)}` : two(temperature - 8);
  const sky = [String(visibility).padStart(4, '0'), ...(weather === '' ? [] : [weather]), clouds].join(' ');
  return `METAR ${station} 251350Z ${blows} ${sky} ${degrees}/${dewPoint} Q${String(setting).padStart(4, '0')}`;
}

const limits = [
  ['minimum ceiling', 1500, 'ft'],
  ['minimum visibility', 5, 'SM'],
  ['maximum crosswind', 12, 'kt'],
  ['maximum gust spread', 10, 'kt'],
  ['maximum tailwind', 5, 'kt'],
  ['maximum wind', 25, 'kt'],
];
export function weatherWord(trip: RandomTrip): string {
  const [row] = rowsOf(call('WEATHER_BRIEF', 'ZZXA', metarOf(trip), '', asOf(trip), 1430, 'departure', limits, asOf(trip), 210));
  return String(row?.[0]);
}

export function dataWord(trip: RandomTrip): string {
  const loaded = dateOf(effectiveDay(trip));
  const flown = [asOf(trip), dateOf(lastDay(trip)), asOf(trip)] as const;
  const card = ['Quillon Four', 'navigation', '28-day', loaded, loaded] as const;
  return String(rowsOf(call('LEDGER_FOR_FLIGHT', ...card.map((value) => [[value]]), '', '', 'Quillon Four', ...flown, [[loaded]]))[0]?.[1]);
}

const fleet = [
  ['aircraft', 'tailwheel', 'category', 'device', 'type rating', 'class', 'hours'],
  ['Quillon Four', '', 'airplane', '', '', 'SEL', 1287.6],
];
export function aircraftWord(trip: RandomTrip): string {
  const heads = ['item', 'aircraft', 'done at, h', 'was due at, h', 'done on', 'every months', 'every days', 'every hours'];
  const done = new Date(Date.UTC(2026, 10 - trip.annualMonthsAgo, 12));
  const good: readonly (readonly [string, Date])[] = [
    ['transponder', day('2026-06-01')],
    ['ELT inspection', day('2026-06-01')],
    ['ELT battery', day('2028-08-31')],
  ];
  const items = [['annual inspection', done] as const, ...good].map(([item, on]) => [item, 'Quillon Four', '', '', on, '', '', '']);
  const answer = call(
    'AIRCRAFT_FOR_FLIGHT',
    [heads, ...items],
    fleet,
    'Quillon Four',
    dateOf(lastDay(trip)),
    asOf(trip),
    'FAA',
    trip.minutes / 60,
    'no',
  );
  return String(rowsOf(answer)[0]?.[1]);
}

export function pilotWord(trip: RandomTrip): string {
  const heads = ['aircraft', 'date', 'day landings', 'day full stop', 'night landings', 'night full stop', 'hours', 'PIC'];
  const flights = trip.landings.map(({ daysAgo, count }) => ['Quillon Four', daysBefore(trip, daysAgo), count, count, '', '', 1, 1]);
  const papers = [
    ['flight review', day('2026-06-27'), ''],
    ['medical examination', day('2026-03-03'), ''],
    ['medical class', 2, ''],
    ['birth date', day('1984-05-12'), ''],
  ];
  const days = [dateOf(lastDay(trip)), asOf(trip)] as const;
  return String(
    rowsOf(call('PILOT_FOR_FLIGHT', [heads, ...flights], fleet, papers, 'Quillon Four', ...days, 'FAA', 'yes', 'no', 'no', asOf(trip)))[0]?.[1],
  );
}
