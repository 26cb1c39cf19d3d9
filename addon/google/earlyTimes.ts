// Times of day in cells are moments of 30 December 1899, when clocks kept local mean time: Paris was 9 min 21 s ahead of
// UTC. Date services of before and after differ in whether they know that, and a time read by another one than it was made
// by is off by most of an hour. A time is typed in whole minutes, which tells which of them made it.
import type { OffsetAt } from './zoneOffsets';

/** From here on all date services agree. */
const sinceWhen = Date.UTC(1900, 1, 1);
const minute = 60_000;

/** Offsets of a zone as the runtime itself has them; undefined where it does not know the zone. */
function runtimeOffsets(zone: string): OffsetAt | undefined {
  const fields = { year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric', second: 'numeric' } as const;
  try {
    const format = new Intl.DateTimeFormat('en-GB', { ...fields, timeZone: zone, hour12: false });
    return (instant) => {
      const parts = new Map(format.formatToParts(new Date(instant)).map(({ type, value }) => [type, Number(value)]));
      const part = (name: keyof typeof fields): number => parts.get(name) ?? Number.NaN;
      return (
        Date.UTC(part('year'), part('month') - 1, part('day'), part('hour') % 24, part('minute'), part('second')) - Math.floor(instant / 1000) * 1000
      );
    };
  } catch {
    return undefined;
  }
}

/** The same offsets, but for early instants only such as leave no doubt; throws where there is one. */
export function withoutDoubt(asked: OffsetAt, zone: string): OffsetAt {
  return (instant) => {
    const offset = asked(instant);
    const other = instant < sinceWhen ? runtimeOffsets(zone)?.(instant) : undefined;
    if (other === undefined || other === offset) return offset;
    const [made, ...more] = [offset, other].filter((one) => (instant + one) % minute === 0);
    if (made === undefined || more.length > 0) throw new Error(`a time with two readings in ${zone}; type it as text, such as 1430`);
    return made;
  };
}
