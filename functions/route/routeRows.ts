// Lays out a route: a row for each part of each leg, then the whole, the alternate and the points of turning back.
import { CoreError } from '../../core/basics/errors';
import { asTrueDegrees, degreesFromRadians, wrapDegrees } from '../../core/basics/units';
import { worstVerdict, type Verdict } from '../../core/basics/verdict';
import { speedsAlong, type WindVector } from '../../core/air/windsAloft';
import type { Part } from '../../core/route/profile';
import type { Alternate, Route, RouteLeg } from '../../core/route/route';
import type { PointOnRoute } from '../../core/route/turnBack';
import type { ResultCell } from '../registry/declaration';
import { rounded } from '../registry/sharedWords';
import { wordLeg } from './legWords';
import { zuluText } from '../registry/zuluText';
import type { ReadLeg } from './readRoute';
import { routeCells, type RouteRow } from './routeCells';

const minutesPerHour = 60;
/** Fuel closer than this part of it is the same: only binary rounding can set it apart. */
const equalFuel = 1e-9;
/** A wind forecast so far from the leg is looked at. @source common-practice */
const farAwayNauticalMiles = 100;

export interface LayCase {
  readonly read: readonly ReadLeg[];
  readonly offMinutes: number;
  readonly fuel: number;
  readonly reserve: number;
}

/** Where the wind blows from, 0 up to 360, and its speed. */
function windOf({ toNorthKnots, toEastKnots }: WindVector) {
  const windKnots = Math.hypot(toNorthKnots, toEastKnots);
  return { windFromDegrees: windKnots === 0 ? 0 : wrapDegrees(degreesFromRadians(Math.atan2(-toEastKnots, -toNorthKnots))), windKnots };
}

type Plotted = NonNullable<RouteLeg['plotted']>;

/** Heading and course in the middle of the leg. */
function steering({ variationDegrees, planned: { line } }: Plotted, trueAirspeedKnots: number, wind: WindVector, altitudeFeet: number) {
  const course = line.middleCourse;
  const { crosswindKnots } = speedsAlong(trueAirspeedKnots, wind, course, altitudeFeet);
  const correction = degreesFromRadians(Math.asin(crosswindKnots / trueAirspeedKnots));
  const trueHeading = asTrueDegrees(course + correction);
  return { ...windOf(wind), trueCourse: course, variation: variationDegrees, magneticHeading: wrapDegrees(trueHeading - variationDegrees) };
}

const ends: Readonly<Record<Part['kind'], string>> = { climb: 'top of climb', 'step down': 'new level', cruise: 'top of descent', descent: '' };

/** What has been flown so far; undefined from the first leg on that could not be worked out. */
interface Sofar {
  minutes: number | undefined;
  fuel: number | undefined;
}

interface Laying extends LayCase {
  readonly route: Route;
  /** Wanted at the destination; undefined where the alternate is not known. */
  readonly wantedThere: number | undefined;
}

const speedOver = (nauticalMiles: number, minutes: number): number | undefined =>
  minutes > 0 ? (nauticalMiles / minutes) * minutesPerHour : undefined;
const over = ({ offMinutes }: LayCase, minutes: number | undefined): string | undefined =>
  minutes === undefined ? undefined : zuluText(offMinutes + minutes);

function fuelVerdict(left: number | undefined, wanted: number | undefined): { readonly verdict: Verdict; readonly reason: string } {
  if (left === undefined || wanted === undefined)
    return { verdict: 'UNKNOWN', reason: left === undefined ? 'what is left is not known' : 'what is still wanted is not known' };
  const short = wanted - left;
  if (short > equalFuel * Math.max(1, wanted))
    return { verdict: 'NO', reason: `${rounded(Math.ceil(short * 10) / 10)} of fuel short of what is still wanted` };
  return { verdict: 'OK', reason: '' };
}

/** Of the parts behind each: all they burn, undefined where a leg behind is not known. */
function stillToBurn({ legs }: Route): Map<Part, number | undefined> {
  const burns = new Map<Part, number | undefined>();
  let sofar: number | undefined = 0;
  for (const leg of [...legs].reverse()) {
    for (const part of [...leg.parts].reverse()) {
      burns.set(part, sofar);
      sofar = sofar === undefined ? undefined : sofar + part.fuel;
    }
    if (leg.parts.length === 0) sofar = undefined;
  }
  return burns;
}

function windAway({ planned: { air } }: Plotted): string {
  return air.awayNauticalMiles > farAwayNauticalMiles ? `the wind is that of ${air.name}, ${Math.round(air.awayNauticalMiles)} NM away` : '';
}

function legRow({ failure }: RouteLeg, { words, trouble }: ReadLeg, place: number, sofar: Sofar): RouteRow {
  const reason = failure === undefined ? trouble : wordLeg(failure);
  sofar.minutes = undefined;
  sofar.fuel = undefined;
  return { leg: place, from: words.from, to: words.to, verdict: 'UNKNOWN', reason };
}

function partRow(
  leg: RouteLeg,
  part: Part,
  names: { from: string; to: string },
  sofar: Sofar,
  given: Laying,
  burns: ReturnType<typeof stillToBurn>,
): RouteRow {
  const plotted = leg.plotted as Plotted;
  sofar.minutes = sofar.minutes === undefined ? undefined : sofar.minutes + part.minutes;
  sofar.fuel = sofar.fuel === undefined ? undefined : sofar.fuel + part.fuel;
  const behind = burns.get(part);
  const fuelLeft = sofar.fuel === undefined ? undefined : given.fuel - sofar.fuel;
  const fuelWanted = behind === undefined || given.wantedThere === undefined ? undefined : behind + given.wantedThere;
  const judged = fuelVerdict(fuelLeft, fuelWanted);
  const far = windAway(plotted);
  const nauticalMiles = part.toNauticalMiles - part.fromNauticalMiles;
  return {
    leg: part.leg + 1,
    part: part.kind,
    ...names,
    altitudeFeet: part.toFeet,
    trueAirspeedKnots: part.trueAirspeedKnots,
    ...steering(plotted, part.trueAirspeedKnots, part.wind, part.toFeet),
    nauticalMiles,
    groundspeedKnots: speedOver(nauticalMiles, part.minutes),
    minutes: part.minutes,
    fuel: part.fuel,
    timeOver: over(given, sofar.minutes),
    fuelLeft,
    fuelWanted,
    verdict: judged.verdict === 'OK' && far !== '' ? 'CHECK' : judged.verdict,
    reason: [judged.reason, far].filter((words) => words !== '').join('; '),
  };
}

function legRows(given: Laying, sofar: Sofar): RouteRow[] {
  const burns = stillToBurn(given.route);
  return given.route.legs.flatMap((leg, index): RouteRow[] => {
    const read = given.read[index];
    if (read === undefined) throw new Error('each leg has its row');
    if (leg.parts.length === 0) return [legRow(leg, read, index + 1, sofar)];
    return leg.parts.map((part, place) => {
      const before = leg.parts[place - 1];
      const from = before === undefined ? (leg.from?.name ?? '') : ends[before.kind];
      const to = place === leg.parts.length - 1 ? (leg.to?.name ?? '') : ends[part.kind];
      return partRow(leg, part, { from, to }, sofar, given, burns);
    });
  });
}

function totalRow(rows: readonly RouteRow[], given: Laying, sofar: Sofar): RouteRow {
  const { legs, climbs } = given.route;
  const sum = (of: (row: RouteRow) => number | undefined): number | undefined =>
    rows.reduce<number | undefined>((total, row) => (total === undefined || of(row) === undefined ? undefined : total + (of(row) ?? 0)), 0);
  const nauticalMiles = sum((row) => row.nauticalMiles);
  const fuelLeft = sofar.fuel === undefined ? undefined : given.fuel - sofar.fuel;
  const lost = rows.filter(({ verdict }) => verdict === 'UNKNOWN');
  const worst = worstVerdict(rows.flatMap(({ verdict }) => (verdict === '' ? [] : [verdict])));
  const unclimbed = climbs ? '' : 'no climb table: the climb is flown as cruise';
  // The leg that is wrong rather than those that only miss its time and fuel.
  const those = rows.filter(({ verdict }) => verdict === worst);
  const first = those.find(({ part }) => part === undefined) ?? those[0];
  const why = worst === 'OK' ? '' : `leg ${first?.leg ?? ''}: ${first?.reason ?? ''}`;
  return {
    leg: 'total',
    from: legs[0]?.from?.name ?? '',
    to: legs[legs.length - 1]?.to?.name ?? '',
    nauticalMiles,
    groundspeedKnots: nauticalMiles === undefined || sofar.minutes === undefined ? undefined : speedOver(nauticalMiles, sofar.minutes),
    minutes: sofar.minutes,
    fuel: sofar.fuel,
    timeOver: lost.length > 0 && sofar.minutes === undefined ? undefined : over(given, sofar.minutes),
    fuelLeft,
    fuelWanted: given.wantedThere,
    verdict: worst === 'OK' && unclimbed !== '' ? 'CHECK' : worst,
    reason: [why, unclimbed].filter((words) => words !== '').join('; '),
  };
}

function alternateRow({ place, plotted, minutes, fuel }: Alternate, from: string, given: Laying, sofar: Sofar): RouteRow {
  const { line, air, altitudeFeet, cruise } = plotted.planned;
  const fuelLeft = sofar.fuel === undefined ? undefined : given.fuel - sofar.fuel - fuel;
  const nauticalMiles = line.distanceNauticalMiles;
  return {
    leg: 'alternate',
    part: 'cruise',
    from,
    to: place.name,
    altitudeFeet,
    trueAirspeedKnots: cruise.trueAirspeedKnots,
    ...steering(plotted, cruise.trueAirspeedKnots, air.windAt(altitudeFeet), altitudeFeet),
    nauticalMiles,
    groundspeedKnots: speedOver(nauticalMiles, minutes),
    minutes,
    fuel,
    timeOver: over(given, sofar.minutes === undefined ? undefined : sofar.minutes + minutes),
    fuelLeft,
    fuelWanted: given.reserve,
    ...fuelVerdict(fuelLeft, given.reserve),
  };
}

function pointRow(leg: string, point: PointOnRoute | undefined, missing: string, said: string, given: Laying): RouteRow {
  if (point === undefined) return { leg, verdict: '', reason: missing };
  const { nauticalMiles, minutes, fuelUsed } = point;
  return { leg, nauticalMiles, minutes, fuel: fuelUsed, timeOver: over(given, minutes), fuelLeft: given.fuel - fuelUsed, verdict: '', reason: said };
}

/** Every row of the answer. */
export function routeRows(route: Route, given: LayCase): ResultCell[][] {
  const { alternate, legs } = route;
  const wantedThere = alternate instanceof CoreError ? undefined : given.reserve + (alternate?.fuel ?? 0);
  const laying = { ...given, route, wantedThere };
  const sofar: Sofar = { minutes: 0, fuel: 0 };
  const rows = legRows(laying, sofar);
  const total = totalRow(rows, laying, sofar);
  const end = legs[legs.length - 1]?.to?.name ?? '';
  const further: RouteRow[] =
    alternate === undefined
      ? []
      : [
          alternate instanceof CoreError
            ? { leg: 'alternate', verdict: 'UNKNOWN', reason: wordLeg(alternate) }
            : alternateRow(alternate, end, laying, sofar),
        ];
  const start = legs[0]?.from?.name ?? '';
  const notKnown = sofar.minutes === undefined;
  return [
    ...rows,
    total,
    ...further,
    pointRow(
      'equal time',
      route.equalTime,
      'not known: a leg is missing, or cannot be flown back',
      `from here it takes as long to ${end} as back to ${start}`,
      laying,
    ),
    pointRow(
      'safe return',
      route.safeReturn,
      notKnown || route.equalTime === undefined
        ? 'not known: a leg is missing, or cannot be flown back'
        : `not before ${end}: the fuel lasts for the way back from there`,
      `the last point from which the fuel lasts back to ${start} with the reserve`,
      laying,
    ),
  ].map(routeCells);
}
