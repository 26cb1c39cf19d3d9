// The winds on the runways against the pilot's own limits and the crosswind demonstrated.
import { ofAircraft } from '../manual/sheet';
import { limitCell } from '../start/settings';
import { workingRows } from '../working/rows';
import { working } from './entries';
import { tripRows as rows, type PlaceColumn } from './rows';

const ofWorking = (row: number, column: PlaceColumn): string => working(`${column}${row}`);
const sides = [
  { column: 'B', words: 'departure' },
  { column: 'C', words: 'destination' },
  { column: 'D', words: 'alternate' },
] as const;
const { crosswind, tailwind, gustSpread } = workingRows;
const demonstrated = ofAircraft('demonstrated crosswind, kt');

/** Beyond a limit, where there is one: which, where, and by how many knots. */
const beyond = (row: number, { column, words }: (typeof sides)[number], what: string, limit: string, called: string): string =>
  `IF(AND(ISNUMBER(${limit}),ISNUMBER(${ofWorking(row, column)})),IF(${ofWorking(row, column)}>${limit},"${words}: ${what} "&${ofWorking(row, column)}&" kt, ${called} "&${limit}&" kt",""),"")`;

/** The pilot's own limits are NO; the crosswind demonstrated in the manual is no limit, so beyond it the word is CHECK. */
const beyondLimits = `TEXTJOIN("; ",TRUE,${sides
  .flatMap((side) => [
    beyond(crosswind, side, 'crosswind', limitCell('maximum crosswind'), 'your limit'),
    beyond(tailwind, side, 'tailwind', limitCell('maximum tailwind'), 'your limit'),
    beyond(gustSpread, side, 'gusts over the wind', limitCell('maximum gust spread'), 'your limit'),
  ])
  .join(',')})`;
const beyondShown = `TEXTJOIN("; ",TRUE,${sides.map((side) => beyond(crosswind, side, 'crosswind', demonstrated, 'demonstrated')).join(',')})`;
/** Of an alternate, where one is planned. */
const windKnown = `AND(${sides.map(({ column }) => (column === 'D' ? `OR(D${rows.field}="",ISNUMBER(${ofWorking(crosswind, 'D')}))` : `ISNUMBER(${ofWorking(crosswind, column)})`)).join(',')},ISNUMBER(${demonstrated}))`;
/** The word is read from the reason, so that both are worked out once. */
const [noWind, windFits] = ['not computed: wind, runway or demonstrated crosswind is missing', 'crosswind '];
export const windVerdict = (reason: string): string =>
  `=IF(${reason}="${noWind}","UNKNOWN",IF(LEFT(${reason},${windFits.length})="${windFits}","OK",IF(ISNUMBER(SEARCH("your limit",${reason})),"NO","CHECK")))`;
export const windReason = `=IFERROR(IF(${windKnown},IF(${beyondLimits}<>"",${beyondLimits},IF(${beyondShown}<>"",${beyondShown},"${windFits}"&${ofWorking(crosswind, 'B')}&" kt on departure, "&${ofWorking(crosswind, 'C')}&" kt at the destination, gusts and variable directions taken in; demonstrated "&${demonstrated}&" kt")),"${noWind}"),"${noWind}")`;
