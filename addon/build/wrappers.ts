// The top-level functions that Apps Script and its autocomplete see: real parameter names, JSDoc directly above each.
import type { FunctionDeclaration, Parameter } from '../../functions/registry/declaration';
import { notUnits } from './reference';

/** Sheets shows the description as one block of plain text, so nothing may end the comment early or break a line. */
const plain = (text: string): string => text.replace(/\*\//g, '* /').replace(/\s+/g, ' ').trim();

/** An @ at the start of a line would begin a tag of its own. */
const line = (text: string): string => ` * ${text}`.trimEnd();

const reservedWords = new Set(
  ('await break case catch class const continue debugger default delete do else enum export extends false finally for function if implements import in ' +
    'instanceof interface let new null package private protected public return static super switch this throw true try typeof var void while with yield arguments eval').split(' '),
);

/** An argument's name as JavaScript takes it: `class` is a word of the language, so it becomes `class_`. */
export const parameterName = (name: string): string => (reservedWords.has(name) ? `${name}_` : name);

/** Limits of a number, whether or not it has a unit. */
const ofNumber = /^(a whole number from|more than|-?[\d,.]+ to) -?\d/;

function jsdocType({ shape, unit, mustBe }: Parameter<unknown>): string {
  if (shape !== 'cell') return '{Array}';
  if (unit === 'date') return '{Date}';
  return unit === '' && !ofNumber.test(mustBe) ? '{string}' : '{number}';
}

/** Names of results that end so say their unit themselves. */
const unitInName = /_(kt|ft|nm|m|c|deg|hpa|z|true|minutes|days)$/;

function resultsInWords({ results }: FunctionDeclaration): string {
  return Object.entries(results).map(([name, { unit }]) => (unit === '' || unit === name || unitInName.test(name) ? name : `${name} (${unit})`)).join(', ');
}

/** Help longer than this is cut behind a sentence or a part of one: autocomplete shows it in a small box, and every call reads over it. */
const maxHelpLength = 50;
/** "Four columns" alone says nothing. */
const shortestHelp = 20;

const isBalanced = (text: string): boolean => text.split('(').length === text.split(')').length;

/** The first parts that fit, cut where `cut` finds an end. */
function shortened(text: string, cut: RegExp, longest: number, shortest: number): string {
  const whole = text.replace(/\.$/, '');
  const ends = [...whole.matchAll(cut)].map(({ index }) => whole.slice(0, index)).filter((part) => part.length >= shortest && isBalanced(part));
  return whole.length <= longest ? whole : (ends.filter((part) => part.length <= longest).pop() ?? ends[0] ?? whole);
}

const briefly = (help: string): string => shortened(help, /;(?= )|\.(?= [A-Z0-9"])|(?<=^[^;:.]*):(?= )/g, maxHelpLength, shortestHelp);
/** What holds where an argument is left out. */
const endingBriefly = (words: string): string => shortened(words, /[,;:](?= )/g, maxHelpLength, 1);

/**
 * Numbers and choices that an argument must be, in brackets, unless the help says the same numbers. How it may be written
 * stands in the panel and in the errors, what a text or a table is in the help.
 */
function limits({ unit, help, mustBe }: Parameter<unknown>): string {
  const must = mustBe.replace(/(\w+ \w+ \w+), such as [^()]*$/, '$1');
  const numbers = must.match(/\d[\d.,]*/g) ?? [];
  const isSaid = numbers.length > 1 && numbers.every((one) => briefly(help).includes(one)) && briefly(help).includes(unit.split(' or ')[0] ?? unit);
  return isSaid || (numbers.length === 0 && !/^(one of|yes or no)|[A-Z]{2}/.test(must)) ? '' : ` (${must})`;
}

/** The panel and the reference page have the whole help. */
export function briefHelp(parameter: Parameter<unknown>): string {
  const { unit, help, optional, mustBe } = parameter;
  const lead = notUnits.has(unit) || unit.split(' or ').every((one) => mustBe.includes(one)) ? '' : `In ${unit}. `;
  const ending = optional === undefined ? '' : ` Optional; else ${endingBriefly(plain(optional.words))}.`;
  return `${lead}${briefly(plain(help))}${limits(parameter)}.${ending}`;
}

/** Examples stand in the panel and on the reference page: every call reads over these comments. */
function jsdoc(declaration: FunctionDeclaration): string {
  const { summary, parameters } = declaration;
  const lines = [
    plain(`${summary} Gives ${resultsInWords(declaration)}.`),
    ...Object.entries(parameters).map(([key, parameter]) => `@param ${jsdocType(parameter)} ${parameterName(key)} ${plain(briefHelp(parameter))}`),
    // No @return: Sheets does not show it, so the results stand in the description above.
    '@customfunction',
  ];
  return ['/**', ...lines.map(line), ' */'].join('\n');
}

/** `bundle` is the name of the global that the bundled code leaves behind. */
export function wrapperSource(registry: readonly FunctionDeclaration[], bundle: string): string {
  return registry
    .map((declaration) => {
      const names = Object.keys(declaration.parameters).map(parameterName).join(',');
      return `${jsdoc(declaration)}\nfunction ${declaration.name}(${names}){return ${bundle}.call(${JSON.stringify(declaration.name)},arguments)}\n`;
    })
    .join('');
}
