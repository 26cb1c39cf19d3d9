// Dates may come from another realm than the script's own (the platform makes them, and so do test contexts); for those
// `instanceof Date` is false, so they are copied into this realm's Date before anything reads them.

const isForeignDate = (value: unknown): value is Date =>
  typeof value === 'object' && !(value instanceof Date) && Object.prototype.toString.call(value) === '[object Date]';

/** The same argument, its dates being Dates of this realm; ranges are copied only when they hold a foreign date. */
export function ownValue(given: unknown): unknown {
  if (Array.isArray(given)) return holdsForeignDate(given) ? given.map(ownValue) : given;
  return isForeignDate(given) ? new Date(given.getTime()) : given;
}

function holdsForeignDate(values: readonly unknown[]): boolean {
  return values.some((value) => (Array.isArray(value) ? holdsForeignDate(value) : isForeignDate(value)));
}
