// Writes every generated file of the tree; with --check only says which are out of date, and fails.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ruleTablesSource } from './ruleTables';
import { discoverDeclarations, namesSource, registrySource } from './discover';

const root = fileURLToPath(new URL('../..', import.meta.url));
const check = process.argv.includes('--check');
const stale: string[] = [];

function put(path: string, content: string): void {
  const full = join(root, path);
  if (existsSync(full) && readFileSync(full, 'utf8') === content) return;
  stale.push(path);
  if (!check) writeFileSync(full, content);
}

put('core/currency/rules/tables.generated.ts', ruleTablesSource(join(root, 'core/currency/rules/tables')));
const files = discoverDeclarations(root);
put('functions/registry/index.generated.ts', registrySource(files));
put('functions/registry/names.generated.ts', namesSource(files));

// Imported only now, so that it sees the registry written above.
const { registry } = await import('../../functions/registry/index.generated');
const { readmeTable, referencePage } = await import('./reference');
put('docs/functions.md', referencePage(registry));
const { keyList } = await import('./keyList');
put('sheets-templates/keys.generated.txt', keyList());

const tableMarks = /(<!-- functions: generated -->\n)[\s\S]*?(<!-- end -->)/;
const readme = readFileSync(join(root, 'README.md'), 'utf8');
put('README.md', readme.replace(tableMarks, (_, open: string, close: string) => `${open}${readmeTable(registry)}\n${close}`));

if (stale.length > 0) console.log(`${check ? 'Out of date' : 'Written'}: ${stale.join(', ')}`);
if (check && stale.length > 0) process.exit(1);
