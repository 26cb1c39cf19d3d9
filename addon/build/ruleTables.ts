// Authorities written as tables: each file read by the reader of own rules, every mistake named with its line, and all of them written as data.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import type { Authority } from '../../core/currency/rules/rule';
import { readRules } from '../../functions/currency/readRuleTable';
import { utcDateHost } from '../../functions/registry/utcDateHost';

/** The rules of one file, or a sentence for each line that is none. Lines that begin with # are for people. */
export function readRuleFile(name: string, text: string): { readonly authority: Authority; readonly mistakes: readonly string[] } {
  const lines = text.replace(/\r/g, '').split('\n');
  const notes = lines.findIndex((line) => !line.startsWith('#'));
  const { data } = Papa.parse<string[]>(lines.slice(notes).join('\n'), { skipEmptyLines: false });
  const { rules, mistakes } = readRules(data, utcDateHost);
  return {
    authority: { name, pilot: rules, aircraft: [] },
    mistakes: mistakes.map(({ place, sentence }) => `${name}.csv, line ${place + notes}: ${sentence}`),
  };
}

export function ruleTablesSource(folder: string): string {
  const names = readdirSync(folder).flatMap((file) => (file.endsWith('.csv') ? [file.replace(/\.csv$/, '')] : []));
  const read = names.sort().map((name) => readRuleFile(name, readFileSync(join(folder, `${name}.csv`), 'utf8')));
  const mistakes = read.flatMap((one) => one.mistakes);
  if (mistakes.length > 0) throw new Error(`Rules that cannot be read:\n${mistakes.join('\n')}`);
  const data = JSON.stringify(
    read.map(({ authority }) => authority),
    null,
    1,
  );
  return `// Written by npm run generate from the files of core/currency/rules/tables. Not to be edited.\nimport type { Authority } from './rule';\n\nexport const tableAuthorities: readonly Authority[] = ${data};\n`;
}
