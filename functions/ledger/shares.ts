// Sheet functions of money: one cost split to the cent, and the statement of what each aircraft costs and each member owes.
import {
  amountOfUnits,
  costStatement,
  decimalsOf,
  minorUnits,
  splitUnits,
  wholeFleet,
  type Cost,
  type Owed,
  type ShareRule,
  type Statement,
  type Unknown,
} from '../../core/ledger/shares';
import type { Named } from '../../core/basics/named';
import { ArgumentError } from '../registry/argumentError';
import { inWords } from '../registry/cellValues';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { column, optional, unreadableMeansUndefined } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { currencyCode, participationRows, shareRule } from './readMoney';
import { namedText } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';

const subject = 'Costs';
const largest = 1_000_000_000;
const method =
  'Shared by the largest remainder: everyone first gets the whole cents below his exact part, then the cents left over go one each to the largest fractions, the earlier row first among equals. So the shares always add up to the amount.';

function unitsOf(argument: string, value: number, decimals: number, row?: number): number {
  const units = minorUnits(value, decimals);
  if (units !== undefined) return units;
  throw new NamedArgumentError(
    argument,
    new ArgumentError(
      `an amount of at most ${decimals} ${decimals === 1 ? 'decimal' : 'decimals'}, or it cannot be shared to the last coin`,
      inWords(value),
      row,
    ),
  );
}

const amountOf = (help: string) => number({ unit: 'currency', minimum: -largest, maximum: largest, help });

export const COST_SPLIT = laying({
  name: 'COST_SPLIT',
  subject,
  summary: 'Splits one amount in proportion to parts, so that the shares add up to the last cent.',
  parameters: {
    amount: amountOf('The amount to split, in one currency; negative for a refund.'),
    parts: column(
      number({
        unit: '',
        minimum: 0,
        maximum: 1_000_000,
        help: 'The part of each, one a row: hours flown, agreed shares, or 1 each for equal parts.',
      }),
    ),
    decimals: optional(
      number({ unit: '', whole: true, minimum: 0, maximum: 3, help: 'Decimals of the currency: 2 for cents, 0 where there are none.' }),
      2,
      '2',
    ),
  },
  results: { share: result('currency', 'The share of each row; a blank row stays blank.') },
  sources: ['largest-remainder'],
  notes: `${method} One call splits one currency.`,
  examples: [
    {
      arguments: [100, [[1], [1], [1]], 2],
      gives: [[33.34], [33.33], [33.33]],
      source: 'Largest remainder, by hand',
      formula: '=COST_SPLIT(100, A2:A4, 2)',
    },
    {
      arguments: [500, [[12.5], [''], [7.5], [0]]],
      gives: [[312.5], [''], [187.5], [0]],
      source: '500 over 20 hours is 25 an hour, by hand',
      formula: '=COST_SPLIT(500, A2:A5)',
    },
  ],
  compute: ({ amount, parts, decimals }, { rows, height }) => {
    const shares = splitUnits(unitsOf('amount', amount, decimals), parts);
    const cells: ResultCell[][] = Array.from({ length: height }, () => ['']);
    shares.forEach((share, index) => (cells[(rows[index] ?? 1) - 1] = [amountOfUnits(share, decimals)]));
    return cells;
  },
});

const amount = ({ units, currency }: Omit<Owed, 'named'>): number => amountOfUnits(units, decimalsOf(currency));
const ofWhich = (owed: Owed): string => `${owed.named.name} ${amount(owed).toFixed(decimalsOf(owed.currency))}`;

const whyUnshared: Readonly<Record<ShareRule, string>> = {
  equal: 'no member takes part in it',
  hours: 'no member has hours in it',
  share: 'no member has a share in it',
};

const whyUnknown: Readonly<Record<Unknown, string>> = {
  aircraft: 'not written down for which aircraft',
  amount: 'no cost written down',
  'too fine': 'the cost has more decimals than its currency',
  currency: 'no currency that can be read',
  rule: 'not written down how it is shared',
};

function statementRows({ members, aircraft, unshared, totals, unknown }: Statement): ResultCell[][] {
  return [
    ...members.map((owed) => ['member', owed.named.name, owed.currency, amount(owed), owed.of.map(ofWhich).join(', ')]),
    ...aircraft.map((owed) => ['aircraft', owed.named.name, owed.currency, amount(owed), '']),
    ...unshared.map((owed) => ['nobody', owed.named.name, owed.currency, amount(owed), whyUnshared[owed.rule]]),
    ...totals.map((total) => ['total', 'all costs', total.currency, amount(total), '']),
    ...unknown.map(({ named, what }) => ['unknown', named.name, '', '', `${whyUnknown[what]}, so not in these sums`]),
  ];
}

/** What cannot be read of a cost leaves it out of the sums, and it alone. */
function costOf(aircraft: Named, amount: number | undefined, currency: string | undefined, rule: ShareRule | undefined): Cost {
  if (aircraft.key === '') return { aircraft, unknown: 'aircraft' };
  if (amount === undefined) return { aircraft, unknown: 'amount' };
  if (currency === undefined) return { aircraft, unknown: 'currency' };
  if (rule === undefined) return { aircraft, unknown: 'rule' };
  const units = minorUnits(amount, decimalsOf(currency));
  return units === undefined ? { aircraft, unknown: 'too fine' } : { aircraft, units, currency, rule };
}

export const COST_STATEMENT = laying({
  name: 'COST_STATEMENT',
  subject,
  summary: 'What each member owes and what each aircraft costs, every cost shared by its own rule, currencies apart.',
  parameters: {
    aircraft: column(
      unreadableMeansUndefined(
        namedText({
          mustBe: 'the name of an aircraft, or "all"',
          help: 'The aircraft of each cost, one a row; "all" for a cost of the whole fleet, which falls on every member.',
        }),
      ),
    ),
    cost: column(unreadableMeansUndefined(amountOf('Each cost. A blank, or what is no number, is listed as unknown and is in no sum.'))),
    currency: column(unreadableMeansUndefined(currencyCode('The currency of each cost.'))),
    shared_by: column(
      unreadableMeansUndefined(
        shareRule(
          'How each cost is shared among the members of its aircraft: in equal parts, by the hours they flew, or by the shares they agreed on.',
        ),
      ),
    ),
    members: participationRows(
      `Rows of member, aircraft, hours, share: who takes part in which aircraft. "${wholeFleet}" as the aircraft takes part in every one. Blank hours or share count as none.`,
    ),
    headings: headingsAbove,
  },
  results: {
    by: result('', 'member, aircraft, total; nobody for a cost that no member bears; unknown for one without an amount.'),
    name: result('', 'The member or the aircraft.'),
    currency: result('', 'The currency; amounts in two currencies are never added.'),
    amount: result('currency', 'What the member owes, or the aircraft costs.'),
    of_which: result('', 'For a member, how it comes about by aircraft; else the reason.'),
  },
  sources: ['largest-remainder', 'iso-4217'],
  notes: `${method} Each cost is split by itself, so the members together owe exactly what the aircraft cost, less what falls on nobody. Hours and shares of a member with several rows are added. Who pays for a cost is common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['South']],
        [[100], [90]],
        [['EUR'], ['EUR']],
        [['equal'], ['hours']],
        [
          ['Ada', 'all', 2, ''],
          ['Bo', 'all', 4, ''],
          ['Cy', 'North', '', ''],
        ],
      ],
      gives: [
        ['member', 'Ada', 'EUR', 63.34, 'North 33.34, South 30.00'],
        ['member', 'Bo', 'EUR', 93.33, 'North 33.33, South 60.00'],
        ['member', 'Cy', 'EUR', 33.33, 'North 33.33'],
        ['aircraft', 'North', 'EUR', 100, ''],
        ['aircraft', 'South', 'EUR', 90, ''],
        ['total', 'all costs', 'EUR', 190, ''],
      ],
      source: 'By hand: 100 in three equal parts, 90 over 2 and 4 hours',
      formula: '=COST_STATEMENT(A2:A3, B2:B3, C2:C3, D2:D3, F2:I4)',
    },
  ],
  compute: ({ aircraft, cost, currency, shared_by, members }, { rows }) => {
    const costs = aircraft.map((named, index) =>
      costOf(named ?? { name: `no aircraft (row ${rows[index] ?? index + 1} of the list)`, key: '' }, cost[index], currency[index], shared_by[index]),
    );
    return statementRows(costStatement(costs, members));
  },
});
