// The sentences of shift, ballast and burn track; and their answers weighed again by BALANCE_CG.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../support/call';

describe('an answer fed back', () => {
  it('is where BALANCE_CG finds the centre of gravity', () => {
    const moved = Number(call('BALANCE_SHIFT', 2400, 41, 42.5, 37, 95));
    expect(call('BALANCE_CG', [[2400], [-moved], [moved]], [[41], [37], [95]])).toBeCloseTo(42.5, 9);
    const added = Number(call('BALANCE_ADD', 2400, 41, 42.5, 95));
    expect(call('BALANCE_CG', [[2400], [added]], [[41], [95]])).toBeCloseTo(42.5, 9);
  });
});

describe('sentences', () => {
  it.each([
    [['BALANCE_SHIFT', 2000, 40, 41, 30, 30], 'BALANCE_SHIFT: to_arm must be another arm than from_arm, or nothing is shifted; got 30 for both.'],
    [['BALANCE_SHIFT', 2000, 40, 80, 30, 50], 'BALANCE_SHIFT: target_arm must be within reach of the weight there is; got 80, for which 4,000 would have to be moved of a whole of 2,000.'],
    [['BALANCE_ADD', 2000, 40, 42, 42], 'BALANCE_ADD: at_arm must be away from target_arm, since weight there cannot bring the centre of gravity to it; got 42 for both.'],
    [['BALANCE_ADD', 2000, 40, 42, 41], 'BALANCE_ADD: target_arm must be within reach of the weight there is; got 42, for which 4,000 would have to be taken out of a whole of 2,000.'],
    [['BALANCE_TRACK', 2000, 40, [[10, 47], [40, 49]], 50, 20, 3], 'BALANCE_TRACK: fuel_table must reach every quantity from fuel_start to fuel_end; got rows for 10 to 40 and a quantity of 50, and nothing is extrapolated.'],
    [['BALANCE_TRACK', 2000, 40, [[10, 47], [40, 49]], 20, 30, 3], 'BALANCE_TRACK: fuel_end must be 0 to 20 of fuel, no more than fuel_start; got 30.'],
    [['BALANCE_TRACK', 2000, 40, [[10, 47], [10, 49]], 10, 10, 3], 'BALANCE_TRACK: fuel_table must give each quantity once, none below zero; got 10 more than once.'],
    [['BALANCE_TRACK', 2000, 40, [['', ''], ['', '']], 10, 10, 3], 'BALANCE_TRACK: fuel_table must have at least one filled row; got none.'],
    [['OXYGEN_ENDURANCE', 2000, 1800, 680, 2, 1], 'OXYGEN_ENDURANCE: pressure must be 0 to 1,800 in the unit of full_pressure, no more than it; got 2,000.'],
    [['FUEL_WEIGHT', 20, 'mogas'], 'FUEL_WEIGHT: fuel must be one of avgas, jet_a; got "mogas".'],
    [['FUEL_ENDURANCE', 20, 0], 'FUEL_ENDURANCE: flow_per_hour must be more than 0 and at most 1,000,000; got 0.'],
  ] as const)('%j', ([name, ...given], sentence) => expect(sentenceOf(name, ...given)).toBe(sentence));
});

describe('fuel and oxygen', () => {
  it('says by a negative number how far fuel is short of its reserve', () => expect(call('FUEL_ENDURANCE', 3, 9, 30)).toBe(-10));

  it('lasts as long as it says: flow for that time uses it up', () => {
    for (const [fuel, flow, reserve] of [[37.4, 8.9, 45], [61, 14.3, 0], [90, 33, 30]] as const) {
      const minutes = Number(call('FUEL_ENDURANCE', fuel, flow, reserve));
      expect(((minutes + reserve) / 60) * flow).toBeCloseTo(fuel, 9);
    }
    const minutes = Number(call('OXYGEN_ENDURANCE', 1450, 1850, 1360, 3, 0.7));
    expect((minutes * 3 * 0.7) / 1360).toBeCloseTo(1450 / 1850, 12);
  });

  it('knows the other names of fuels', () => {
    for (const name of ['avgas', 'AVGAS', '100LL', 'Avgas 100LL']) expect(call('FUEL_WEIGHT', 10, name)).toBe(60);
    for (const name of ['jet_a', 'Jet A', 'jet-a', 'Jet A-1', 'JET A1']) expect(call('FUEL_WEIGHT', 10, name)).toBe(67);
  });
});
