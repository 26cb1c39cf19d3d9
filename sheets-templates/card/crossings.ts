// Crossing restrictions on the card: the list, the start at a steady angle, and how they are judged.
import { inputRows, line, worstOf, type Content } from '../build';
import { callHeads, headWords } from '../lists';
import { formulaCall, type TemplateCell } from '../template';
import { used } from './fromRoute';
import { crossings, headingAcross, heads, moveDown, padded, read, rows, strayAbove } from './descentLists';

/** Invented: fix, distance to go, miles before it, altitude, kind. */
const crossingValues: readonly (readonly Content[])[] = [
  ['Sorrel', 24, undefined, 8000, 'at or above'],
  ['Tansy', 42, 8, 7000, 'at'],
  ['Marrow', 58, undefined, 4500, 'at or below'],
];

const crossingHeads = ['start in, NM', 'start in, min', 'then at, ft', 'angle, deg', 'verdict', 'reason'];

/** In the row of the heads and read from there on, so that no restriction that is deleted takes the call away. */
const crossingsCall = formulaCall(
  'DESCENT_CROSSINGS',
  ...['A', 'B', 'C', 'D', 'E'].map((column) => rows({ first: crossings.first - 1, last: crossings.last + 1 }, column)),
  'B7',
  'B8',
  used.groundspeed,
  headWords(crossingHeads),
);

const starts = read(crossings, 'F');

export const verdicts = read(crossings, 'J');

/** Row, within the restrictions, of the one that decides the start. */
export const deciding = `MATCH(MIN(${starts}),${starts},0)`;

const ofDeciding = (column: string): string => `INDEX(${read(crossings, column)},${deciding})`;

export const crossingCells: TemplateCell[] = [
  ...headingAcross(6, '1  Crossing restrictions'),
  ...line(7, 1, ['altitude now', 'label'], [11000, 'input', { format: 'whole' }], ['ft', 'unit']),
  ...line(
    8,
    1,
    ['descent angle', 'label'],
    [1.9, 'input', { format: 'one', note: '3 degrees is 318 ft a mile. Left blank: 3. The angle of the plan below, typed here, makes both agree.' }],
    ['degrees', 'unit'],
  ),
  ...line(
    9,
    1,
    ['groundspeed now', 'label'],
    [
      165,
      'input',
      { format: 'whole', note: 'Until the start of the descent, for the minutes. Blank where the trip goes by the route: taken from there.' },
    ],
    ['kt', 'unit'],
  ),
  ...line(
    7,
    5,
    ['start, steady angle', 'label'],
    [
      `=IF(COUNT(${starts})=0,"",MIN(${starts}))`,
      'computed',
      {
        format: 'one',
        note: 'At the steady angle: the smallest start of the column below, of the restriction that decides. The plan by schedule and winds has its own start.',
      },
    ],
    ['NM', 'unit'],
  ),
  ...line(
    8,
    5,
    ['that is in', 'label'],
    [`=IF(COUNT(${starts})=0,"",${ofDeciding('G')})`, 'computed', { format: 'one', note: 'At the groundspeed now.' }],
    ['minutes', 'unit'],
  ),
  ...line(9, 5, ['decided by', 'label'], [`=IF(COUNT(${starts})=0,"",${ofDeciding('A')})`, 'computedText']),
  ...line(crossings.first - 1, 1, ...heads('fix', 'to go, NM', 'cross this many NM before', 'altitude, ft', 'at, or below, or above')),
  ...callHeads(crossings.first - 1, 6, crossingHeads, crossingsCall, [
    'DESCENT_CROSSINGS: how far from here each restriction alone lets the descent start.',
  ]),
  ...inputRows(crossings.first, 1, padded(crossingValues, crossings, 5), (index) => (index === 3 ? 'whole' : 'one')),
  ...Array.from({ length: crossings.last - crossings.first + 1 }, (_, index) => index).flatMap((index) =>
    line(
      crossings.first + index,
      6,
      [undefined, 'computed', { format: 'one' }],
      [undefined, 'computed', { format: 'one' }],
      [undefined, 'computed', { format: 'whole' }],
      [undefined, 'computed', { format: 'one' }],
      [undefined, 'verdict'],
      [undefined, 'reason'],
    ),
  ),
];

/** Rows with any entry; each of them must have a verdict. */
const crossingsEntered = `(ROWS(${read(crossings, 'A')})-COUNTIFS(${['A', 'B', 'C', 'D', 'E'].map((column) => `${read(crossings, column)},""`).join(',')}))`;

export const crossingAbove = strayAbove(crossings, 'A', 'E');

export const crossingsVerdict = `=IF(${crossingAbove},"UNKNOWN",${worstOf(verdicts, crossingsEntered).slice(1)})`;

export const crossingsReason =
  `=IF(${crossingAbove},${moveDown('A restriction')},IF(${crossingsEntered}=0,"no restriction entered",` +
  `IF(COUNTIF(${verdicts},"OK")+COUNTIF(${verdicts},"NO")+COUNTIF(${verdicts},"UNKNOWN")=0,"not computed: altitude now, or the distance, altitude or kind of a restriction is missing or out of its range",` +
  `COUNTIF(${verdicts},"OK")&" of "&${crossingsEntered}&" met"&IF(F7="","; none asks for a descent","; at a steady "&IF(B8="",3,B8)&" degrees: start in "&ROUND(F7,1)&" NM, "&F9&" decides"))))`;
