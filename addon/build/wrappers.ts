// The top-level functions that Apps Script and its autocomplete see: real parameter names, JSDoc directly above each.
import type { FunctionDeclaration, Parameter } from '../../functions/registry/declaration';
import { exampleFormula, parameterHelp } from './reference';

/** Sheets shows the description as one block of plain text, so nothing may end the comment early or break a line. */
const plain = (text: string): string => text.replace(/\*\//g, '* /').replace(/\s+/g, ' ').trim();

/** An @ at the start of a line would begin a tag of its own. */
const line = (text: string): string => ` * ${text}`.trimEnd();

function jsdocType({ shape, unit }: Parameter<unknown>): string {
  if (shape !== 'cell') return '{Array}';
  if (unit === 'date') return '{Date|Array}';
  return unit === '' ? '{string|Array}' : '{number|Array}';
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
    ...Object.entries(parameters).map(([key, parameter]) => `@param ${jsdocType(parameter)} ${key} ${plain(parameterHelp(parameter))}`),
    // Sheets does not show @return, so the results stand in the description above.
    '@return {Array}',
    '@customfunction',
  ];
  return ['/**', ...lines.map(line), ' */'].join('\n');
}

/** `bundle` is the name of the global that the bundled code leaves behind. */
export function wrapperSource(registry: readonly FunctionDeclaration[], bundle: string): string {
  return registry
    .map((declaration) => {
      const names = Object.keys(declaration.parameters).join(', ');
      return `${jsdoc(declaration)}\nfunction ${declaration.name}(${names}) {\n  return ${bundle}.call(${JSON.stringify(declaration.name)}, arguments);\n}\n`;
    })
    .join('\n');
}
