// The sheet function that lays out the fuel of a flight: each part, what is on board, what is left, and the verdict.
import { fuelBrief, usualEnduranceHours, type FuelBrief, type FuelCase, type FuelDoubt } from '../../core/fuel/brief';
import { fuelRuleNames, fuelRules, type FuelRule, type FuelRuleName } from '../../core/fuel/rules';
import { laying, result, type ResultCell } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { durationMinutes } from '../registry/readDate';
import { limitInWords, number } from '../registry/readNumber';
import { choice, shownName } from '../registry/readText';

const max = 1_000_000;
const maxMinutes = 2880;

const minutes = (help: string) => durationMinutes({ help, maximum: maxMinutes });
const quantity = (help: string, aboveMinimum = false) => number({ unit: 'as the flow', minimum: 0, maximum: max, aboveMinimum, help });

const tenths = (value: number): string => limitInWords(Number(value.toFixed(1)));
/** To the careful side: more where it is missing, less where it is left; within an epsilon of the digit it is that digit. */
const roundedUp = (value: number): number => Math.ceil(value * 10 - 1e-6) / 10;
const roundedDown = (value: number): number => Math.floor(value * 10 + 1e-6) / 10;

type Told = { readonly brief: FuelBrief; readonly given: FuelCase; readonly unit: string };

const ruleOf = ({ paragraph, reserveMinutes }: FuelRule): string => `${reserveMinutes} min of ${paragraph}`;

const wordings: Readonly<Record<FuelDoubt, (told: Told) => string>> = {
  'no-time': () => 'the time of flight is 0 minutes: type it, for a local flight too',
  'over-usable': ({ given, unit }) => `${tenths(given.onBoard)} ${unit} on board, only ${tenths(given.usable)} ${unit} usable`,
  short: ({ brief, given, unit }) =>
    `${tenths(roundedUp(-brief.margin))} ${unit} short: ${tenths(roundedUp(brief.required))} ${unit} required, ${tenths(roundedDown(given.onBoard))} ${unit} on board`,
  'reserve-below-rule': ({ given }) => `reserve of ${tenths(given.reserveMinutes ?? 0)} min is below the ${ruleOf(given.rule)}`,
  'alternate-missing': ({ given }) => `${given.rule.paragraph} wants fuel to an alternate: type its minutes, or 0 where the rule asks for none`,
  'flow-unlikely': ({ brief, given, unit }) =>
    `flow of ${limitInWords(Number(given.flowPerHour.toFixed(2)))} ${unit} an hour would empty full tanks in ${tenths(brief.enduranceHours)} h, usually ${usualEnduranceHours.least} to ${usualEnduranceHours.most} h: a typing error?`,
};

function reasonOf(told: Told): string {
  const { brief, given, unit } = told;
  if (brief.doubts.length > 0) return brief.doubts.map((doubt) => wordings[doubt](told)).join('; ');
  const left = limitInWords(Math.floor(brief.minutesAtLanding + 1e-6));
  return `${tenths(roundedDown(brief.margin))} ${unit} more than required; ${left} min left at landing, ${tenths(brief.reserveMinutes)} min required (${given.rule.paragraph})`;
}

function briefRows(given: FuelCase, unit: string): ResultCell[][] {
  const brief = fuelBrief(given);
  return [
    ['taxi', brief.taxi, unit],
    ['climb', brief.climb, unit],
    ['trip', brief.trip, unit],
    ['contingency', brief.contingency, unit],
    ['alternate', brief.alternate, unit],
    ['holding', brief.holding, unit],
    ['final reserve', brief.finalReserve, unit],
    ['required', brief.required, unit],
    ['on board', given.onBoard, unit],
    ['margin', brief.margin, unit],
    ['left at landing', brief.minutesAtLanding, 'minutes'],
    ['verdict', brief.verdict, reasonOf({ brief, given, unit })],
  ];
}

export const FUEL_BRIEF = laying({
  name: 'FUEL_BRIEF',
  subject: 'Fuel and oxygen',
  summary: 'The fuel of a flight by a rule: each part, what is required and on board, what is left at landing, and the verdict.',
  parameters: {
    rule: choice<FuelRuleName>({ words: fuelRuleNames, help: 'Which rule sets the final reserve; see FUEL_REQUIRED.' }),
    trip_minutes: minutes('From take-off to landing, wind and weather considered; 0 is taken for a time that is missing.'),
    flow_per_hour: number({ unit: '', minimum: 0, maximum: max, aboveMinimum: true, help: 'Fuel flow an hour in cruise, in any unit of fuel.' }),
    on_board: quantity('Fuel on board before taxi.'),
    usable: quantity('Usable fuel of the aircraft, full tanks.', true),
    alternate_minutes: optional(
      minutes('From the destination to the alternate; 0 where the rule asks for none.'),
      undefined,
      'no alternate is planned: UNKNOWN under an IFR rule',
    ),
    taxi_fuel: optional(quantity('Fuel burned before take-off.'), 0, 'no fuel for taxi'),
    climb_fuel: optional(quantity('Fuel of the climb beyond what cruise burns in that time.'), 0, 'none'),
    contingency_percent: optional(
      number({ unit: 'per cent of the trip fuel', minimum: 0, maximum: 100, help: 'For what cannot be foreseen.' }),
      0,
      'none',
    ),
    holding_minutes: optional(minutes('Planned holding.'), 0, 'none'),
    reserve_minutes: optional(minutes("The pilot's own final reserve; less than the rule's is NO."), undefined, "the rule's reserve"),
    unit: optional(
      shownName({ help: 'Name of the unit of fuel, for the reasons.', mustBe: 'the name of a unit of fuel, such as US gal' }),
      'units',
      '"units"',
    ),
    trip_fuel: optional(quantity('Fuel from take-off to landing, as ROUTE_LEGS works it out.', true), undefined, 'the time at the flow'),
  },
  results: {
    item: result('', 'What the row is.'),
    value: result('', 'Its value.'),
    unit: result('', 'Its unit; beside the verdict, the reason.'),
  },
  sources: ['cfr-91-151', 'cfr-91-167', 'part-nco', 'common-practice'],
  notes:
    'Rows: taxi, climb, trip, contingency, alternate, holding, final reserve (the greater of the rule and your own), required, on board, margin, left at landing, verdict. ' +
    'NO when more is on board than is usable, when less is on board than required, or when your own reserve is below the rule. UNKNOWN when the time of flight is 0, or an IFR rule has no minutes to an alternate. ' +
    'CHECK when the flow would empty full tanks unusually fast or slowly (common practice, no source). The rules name trip, alternate and reserve; taxi, climb, contingency and holding are what a careful pilot adds.',
  examples: [
    {
      arguments: ['nco_vfr_day', 120, 9, 26, 40, undefined, 0.5, undefined, 5, undefined, undefined, 'US gal'],
      gives: [
        ['taxi', 0.5, 'US gal'],
        ['climb', 0, 'US gal'],
        ['trip', 18, 'US gal'],
        ['contingency', 0.9, 'US gal'],
        ['alternate', 0, 'US gal'],
        ['holding', 0, 'US gal'],
        ['final reserve', 4.5, 'US gal'],
        ['required', 23.9, 'US gal'],
        ['on board', 26, 'US gal'],
        ['margin', 2.1, 'US gal'],
        ['left at landing', 50, 'minutes'],
        ['verdict', 'OK', '2.1 US gal more than required; 50 min left at landing, 30 min required (NCO.OP.125(a)(1)(ii), no longer in force)'],
      ],
      tolerance: 1e-9,
      source: 'Study page: 18 trip, 0.5 taxi, 0.9 contingency (which it rounds up to 1), 4.5 reserve; the rest by hand',
    },
  ],
  compute: (given) =>
    briefRows(
      {
        rule: fuelRules[given.rule],
        tripMinutes: given.trip_minutes,
        flowPerHour: given.flow_per_hour,
        tripFuel: given.trip_fuel,
        onBoard: given.on_board,
        usable: given.usable,
        alternateMinutes: given.alternate_minutes,
        taxi: given.taxi_fuel,
        climb: given.climb_fuel,
        contingencyPercent: given.contingency_percent,
        holdingMinutes: given.holding_minutes,
        reserveMinutes: given.reserve_minutes,
      },
      given.unit,
    ),
});
