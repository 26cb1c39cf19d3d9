// The sheet function of the fuel that a rule wants.
import { fuelRequired, fuelRuleNames, fuelRules, type FuelRule, type FuelRuleName } from '../../core/fuel/rules';
import { ArgumentError } from '../registry/argumentError';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { durationMinutes } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { choice } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';

const max = 1_000_000;
const maxMinutes = 2880;

const ruleInWords = ({ paragraph, reserveMinutes, flown, wantsAlternate }: FuelRule): string =>
  `${paragraph}: destination${wantsAlternate ? ', alternate where one is required,' : ''} and ${reserveMinutes} min ${flown}`;

const ruleList = fuelRuleNames.map((name) => `${name} ${ruleInWords(fuelRules[name])}`).join('; ');

/** An alternate that was not filled in must not come out as an alternate that is not needed. */
function alternateMinutes(name: FuelRuleName, given: number | undefined): number {
  if (given !== undefined) return given;
  if (!fuelRules[name].wantsAlternate) return 0;
  throw new NamedArgumentError(
    'alternate_minutes',
    new ArgumentError(`given under the rule ${name}, 0 where the rule asks for no alternate`, 'a blank'),
  );
}

export const FUEL_REQUIRED = mapping({
  name: 'FUEL_REQUIRED',
  subject: 'Fuel and oxygen',
  summary: 'The least fuel that a rule wants on board: taxi, trip, contingency, alternate and the final reserve.',
  parameters: {
    rule: choice<FuelRuleName>({
      words: fuelRuleNames,
      help: 'Which rule; local is a flight by day from and to one aerodrome, always in sight of it.',
    }),
    trip_minutes: durationMinutes({ help: 'From take-off to landing, wind and weather considered.', maximum: maxMinutes }),
    flow_per_hour: number({
      unit: '',
      minimum: 0,
      maximum: max,
      aboveMinimum: true,
      help: 'Fuel flow an hour in normal cruise, in any unit of fuel.',
    }),
    alternate_minutes: optional(
      durationMinutes({ help: 'From the destination to the alternate.', maximum: maxMinutes }),
      undefined,
      'nothing is added under a VFR rule, and an IFR rule is an error; type 0 where no alternate is required',
    ),
    taxi_fuel: optional(number({ unit: 'as the flow', minimum: 0, maximum: max, help: 'Fuel burned before take-off.' }), 0, 'no fuel for taxi'),
    contingency_percent: optional(
      number({ unit: 'per cent of the trip fuel', minimum: 0, maximum: 100, help: 'For what cannot be foreseen.' }),
      0,
      'no contingency',
    ),
  },
  results: {
    required: result('as the flow', 'Least fuel on board before taxi.'),
    final_reserve: result('as the flow', 'Of it, the reserve of the rule.'),
    rule_text: result('', 'The rule, its paragraph and what it asks for.'),
  },
  sources: ['cfr-91-151', 'cfr-91-167', 'part-nco'],
  notes:
    `${ruleList}. Part-NCO in its form before 30 October 2022, in the United Kingdom before 30 October 2025 (the local flight from memory): since then the pilot in command plans a final reserve, without a number in the rule. ` +
    '14 CFR 91.167(b): no alternate where the destination has an instrument approach and, from 1 hour before to 1 hour after arrival, the ceiling is 2,000 feet and the visibility 3 statute miles or more ' +
    '(helicopters: at arrival and for 1 hour after, 1,000 feet, or 400 feet above the lowest minimum if higher, and 2 miles). ' +
    'One flow for all of it; climb takes more. Taxi and contingency are no part of these US rules, and Part-NCO asks for contingency without a number.',
  examples: [
    {
      arguments: ['nco_vfr_day', 120, 9, undefined, 0.5, 5],
      gives: [[23.9, 4.5, 'NCO.OP.125(a)(1)(ii), no longer in force: destination and 30 min at normal cruising altitude']],
      tolerance: 1e-9,
      source: 'Study page: 18 trip, 0.5 taxi, 0.9 contingency (which it rounds up to 1), 4.5 reserve',
    },
    {
      arguments: ['faa_ifr', 90, 10, 30],
      gives: [[27.5, 7.5, '14 CFR 91.167(a): destination, alternate where one is required, and 45 min at normal cruising speed']],
      source: '14 CFR 91.167(a), by hand: 15 + 5 + 7.5',
    },
  ],
  compute: ({ rule: name, trip_minutes, flow_per_hour, alternate_minutes, taxi_fuel, contingency_percent }) => {
    const rule = fuelRules[name];
    const { required, finalReserve } = fuelRequired({
      rule,
      tripMinutes: trip_minutes,
      flowPerHour: flow_per_hour,
      alternateMinutes: alternateMinutes(name, alternate_minutes),
      taxiFuel: taxi_fuel,
      contingencyPercent: contingency_percent,
    });
    return { required, final_reserve: finalReserve, rule_text: ruleInWords(rule) };
  },
});
