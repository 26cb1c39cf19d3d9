// Properties that hold for any loading: fuel kept, points on the track, totals unchanged by a move, remedies that settle.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { envelopeFromPoints, placeInEnvelope, totalLoading } from '../../../core/loading/balance';
import { judgeLoading, trackBetween, type LoadingCase, type LoadingPoint, type LoadingResult } from '../../../core/loading/flight';
import { remedyFor } from '../../../core/loading/remedy';
import { fuelItems, quantitiesAfter, totalFuel } from '../../../core/loading/tanks';
import { plain, pointsOf, station, tank } from '../../support/loadings';

/** Spread evenly; doubles of their own accord are mostly tiny. */
const between = (min: number, max: number) => fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);
const amount = (max: number) => between(0, max);
const anyTank = fc.record({
  quantity: amount(60),
  order: fc.integer({ min: 1, max: 3 }),
  arms: fc.array(between(30, 60), { minLength: 2, maxLength: 4 }),
});
const anyLoading = fc
  .record({
    loads: fc.array(fc.record({ weight: amount(250), arm: between(20, 110) }), { minLength: 2, maxLength: 5 }),
    tanks: fc.array(anyTank, { minLength: 1, maxLength: 4 }),
    taxi: between(0, 0.2),
    trip: between(0, 0.8),
    aft: between(41, 48),
  })
  .map(({ loads, tanks, taxi, trip, aft }): LoadingCase => {
    const made = tanks.map(({ quantity, order, arms }, index) =>
      tank(
        `tank ${index}`,
        quantity,
        order,
        arms.map((arm, row) => ({ quantity: (60 * row) / (arms.length - 1), arm })),
      ),
    );
    const fuel = totalFuel(made);
    return {
      ...plain,
      stations: [station('empty', 1000, 40), ...loads.map(({ weight, arm }, index) => station(`load ${index}`, weight, arm))],
      tanks: made,
      taxiFuel: taxi * fuel,
      tripFuel: trip * fuel,
      envelope: envelopeFromPoints(
        [
          [34, 900],
          [34, 1600],
          [39, 3500],
          [aft, 3500],
          [aft, 900],
        ].map(([arm = 0, weight = 0]) => ({ arm, weight })),
      ),
    };
  });

describe('any loading', () => {
  it('keeps its fuel: what burned and what is left are what there was, tank after tank and never below nothing', () => {
    fc.assert(
      fc.property(anyLoading, amount(1), ({ tanks }, share) => {
        const burned = share * totalFuel(tanks);
        const left = quantitiesAfter(tanks, burned);
        expect(left.reduce((sum, each) => sum + each, 0)).toBeCloseTo(totalFuel(tanks) - burned, 7);
        left.forEach((quantity, index) => {
          expect(quantity).toBeGreaterThanOrEqual(0);
          expect(quantity).toBeLessThanOrEqual(tanks[index]?.quantity ?? 0);
          const touched = quantity < (tanks[index]?.quantity ?? 0) - 1e-7;
          const earlier = tanks
            .map((other, place) => ({ order: other.order, left: left[place] ?? 0 }))
            .filter(({ order }) => order < (tanks[index]?.order ?? 0));
          if (touched) for (const other of earlier) expect(other.left).toBeCloseTo(0, 7);
        });
      }),
      { seed: 3 },
    );
  });

  it('adds its moments: each point is the total of the stations and the tanks as they then are', () => {
    fc.assert(
      fc.property(anyLoading, (loading) => {
        const { zeroFuel, takeoff, landing } = judgeLoading(loading);
        for (const point of [zeroFuel, takeoff, landing]) {
          const total = totalLoading([
            ...loading.stations,
            ...fuelItems(loading.tanks, totalFuel(loading.tanks) - point.fuel, loading.weightPerUnit),
          ]);
          expect(point.weight).toBeCloseTo(total.weight, 6);
          expect(point.weight * point.arm).toBeCloseTo(total.moment, 3);
        }
        expect(takeoff.weight - landing.weight).toBeCloseTo(loading.tripFuel * loading.weightPerUnit, 6);
      }),
      { seed: 5 },
    );
  });

  it('draws a track whose ends are the points', () => {
    fc.assert(
      fc.property(anyLoading, fc.integer({ min: 1, max: 20 }), (loading, steps) => {
        const { zeroFuel, takeoff, landing } = judgeLoading(loading);
        const place = ({ weight, arm, fuel }: LoadingPoint): object => ({ weight, arm, fuel });
        const all = trackBetween(loading, loading.taxiFuel, totalFuel(loading.tanks), steps);
        expect(all).toHaveLength(steps + 1);
        expect(all.slice(0, 1).map(place)).toEqual([place(takeoff)]);
        expect(all.slice(-1).map(place)).toEqual([place(zeroFuel)]);
        const flown = trackBetween(loading, loading.taxiFuel, loading.taxiFuel + loading.tripFuel, steps);
        expect(flown.at(-1)?.arm).toBe(landing.arm);
      }),
      { seed: 7 },
    );
  });

  it('is never called OK on the way while a finer look finds it outside', () => {
    let no = 0;
    fc.assert(
      fc.property(anyLoading, amount(1), (loading, share) => {
        const { onTheWay } = judgeLoading(loading);
        if (onTheWay.verdict === 'NO') {
          no++;
          return;
        }
        const burned = loading.taxiFuel + share * loading.tripFuel;
        const { weight, arm } = totalLoading([...loading.stations, ...fuelItems(loading.tanks, burned, loading.weightPerUnit)]);
        const place = placeInEnvelope(loading.envelope, weight, arm);
        expect(Math.min(place.forwardMargin ?? -1, place.aftMargin ?? -1)).toBeGreaterThan(-1e-4);
      }),
      { seed: 9, numRuns: 300 },
    );
    expect(no).toBeGreaterThan(20);
  });

  it('settles by the move that says so, does not without it, and keeps the total', () => {
    let settled = 0;
    fc.assert(
      fc.property(anyLoading, (loading) => {
        const before = judgeLoading(loading);
        const remedy = remedyFor(loading, before);
        if (remedy.kind !== 'move') return;
        const shifted = (weight: number): LoadingResult => {
          const change = (name: string): number => (name === remedy.from ? -weight : name === remedy.to ? weight : 0);
          return judgeLoading({ ...loading, stations: loading.stations.map((each) => ({ ...each, weight: each.weight + change(each.name) })) });
        };
        const after = shifted(remedy.weight);
        expect(after.takeoff.weight).toBeCloseTo(before.takeoff.weight, 6);
        if (!remedy.settles) return;
        settled++;
        expect(pointsOf(after).map(({ verdict }) => verdict)).toEqual(['OK', 'OK', 'OK', 'OK']);
        expect(pointsOf(shifted(remedy.weight * 0.999)).some(({ verdict }) => verdict === 'NO')).toBe(true);
      }),
      { seed: 11, numRuns: 300 },
    );
    expect(settled).toBeGreaterThan(20);
  });
});
