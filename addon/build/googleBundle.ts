// Code.js for Apps Script: everything in one function expression, then the functions that the platform calls by name.
import { build, transform, type BuildOptions } from 'esbuild';
import { registry } from '../../functions/registry/index.generated';
import { dataModules } from './dataModules';
import { hostSource } from './hostFunctions';
import { lazyModules } from './lazyModules';
import { notices, packagesInWords } from './notices';
import { projectVersion } from './projectVersion';
import { slimLibraries } from './slimLibraries';
import { stripTexts } from './stripTexts';
import { wrapperSource } from './wrappers';

/** The one global that the bundled code leaves behind. */
export const bundleName = 'Rampwright';

interface BundleOptions {
  readonly root: string;
  /** Both true for the platform; the tests also build without, to compare. */
  readonly minify?: boolean;
  readonly strip?: boolean;
}

export interface GoogleCode {
  readonly code: string;
  /** The licences of the packages inside it, for a file beside it: Code.js is read anew at every call of a function. */
  readonly licences: string;
}

// Apps Script takes neither #private nor static fields; ES2019 has neither, and esbuild rewrites what is newer.
// ASCII: one letter beyond Latin-1 would make V8 hold, and read at every call, the whole source in two bytes a letter.
const written = { target: 'es2019', charset: 'ascii', legalComments: 'none' } as const;

const moduleStart = /\b__(esm|commonJS)\(\{\s*"[^"\n]*"\(/g;

/** Quantities of the arithmetic, as their names end: nothing outside the bundle sees them, so they are shortened with the other names. */
const quantities = /[a-z](Feet|Knots|Degrees|Miles|Celsius|Hectopascals|Minutes|Minute|Hour|Radians|Metres|Percent|Kelvin|Seconds)$/;

/** What the language calls so, and what the code names in a text: such a name may be read by that text. */
function namesLeft(text: string): RegExp {
  const named = new Set([...text.matchAll(/(["'`])(\w+)\1/g)].flatMap(([, , name = '']) => (quantities.test(name) ? [name] : [])));
  return new RegExp(`^(?:[gs]et\\w+|${[...named].join('|')})$`);
}

/**
 * esbuild wraps each module in a method by the module's path when it keeps names, and in an arrow function when it does
 * not. V8 reads over a method until it is called, but parses arrow functions inside a function in full: with arrows the
 * start takes half as long again. So names are shortened in a second pass, over methods.
 */
async function minified(text: string): Promise<string> {
  const shorter = text.replace(moduleStart, '__$1({ m(');
  if (shorter === text) throw new Error('esbuild no longer wraps modules in methods');
  const { code } = await transform(shorter, { ...written, minify: true, mangleProps: quantities, reserveProps: namesLeft(text) });
  return code;
}

/** How esbuild bundles the code, before names are shortened. */
export const googleBuild = (root: string, strip = true): BuildOptions & { readonly metafile: true; readonly write: false } => ({
  ...written,
  absWorkingDir: root,
  entryPoints: ['addon/google/main.ts'],
  bundle: true,
  format: 'iife',
  globalName: bundleName,
  metafile: true,
  write: false,
  logLevel: 'warning',
  plugins: [dataModules(root), lazyModules(root), slimLibraries, ...(strip ? [stripTexts(root)] : [])],
});

export async function googleCode({ root, minify = true, strip = true }: BundleOptions): Promise<GoogleCode> {
  const { outputFiles, metafile } = await build({ ...googleBuild(root, strip), minifySyntax: minify });
  const text = outputFiles[0]?.text ?? '';
  const body = minify ? await minified(text) : text;
  // Asked for with the manifest too; who pastes this file alone into a script is asked for the open document only, as well.
  const head = `/** @OnlyCurrentDoc */\n// Rampwright ${projectVersion(root)}. Contains ${packagesInWords(root, metafile)}; their licences are in licences.html.\n`;
  return { code: `${head}${body}${wrapperSource(registry, bundleName)}${hostSource(bundleName)}`, licences: notices(root, metafile) };
}
