// Sheet function of the club's dues: what each member owes over a period, line by line, to the cent.
import { dayNumber } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { duesOf, timesFraction, type DuesAccount, type DuesCost, type DuesPayment } from '../../core/ledger/dues';
import { amountOfUnits, decimalsOf, minorUnits } from '../../core/ledger/shares';
import { ArgumentError } from '../registry/argumentError';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { plainWords } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';
import { isoText } from './findingWords';
import { duesCosts, duesMembers, duesPayments, duesRates, type CostRow, type PaymentRow, type RateRow } from './readDues';
import { currencyCode } from './readMoney';

type Line = ResultCell[];

/** The rate of a currency that holds on a day: the latest of that day or before it. */
function rateOn(rates: readonly RateRow[], currency: string, day: number): RateRow | undefined {
  const known = rates.filter((rate) => rate.currency === currency && rate.millionths !== undefined && rate.day !== undefined && rate.day <= day);
  return known.reduce<RateRow | undefined>((best, rate) => (best === undefined || (rate.day ?? 0) >= (best.day ?? 0) ? rate : best), undefined);
}

interface Converted {
  readonly units: number;
  /** " (90.00 CHF at 1.05 of 2026-01-02, bank)", where another currency was. */
  readonly said: string;
}

/** An amount in units of the club's currency, or why there is none. */
function convertedTo(club: string, rates: readonly RateRow[], amount: number, currency: string, day: number): Converted | string {
  const units = minorUnits(amount, decimalsOf(currency));
  if (units === undefined) return 'the amount has more decimals than its currency';
  if (currency === club) return { units, said: '' };
  const rate = rateOn(rates, currency, day);
  if (rate?.millionths === undefined) return `no rate of ${currency} of ${isoText(day)} or before`;
  const inClub = timesFraction(units, rate.millionths * 10 ** decimalsOf(club), 1_000_000 * 10 ** decimalsOf(currency));
  if (inClub === undefined) return 'the amount at this rate is too large to be exact';
  const source = rate.source === '' ? '' : `, ${rate.source}`;
  return {
    units: inClub,
    said: ` (${amount.toFixed(decimalsOf(currency))} ${currency} at ${rate.millionths / 1e6} of ${isoText(rate.day ?? day)}${source})`,
  };
}

interface Sorted<Value> {
  readonly taken: readonly Value[];
  readonly unknown: readonly Line[];
}

const unknownLine = (what: string, why: string): Line => ['unknown', what, `${why}, so not in these sums`, '', '', ''];

function costsOf(
  rows: readonly { readonly row: number; readonly value: CostRow }[],
  club: string,
  rates: readonly RateRow[],
  firstDay: number,
): Sorted<DuesCost> {
  const taken: DuesCost[] = [];
  const unknown: Line[] = [];
  for (const { row, value } of rows) {
    const { amount, currency, rule, slips } = value;
    // The word of the last line of each member, by which sheets find it.
    const name = plainWords(value.name) === 'balance' ? `${value.name} (a cost)` : value.name;
    const what = `${name} (row ${row} of the costs)`;
    if (amount === undefined || currency === undefined || rule === undefined || slips.length > 0) {
      unknown.push(unknownLine(what, slips.join('; ')));
      continue;
    }
    const converted = convertedTo(club, rates, amount, currency, Math.max(value.fromDay ?? firstDay, firstDay));
    if (typeof converted === 'string') unknown.push(unknownLine(what, converted));
    else {
      const { fromDay, everyMonths, toDay } = value;
      taken.push({ name: `${name}${converted.said}`, units: converted.units, rule, fromDay, everyMonths, toDay });
    }
  }
  return { taken, unknown };
}

function paymentsOf(
  rows: readonly { readonly row: number; readonly value: PaymentRow }[],
  club: string,
  rates: readonly RateRow[],
): Sorted<DuesPayment> {
  const taken: DuesPayment[] = [];
  const unknown: Line[] = [];
  for (const { row, value } of rows) {
    const { member, day, amount, currency, remark, slips } = value;
    const what = `payment of ${member?.name ?? 'nobody'} (row ${row} of the payments)`;
    if (member === undefined || day === undefined || amount === undefined || currency === undefined) {
      unknown.push(unknownLine(what, slips.join('; ')));
      continue;
    }
    const converted = convertedTo(club, rates, amount, currency, day);
    if (typeof converted === 'string') unknown.push(unknownLine(what, converted));
    else taken.push({ member, day, units: converted.units, remark: `${remark}${converted.said}`.trim() });
  }
  return { taken, unknown };
}

const often = (times: number): string => (times === 1 ? 'once' : `${times} times`);

/** The lines of one member, his balance last. */
function accountLines({ named, forward, charges, payments, charged, paid, balance }: DuesAccount, money: (units: number) => number): Line[] {
  return [
    ...(forward === 0 ? [] : [[named.name, 'brought forward', '', money(forward), '', '']]),
    ...charges.map(({ name, rule, times, units }) => [
      named.name,
      name,
      `${rule === 'per hour' ? '' : `${often(times)}, `}${rule}`,
      money(units),
      '',
      '',
    ]),
    ...payments.map(({ day, units, remark }) => [named.name, `payment ${isoText(day)}`, remark, '', money(units), '']),
    [named.name, 'balance', '', money(forward + charged), money(paid), money(balance)],
  ];
}

const forwardUnits = (amount: number, currency: string, row: number): number => {
  const units = minorUnits(amount, decimalsOf(currency));
  if (units === undefined) throw new NamedArgumentError('members', new ArgumentError('brought forward to the last coin', String(amount), row));
  return units;
};

export const DUES_STATEMENT = laying({
  name: 'DUES_STATEMENT',
  subject: 'Costs',
  summary:
    'What each member of a club owes over a period, line by line: costs as often as they fall, shared among who is a member then, less payments.',
  parameters: {
    members: duesMembers(
      "Rows of member, joined, left, share, hours, brought forward, one row a member. Joined and left are days of membership, blank where there is none; hours of the period as 12.5 or 12:30; brought forward is owed from before, in the club's currency.",
    ),
    costs: duesCosts(
      'Rows of cost, amount, currency, from, every so many months, to, shared by: equal, share, hours, or per hour for what each hour flown costs. Blank from: the first day of the period; blank months: once.',
    ),
    payments: duesPayments('Rows of day, member, amount, currency, remark. Only those of the period count. Blank where there are none.'),
    first_day: date('First day of the period.'),
    last_day: date('Last day of the period, itself included; not before the first.'),
    currency: currencyCode('The currency of the club, in which everything is added up.'),
    rates: optional(
      duesRates(
        "Rows of currency, rate, day, source: what one unit of it is in the club's currency, to six decimals. The latest rate of the day or before it counts.",
      ),
      [],
      'no other currencies',
    ),
    headings: headingsAbove,
  },
  results: {
    member: result('', 'The member; nobody for a cost that no member bears; unknown for what cannot be read; all for the sums.'),
    what: result('', 'The cost, the payment, or the balance.'),
    how: result('', 'How often, and how it is shared; or the reason.'),
    charged: result('currency', 'What is charged; in the row of the balance with what was brought forward.'),
    paid: result('currency', 'What was paid.'),
    balance: result('currency', 'What is owed at the end of the period; negative for a credit. In the row of the balance only.'),
  },
  sources: ['largest-remainder', 'iso-4217', 'common-practice'],
  notes:
    'A cost of another currency is converted by the rate of its first day in the period, each falling is then shared by the largest remainder, so that the shares add up to the cent; a cost per hour is rounded for each member. A row of the costs or payments that cannot be read is told and spoils nothing else; a member that cannot be read stops the whole. Who pays for what is for the club to decide: common practice, no source.',
  examples: [
    {
      arguments: [
        [
          ['Ada', '', '', 2, '12:30', 10],
          ['Bo', '2026-02-15', '', 1, 4, ''],
        ],
        [
          ['hangar', 100.01, 'EUR', '2026-01-01', 1, '', 'equal'],
          ['insurance', 90, 'CHF', '2026-03-01', '', '', 'share'],
          ['fuel', 60, 'EUR', '', '', '', 'per hour'],
        ],
        [['2026-03-10', 'Ada', 500, 'EUR', 'bank']],
        '2026-01-01',
        '2026-03-31',
        'EUR',
        [['CHF', 1.05, '2026-02-27', 'bank']],
      ],
      gives: [
        ['Ada', 'brought forward', '', 10, '', ''],
        ['Ada', 'hangar', '3 times, equal', 250.03, '', ''],
        ['Ada', 'insurance (90.00 CHF at 1.05 of 2026-02-27, bank)', 'once, share', 63, '', ''],
        ['Ada', 'fuel', 'per hour', 750, '', ''],
        ['Ada', 'payment 2026-03-10', 'bank', '', 500, ''],
        ['Ada', 'balance', '', 1073.03, 500, 573.03],
        ['Bo', 'hangar', 'once, equal', 50, '', ''],
        ['Bo', 'insurance (90.00 CHF at 1.05 of 2026-02-27, bank)', 'once, share', 31.5, '', ''],
        ['Bo', 'fuel', 'per hour', 240, '', ''],
        ['Bo', 'balance', '', 321.5, 0, 321.5],
        ['all', 'balance', '', 1394.53, 500, 894.53],
      ],
      source: 'By hand: two months of 100.01 alone and one halved (50.01 and 50.00), 94.50 in shares of 2 and 1, 60 an hour',
      formula: '=DUES_STATEMENT(A2:F3, H2:N4, P2:T2, "2026-01-01", "2026-03-31", "EUR", V2:Y2)',
    },
  ],
  compute: (given) => {
    const [firstDay, lastDay] = [dayNumber(given.first_day), dayNumber(given.last_day)];
    if (lastDay < firstDay)
      throw new CoreError('days-out-of-order', { earlier: 'firstDay', later: 'lastDay', earlierDay: firstDay, laterDay: lastDay });
    const { currency } = given;
    const rates = given.rates.map(({ value }) => value);
    const members = given.members.map(({ value: { forwardAmount, ...member }, row }) => ({
      ...member,
      forward: forwardUnits(forwardAmount, currency, row),
    }));
    const keys = members.map(({ named }) => named.key);
    const twice = given.members.find(({ value }, index) => keys.indexOf(value.named.key) !== index);
    if (twice !== undefined)
      throw new NamedArgumentError('members', new ArgumentError('one row a member', `"${twice.value.named.name}" once more`, twice.row, 1));
    const costs = costsOf(given.costs, currency, rates, firstDay);
    const payments = paymentsOf(given.payments, currency, rates);
    const dues = duesOf(members, costs.taken, payments.taken, firstDay, lastDay);
    const money = (units: number): number => amountOfUnits(units, decimalsOf(currency));
    const sum = (of: (account: DuesAccount) => number): number => money(dues.accounts.reduce((total, account) => total + of(account), 0));
    return [
      ...dues.accounts.flatMap((account) => accountLines(account, money)),
      ...dues.unshared.map(({ name, times, units }): Line => ['nobody', name, `${often(times)}, when nobody has a part in it`, money(units), '', '']),
      ...dues.strangers.map(({ member, day, units, remark }): Line => [
        'nobody',
        `payment of ${member.name} ${isoText(day)}`,
        remark,
        '',
        money(units),
        '',
      ]),
      ...costs.unknown,
      ...payments.unknown,
      ['all', 'balance', '', sum(({ forward, charged }) => forward + charged), sum(({ paid }) => paid), sum(({ balance }) => balance)],
    ];
  },
});
