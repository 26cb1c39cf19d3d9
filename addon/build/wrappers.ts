// The top-level functions that Apps Script and its autocomplete see: real parameter names, JSDoc directly above each.
import type { FunctionDeclaration, Parameter } from '../../functions/registry/declaration';
import { exampleFormula, parameterHelp } from './reference';

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

function jsdocType({ shape, unit }: Parameter<unknown>): string {
  if (shape !== 'cell') return '{Array}';
  if (unit === 'date') return '{Date}';
  return unit === '' ? '{string}' : '{number}';
}

function resultsInWords({ results }: FunctionDeclaration): string {
  return Object.entries(results).map(([name, { unit }]) => (unit === '' ? name : `${name} (${unit})`)).join(', ');
}

function jsdoc(declaration: FunctionDeclaration): string {
  const { name, summary, parameters, examples } = declaration;
  const [example] = examples;
  const shown = example === undefined ? '' : ` Example: ${exampleFormula(name, example)}`;
  const lines = [
    plain(`${summary} Gives ${resultsInWords(declaration)}.${shown}`),
    '',
    ...Object.entries(parameters).map(([key, parameter]) => `@param ${jsdocType(parameter)} ${parameterName(key)} ${plain(parameterHelp(parameter))}`),
    // No @return: Sheets does not show it, so the results stand in the description above.
    '@customfunction',
  ];
  return ['/**', ...lines.map(line), ' */'].join('\n');
}

/** `bundle` is the name of the global that the bundled code leaves behind. */
export function wrapperSource(registry: readonly FunctionDeclaration[], bundle: string): string {
  return registry
    .map((declaration) => {
      const names = Object.keys(declaration.parameters).map(parameterName).join(', ');
      return `${jsdoc(declaration)}\nfunction ${declaration.name}(${names}) {\n  return ${bundle}.call(${JSON.stringify(declaration.name)}, arguments);\n}\n`;
    })
    .join('\n');
}
