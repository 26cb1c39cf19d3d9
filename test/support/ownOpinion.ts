// A second opinion on the items of a trip, written without the project's arithmetic: plain sums, triangles and calendars on the demo aircraft.
import { quillon } from '../../sheets-templates/demo/aircraft/quillon';

export type OwnWord = 'OK' | 'CHECK' | 'NO';

/** Everything that a random trip changes; pounds, US gallons, feet, knots, degrees, minutes. */
export interface RandomTrip {
  readonly weights: readonly number[];
  readonly tanks: readonly [number, number];
  readonly minutes: number;
  readonly alternateMinutes: number;
  readonly contingencyPercent: number;
  readonly holdingMinutes: number;
  readonly reserveMinutes: number;
  readonly isNight: boolean;
  readonly windFrom: number;
  readonly wind: number;
  readonly gust: number | undefined;
  readonly temperature: number;
  readonly setting: number;
  readonly length: number;
  readonly surface: 'paved, dry' | 'grass, dry';
  readonly slope: number;
  readonly visibility: number;
  readonly ceiling: number | undefined;
  readonly weather: string;
  /** Days after the demo day. */
  readonly daysAhead: number;
  /** Cycles before the one in force on the demo day. */
  readonly cyclesOld: number;
  /** Months before the demo month in which the annual inspection was done. */
  readonly annualMonthsAgo: number;
  readonly landings: readonly { readonly daysAgo: number; readonly count: number }[];
}

/** Numbers as the demo has them. */
const [flow, taxi, climb, usable, perGallon] = [10.5, 1.4, 0.8, 60, 6];
const runway = 210;
const factor = { takeoff: 1.5, landing: 1.67 };
const limits = { ceiling: 1500, visibility: 5 * 1609.344, crosswind: 12, spread: 10, tailwind: 5, wind: 25 };

/** On a knife's edge two honest sums may differ; `near` says so. */
export interface Opinion {
  readonly word: OwnWord;
  readonly near: boolean;
}
const by = (margin: number, edge: number): Opinion => ({ word: margin >= 0 ? 'OK' : 'NO', near: Math.abs(margin) < edge });
const worst = (...opinions: readonly Opinion[]): Opinion => ({
  word: opinions.some(({ word }) => word === 'NO') ? 'NO' : opinions.some(({ word }) => word === 'CHECK') ? 'CHECK' : 'OK',
  near: opinions.some(({ near }) => near),
});

const tripFuel = ({ minutes }: RandomTrip): number => (flow * minutes) / 60;

/** Gallons from both tanks alike; arm of a tank from 94 in empty to 95.5 in at 30 gallons. */
export function weightAndArm(trip: RandomTrip, burned: number): { readonly weight: number; readonly arm: number } {
  const stations = trip.weights.map((weight, index) => [weight, Number(quillon.stations[index]?.[2])] as const);
  // Burned together: as much from each until one is empty, then from the other alone.
  const [few, many] = [Math.min(...trip.tanks), Math.max(...trip.tanks)];
  const fromEach = Math.min(few, burned / 2);
  const fuel = [few - fromEach, many - fromEach - Math.max(0, burned - 2 * few)];
  const all = [...stations, ...fuel.map((gallons) => [gallons * perGallon, 94 + gallons * 0.05] as const)];
  const weight = all.reduce((sum, [one]) => sum + one, 0);
  return { weight, arm: all.reduce((sum, [one, arm]) => sum + one * arm, 0) / weight };
}

/** Limits of the normal category at a weight, by hand: straight from 82 in at 2,150 lb to 85.5 in at 2,650 lb. */
function inEnvelope({ weight, arm }: { readonly weight: number; readonly arm: number }): Opinion {
  const forward = weight <= 2150 ? 82 : 82 + ((weight - 2150) / 500) * 3.5;
  return worst(by(arm - forward, 1e-6), by(92 - arm, 1e-6), by(weight - 1650, 1e-6), by(2650 - weight, 1e-6));
}

/** No point is worked out for a flight that burns more than is on board. */
const burnable =
  (of: (trip: RandomTrip) => Opinion) =>
  (trip: RandomTrip): Opinion | undefined =>
    taxi + tripFuel(trip) > trip.tanks[0] + trip.tanks[1] ? undefined : of(trip);

export const loading = {
  takeoff: burnable((trip) => inEnvelope(weightAndArm(trip, taxi))),
  landing: burnable((trip) => inEnvelope(weightAndArm(trip, taxi + tripFuel(trip)))),
  zeroFuel: burnable((trip) => {
    const dry = weightAndArm({ ...trip, tanks: [0, 0] }, 0);
    return worst(inEnvelope(dry), by(2500 - dry.weight, 1e-6));
  }),
};

/** Straight lines between the printed rows, in weight, then altitude, then temperature; undefined beyond them. */
function printed(rows: readonly (readonly number[])[], inputs: readonly number[]): number | undefined {
  const [input, ...rest] = inputs;
  if (input === undefined) return rows[0]?.at(-1);
  const steps = [...new Set(rows.map(([first = 0]) => first))].sort((one, other) => one - other);
  const at = steps.findIndex((step, index) => step <= input && input <= (steps[index + 1] ?? -Infinity));
  const [low, high] = [steps[at], steps[at + 1]];
  if (low === undefined || high === undefined) return undefined;
  const of = (step: number): number | undefined =>
    printed(
      rows.filter(([first]) => first === step).map((row) => row.slice(1)),
      rest,
    );
  const [one, other] = [of(low), of(high)];
  return one === undefined || other === undefined ? undefined : one + ((other - one) * (input - low)) / (high - low);
}

/** From the standard atmosphere of ICAO Doc 7488: 288.15 K, 0.0065 K a metre, exponent 0.190263. */
const pressureAltitude = (elevation: number, setting: number): number =>
  elevation + ((288.15 / 0.0065) * (1 - (setting / 1013.25) ** 0.190263)) / 0.3048;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const ahead = (from: number, knots: number): number => knots * Math.cos(radians(from - runway));
const across = (from: number, knots: number): number => Math.abs(knots * Math.sin(radians(from - runway)));

/** A gust from behind counts, one from ahead does not. */
export const headwind = ({ windFrom, wind, gust = wind }: RandomTrip): number => Math.min(ahead(windFrom, wind), ahead(windFrom, gust));

export function takeoffRunway(trip: RandomTrip): Opinion | undefined {
  const { weight } = weightAndArm(trip, taxi);
  const book = printed(quillon.takeoff, [weight, pressureAltitude(420, trip.setting), trip.temperature]);
  if (book === undefined) return undefined;
  const wind = headwind(trip);
  const parts = [
    wind >= 0 ? 1 - 0.1 * (wind / 12) : 1 + 0.1 * (-wind / 2),
    trip.surface === 'grass, dry' ? 1.2 : 1,
    trip.slope > 0 ? 1 + 0.05 * trip.slope : 1,
  ];
  return by(trip.length - parts.reduce((distance, part) => distance * part, book) * factor.takeoff, 1);
}

export function fuel(trip: RandomTrip): Opinion {
  const least = trip.isNight ? 45 : 30;
  const aboard = trip.tanks[0] + trip.tanks[1];
  const cruise =
    trip.minutes * (1 + trip.contingencyPercent / 100) + trip.alternateMinutes + trip.holdingMinutes + Math.max(least, trip.reserveMinutes);
  return worst(by(aboard - taxi - climb - (cruise * flow) / 60, 1e-6), by(usable - aboard, 0), by(trip.reserveMinutes - least, 0));
}

/** What the words of Annex 3 mean for a light aircraft; of those that the random trips use. */
const weatherWords: Readonly<Record<string, OwnWord>> = {
  '': 'OK',
  '-RA': 'OK',
  HZ: 'OK',
  TSRA: 'NO',
  '-FZRA': 'NO',
  GR: 'NO',
  '-SN': 'CHECK',
  FG: 'CHECK',
  VCTS: 'CHECK',
};

export function windLimits(trip: RandomTrip): Opinion {
  const gust = trip.gust ?? trip.wind;
  return worst(
    by(limits.crosswind - across(trip.windFrom, Math.max(gust, trip.wind)), 0.01),
    by(limits.tailwind + headwind(trip), 0.01),
    by(limits.spread - (gust - trip.wind), 0),
  );
}

export function weather(trip: RandomTrip): Opinion {
  const visibility = trip.visibility === 9999 ? 10000 : trip.visibility;
  return worst(
    { word: weatherWords[trip.weather] ?? 'NO', near: false },
    by(visibility - limits.visibility, 0),
    by((trip.ceiling ?? Infinity) - limits.ceiling, 0),
    by(limits.wind - Math.max(trip.wind, trip.gust ?? 0), 0),
    windLimits(trip),
  );
}

const dayNumber = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
/** 29 October 2026 is an effective date of the 28 days (ICAO Doc 8126). */
export const effectiveDay = ({ cyclesOld }: RandomTrip): number => dayNumber('2026-10-29') - 28 * cyclesOld;
export const lastDay = ({ daysAhead }: RandomTrip): number => dayNumber('2026-11-25') + daysAhead;
export const data = (trip: RandomTrip): Opinion => by(effectiveDay(trip) + 27 - lastDay(trip), 0);

/** 14 CFR 91.409(a)(1): within the 12 calendar months before. */
export function annual(trip: RandomTrip): Opinion {
  const flown = new Date(lastDay(trip) * 86_400_000);
  const ago = trip.annualMonthsAgo + (flown.getUTCFullYear() - 2026) * 12 + flown.getUTCMonth() - 10;
  return by(12 - ago, 0);
}

/**
 * 14 CFR 61.57(a)(1): three "within the preceding 90 days". The day of the flight is one of the 90 here, the stricter reading, as the product says
 * beside its answer: what was done 90 days before the flight counts no more.
 */
export function landings(trip: RandomTrip): Opinion {
  const counted = trip.landings.filter(({ daysAgo }) => daysAgo + trip.daysAhead < 90).reduce((sum, { count }) => sum + count, 0);
  return { word: counted >= 3 ? 'OK' : 'NO', near: false };
}

/** Mostly trips that could be flown, some that could not. */
export function randomTrip(random: () => number): RandomTrip {
  const between = (least: number, most: number): number => least + random() * (most - least);
  const whole = (least: number, most: number): number => Math.round(between(least, most));
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const wind = whole(3, random() < 0.2 ? 28 : 14);
  return {
    weights: [1702, whole(130, 430), whole(0, 420), whole(0, 200)],
    tanks: [whole(8, 30), whole(8, 30)],
    minutes: whole(20, 130),
    alternateMinutes: whole(10, 40),
    contingencyPercent: whole(0, 20),
    holdingMinutes: pick([0, 0, 15, 30]),
    reserveMinutes: pick([25, 30, 45, 45, 60, 60]),
    isNight: random() < 0.3,
    windFrom: pick([random() < 0.7 ? whole(16, 26) * 10 : whole(1, 36) * 10]),
    wind,
    gust: random() < 0.3 ? wind + whole(2, 14) : undefined,
    temperature: whole(-8, 33),
    setting: whole(985, 1013),
    length: whole(2000, 4200),
    surface: pick(['paved, dry', 'grass, dry']),
    slope: whole(-15, 15) / 10,
    visibility: pick([9999, 9999, 9999, 9000, 8000, 5000, 2000]),
    ceiling: pick([undefined, undefined, 4000, 2500, 1500, 1400, 800]),
    weather: pick(['', '', '', '', '', '-RA', 'HZ', 'TSRA', '-FZRA', 'GR', '-SN', 'FG', 'VCTS']),
    daysAhead: 0,
    cyclesOld: pick([0, 0, 0, 1, 2]),
    annualMonthsAgo: whole(1, 14),
    landings: Array.from({ length: whole(1, 4) }, () => ({ daysAgo: whole(2, 140), count: whole(1, 3) })),
  };
}
