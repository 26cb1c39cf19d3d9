// Sheet names as Excel takes them: at most 31 characters, none of []:*?/\, no apostrophe at an end, no name twice.

const maxLength = 31;
/** Excel keeps this name for itself. */
const reserved = 'history';

function permitted(name: string): string {
  const clean = name
    .replace(/[[\]:*?/\\\u0000-\u001f\ufffe\uffff]/g, '-')
    .slice(0, maxLength)
    .replace(/[\ud800-\udbff]$/, '')
    .trim()
    .replace(/^'+|'+$/g, '');
  if (clean === '') return 'Sheet';
  return clean.toLowerCase() === reserved ? `${clean} sheet` : clean;
}

/** Names in the same order; a name that is fit for use stays as it is, whatever stands before it. */
export function permittedNames(names: readonly string[]): string[] {
  const taken = new Set(names.filter((name) => permitted(name) === name).map((name) => name.toLowerCase()));
  const used = new Set<string>();
  return names.map((name) => {
    const wanted = permitted(name);
    let free = wanted;
    const isTaken = (): boolean => used.has(free.toLowerCase()) || (free !== name && taken.has(free.toLowerCase()));
    for (let next = 2; isTaken(); next += 1) free = `${wanted.slice(0, maxLength - ` ${next}`.length)} ${next}`;
    used.add(free.toLowerCase());
    return free;
  });
}
