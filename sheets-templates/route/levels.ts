// Each leg at its level, beside the leg: the figures used and where they come from, and how far the level clears the highest ground.
import { capped, worstOf } from '../build';
import { callHeads, headWords, shownNumber, spillRoom, withNeighbours, type Look } from '../lists';
import { formulaCall, type TemplateCell } from '../template';
import { cruiseHere, cruiseOfAll, fieldsHere, legsHere, pointsHere, windsHere } from './calls';
import { legColumns, legList, wholeRows as rows } from './rows';
import { value } from './whole';

const levelHeads = ['true airspeed', 'fuel flow', 'for cold air, ft', 'to spare, ft', 'ground', 'reason'];
const levelLooks: readonly Look[] = [
  shownNumber('whole'),
  shownNumber('one'),
  shownNumber('whole'),
  shownNumber('whole'),
  ['verdict'],
  ['computedText'],
];

const levelsCall = formulaCall(
  'ROUTE_LEVELS',
  legsHere,
  fieldsHere,
  windsHere,
  value(rows.clearance),
  value(rows.judgeGround),
  value(rows.sourceElevation),
  pointsHere,
  cruiseHere,
  value(rows.weight),
  ...cruiseOfAll,
  headWords(levelHeads),
);

export const levelCells: TemplateCell[] = [
  ...callHeads(legList.head, legColumns.levels, levelHeads, levelsCall, [
    'ROUTE_LEVELS: as typed, else by the cruise table of the aircraft at the power of the leg, else the figures of the aircraft list.',
    undefined,
    'COLD_TEMPERATURE_CORRECTION for the highest ground and the clearance above it.',
    'The level above ground, clearance and cold air; negative is what is missing.',
  ]),
  ...spillRoom(legList, legColumns.levels, levelLooks),
];

/** Formula texts: each leg by its number, its word on the ground and why. */
const [numbers, words, reasons] = ['A', 'N', 'O'].map((letter) => withNeighbours(legList, letter)) as [string, string, string];
const typedIn = ['B', 'C', 'D'].map((letter) => `(${withNeighbours(legList, letter)}<>"")`).join('+');
/** The heads are filled too. */
const legCount = `(SUMPRODUCT(--(${typedIn}>0))-1)`;
const judge = value(rows.judgeGround);

/** Formula text: the word on the ground of all legs; OK where it is not judged, which the reason says. */
export const groundWord = `IF(${judge}="no","OK",IF(${judge}<>"yes","UNKNOWN",${worstOf(words, legCount).slice(1)}))`;
const said = (word: string): string => `TEXTJOIN("; ",TRUE,FILTER("leg "&${numbers}&": "&${reasons},${words}="${word}"))`;
const mostSaid = 200;
export const groundReason = `IF(${judge}="no","the ground is not judged",IF(${judge}<>"yes","judge the ground: yes or no, in section 2",IFERROR(IF(COUNTIF(${words},"NO")>0,${capped(said('NO'), mostSaid)},IF(COUNTIF(${words},"UNKNOWN")>0,${capped(said('UNKNOWN'), mostSaid)},IF(COUNTIF(${words},"CHECK")>0,${capped(said('CHECK'), mostSaid)},"every level clears the ground"))),"the ground is not judged: see the heads of section 1")))`;
