// Reader of a holding leg, as a chart or a controller gives it: in minutes or in nautical miles.
import type { HoldLeg } from '../../core/hold/pattern';
import { ArgumentError } from '../registry/argumentError';
import { inWords, type CellValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';

export type GivenLeg = HoldLeg | { readonly kind: 'standard' };

const minSeconds = 15;
const maxSeconds = 600;
const minMiles = 0.5;
const maxMiles = 60;

const within = (value: number, low: number, high: number): boolean => value >= low && value <= high;

/** Amount, unit, then which leg it is; "legs" as a controller says it adds nothing. */
const legPattern =
  /^(\d+(?:[.,]\d+)?)[\s-]*(s|sec|seconds?|min|minutes?|nm|nmi|dme|miles?|nautical miles?)[\s-]*(?:legs?)?[\s-]*(inbound|outbound)?(?:[\s-]*legs?)?$/;

function legInWords(words: string): GivenLeg | undefined {
  if (words === 'standard') return { kind: 'standard' };
  const parts = legPattern.exec(words);
  if (parts === null) return undefined;
  const amount = Number((parts[1] ?? '').replace(',', '.'));
  const unit = parts[2] ?? '';
  const isTime = unit.startsWith('s') || unit === 'min' || unit.startsWith('minute');
  const kind = parts[3] === 'inbound' ? 'inbound' : 'outbound';
  if (!isTime) return within(amount, minMiles, maxMiles) ? { kind, nauticalMiles: amount } : undefined;
  const seconds = unit.startsWith('s') ? amount : amount * 60;
  // Time is kept on the inbound leg, so an outbound time is another hold than can be asked for here.
  return parts[3] !== 'outbound' && within(seconds, minSeconds, maxSeconds) ? { kind: 'time', seconds } : undefined;
}

/** A number alone could be either, so it is refused. */
export function holdLeg(help: string): Parameter<GivenLeg> & { readonly shape: 'cell' } {
  const mustBe = `a leg with its unit, such as "1 min", "90 s", "4 NM" or "4 NM inbound" (${minSeconds / 60} to ${maxSeconds / 60} minutes, ${minMiles} to ${maxMiles} NM), or "standard"`;
  const read = (raw: CellValue): GivenLeg => {
    const leg = typeof raw === 'string' ? legInWords(raw.trim().toLowerCase().replace(/\s+/g, ' ')) : undefined;
    if (leg === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return leg;
  };
  return { shape: 'cell', unit: 'minutes or nautical miles', mustBe, help, optional: undefined, read };
}
