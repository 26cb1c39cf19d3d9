// Which number formats show a date or a time, as against a number: both hosts tell a time from a number by it.

function showsDate(pattern: string): boolean {
  // Quoted words, single letters behind \, _ and *, and [Red] say nothing; [h], [mm] and [s] are durations.
  const bare = pattern.replace(/"[^"]*"|[\\_*]./g, '').replace(/\[(?!(?:h+|m+|s+)\])[^\]]*\]/gi, '');
  return /[ymdhs]/i.test(bare);
}

/** A sheet has few formats, and a column many cells of one. */
const known = new Map<string, boolean>();

/** General is none, and neither is what Google Sheets reads it back as, 0.###############. */
export function isDatePattern(pattern: string): boolean {
  const is = known.get(pattern) ?? showsDate(pattern);
  known.set(pattern, is);
  return is;
}
