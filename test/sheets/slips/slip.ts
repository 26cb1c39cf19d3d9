// A slip of typing or a bad day, and who must tell it: a row of the tables beside this file.
import { metar, taf, type Typed } from '../../support/tripCells';

export type Word = 'OK' | 'CHECK' | 'UNKNOWN' | 'NO';

/** What was typed, the item that must tell, its word at the least, and a piece of its sentence. */
export type Slip = readonly [what: string, typed: readonly Typed[], item: string, least: Word, piece: string];
/** A thing that is honestly so and must leave the trip OK. */
export type Honest = readonly [what: string, typed: readonly Typed[]];

/** A report of the departure with some of its groups changed. */
export const reported = (wind: string, sky = '9999 FEW040', temperature = '18/09', pressure = 'Q1009', end = ''): readonly Typed[] =>
  metar('departure', `METAR ZZXA 251350Z ${wind} ${sky} ${temperature} ${pressure}${end}`);
/** The same wind and numbers as it comes under another sky. */
export const under = (sky: string): readonly Typed[] => reported('22012KT', sky);
/** A forecast of the destination with groups after its first. */
export const forecast = (groups: string): readonly Typed[] => taf('destination', `TAF ZZXB 251100Z 2512/2612 09008KT CAVOK ${groups}`);
export const forecastAlternate = (groups: string): readonly Typed[] => taf('alternate', `TAF ZZXC 251100Z 2512/2612 12008KT CAVOK ${groups}`);
