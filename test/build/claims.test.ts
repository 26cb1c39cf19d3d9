// The pages that say what a promise rests on name tests that are there, and the README leads to them.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const text = (path: string): string => readFileSync(join(root, path), 'utf8');

it.each(['docs/claims.md', 'docs/install.md'])('%s names tests that are there', (page) => {
  const named = [...text(page).matchAll(/`(test\/[^`]+)`/g)].map(([, path = '']) => path);
  expect(named.length).toBeGreaterThan(3);
  expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

it('is found from the README', () => expect(text('README.md')).toContain('(docs/claims.md)'));
