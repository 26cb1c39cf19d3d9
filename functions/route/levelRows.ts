// Lays out the legs at their levels, each answer beside the row of its leg: figures used, spare height, verdict, reason.
import { CoreError } from '../../core/basics/errors';
import type { Verdict } from '../../core/basics/verdict';
import { caught, type Placed } from '../../core/route/placed';
import { clearanceOf, type Clearance } from '../../core/route/ground';
import type { CruiseOrigin, CruiseUsed } from '../../core/route/cruise';
import type { ResultCell } from '../registry/declaration';
import { inWords, isBlank, type CellValue } from '../registry/cellValues';
import { numberFromCell } from '../registry/readNumber';
import { rounded, wholeDown, wholeUp } from '../registry/sharedWords';
import { wordLeg } from './legWords';
import type { ReadLeg } from './readRoute';

/** The least height over people and things on the ground away from towns. @source cfr-91-119, paragraph (c), from memory. */
const leastClearanceFeet = 500;
const lowestGroundFeet = -1500;
const highestGroundFeet = 30_000;
const mostClearanceFeet = 10_000;

export interface LevelsAsked {
  readonly read: readonly ReadLeg[];
  readonly judged: boolean;
  readonly clearanceFeet: number | undefined;
  readonly sourceFeet: number | undefined;
}

const originWords: Readonly<Record<CruiseOrigin, (power: number | undefined) => string>> = {
  typed: () => 'typed',
  table: (power) => `of the cruise table${power === undefined ? '' : ` at power ${rounded(power)}`}`,
  'aircraft list': () => 'of the aircraft list',
};

function cruiseInWords({ speedFrom, flowFrom, power }: CruiseUsed): string {
  const [speed, flow] = [originWords[speedFrom](power), originWords[flowFrom](power)];
  return speed === flow ? `speed and flow ${speed}` : `speed ${speed}, flow ${flow}`;
}

interface Judgement {
  readonly clearance?: Clearance;
  readonly verdict: Verdict;
  readonly reason: string;
}

/** A height as it is typed, or what is wrong with it. */
function heightIn(raw: CellValue, name: string, least: number, most: number): number | string {
  const feet = numberFromCell(raw);
  if (feet !== undefined && feet >= least && feet <= most) return feet;
  return `${name} must be ${rounded(least)} to ${rounded(most)} feet; got ${inWords(raw)}`;
}

function doubtsOf(ground: number, clearance: number, { from, to }: Placed): string[] {
  const higher = [from, to].find(({ elevationFeet }) => elevationFeet !== undefined && elevationFeet > ground);
  return [
    ...(clearance < leastClearanceFeet ? [`a clearance of ${rounded(clearance)} ft, less than ${leastClearanceFeet}`] : []),
    ...(higher === undefined ? [] : [`highest ground of ${rounded(ground)} ft lies below ${higher.name}, ${rounded(higher.elevationFeet ?? 0)} ft`]),
  ];
}

function spareInWords({ spareFeet, coldFeet }: Clearance, ground: number, clearance: number): string {
  const cold = coldFeet === 0 ? '' : ` + ${rounded(wholeUp(coldFeet))} for cold air`;
  if (spareFeet >= 0)
    return `${rounded(wholeDown(spareFeet))} ft more than wanted${cold === '' ? '' : `, ${rounded(wholeUp(coldFeet))} counted for cold air`}`;
  return `${rounded(wholeUp(-spareFeet))} ft too low: ground ${rounded(ground)} + clearance ${rounded(clearance)}${cold}`;
}

function judgedGround(leg: Placed, row: ReadLeg, clearanceOfAll: number | undefined, sourceFeet: number | undefined): Judgement {
  const unknown = (reason: string): Judgement => ({ verdict: 'UNKNOWN', reason });
  if (isBlank(row.ground)) return unknown('the highest ground is not typed');
  const ground = heightIn(row.ground, 'highest ground', lowestGroundFeet, highestGroundFeet);
  if (typeof ground === 'string') return unknown(ground);
  if (isBlank(row.clearance) && clearanceOfAll === undefined) return unknown('no clearance is typed, for this leg or for all');
  const wanted = isBlank(row.clearance) ? (clearanceOfAll ?? 0) : heightIn(row.clearance, 'clearance', 0, mostClearanceFeet);
  if (typeof wanted === 'string') return unknown(wanted);
  const { air, altitudeFeet } = leg.planned;
  const clearance = caught(() => clearanceOf({ altitudeFeet, highestGroundFeet: ground, clearanceFeet: wanted, air, sourceFeet }));
  if (clearance instanceof CoreError) return unknown(wordLeg(clearance));
  const doubts = doubtsOf(ground, wanted, leg);
  const verdict = clearance.spareFeet < 0 ? 'NO' : doubts.length > 0 ? 'CHECK' : 'OK';
  return { clearance, verdict, reason: [spareInWords(clearance, ground, wanted), ...doubts].join('; ') };
}

/** The lower end of the whole route is the careful source: ground lies higher above it. */
function lowerEnd(legs: readonly (Placed | CoreError | undefined)[]): number | undefined {
  const [first, last] = [legs[0], legs[legs.length - 1]];
  const [from, to] = [
    first instanceof CoreError ? undefined : first?.from.elevationFeet,
    last instanceof CoreError ? undefined : last?.to.elevationFeet,
  ];
  return from === undefined ? to : to === undefined ? from : Math.min(from, to);
}

const notJudged = 'not judged';

function levelRow(leg: Placed | CoreError | undefined, row: ReadLeg, asked: LevelsAsked, sourceFeet: number | undefined): ResultCell[] {
  if (leg === undefined || leg instanceof CoreError)
    return ['', '', '', '', asked.judged ? 'UNKNOWN' : notJudged, leg === undefined ? row.trouble : wordLeg(leg)];
  const { cruise } = leg.planned;
  const ground = asked.judged ? judgedGround(leg, row, asked.clearanceFeet, sourceFeet) : undefined;
  return [
    cruise.trueAirspeedKnots,
    cruise.flowPerHour,
    ground?.clearance?.coldFeet ?? '',
    ground?.clearance?.spareFeet ?? '',
    ground?.verdict ?? notJudged,
    [...(ground === undefined ? [] : [ground.reason]), cruiseInWords(cruise)].join('; '),
  ];
}

/** Blank lines for blank rows, so that each answer stands beside its leg. */
export function levelRows(legs: readonly (Placed | CoreError | undefined)[], asked: LevelsAsked): ResultCell[][] {
  const sourceFeet = asked.sourceFeet ?? lowerEnd(legs);
  const height = Math.max(...asked.read.map(({ row }) => row)) - 1;
  return Array.from({ length: height }, (_, index): ResultCell[] => {
    const place = asked.read.findIndex(({ row }) => row === index + 2);
    const row = asked.read[place];
    return row === undefined ? ['', '', '', '', '', ''] : levelRow(legs[place], row, asked, sourceFeet);
  });
}
