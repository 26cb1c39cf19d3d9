// The words of a report or a forecast, one for each group.

/** Whether two words are one group: 1 1/2SM, WS ALL RWY, WS TKOF RWY21, PROB40 TEMPO. */
function belongs(before: string, word: string): boolean {
  if (before.startsWith('WS'))
    return before === 'WS_ALL' ? word === 'RWY' : /^WS(_TKOF|_LDG)?$/.test(before) && /^(ALL|TKOF|LDG|R(WY)?\d\d.?)$/.test(word);
  if (before.startsWith('PROB')) return /^PROB[34]0$/.test(before) && (word === 'TEMPO' || word === 'INTER');
  return word.endsWith('SM') && /^\d\d?$/.test(before) && /^\d\d?\/\d\d?SM$/.test(word);
}

export const asWritten = (word: string): string => word.replace(/_/g, ' ');

/** In capitals, without the sign of the end; a group of several words is one, with low lines. */
export function wordsOf(text: string): string[] {
  const words: string[] = [];
  const whole = text.trim().toUpperCase();
  for (const word of (whole.endsWith('=') ? whole.slice(0, -1).trimEnd() : whole).split(/\s+/)) {
    const before = words[words.length - 1];
    if (before !== undefined && belongs(before, word)) words[words.length - 1] = `${before}_${word}`;
    else words.push(word);
  }
  return words;
}
