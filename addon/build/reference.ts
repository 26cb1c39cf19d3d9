// The function reference in Markdown, from the registry: the page in docs/ and the table in the README.
import { sources } from '../../core/basics/sources';
import type { Example, FunctionDeclaration, Parameter } from '../../functions/registry/declaration';

const escapeCell = (text: string): string => text.replace(/\|/g, '\\|').replace(/\n/g, ' ');

export const signature = ({ name, parameters }: FunctionDeclaration): string =>
  `${name}(${Object.entries(parameters)
    .map(([parameter, { optional }]) => (optional === undefined ? parameter : `[${parameter}]`))
    .join(', ')})`;

/** One argument as a cell of a formula. */
function literal(value: unknown): string {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (value instanceof Date) return `"${value.toISOString().slice(0, 10)}"`;
  return value === '' || value === undefined ? '' : `"${String(value)}"`;
}

export function exampleFormula(name: string, example: Example): string {
  return example.formula ?? `=${name}(${example.arguments.map(literal).join(', ')})`;
}

export function exampleAnswer({ gives }: Example): string {
  return typeof gives === 'object' ? gives.map((row) => row.join(' | ')).join(' / ') : String(gives);
}

/** Kinds of argument rather than units. */
export const notUnits: ReadonlySet<string> = new Set(['', 'date', 'table', 'rows']);

export function parameterHelp({ unit, help, optional, mustBe }: Parameter<unknown>): string {
  // Once is enough: what an argument must be mostly ends with its unit.
  const lead = notUnits.has(unit) || mustBe.includes(unit) ? '' : `In ${unit}. `;
  const ending = optional === undefined ? '' : ` Optional; if left out, ${optional.words}.`;
  return `${lead}${help} Must be ${mustBe}.${ending}`;
}

export function sourceInWords({ sources: ids }: FunctionDeclaration): string {
  const words = ids.map((id) => sources[id]).map(({ issuer, title, edition }) => [issuer, title].filter((part) => part !== '').join(', ') + (edition === '' ? '' : ` (${edition})`));
  return words.join('; ');
}

function functionPage(declaration: FunctionDeclaration): string {
  const { parameters, results, notes, summary, examples, name } = declaration;
  const argumentRows = Object.entries(parameters).map(([key, parameter]) => `| ${key} | ${escapeCell(parameter.unit)} | ${escapeCell(parameterHelp(parameter))} |`);
  const resultRows = Object.entries(results).map(([key, { unit, help }]) => `| ${key} | ${unit} | ${escapeCell(help)} |`);
  const exampleRows = examples.map((example) => `- \`${exampleFormula(name, example)}\` gives ${exampleAnswer(example)}. ${example.source}.`);
  return [
    `### ${name}`, '', summary, '', `\`=${signature(declaration)}\``, '',
    '| argument | unit | help |', '|---|---|---|', ...argumentRows, '',
    '| result | unit | meaning |', '|---|---|---|', ...resultRows, '',
    notes, '', `Source: ${sourceInWords(declaration)}.`, '', 'Examples:', '', ...exampleRows, '',
  ].join('\n');
}

export function referencePage(registry: readonly FunctionDeclaration[]): string {
  const subjects = [...new Set(registry.map(({ subject }) => subject))].sort();
  const body = subjects.map((subject) => [`## ${subject}`, '', ...registry.filter((entry) => entry.subject === subject).map(functionPage)].join('\n'));
  return ['# Function reference', '', 'Generated from the registry by `npm run generate`; do not edit. Planning aid only: the approved manual, official data, local rules and the pilot in command decide.', '', ...body].join('\n');
}

export function readmeTable(registry: readonly FunctionDeclaration[]): string {
  const rows = registry.map((entry) => `| \`${signature(entry)}\` | ${Object.keys(entry.results).join(', ')} | ${escapeCell(entry.summary)} |`);
  return ['| function | result | what it answers |', '|---|---|---|', ...rows].join('\n');
}
