const two = (part: number): string => String(part).padStart(2, '0');

/** The day by the clock of the user's own machine, as 2026-11-27. The sheets read no clock; only the check compares with it. */
export function localToday(): string {
  const now = new Date();
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The time by the same clock, as 09:05:30: when something was read, so that it is not taken for what stands there now. */
export function localTime(): string {
  const now = new Date();
  return [now.getHours(), now.getMinutes(), now.getSeconds()].map(two).join(':');
}
