// What a log says of a flight beside its amounts: who flew it, between which places, and when in UTC.

/** Optional columns: the lists do without any of them. */
export type SaidColumn = 'pilot' | 'from' | 'to' | 'takeOffTime' | 'landingTime';

/**
 * Headings of these, as `logHeadings`. "Name of PIC" is none of them: with an instructor it names the instructor, whose flight it is not.
 * Times without "UTC" may be local ones, and are passed over.
 */
export const saidHeadings: Readonly<Record<SaidColumn, readonly string[]>> = {
  pilot: ['pilot', 'flown by', 'pilot name', 'name of pilot'],
  from: ['from', 'departure', 'departure place'],
  to: ['to', 'arrival', 'arrival place', 'destination'],
  takeOffTime: ['take off, utc', 'take off utc', 'take off (utc)', 'take off time utc', 'take off time, utc', 'take off time (utc)'],
  landingTime: ['landing, utc', 'landing utc', 'landing (utc)', 'landing time utc', 'landing time, utc', 'landing time (utc)'],
};
