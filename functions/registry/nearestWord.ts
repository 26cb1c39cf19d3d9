// The word that somebody most likely meant: as many letters put in, left out or changed as it takes to get from one to the other.
// @source V. I. Levenshtein's distance, by the two-row method of R. A. Wagner and M. J. Fischer (1974).

function distance(one: string, other: string): number {
  let before = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const changed = (before[column - 1] ?? 0) + (one[row - 1] === other[column - 1] ? 0 : 1);
      now.push(Math.min(changed, (before[column] ?? 0) + 1, (now[column - 1] ?? 0) + 1));
    }
    before = now;
  }
  return before[other.length] ?? 0;
}

/** More changes than this share of its letters make another word of it. */
const maxChanged = 0.5;
/** Nobody means a heading by a whole sentence. */
const maxWordLength = 60;

/** The nearest of the known words, or undefined where none is near; `most` is the share of its letters that may be changed. */
export function nearestWord(word: string, known: readonly string[], most = maxChanged): string | undefined {
  if (word.length > maxWordLength) return undefined;
  let [nearest, least] = [undefined as string | undefined, Infinity];
  for (const candidate of known) {
    const changes = distance(word, candidate);
    if (changes < least && changes <= most * Math.max(word.length, candidate.length)) [nearest, least] = [candidate, changes];
  }
  return nearest;
}
