// The Statement of one member: his lines of Dues and nobody else's, as a page of its own.
import { cell, line } from '../build';
import { whileDemo } from '../demo/inUse';
import { listHeads, shownNumber, shownText, spillBlock, type Look } from '../lists';
import { sheetNames } from '../places';
import type { DeclaredSheet } from '../template';
import { duesColumns } from './places';

const chosen = 'B3';
const rows = { first: 8, last: 107 };
const looks: readonly Look[] = [shownText, shownText, shownNumber('two'), shownNumber('two'), shownNumber('two')];
const { member, lines, members, first, last, currency } = duesColumns;
const own = `(${member}=TRIM($B$3))`;
const day = (place: string): string => `IF(ISNUMBER(${place}),TEXT(${place},"yyyy-mm-dd"),"?")`;

export const statementSheet: DeclaredSheet = {
  key: 'statement',
  name: sheetNames.statement,
  version: 1,
  rows: rows.last + 1,
  columns: 5,
  columnWidths: [420, 140, 84, 84, 84],
  rowHeights: { 1: 32 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Statement', 'title'),
    cell(1, 3, whileDemo('Invented, for demonstration.'), 'subtitle'),
    ...line(3, 1, ['member', 'label'], ['Ada', 'inputText', { note: 'One of the members of Dues.' }]),
    ...line(4, 1, ['period', 'label'], [`=${day(first)}&" to "&${day(last)}`, 'computedText']),
    ...line(5, 1, ['currency', 'label'], [`=${currency}&""`, 'computedText']),
    ...line(6, 1, ['Lines of the member', 'heading'], ...Array.from({ length: 4 }, () => ['', 'heading'] as const)),
    ...listHeads(7, 1, ['what', 'how', 'charged', 'paid', 'balance']),
    ...spillBlock(rows, 1, looks, `IFERROR(FILTER(${lines},${own}),"Dues has no lines of this member, or cannot be read.")`),
  ],
  merges: [],
  validations: [{ kind: 'listFrom', range: chosen, source: members, help: 'A member of Dues.' }],
  verdictRanges: [],
  names: [],
  keys: { entries: { member: chosen }, lists: {} },
  charts: [],
  print: { landscape: false },
};
