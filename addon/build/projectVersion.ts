// The version of the project, as package.json has it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const projectVersion = (root: string): string =>
  (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { readonly version: string }).version;
