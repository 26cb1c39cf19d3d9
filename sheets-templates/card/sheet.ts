// The Descent and hold card: "cross eight miles before the fix at 7,000" and "hold north-east, left turns" filled in and drawn.
import { caution, cell, line, readTripInWords, typedOver, worstOf } from '../build';
import { crossings, plan } from './descentLists';
import { crossingsReason, crossingsVerdict } from './crossings';
import { descentCells, descentValidations, descentVerdictRanges } from './descent';
import { planReason, planVerdict } from './descentPlan';
import { descentEntries, descentLists } from './descentKeys';
import {
  briefRange,
  holdCells,
  holdEntries,
  holdLastRow,
  holdPlaces,
  holdReason,
  holdTop,
  holdValidations,
  holdVerdict,
  holdVerdictRanges,
} from './hold';
import { sheetNames, typedOverCells } from '../places';
import type { DeclaredSheet, TemplateCell } from '../template';
import { whileDemo } from '../demo/inUse';

const judged: readonly (readonly [item: string, verdict: string, reason: string])[] = [
  ['Crossings', crossingsVerdict, crossingsReason],
  ['Descent', planVerdict, planReason],
  ['Hold', holdVerdict, holdReason],
];

/** The three verdicts stand to the right at the top, so that one look tells. */
const judgedCells: TemplateCell[] = judged.flatMap(([item, verdict, reason], index) => [
  cell(2 + index, 4, item, 'label'),
  cell(2 + index, 5, verdict, 'verdict'),
  cell(2 + index, 6, reason, 'computedText'),
]);

const worked: readonly TemplateCell[] = [...judgedCells, ...descentCells, ...holdCells];

export const descentHoldCard: DeclaredSheet = {
  key: 'card',
  name: sheetNames.card,
  version: 5,
  rows: holdLastRow + 2,
  columns: 11,
  columnWidths: [120, 68, 56, 72, 156, 60, 52, 52, 46, 80, 174],
  rowHeights: { 1: 32, [crossings.first - 1]: 74, 23: 32, 30: 32, 39: 32 },
  frozenRows: 4,
  cells: [
    cell(1, 1, 'Descent and hold card', 'title'),
    cell(1, 5, readTripInWords, 'subtitle'),
    cell(1, 8, whileDemo('Invented fixes and numbers.'), 'subtitle'),
    ...line(
      2,
      1,
      ['Verdict', 'title'],
      [worstOf('E2:E4', undefined, [`${typedOverCells.card}<>""`]), 'bigVerdict', { note: 'The worst of the three at its right.' }],
    ),
    cell(5, 1, caution, 'subtitle'),
    ...worked,
    cell(10, 1, `=${typedOver(worked)}`, 'computedText'),
  ],
  merges: ['A2:A4', 'B2:C4'],
  validations: [...descentValidations, ...holdValidations],
  verdictRanges: ['B2', 'E2:E4', ...descentVerdictRanges, ...holdVerdictRanges],
  names: [{ name: 'card_verdict', range: 'B2' }],
  keys: { entries: { ...descentEntries, ...holdEntries }, lists: descentLists },
  charts: [],
  pictures: [
    {
      title: 'Descent profile',
      row: 23,
      column: 9,
      width: 300,
      height: 330,
      drawn: {
        kind: 'descent',
        from: { plan: `A${plan.first}:H${plan.last}`, endsAt: 'B27', crossings: `A${crossings.first}:E${crossings.last + 1}` },
      },
    },
    {
      title: 'Hold',
      row: holdTop + 1,
      column: 9,
      width: 300,
      height: 420,
      drawn: { kind: 'hold', up: 'north', from: { ...holdPlaces, brief: briefRange } },
    },
  ],
  print: { landscape: true },
};
