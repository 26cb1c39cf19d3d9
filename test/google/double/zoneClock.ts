// The wall clock of a zone, from the zone data of Node: seconds too, as 1899 needs them.

const clocks = new Map<string, Intl.DateTimeFormat>();

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const clock =
    clocks.get(timeZone) ??
    new Intl.DateTimeFormat('en-GB', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    });
  clocks.set(timeZone, clock);
  return clock;
}

/** yyyy-MM-dd HH:mm:ss. */
export function wallClockIn(zone: string, instant: number): string {
  const parts = Object.fromEntries(
    clockOf(zone)
      .formatToParts(instant)
      .map(({ type, value }) => [type, value]),
  );
  return `${(parts.year ?? '').padStart(4, '0')}-${parts.month}-${parts.day} ${parts.hour}:${parts.minute}:${parts.second}`;
}

/** The same by the standard time of this century, as a date service shows it that knows no other. */
export function standardClockIn(zone: string, instant: number): string {
  const offsets = [0, 6].map((month) => Date.UTC(2026, month, 1)).map((at) => Date.parse(`${wallClockIn(zone, at).replace(' ', 'T')}Z`) - at);
  return new Date(instant + Math.min(...offsets)).toISOString().slice(0, 19).replace('T', ' ');
}
