// What the panel knows of functions and sheets, made at build time from the registry and the templates: plain data, so
// that the panel carries none of their code.
import type { Example, FunctionDeclaration } from '../../functions/registry/declaration';
import { registry } from '../../functions/registry/index.generated';
import { sheetTemplates } from '../../sheets-templates';
import type { Catalogue, ExampleEntry, FunctionEntry } from '../panel/catalogue';
import { exampleFormula, notUnits, parameterHelp, signature, sourceInWords } from './reference';

/** As a cell would show it; an example may carry all the digits of a hand calculation. */
const shown = (cell: number | string): string => (typeof cell === 'number' ? String(Number(cell.toPrecision(7))) : cell);

function exampleEntry(name: string, example: Example): ExampleEntry {
  const { gives, source, formula } = example;
  const rows = typeof gives === 'object' ? gives : [[gives]];
  return { formula: exampleFormula(name, example), answer: rows.map((row) => row.map(shown)), source, whole: formula === undefined };
}

function functionEntry(declaration: FunctionDeclaration): FunctionEntry {
  const { name, subject, summary, notes, parameters, results, examples } = declaration;
  return {
    name,
    subject,
    summary,
    notes,
    signature: signature(declaration),
    parameters: Object.entries(parameters).map(([key, parameter]) => ({ name: key, unit: parameter.unit === 'date' || !notUnits.has(parameter.unit) ? parameter.unit : '', help: parameterHelp(parameter), optional: parameter.optional !== undefined })),
    results: Object.entries(results).map(([key, { unit, help }]) => ({ name: key, unit, help })),
    examples: examples.map((example) => exampleEntry(name, example)),
    source: sourceInWords(declaration),
  };
}

export const catalogue: Catalogue = {
  functions: registry.map(functionEntry),
  sheets: sheetTemplates.map(({ key, name }) => ({ key, name })),
};
