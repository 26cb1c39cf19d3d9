// The panel as one HTML file, script and style inlined, for whichever host: the entry mounts the panel on its Host.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { dataModules } from './dataModules';
import { notices } from './notices';

/**
 * A script ends at the first closing tag, wherever that stands. No backtick: Google's HTML service takes what follows //
 * in a template literal for a comment and drops it, so esbuild writes them as plain strings, and those that are left stand
 * in strings and regular expressions.
 */
const inScript = (code: string): string =>
  code.replace(/<\/(script)/gi, '<\\/$1').replace(/<!--/g, '<\\!--').replace(/\\[\s\S]|`/g, (found) => (found.endsWith('`') ? '\\x60' : found));

/** `entry` is a path from the root; `data` are elements that the host reads out of the page's text. */
export async function panelPage(root: string, entry: string, data = ''): Promise<string> {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    bundle: true,
    format: 'iife',
    target: 'es2020',
    supported: { 'template-literal': false },
    charset: 'utf8',
    minify: true,
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    metafile: true,
    write: false,
    logLevel: 'warning',
    plugins: [dataModules(root)],
  });
  const style = await readFile(join(root, 'addon/panel/panel.css'), 'utf8');
  const script = inScript(outputFiles[0]?.text ?? '');
  return [
    '<!DOCTYPE html>', '<html lang="en">', '<head>', '<meta charset="utf-8">', '<meta name="viewport" content="width=device-width">',
    '<base target="_top">', '<title>Rampwright</title>', `<!--\n${notices(root, metafile).replace(/--+/g, '-')}\n-->`, `<style>\n${style.trim()}\n</style>`, '</head>',
    '<body>', '<div id="panel"></div>', data, `<script>${script}</script>`, '</body>', '</html>', '',
  ].join('\n');
}
