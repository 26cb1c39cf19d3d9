// FUEL_BRIEF: each reason in its sentence, its limits from both sides, and the sum against FUEL_REQUIRED.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuelRuleNames } from '../../../core/fuel/rules';
import { answer, call } from '../../support/call';

/** Rule, minutes, flow, on board, usable, alternate, taxi, climb, contingency, holding, own reserve, unit. */
type Given = readonly unknown[];
const flight = (changes: Readonly<Record<number, unknown>> = {}): Given =>
  ['faa_vfr_day', 60, 10, 30, 60, '', 1, 2, 5, 0, 45, 'US gal'].map((value, index) => changes[index] ?? value);
const rowsOf = (given: Given): unknown[][] => call('FUEL_BRIEF', ...given) as unknown[][];
const row = (given: Given, item: string): unknown[] => rowsOf(given).find(([name]) => name === item) ?? [];
const verdictOf = (given: Given): unknown[] => row(given, 'verdict').slice(1);

describe('FUEL_BRIEF', () => {
  it('adds up by hand: 1 + 2 + 10 + 0.5 + 7.5 of 30', () => {
    expect(row(flight(), 'required')[1]).toBeCloseTo(21, 12);
    expect(row(flight(), 'left at landing')[1]).toBeCloseTo(102, 12);
    expect(verdictOf(flight())).toEqual(['OK', '9 US gal more than required; 102 min left at landing, 45 min required (14 CFR 91.151(a)(1))']);
  });

  it.each([
    ['more than is usable', { 3: 60.1 }, 'NO', '60.1 US gal on board, only 60 US gal usable'],
    ['too little', { 3: 20.99 }, 'NO', '0.1 US gal short: 21 US gal required, 20.9 US gal on board'],
    ['an own reserve below the rule', { 10: 29 }, 'NO', 'reserve of 29 min is below the 30 min of 14 CFR 91.151(a)(1)'],
    ['by night', { 0: 'faa_vfr_night', 10: 30 }, 'NO', 'reserve of 30 min is below the 45 min of 14 CFR 91.151(a)(2)'],
    [
      'no alternate under IFR',
      { 0: 'faa_ifr' },
      'UNKNOWN',
      '14 CFR 91.167(a) wants fuel to an alternate: type its minutes, or 0 where the rule asks for none',
    ],
    ['no time of flight', { 1: 0 }, 'UNKNOWN', 'the time of flight is 0 minutes: type it, for a local flight too'],
    [
      'a flow with its point left out',
      { 2: 1.05 },
      'CHECK',
      'flow of 1.05 US gal an hour would empty full tanks in 57.1 h, usually 1.5 to 14 h: a typing error?',
    ],
  ])('says %s', (_, changes, verdict, reason) => expect(verdictOf(flight(changes))).toEqual([verdict, reason]));

  it('names the worst first where there are several', () => {
    expect(verdictOf(flight({ 1: 0, 3: 61, 10: 10 }))[1]).toBe(
      '61 US gal on board, only 60 US gal usable; reserve of 10 min is below the 30 min of 14 CFR 91.151(a)(1); the time of flight is 0 minutes: type it, for a local flight too',
    );
  });

  it('takes exactly enough for enough, and the least less for too little', () => {
    expect(verdictOf(flight({ 3: 21 }))[0]).toBe('OK');
    expect(verdictOf(flight({ 3: 20.999999 }))[0]).toBe('NO');
    expect(verdictOf(flight({ 3: 60 }))[0]).toBe('OK');
    expect(verdictOf(flight({ 10: 30 }))[0]).toBe('OK');
  });

  it('asks for what FUEL_REQUIRED asks for, and never for less when anything is more', () => {
    const amount = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...fuelRuleNames),
        amount,
        fc.double({ min: 1, max: 90, noNaN: true }),
        amount,
        amount,
        amount,
        (rule, trip, flow, alternate, taxi, more) => {
          const required = answer('FUEL_REQUIRED', rule, trip, flow, alternate, taxi, 5).required as number;
          const given: Given = [rule, trip, flow, 0, 100, alternate, taxi, 0, 5];
          expect(row(given, 'required')[1]).toBeCloseTo(required, 6);
          for (const longer of [{ 1: trip + more }, { 5: alternate + more }, { 6: taxi + more }, { 7: more }, { 9: more }, { 10: more }])
            expect(
              row(
                Array.from({ length: 11 }, (_, index) => (longer as Record<number, number>)[index] ?? given[index] ?? ''),
                'required',
              )[1],
            ).toBeGreaterThanOrEqual(required - 1e-6);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});
