// How far a zone's wall clock is ahead of UTC at an instant, asked as seldom as can be: on the platform each question is
// a service call, and a log of flights holds thousands of dates.

/** Wall clock read as if it were UTC, minus the instant, in milliseconds. */
export type OffsetAt = (instant: number) => number;

const second = 1000;
/**
 * Where both ends of a stretch have one offset, the whole stretch is taken to have it. The shortest time for which any
 * zone of the tz database has left an offset and come back since 1899 is 6 days 23 hours (Boa Vista, Noronha and Recife,
 * October 2000; found by scanning every zone), so a stretch must stay below that.
 */
const stretch = 6 * 86_400 * second;

/** The same answers as `ask`, with few questions: two for a stretch, and a halving search where its ends differ. */
export function rememberedOffsets(ask: OffsetAt): OffsetAt {
  const known = new Map<number, number>();
  const at = (instant: number): number => {
    const found = known.get(instant);
    if (found !== undefined) return found;
    const offset = ask(instant);
    known.set(instant, offset);
    return offset;
  };
  return (instant) => {
    let low = Math.floor(instant / stretch) * stretch;
    let high = low + stretch;
    // Offsets change on whole seconds, so the search ends on one.
    while (at(low) !== at(high) && high - low > second) {
      const middle = low + Math.floor((high - low) / second / 2) * second;
      if (instant < middle) high = middle;
      else low = middle;
    }
    return at(low);
  };
}
