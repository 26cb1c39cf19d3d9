// Dues: members, costs, payments and rates of exchange of a period, and what each member owes. One call for the whole club.
import { area, cell, line, typedOver } from '../build';
import { demoClub, demoCosts, demoPayments, demoRates } from '../demo/dues';
import { whileDemo } from '../demo/inUse';
import { columnsFrom } from '../keys';
import {
  column,
  columnWithHead,
  entryList,
  headWords,
  helpUnlessBeside,
  listHeading,
  listHeads,
  shownNumber,
  shownText,
  spillList,
  spillRoom,
  typedDate,
  typedNumber,
  typedText,
  type List,
  type Look,
} from '../lists';
import { sheetNames } from '../places';
import { formulaCall, type DeclaredSheet, type TemplateCell, type Validation } from '../template';
import { duesPlaces, lines, period } from './places';

const { members, costs, rates, payments } = duesPlaces;
const table = ({ head, last }: List, to: string): string => `$A$${head}:$${to}$${last}`;
const absolute = (place: string): string => place.replace(/([A-Z]+)(\d+)/, '$$$1$$$2');

const words = ['member', 'what', 'how', 'charged', 'paid', 'balance'];
const call = formulaCall(
  'DUES_STATEMENT',
  table(members, 'F'),
  table(costs, 'G'),
  table(payments, 'E'),
  absolute(period.first),
  absolute(period.last),
  absolute(period.currency),
  table(rates, 'D'),
  headWords(words),
);
const money = typedNumber('two');
const looks: readonly Look[] = [
  ['computedText', undefined, 'DUES_STATEMENT: shares by the largest remainder, so that they add up to the cent.'],
  ...[shownText, shownText, shownNumber('two'), shownNumber('two'), shownNumber('two')],
];

/** What the rows "balance" of the lines say of each member, under a head of its own. */
const balanceOf = (head: string, letter: string): string => {
  const names = columnWithHead(members, 'A');
  const found = `XLOOKUP(TRIM(${names})&"|balance",${column(lines, 'L')}&"|"&${column(lines, 'M')},${column(lines, letter)})`;
  return `=ARRAYFORMULA(IF(ROW(${columnWithHead(members, 'G')})=ROW($A$${members.head}),"${head}",IF(${names}="","",IFERROR(${found},"?"))))`;
};

const sums: TemplateCell[] = (
  [
    [8, 'charged', 'O'],
    [9, 'paid', 'P'],
    [10, 'balance', 'Q'],
  ] as const
).map(([across, head, letter]) => cell(members.head, across, balanceOf(head, letter), 'columnHead', { note: 'From the lines at the right.' }));

const total = (letter: string): string => `TEXT(XLOOKUP("all",${column(lines, 'L')},${column(lines, letter)}),"#,##0.00")`;
const told = (word: string): string => `COUNTIF(${column(lines, 'L')},"${word}")`;
const summary = `=IFERROR("Charged "&${total('O')}&", paid "&${total('P')}&", still owed "&${total('Q')}&" "&${period.currency}&"."&IF(${told('nobody')}=0,""," CHECK: "&${told('nobody')}&" lines fall on nobody.")&IF(${told('unknown')}=0,""," UNKNOWN: "&${told('unknown')}&" rows are not in the sums, see the foot of the lines."),"UNKNOWN: the lines at the right cannot be worked out; the cell "&ADDRESS(ROW($L$${lines.head}),COLUMN($L$${lines.head}),4)&" says why.")`;

const memberLooks: readonly Look[] = [typedText, typedDate, typedDate, typedNumber('general'), typedNumber('general'), money];
const costLooks: readonly Look[] = [typedText, money, typedText, typedDate, typedNumber('whole'), typedDate, typedText];

const worked: readonly TemplateCell[] = [
  ...listHeading(
    members.head - 2,
    1,
    10,
    '1  Members',
    helpUnlessBeside(members, 'A', 'A member', 'One row a member; hours of the period as 12.5 or 12:30.'),
  ),
  ...listHeads(members.head, 1, ['member', 'joined', 'left', 'share', 'hours', 'brought forward']),
  ...entryList(members, 1, memberLooks, demoClub),
  ...sums,
  ...spillRoom(members, 8, [shownNumber('two'), shownNumber('two'), shownNumber('two')]),
  ...listHeading(
    costs.head - 2,
    1,
    10,
    '2  Costs',
    helpUnlessBeside(costs, 'A', 'A cost', 'Blank from: the first day of the period. Blank months: once. Per hour: what each hour flown costs.'),
  ),
  ...listHeads(costs.head, 1, ['cost', 'amount', 'currency', 'from', 'every so many months', 'to', 'shared by']),
  ...entryList(costs, 1, costLooks, demoCosts),
  ...listHeading(
    rates.head - 2,
    1,
    10,
    '3  Rates of exchange',
    helpUnlessBeside(rates, 'A', 'A rate', "What one unit of a currency is in the club's; the latest of the day or before it counts."),
  ),
  ...listHeads(rates.head, 1, ['currency', 'rate', 'day', 'source']),
  ...entryList(rates, 1, [typedText, typedNumber('general'), typedDate, typedText], demoRates),
  ...listHeading(payments.head - 2, 1, 10, '4  Payments', helpUnlessBeside(payments, 'A', 'A payment', 'Only those of the period count.')),
  ...listHeads(payments.head, 1, ['day', 'member', 'amount', 'currency', 'remark']),
  ...entryList(payments, 1, [typedDate, typedText, money, typedText, typedText], demoPayments),
  ...listHeading(lines.head - 2, 12, 17, '5  What each member owes, line by line', 'The Statement sheet shows those of one member.'),
  ...spillList(lines, 12, looks, words, call),
];

const dates = (range: string, help: string): Validation => ({ kind: 'date', range, help });
const of = ({ first, last }: List, across: number): string => area(first, across, last, across);

export const duesSheet: DeclaredSheet = {
  key: 'dues',
  name: sheetNames.dues,
  version: 1,
  rows: payments.last + 1,
  columns: 17,
  columnWidths: [120, 88, 88, 84, 84, 88, 84, 84, 84, 84, 20, 96, 400, 150, 84, 84, 84],
  rowHeights: { 1: 32, [members.head]: 34, [costs.head]: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Dues', 'title'),
    cell(1, 4, whileDemo('Invented members, costs, payments and rates, for demonstration.'), 'subtitle'),
    cell(2, 1, 'What the club has agreed on decides; nothing here is a bill.', 'subtitle'),
    cell(3, 1, summary, 'computedText'),
    ...line(4, 1, ['first day', 'label'], ['=IF(ISNUMBER(as_of),DATE(YEAR(as_of),1,1),"")', 'input', { format: 'date' }]),
    ...line(
      5,
      1,
      ['last day', 'label'],
      ['=IF(ISNUMBER(as_of),DATE(YEAR(as_of),12,31),"")', 'input', { format: 'date' }],
      ['both days are in the period', 'unit'],
    ),
    ...line(6, 1, ['currency', 'label'], ['EUR', 'inputText']),
    cell(7, 1, `=${typedOver(worked)}`, 'computedText'),
    ...worked,
  ],
  merges: [],
  validations: [
    dates(`${period.first}:${period.last}`, 'A date, such as 2026-01-01.'),
    dates(area(members.first, 2, members.last, 3), 'A day of membership, such as 2026-04-20; blank where there is none.'),
    dates(of(costs, 4), 'The day on which it falls first; blank for the first day of the period.'),
    dates(of(costs, 6), 'The last day on which it can fall; blank where there is none.'),
    {
      kind: 'list',
      range: of(costs, 7),
      choices: ['equal', 'share', 'hours', 'per hour'],
      help: 'In equal parts, by shares, by hours; per hour: each pays it for his own.',
    },
    dates(of(rates, 3), 'The day of the rate.'),
    dates(of(payments, 1), 'The day of the payment, such as 2026-02-10.'),
  ],
  verdictRanges: [],
  names: [],
  keys: {
    entries: { firstDay: period.first, lastDay: period.last, currency: period.currency },
    lists: {
      members: {
        ...members,
        read: { first: members.head, last: members.last },
        columns: columnsFrom(1, 'member', 'joined', 'left', 'share', 'hours', 'forward'),
      },
      costs: {
        ...costs,
        read: { first: costs.head, last: costs.last },
        columns: columnsFrom(1, 'cost', 'amount', 'currency', 'from', 'months', 'to', 'sharedBy'),
      },
      rates: { ...rates, read: { first: rates.head, last: rates.last }, columns: columnsFrom(1, 'currency', 'rate', 'day', 'source') },
      payments: {
        ...payments,
        read: { first: payments.head, last: payments.last },
        columns: columnsFrom(1, 'day', 'member', 'amount', 'currency', 'remark'),
      },
    },
  },
  charts: [],
  print: { landscape: true },
};
