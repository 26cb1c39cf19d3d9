// The top-level functions that Apps Script and its autocomplete see: real parameter names, JSDoc directly above each.
import type { FunctionDeclaration, Parameter } from '../../functions/registry/declaration';
import { exampleFormula, notUnits } from './reference';

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

function resultsInWords({ results }: FunctionDeclaration): string {
  return Object.entries(results).map(([name, { unit }]) => (unit === '' ? name : `${name} (${unit})`)).join(', ');
}

/** Help longer than this is cut at the end of a sentence: autocomplete shows it in a small box, and every call reads over it. */
const longestHelp = 120;

function shortened(help: string): string {
  const sentences = help.split(/(?<=\.)\s+(?=[A-Z0-9"])/);
  return sentences.reduce((text, sentence) => (`${text} ${sentence}`.length > longestHelp ? text : `${text} ${sentence}`));
}

/** What an argument must be, in brackets; how a date is written stands in the panel and in the errors, what a table holds in its help. */
function limits({ shape, unit, mustBe }: Parameter<unknown>): string {
  if (shape === 'table' && !/\d/.test(mustBe)) return '';
  return ` (${unit === 'date' ? mustBe.replace(/, such as \d{4}-\d\d-\d\d/, '') : mustBe})`;
}

/** The panel and the reference page have the whole help. */
export function briefHelp(parameter: Parameter<unknown>): string {
  const { unit, help, optional, mustBe } = parameter;
  const lead = notUnits.has(unit) || mustBe.includes(unit) ? '' : `In ${unit}. `;
  const ending = optional === undefined ? '' : ` Optional; else ${optional.words}.`;
  return `${lead}${shortened(plain(help)).replace(/\.$/, '')}${limits(parameter)}.${ending}`;
}

function jsdoc(declaration: FunctionDeclaration): string {
  const { name, summary, parameters, examples } = declaration;
  const [example] = examples;
  const shown = example === undefined ? '' : ` Example: ${exampleFormula(name, example)}`;
  const lines = [
    plain(`${summary} Gives ${resultsInWords(declaration)}.${shown}`),
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
