// Shift and ballast are proved by doing what they say and weighing again; the burn track by weighing each point by hand.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { burnTrack, weightToAdd, weightToShift } from '../../../core/loading/balanceChange';

const arm = fc.double({ min: -50, max: 300, noNaN: true });
const weight = fc.double({ min: 100, max: 20000, noNaN: true });

describe('weight to shift', () => {
  it('brings the centre of gravity to the target when it is shifted', () => {
    let shifted = 0;
    fc.assert(
      fc.property(weight, arm, arm, arm, arm, (whole, before, target, from, to) => {
        fc.pre(Math.abs(to - from) > 1 && Math.abs(target - before) < Math.abs(to - from));
        const moved = weightToShift(whole, before, target, from, to);
        const after = (whole * before - moved * from + moved * to) / whole;
        expect(Math.abs(after - target)).toBeLessThan(1e-9 * 1000);
        shifted++;
      }),
      { numRuns: 2000, seed: 3 },
    );
    expect(shifted).toBe(2000);
  });

  it('refuses what nothing can do', () => {
    expect(() => weightToShift(2000, 40, 41, 30, 30)).toThrow('shift-nowhere');
    expect(() => weightToShift(2000, 40, 80, 30, 50)).toThrow('balance-out-of-reach');
    expect(weightToShift(2000, 40, 60, 30, 50)).toBe(2000);
    expect(weightToShift(2000, 40, 40, 30, 50)).toBe(0);
    expect(weightToShift(2000, 40, 40, 50, 30)).toBe(0);
  });
});

describe('weight to add', () => {
  it('brings the centre of gravity to the target when it is added', () => {
    fc.assert(
      fc.property(weight, arm, arm, arm, (whole, before, target, at) => {
        // The addition lies beyond the target as seen from the centre of gravity, or is taken out on the other side of it.
        fc.pre(Math.abs(at - target) > 1 && !(at > Math.min(before, target) - 1 && at < Math.max(before, target) + 1));
        const added = weightToAdd(whole, before, target, at);
        const after = (whole * before + added * at) / (whole + added);
        expect(whole + added).toBeGreaterThan(0);
        expect(Math.abs(after - target)).toBeLessThan(1e-6);
      }),
      { numRuns: 2000, seed: 5 },
    );
  });

  it('refuses what nothing can do', () => {
    expect(() => weightToAdd(2000, 40, 42, 42)).toThrow('ballast-at-target');
    // Between the two, weight can only be taken out, and more than the aircraft weighs.
    expect(() => weightToAdd(2000, 40, 42, 41)).toThrow('balance-out-of-reach');
    // The aircraft is all at its own arm: taking all of it out leaves nothing with an arm.
    expect(() => weightToAdd(2000, 40, 42, 40)).toThrow('balance-out-of-reach');
    expect(weightToAdd(2000, 40, 40, 40)).toBe(0);
  });
});

describe('burn track', () => {
  const tanks = {
    zeroFuelWeight: 2000,
    zeroFuelArm: 40,
    fuelTable: [
      { quantity: 40, arm: 49 },
      { quantity: 10, arm: 47 },
      { quantity: 20, arm: 48 },
    ],
    fuelStart: 40,
    fuelEnd: 10,
    steps: 6,
    weightPerUnit: 6,
  };

  it('weighs each point, the table in any order', () => {
    // Arms on the straight lines between the rows, by hand.
    const arms = [49, 48.75, 48.5, 48.25, 48, 47.5, 47];
    const track = burnTrack(tanks);
    expect(track.map(({ fuel }) => fuel)).toEqual([40, 35, 30, 25, 20, 15, 10]);
    track.forEach(({ fuel, weight: total, arm: at }, index) => {
      expect(total).toBe(2000 + 6 * fuel);
      expect(at).toBeCloseTo((2000 * 40 + 6 * fuel * (arms[index] ?? 0)) / total, 9);
    });
  });

  it('ends at the last quantity exactly, and needs no row for empty tanks', () => {
    const track = burnTrack({ ...tanks, fuelStart: 20, fuelEnd: 0, steps: 1 });
    expect(track[1]).toEqual({ fuel: 0, weight: 2000, arm: 40 });
    const thirds = burnTrack({ ...tanks, fuelStart: 40, fuelEnd: 39.9, steps: 3 });
    expect(thirds[3]?.fuel).toBe(39.9);
  });

  it('never goes beyond the rows', () => {
    expect(() => burnTrack({ ...tanks, fuelStart: 40.001 })).toThrow('fuel-outside-table');
    expect(() => burnTrack({ ...tanks, fuelEnd: 0 })).toThrow('fuel-outside-table');
    expect(() => burnTrack({ ...tanks, fuelStart: 10, fuelEnd: 20 })).toThrow('outside-range');
    expect(() => burnTrack({ ...tanks, fuelTable: [] })).toThrow('nothing-given');
    expect(() => burnTrack({ ...tanks, fuelTable: [...tanks.fuelTable, { quantity: 20, arm: 48 }] })).toThrow('fuel-table-bad');
    expect(() => burnTrack({ ...tanks, fuelTable: [...tanks.fuelTable, { quantity: -1, arm: 48 }] })).toThrow('fuel-table-bad');
  });
});
