// The four verdict words, and how several make one.

/** From worst to best. */
export const verdicts = ['NO', 'UNKNOWN', 'CHECK', 'OK'] as const;
export type Verdict = (typeof verdicts)[number];

/** The worst of the parts; no part at all is UNKNOWN, since nothing was proved. */
export function worstVerdict(parts: readonly Verdict[]): Verdict {
  return verdicts.find((verdict) => parts.includes(verdict)) ?? 'UNKNOWN';
}
