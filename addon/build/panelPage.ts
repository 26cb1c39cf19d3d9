// The panel as one HTML file, script and style inlined, for whichever host: the entry mounts the panel on its Host.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { dataModules } from './dataModules';
import { notices } from './notices';
import { checkedPage, plainScript } from './pageScripts';

/** How esbuild bundles the panel's script, before its strings and regular expressions are written plainly. */
export const panelBuild = (root: string, entry: string): BuildOptions & { readonly metafile: true; readonly write: false } => ({
  absWorkingDir: root,
  entryPoints: [entry],
  bundle: true,
  format: 'iife',
  target: 'es2020',
  supported: { 'template-literal': false },
  charset: 'ascii',
  minify: true,
  jsx: 'automatic',
  jsxImportSource: 'preact',
  legalComments: 'none',
  metafile: true,
  write: false,
  logLevel: 'warning',
  // The library that reads CSV could also fetch it: the panel asks no network, so it has no means to.
  define: { XMLHttpRequest: 'undefined' },
  plugins: [dataModules(root)],
});

/** `entry` is a path from the root; `data` are elements that the host reads out of the page's text. */
export async function panelPage(root: string, entry: string, data = ''): Promise<string> {
  const { outputFiles, metafile } = await build(panelBuild(root, entry));
  const [own, form] = await Promise.all(['panel/panel.css', 'form/form.css'].map((file) => readFile(join(root, 'addon', file), 'utf8')));
  const style = `${form}${own}`;
  const script = plainScript(outputFiles[0]?.text ?? '');
  const page = [
    '<!DOCTYPE html>', '<html lang="en">', '<head>', '<meta charset="utf-8">', '<meta name="viewport" content="width=device-width">',
    '<base target="_top">', '<title>Rampwright</title>', `<!--\n${notices(root, metafile).replace(/--+/g, '-')}\n-->`, `<style>\n${style.trim()}\n</style>`, '</head>',
    '<body>', '<div id="panel"></div>', data, `<script>${script}</script>`, '</body>', '</html>', '',
  ].join('\n');
  return checkedPage('panel.html', page);
}
