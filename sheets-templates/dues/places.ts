// Where the sections of Dues stand, and what the Statement reads of them.
import { on } from '../build';
import { column, listBelow, type List } from '../lists';
import { sheetNames } from '../places';

const summaryEnds = 7;

const members = listBelow(summaryEnds, 60);
const costs = listBelow(members.last, 24);
const rates = listBelow(costs.last, 8);

/** The payments come last, so that they can grow; what each member owes stands at the right of all of them. */
export const duesPlaces = { members, costs, rates, payments: listBelow(rates.last, 200) } as const;

/** The lines of every member: the call in the row of the heads, and room beside every list. */
export const lines: List = { head: members.head, first: members.first, last: duesPlaces.payments.last };

export const period = { first: 'B4', last: 'B5', currency: 'B6' } as const;

const onDues = (range: string): string => on(sheetNames.dues, range);

export const duesColumns = {
  members: onDues(column(members, 'A')),
  member: onDues(column(lines, 'L')),
  /** From what it is for to the balance. */
  lines: onDues(`$M$${lines.first}:$Q$${lines.last}`),
  first: onDues('$B$4'),
  last: onDues('$B$5'),
  currency: onDues('$B$6'),
} as const;
