// Fuel by weight and by time, and oxygen: the sentences, and what the answers come to when they are used up.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

describe('a sentence', () => {
  it.each([
    [
      ['OXYGEN_ENDURANCE', 2000, 1800, 680, 2, 1],
      'OXYGEN_ENDURANCE: pressure must be 0 to 1,800 in the unit of full_pressure, no more than it; got 2,000.',
    ],
    [['FUEL_WEIGHT', 20, 'mogas'], 'FUEL_WEIGHT: fuel must be one of avgas, jet_a; got "mogas".'],
    [['FUEL_ENDURANCE', 20, 0], 'FUEL_ENDURANCE: flow_per_hour must be more than 0 and at most 1,000,000; got 0.'],
  ] as const)('%j', ([name, ...args], sentence) => expect(sentenceOf(name, ...args)).toBe(sentence));
});

describe('fuel and oxygen', () => {
  it('says by a negative number how far fuel is short of its reserve', () => expect(call('FUEL_ENDURANCE', 3, 9, 30)).toBe(-10));

  it('lasts as long as it says: flow for that time uses it up', () => {
    for (const [fuel, flow, reserve] of [
      [37.4, 8.9, 45],
      [61, 14.3, 0],
      [90, 33, 30],
    ] as const) {
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

  it('takes a full cylinder, and an empty one', () => {
    expect(call('OXYGEN_ENDURANCE', 1800, 1800, 680, 2, 1)).toBe(340);
    expect(call('OXYGEN_ENDURANCE', 0, 1800, 680, 2, 1)).toBe(0);
  });
});
