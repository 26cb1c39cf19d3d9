// One wind against several runways: which of them lie within the crosswind limit, and in what order of choice.
import type { Verdict } from '../basics/verdict';
import { windComponents, type WindComponents } from '../air/wind';

export interface RunwayWind extends WindComponents {
  /** The crosswind to judge by: in the gust where there is one. Positive from the right. */
  readonly judgedCrosswindKnots: number;
  readonly verdict: Verdict;
  /** 1 is the first choice; a runway outside the limit has none. */
  readonly order: number | undefined;
}

/** Less tailwind than this is no wind to speak of. @source common-practice: winds are given in whole knots. */
export const leastTailwindKnots = 0.5;
/** Equal crosswinds count as within the limit; only binary rounding can set them apart. */
const equalKnots = 1e-9;

function verdictOf(headwindKnots: number, crosswindKnots: number, limitKnots: number | undefined): Verdict {
  if (limitKnots === undefined) return 'UNKNOWN';
  if (Math.abs(crosswindKnots) > limitKnots + equalKnots) return 'NO';
  return headwindKnots <= -leastTailwindKnots ? 'CHECK' : 'OK';
}

type Unordered = Omit<RunwayWind, 'order'>;

/** Nothing to look at comes first; then the most headwind; then the least crosswind. */
const choiceOf = ({ verdict, headwindKnots, judgedCrosswindKnots }: Unordered): readonly number[] => [
  verdict === 'OK' ? 0 : 1,
  -headwindKnots,
  Math.abs(judgedCrosswindKnots),
];

function before(one: Unordered, other: Unordered): number {
  const others = choiceOf(other);
  return (
    choiceOf(one)
      .map((part, index) => part - (others[index] ?? 0))
      .find((difference) => Math.abs(difference) > equalKnots) ?? 0
  );
}

/** Directions and wind in one reference. Runways equally good share their place in the order. */
export function runwayWinds(
  directions: readonly number[],
  windFromDegrees: number,
  windKnots: number,
  gustKnots: number | undefined,
  limitKnots: number | undefined,
): RunwayWind[] {
  const winds = directions.map((direction): Unordered => {
    const steady = windComponents(direction, windFromDegrees, windKnots);
    const { crosswindKnots } = windComponents(direction, windFromDegrees, gustKnots ?? windKnots);
    return { ...steady, judgedCrosswindKnots: crosswindKnots, verdict: verdictOf(steady.headwindKnots, crosswindKnots, limitKnots) };
  });
  const ordered = winds.filter(({ verdict }) => verdict !== 'NO').sort(before);
  const places = new Map<Unordered, number>();
  ordered.forEach((wind, index) => {
    const better = ordered[index - 1];
    const shared = better !== undefined && before(better, wind) === 0 ? places.get(better) : undefined;
    places.set(wind, shared ?? index + 1);
  });
  return winds.map((wind) => ({ ...wind, order: places.get(wind) }));
}
