// Flies a route in short steps, sharing nothing with core/route: positions by the library's geodesic lines, the wind triangle by the law of
// cosines, heights step by step in time. The aircraft's true airspeed in a descent comes from a Mach number, which needs the temperature only.
import geodesic from 'geographiclib-geodesic';

export interface FlownWind {
  readonly altitude: number;
  readonly from: number;
  readonly knots: number;
}

export interface FlownLeg {
  readonly from: readonly [latitude: number, longitude: number];
  readonly to: readonly [latitude: number, longitude: number];
  readonly altitude: number;
  readonly knots: number;
  readonly flow: number;
}

export interface FlownCase {
  readonly legs: readonly FlownLeg[];
  readonly winds: readonly FlownWind[];
  /** Rows of altitude, minutes, fuel, still-air miles from the first; empty: no climb. */
  readonly climb: readonly (readonly [number, number, number, number])[];
  readonly departure: number;
  /** Undefined: no descent. Mach number and feet a minute. */
  readonly descent: { readonly mach: number; readonly rate: number; readonly to: number } | undefined;
}

export interface FlownEnd {
  readonly miles: number;
  readonly minutes: number;
  readonly fuel: number;
}

/** The package's types leave its lines out. */
const lines = geodesic.Geodesic.WGS84 as typeof geodesic.Geodesic.WGS84 & {
  Line(latitude: number, longitude: number, course: number): { Position(metres: number): { lat2?: number; azi2?: number } };
};

const degree = Math.PI / 180;
const perMile = 1852;

function lineOf({ from, to }: FlownLeg) {
  const { azi1 = 0, s12 = 0 } = geodesic.Geodesic.WGS84.Inverse(from[0], from[1], to[0], to[1]);
  const line = lines.Line(from[0], from[1], azi1);
  return {
    miles: s12 / perMile,
    courseAt: (miles: number): number => line.Position(miles * perMile).azi2 ?? 0,
    latitudeAt: (miles: number): number => line.Position(miles * perMile).lat2 ?? 0,
  };
}

function windAt(winds: readonly FlownWind[], altitude: number): { east: number; north: number } {
  const rising = [...winds].sort((one, other) => one.altitude - other.altitude);
  const above = rising.find((row) => row.altitude >= altitude - 1e-6) ?? rising[rising.length - 1];
  const below = [...rising].reverse().find((row) => row.altitude <= altitude + 1e-6) ?? rising[0];
  if (above === undefined || below === undefined) throw new Error('no wind');
  const part = above.altitude === below.altitude ? 0 : (altitude - below.altitude) / (above.altitude - below.altitude);
  const east = (row: FlownWind): number => -row.knots * Math.sin(row.from * degree);
  const north = (row: FlownWind): number => -row.knots * Math.cos(row.from * degree);
  return { east: east(below) * (1 - part) + east(above) * part, north: north(below) * (1 - part) + north(above) * part };
}

/** The side of the triangle along the course: from v^2 = g^2 + w^2 - 2 g w cos(angle). */
function groundspeed(course: number, knots: number, { east, north }: { east: number; north: number }): number {
  const wind = Math.hypot(east, north);
  const towards = Math.atan2(east, north);
  const cosine = Math.cos(towards - course * degree);
  return wind * cosine + Math.sqrt(Math.max(0, knots * knots - wind * wind * (1 - cosine * cosine)));
}

/** Kelvin of the ICAO standard atmosphere. */
const kelvin = (altitude: number): number => 288.15 - 0.0065 * Math.min(altitude * 0.3048, 11000);
const knotsOfMach = (mach: number, altitude: number): number => (mach * Math.sqrt(1.4 * 287.05287 * kelvin(altitude)) * 3600) / 1852;

function climbAt(rows: FlownCase['climb'], altitude: number): { rate: number; flow: number; knots: number } {
  const place = rows.findIndex((row) => row[0] > altitude);
  const [low, high] = [rows[place - 1], rows[place]];
  if (low === undefined || high === undefined) throw new Error('beyond the climb table');
  const hours = (high[1] - low[1]) / 60;
  return { rate: (high[0] - low[0]) / (high[1] - low[1]), flow: (high[2] - low[2]) / hours, knots: (high[3] - low[3]) / hours };
}

const stepMinutes = 0.05;
const stepMiles = 1;

/** Where the last descent begins, as miles from the start of the route; flown backwards from its end in steps of time. */
function descentBegins({ legs, winds, descent }: FlownCase, lines: readonly ReturnType<typeof lineOf>[]): number {
  const whole = lines.reduce((sum, { miles }) => sum + miles, 0);
  if (descent === undefined) return whole;
  let [leg, altitude, gone] = [legs.length - 1, descent.to, 0];
  let at = lines[leg]?.miles ?? 0;
  while (leg >= 0 && altitude < (legs[leg]?.altitude ?? 0) - 1e-9) {
    const left = Math.min(stepMinutes, ((legs[leg]?.altitude ?? 0) - altitude) / descent.rate);
    const middle = altitude + (descent.rate * left) / 2;
    const knots = knotsOfMach(descent.mach, middle);
    const guess = at - (knots * left) / 120;
    const speed = groundspeed(lines[leg]?.courseAt(Math.max(0, guess)) ?? 0, knots, windAt(winds, middle));
    const miles = (speed * left) / 60;
    const share = miles > at ? at / miles : 1;
    at -= miles * share;
    gone += miles * share;
    altitude += descent.rate * left * share;
    if (share < 1) {
      leg -= 1;
      at = lines[leg]?.miles ?? 0;
    }
  }
  return leg < 0 || altitude < (legs[leg]?.altitude ?? 0) - 1e-6 ? NaN : whole - gone;
}

/** The end of each leg; undefined where the route is too short for its climb and descent. */
export function flyRoute(given: FlownCase): FlownEnd[] | undefined {
  const { legs, winds, climb, departure, descent } = given;
  const lines = legs.map(lineOf);
  const begins = descentBegins(given, lines);
  if (Number.isNaN(begins)) return undefined;
  let [altitude, minutes, fuel, flown] = [climb.length === 0 ? (legs[0]?.altitude ?? 0) : departure, 0, 0, 0];
  const ends: FlownEnd[] = [];
  for (const [place, leg] of legs.entries()) {
    const line = lines[place];
    if (line === undefined) throw new Error('a leg has its line');
    if (climb.length === 0 && flown < begins) ({ altitude } = leg);
    let at = 0;
    while (at < line.miles - 1e-9) {
      const toDescent = begins - flown;
      const descending = descent !== undefined && toDescent <= 1e-9;
      const climbing = !descending && altitude < leg.altitude - 1e-6;
      const dropping = !descending && altitude > leg.altitude + 1e-6;
      if (dropping) return undefined;
      let [time, rate, knots, flow] = [stepMinutes, 0, leg.knots, leg.flow];
      if (climbing) {
        const now = climbAt(climb, altitude + 1e-7);
        const next = climb.find((row) => row[0] > altitude + 1e-7)?.[0] ?? leg.altitude;
        time = Math.min(stepMinutes, (Math.min(next, leg.altitude) - altitude) / now.rate);
        [rate, knots, flow] = [now.rate, now.knots, now.flow];
      } else if (descending) {
        rate = -descent.rate;
        knots = knotsOfMach(descent.mach, altitude + (rate * time) / 2);
      }
      const middle = altitude + (rate * time) / 2;
      // Near a pole the course turns within a mile.
      const near = Math.abs(line.latitudeAt(at)) > 88 ? stepMiles / 20 : stepMiles;
      const ahead = climbing || descending ? (knots * time) / 60 : near;
      const wind = windAt(winds, descending ? Math.max(middle, descent.to) : middle);
      const speed = groundspeed(line.courseAt(Math.min(line.miles, at + ahead / 2)), knots, wind);
      let miles = climbing || descending ? (speed * time) / 60 : near;
      miles = Math.min(miles, line.miles - at, descending ? Infinity : Math.max(toDescent, 1e-9));
      const used = (miles / speed) * 60;
      if (climbing && descent !== undefined && toDescent <= miles + 1e-9 && altitude + rate * used < leg.altitude - 1e-3) return undefined;
      at += miles;
      flown += miles;
      minutes += used;
      fuel += (flow * used) / 60;
      altitude += rate * used;
    }
    ends.push({ miles: flown, minutes, fuel });
  }
  return ends;
}
