/** The day by the clock of the user's own machine, as 2026-11-27. The sheets read no clock; only the check compares with it. */
export function localToday(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
