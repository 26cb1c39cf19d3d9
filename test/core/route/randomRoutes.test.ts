// Two thousand routes at random, and some over the poles, the date line and the equator, against flights in short steps of time:
// distance, minutes and fuel at the end of each leg within 0.1.
import { describe, expect, it } from 'vitest';
import { openTable } from '../../../core/manual/openTable';
import { typedTable } from '../../../functions/manual/readTypedTable';
import { utcDateHost } from '../../../functions/registry/utcDateHost';
import { routeOf, type RouteCase } from '../../../core/route/route';
import { flyRoute, type FlownCase, type FlownEnd } from '../../support/flyRoute';
import { randomFrom } from '../../support/seededRandom';

const named = (latitude: number, longitude: number) => ({ name: `${latitude.toFixed(6)},${longitude.toFixed(6)}`, key: `${latitude},${longitude}` });

/** The same case for core, with its places by position. */
function caseOf({ legs, winds, climb, departure, descent }: FlownCase): RouteCase {
  const points = legs.flatMap(({ from, to }) => [from, to]);
  return {
    legs: legs.map(({ from, to, altitude, knots, flow }) => ({
      from: named(...from),
      to: named(...to),
      altitudeFeet: altitude,
      trueAirspeedKnots: knots,
      flowPerHour: flow,
      power: undefined,
    })),
    places: points.map(([latitudeDegrees, longitudeDegrees], index) => ({
      named: named(latitudeDegrees, longitudeDegrees),
      position: { latitudeDegrees, longitudeDegrees },
      elevationFeet: index === 0 ? departure : (descent?.to ?? 1000) - 1000,
    })),
    winds: winds.map(({ altitude, from, knots }) => ({
      place: undefined,
      altitudeFeet: altitude,
      fromDegrees: from,
      knots,
      temperatureCelsius: undefined,
    })),
    date: { year: 2027, month: 3, day: 1 },
    fuel: 1000,
    reserve: 10,
    alternate: undefined,
    cruise: { table: undefined, weight: undefined, fuelUnit: undefined, power: undefined, trueAirspeedKnots: undefined, flowPerHour: undefined },
    climb:
      climb.length === 0
        ? undefined
        : openTable(typedTable('').read([['pressure altitude', 'minutes', 'fuel', 'distance'], ...climb.map((row) => [...row])], utcDateHost)),
    figures: { weight: undefined, climbIndicatedKnots: undefined, climbFlowPerHour: undefined, fuelUnit: undefined },
    descent: descent === undefined ? [] : [{ altitudeFeet: 30000, speed: { kind: 'mach', mach: descent.mach }, rateFeetPerMinute: descent.rate }],
    descentFlowPerHour: undefined,
    arriveAboveFeet: 1000,
  };
}

/** The ends of the legs by core; undefined where it refuses one. */
function byCore(given: FlownCase): FlownEnd[] | undefined {
  const { legs } = routeOf(caseOf(given));
  if (legs.some(({ failure }) => failure !== undefined)) return undefined;
  let [miles, minutes, fuel] = [0, 0, 0];
  return legs.map(({ parts }) => {
    for (const part of parts) {
      miles += part.toNauticalMiles - part.fromNauticalMiles;
      minutes += part.minutes;
      fuel += part.fuel;
    }
    return { miles, minutes, fuel };
  });
}

function worstOf(given: FlownCase): number | undefined {
  const [core, flown] = [byCore(given), flyRoute(given)];
  if (core === undefined || flown === undefined) {
    expect([core === undefined, flown === undefined], JSON.stringify(given)).toEqual([true, true]);
    return undefined;
  }
  const differences = core.flatMap((end, index) => [
    end.miles - (flown[index]?.miles ?? NaN),
    end.minutes - (flown[index]?.minutes ?? NaN),
    end.fuel - (flown[index]?.fuel ?? NaN),
  ]);
  const worst = Math.max(...differences.map(Math.abs));
  expect(worst, JSON.stringify(given)).toBeLessThan(0.1);
  return worst;
}

/** A climb table that gets slower with height, and legs that follow one another, each up to 250 miles. */
function anyRoute(random: () => number, latitude: number, longitude: number): FlownCase {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const knots = Math.round(between(80, 220));
  const flow = between(5, 40);
  const departure = Math.round(between(0, 4000));
  const climbs = random() < 0.8;
  let minutes = 0;
  const climb = climbs
    ? [0, 2000, 4000, 7000, 10000, 14000, 20000].map((altitude, index, all) => {
        const rate = between(900, 1100) * (1 - altitude / 24000);
        minutes += index === 0 ? 0 : (altitude - (all[index - 1] ?? 0)) / rate;
        return [altitude, minutes, (minutes / 60) * flow * 1.4, (minutes / 60) * knots * 0.8] as const;
      })
    : [];
  const level = Math.round(between(departure + 1500, 12000));
  const legs: FlownCase['legs'][number][] = [];
  let from: readonly [number, number] = [latitude, longitude];
  let altitude = level;
  for (let leg = 0; leg < 1 + Math.floor(random() * 4); leg += 1) {
    const to = [
      Math.max(-89.9, Math.min(89.9, from[0] + between(-3, 3))),
      ((from[1] + between(-4, 4) / Math.max(0.05, Math.cos((from[0] * Math.PI) / 180)) + 540) % 360) - 180,
    ] as const;
    legs.push({ from, to, altitude, knots, flow });
    from = to;
    altitude = random() < 0.3 ? Math.min(14000, altitude + Math.round(between(0, 2000))) : altitude;
  }
  const winds = [0, 3000, 6000, 9000, 12000, 15000].map((feet) => ({
    altitude: feet,
    from: Math.round(between(0, 360)),
    knots: Math.round(between(0, knots * 0.4)),
  }));
  const descent =
    random() < 0.7 ? { mach: between(0.12, 0.4), rate: Math.round(between(300, 1500)), to: Math.round(between(1000, 1400)) } : undefined;
  return { legs, winds, climb, departure, descent };
}

describe('a route against a flight in short steps', () => {
  it('agrees for 2,000 routes at random', { timeout: 300_000 }, () => {
    const random = randomFrom(20261129);
    const worst: number[] = [];
    for (let turn = 0; turn < 2000; turn += 1) {
      const latitude = turn % 10 === 0 ? 78 + 11 * random() : turn % 10 === 1 ? 4 * random() - 2 : 120 * random() - 60;
      const longitude = turn % 5 === 0 ? 178 + 2 * random() : 360 * random() - 180;
      const difference = worstOf(anyRoute(random, turn % 20 === 10 ? -latitude : latitude, longitude));
      if (difference !== undefined) worst.push(difference);
    }
    // Most of them are long enough for their climb and descent, so the agreement is about something.
    expect(worst.length).toBeGreaterThan(1500);
  });

  const steady = {
    winds: [
      { altitude: 0, from: 300, knots: 35 },
      { altitude: 12000, from: 300, knots: 35 },
    ],
    climb: [],
    departure: 0,
    descent: undefined,
  };
  const leg = (from: readonly [number, number], to: readonly [number, number]) => ({
    ...steady,
    legs: [{ from, to, altitude: 9000, knots: 140, flow: 12 }],
  });

  it.each([
    ['past the north pole', leg([88.5, 20], [88.5, -150])],
    ['over the north pole itself', leg([88, 10], [88, -170])],
    ['past the south pole', leg([-89, 0], [-88.7, 175])],
    ['across the date line', leg([52, 178], [53, -176])],
    ['across the date line westward', leg([-17, -179], [-18, 177])],
    ['across the equator', leg([-2, 10], [3, 12])],
    ['along the equator', leg([0, -3], [0, 4])],
    ['along a meridian', leg([10, 25], [14, 25])],
    ['far, with a course that turns by 60 degrees', leg([60, -80], [60, 10])],
  ])('agrees %s', (_, given) => expect(worstOf(given)).toBeDefined());
});
