// Every leg worked out in one call, in the row of its heads.
import { on } from '../build';
import { callHeads, headWords, listHeading, shownNumber, spillRoom, type Look } from '../lists';
import { tableInUse } from '../manual/tables';
import { cardCells, sheetNames } from '../places';
import { formulaCall, type TemplateCell } from '../template';
import { cruiseHere, cruiseOfAll, fieldsHere, legsHere, pointsHere, windsHere } from './calls';
import { answer, wholeRows as rows } from './rows';
import { value } from './whole';

const answerHeads = [
  'leg',
  'part',
  'from',
  'to',
  'level, ft',
  'true, kt',
  'wind from',
  'wind, kt',
  'course, true',
  'variat. E +',
  'heading, mag.',
  'NM',
  'ground, kt',
  'min',
  'fuel',
  'over at',
  'fuel left',
  'wanted',
  'verdict',
  'reason',
];
const answerLooks: readonly Look[] = [
  ['computedText'],
  ['computedText'],
  ['computedText'],
  ['computedText'],
  shownNumber('whole'),
  shownNumber('whole'),
  shownNumber('degrees'),
  shownNumber('whole'),
  shownNumber('degrees'),
  shownNumber('one'),
  shownNumber('degrees'),
  shownNumber('one'),
  shownNumber('whole'),
  shownNumber('one'),
  shownNumber('one'),
  // At the right, away from the fuel before it.
  ['computed'],
  shownNumber('one'),
  shownNumber('one'),
  ['verdict'],
  ['computedText'],
];
const routeCall = formulaCall(
  'ROUTE_LEGS',
  legsHere,
  fieldsHere,
  windsHere,
  value(rows.date),
  value(rows.takeoff),
  value(rows.fuel),
  value(rows.reserve),
  pointsHere,
  cruiseHere,
  tableInUse('climb'),
  on(sheetNames.card, cardCells.schedule),
  value(rows.alternate),
  value(rows.weight),
  value(rows.climbSpeed),
  value(rows.climbFlow),
  value(rows.descentFlow),
  value(rows.arriveAbove),
  headWords(answerHeads),
  ...cruiseOfAll,
);

export const answerCells: TemplateCell[] = [
  ...listHeading(
    answer.head - 2,
    1,
    20,
    '6  The flight, part by part',
    'Headings and courses in the middle of each leg, without deviation. "wanted": the least that the rest of the route, the alternate and the reserve ask for.',
  ),
  ...callHeads(answer.head, 1, answerHeads, routeCall, ['ROUTE_LEGS: every leg in one call.']),
  ...spillRoom(answer, 1, answerLooks),
];
