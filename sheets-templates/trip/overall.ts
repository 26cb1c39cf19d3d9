// The one word for the whole trip, and what it says beside it.
import { area, cell, unlessFormula, worstOf } from '../build';
import type { TemplateCell } from '../template';
import { notJudged } from './item';
import { tripRows } from './rows';

const { judged } = tripRows;
/** The words of all items. */
export const itemWords = area(judged.first, 8, judged.last, 8);
const [names, why] = [area(judged.first, 7, judged.last, 7), area(judged.first, 9, judged.last, 9)];
/** The last of the items is the one that looks after all others, so the verdict looks after it. */
const lastTypedOver = `NOT(ISFORMULA(H${judged.last}))`;

const named = (word: string): string =>
  `IF(COUNTIF(${itemWords},"${word}")=0,"",TEXTJOIN("; ",TRUE,FILTER(${names}&": "&${why},${itemWords}="${word}"))&". ")`;
/** The same without the reasons, for a line that would be too long with them. */
const namedOnly = (word: string): string =>
  `IF(COUNTIF(${itemWords},"${word}")=0,"","${word}: "&TEXTJOIN("; ",TRUE,FILTER(${names},${itemWords}="${word}"))&". ")`;
/** What has room on top of the sheet, in letters. */
const mostSaid = 430;
const worstFirst = ['NO', 'UNKNOWN', 'CHECK'];
const everyReason = worstFirst.map(named).join('&');
const allSaid = `IF(LEN(${everyReason})<=${mostSaid},${everyReason},${worstFirst.map(namedOnly).join('&')}&"Each reason stands below. ")`;
const others = `TEXTJOIN(", ",TRUE,FILTER(${names},${itemWords}="${notJudged}"))`;
/** What was not judged, by its names. */
const notJudgedSaid = `IF(COUNTIF(${itemWords},"${notJudged}")=0,"","Not judged: "&${others}&". ")`;
const typedOverSaid = unlessFormula(`H${judged.last}`, 'the verdict of Cells and sheets');

export const overallCells: TemplateCell[] = [
  cell(3, 1, 'Verdict', 'title'),
  cell(3, 2, worstOf(itemWords, `(ROWS(${itemWords})-COUNTIF(${itemWords},"${notJudged}"))`, [lastTypedOver]), 'bigVerdict', {
    note: 'The worst of the items judged: NO, then UNKNOWN, then CHECK, then OK. What is not judged is said beside it.',
  }),
  cell(
    3,
    7,
    `=IF(B3="OK",IF(COUNTIF(${itemWords},"${notJudged}")=0,"Every item below is OK.","OK for what is judged. "&${notJudgedSaid}),${allSaid}&${typedOverSaid})`,
    'reason',
  ),
  cell(4, 1, `=IF(B3="OK","",${notJudgedSaid})`, 'subtitle'),
];
