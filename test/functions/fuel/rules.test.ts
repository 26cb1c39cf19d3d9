// FUEL_REQUIRED: what the published rows cannot hold: sentences, defaults, and that more of anything never needs less fuel.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuelRuleNames, fuelRules } from '../../../core/fuel/rules';
import { answer, call, sentenceOf } from '../../support/call';

describe('FUEL_REQUIRED', () => {
  it.each(['faa_ifr', 'faa_ifr_helicopter', 'nco_ifr'])('does not take an alternate left blank under %s for one that is not required', (rule) => {
    expect(sentenceOf('FUEL_REQUIRED', rule, 90, 10)).toBe(
      `FUEL_REQUIRED: alternate_minutes must be given under the rule ${rule}, 0 where the rule asks for no alternate; got a blank.`,
    );
    expect(answer('FUEL_REQUIRED', rule, 90, 10, 0).required).toBe(15 + (10 * fuelRules[rule as 'faa_ifr'].reserveMinutes) / 60);
  });

  it('adds an alternate that a VFR pilot plans for', () => expect(answer('FUEL_REQUIRED', 'faa_vfr_day', 90, 10, 30).required).toBe(15 + 5 + 5));

  it('says the rule beside the number, and refuses what is none', () => {
    expect(answer('FUEL_REQUIRED', 'FAA VFR night', 60, 12).rule_text).toBe('14 CFR 91.151(a)(2): destination and 45 min at normal cruising speed');
    expect(sentenceOf('FUEL_REQUIRED', 'faa', 60, 12)).toBe(`FUEL_REQUIRED: rule must be one of ${fuelRuleNames.join(', ')}; got "faa".`);
    expect(sentenceOf('FUEL_REQUIRED', 'faa_vfr_day', 60, 0)).toBe('FUEL_REQUIRED: flow_per_hour must be more than 0 and at most 1,000,000; got 0.');
  });

  it('leaves its bad row in its place, the good rows standing', () => {
    const rows = call('FUEL_REQUIRED', [['faa_vfr_day'], ['faa_ifr'], ['']], [[60], [60], ['']], 12) as unknown[][];
    expect(rows.map(([first]) => first)).toEqual([
      18,
      'FUEL_REQUIRED: alternate_minutes must be given under the rule faa_ifr, 0 where the rule asks for no alternate; got a blank (row 2).',
      '',
    ]);
  });

  it('lasts, by FUEL_ENDURANCE, as long as the trip and its alternate', () => {
    const minutes = fc.integer({ min: 0, max: 600 });
    fc.assert(
      fc.property(fc.constantFrom(...fuelRuleNames), minutes, fc.integer({ min: 1, max: 900 }), minutes, (rule, trip, tenths, alternate) => {
        const { required } = answer('FUEL_REQUIRED', rule, trip, tenths / 10, alternate);
        expect(answer('FUEL_ENDURANCE', required, tenths / 10, fuelRules[rule].reserveMinutes).minutes).toBeCloseTo(trip + alternate, 6);
        // Of a trip of no minutes the contingency is nothing, and only the taxi fuel is added: equal but for the last bits.
        expect(Number(answer('FUEL_REQUIRED', rule, trip, tenths / 10, alternate, 1, 5).required)).toBeGreaterThanOrEqual(
          Number(required) + 1 - 1e-9,
        );
      }),
    );
  });
});
