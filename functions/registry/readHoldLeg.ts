// Reader of the length of a holding leg, as a chart or a controller gives it: in minutes or in nautical miles.
import { ArgumentError } from './argumentError';
import { inWords, type CellValue } from './cellValues';
import type { Parameter } from './declaration';

export type GivenLeg =
  | { readonly kind: 'time'; readonly seconds: number }
  | { readonly kind: 'distance'; readonly nauticalMiles: number }
  | { readonly kind: 'standard' };

const shortestSeconds = 15;
const longestSeconds = 600;
const shortestMiles = 0.5;
const longestMiles = 60;

const within = (value: number, low: number, high: number): boolean => value >= low && value <= high;

function legInWords(words: string): GivenLeg | undefined {
  if (words === 'standard') return { kind: 'standard' };
  const parts = /^(\d+(?:[.,]\d+)?)[\s-]*(s|sec|seconds?|min|minutes?|nm|nmi|miles?|nautical miles?)$/.exec(words);
  if (parts === null) return undefined;
  const amount = Number((parts[1] ?? '').replace(',', '.'));
  const unit = parts[2] ?? '';
  if (unit.startsWith('s') || unit === 'min' || unit.startsWith('minute')) {
    const seconds = unit.startsWith('s') ? amount : amount * 60;
    return within(seconds, shortestSeconds, longestSeconds) ? { kind: 'time', seconds } : undefined;
  }
  return within(amount, shortestMiles, longestMiles) ? { kind: 'distance', nauticalMiles: amount } : undefined;
}

/** A number alone could be either, so it is refused. */
export function holdLeg(help: string): Parameter<GivenLeg> & { readonly shape: 'cell' } {
  const mustBe = `a leg with its unit, such as "1 min", "90 s" or "4 NM" (${shortestSeconds / 60} to ${longestSeconds / 60} minutes, ${shortestMiles} to ${longestMiles} NM), or "standard"`;
  const read = (raw: CellValue): GivenLeg => {
    const leg = typeof raw === 'string' ? legInWords(raw.trim().toLowerCase().replace(/\s+/g, ' ')) : undefined;
    if (leg === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return leg;
  };
  return { shape: 'cell', unit: 'minutes or nautical miles', mustBe, help, optional: undefined, read };
}
