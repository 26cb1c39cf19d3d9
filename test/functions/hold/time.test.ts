// Time in a hold: laps, fuel, the latest time to leave; across midnight, and when it is too late.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

const row = (...given: readonly unknown[]): unknown => (call('HOLD_UNTIL', ...given) as unknown[][])[0];

describe('HOLD_UNTIL', () => {
  it('counts laps and fuel to the clearance time', () => {
    expect(row('1000Z', '1030Z', 4, 30, 10, 20)).toEqual([7.5, 25, '1100Z', 'OK']);
    expect(row('1000Z', '1000Z', 4, 30, 10, 20)).toEqual([0, 30, '1100Z', 'OK']);
  });

  it('works across midnight, whichever of its times lies there', () => {
    expect(row('2350Z', '0020Z', 5, 30, 10, 20)).toEqual([6, 25, '0050Z', 'OK']);
    expect(row('2300Z', '2330Z', 5, 30, 10, 20)).toEqual([6, 25, '0000Z', 'OK']);
    expect(row('2359Z', '0000Z', 5, 30, 60, 20)).toEqual([0.2, 29, '0009Z', 'OK']);
  });

  it('is OK with exactly the fuel needed, and NO with less', () => {
    expect(row('1000Z', '1020Z', 4, 20, 9, 17)).toEqual([5, 17, '1020Z', 'OK']);
    expect(row('1000Z', '1021Z', 4, 20, 9, 17)).toMatchObject({ 2: '1020Z', 3: 'NO' });
    // 0.1 an hour is not a binary number; a third of it must not take a lap away.
    expect(row('1000Z', '1020Z', 4, 0.3, 0.3, 0.2)).toMatchObject({ 2: '1020Z', 3: 'OK' });
  });

  it('writes no time to leave that is behind', () => {
    expect(row('0005Z', '0030Z', 4, 19, 10, 20)).toMatchObject({ 2: 'passed', 3: 'NO' });
    expect(row('0005Z', '0030Z', 4, 1, 10, 0)).toMatchObject({ 1: 1 - 25 / 6, 2: '0011Z', 3: 'NO' });
    expect(row('1000Z', '1030Z', 4, 300, 10, 20)).toMatchObject({ 2: '1400Z +24 h', 3: 'OK' });
  });

  it('drops the seconds of the time to leave, never the other way', () => {
    expect(row('1000Z', '1001Z', 4, 10, 7, 9)).toMatchObject({ 2: '1008Z' }); // 8 minutes 34 seconds
  });

  it('takes a clearance time more than 12 hours ahead for one that has passed', () => {
    expect(sentenceOf('HOLD_UNTIL', 1435, 1430, 4, 20, 9, 14)).toBe(
      'HOLD_UNTIL: expect_further_clearance_z must be within 12 hours after now_z (1435Z); got 1430Z, which is 5 minutes before it.',
    );
    expect(sentenceOf('HOLD_UNTIL', '0005Z', '2355Z', 4, 20, 9, 14)).toMatch(/got 2355Z, which is 10 minutes before it\.$/);
    expect(row('0005Z', '1205Z', 4, 200, 9, 14)).toMatchObject({ 0: 180, 3: 'OK' });
  });

  it('lands on the fuel needed when it leaves at the time it says', () => {
    for (const [fuel, flow, needed] of [
      [31.5, 8.4, 12.3],
      [90, 31, 44],
      [12, 6, 3],
    ] as const) {
      const [, , leaveBy] = row('0000Z', '0100Z', 4, fuel, flow, needed) as [number, number, string, string];
      const minutes = Number(leaveBy.slice(0, 2)) * 60 + Number(leaveBy.slice(2, 4));
      const left = fuel - (flow * minutes) / 60;
      expect(left).toBeGreaterThanOrEqual(needed - 1e-9);
      expect(left - flow / 60).toBeLessThan(needed);
    }
  });
});
