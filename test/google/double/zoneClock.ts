// The wall clock of a zone, from the zone data of Node: seconds too, as 1899 needs them.

const clocks = new Map<string, Intl.DateTimeFormat>();

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const clock =
    clocks.get(timeZone) ??
    new Intl.DateTimeFormat('en-GB', { timeZone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', second: '2-digit' });
  clocks.set(timeZone, clock);
  return clock;
}

/** yyyy-MM-dd HH:mm:ss. */
export function wallClockIn(zone: string, instant: number): string {
  const parts = Object.fromEntries(clockOf(zone).formatToParts(instant).map(({ type, value }) => [type, value]));
  return `${(parts.year ?? '').padStart(4, '0')}-${parts.month}-${parts.day} ${parts.hour}:${parts.minute}:${parts.second}`;
}
