// Code.js for Apps Script: everything in one function expression, then the functions that the platform calls by name.
import { build } from 'esbuild';
import { registry } from '../../functions/registry/index.generated';
import { dataModules } from './dataModules';
import { hostSource } from './hostFunctions';
import { lazyModules } from './lazyModules';
import { notices } from './notices';
import { slimMetar } from './slimMetar';
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

export async function googleCode({ root, minify = true, strip = true }: BundleOptions): Promise<string> {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: ['addon/google/main.ts'],
    bundle: true,
    format: 'iife',
    globalName: bundleName,
    // Apps Script takes neither #private nor static fields; ES2019 has neither, and esbuild rewrites what is newer.
    target: 'es2019',
    // ASCII: one letter beyond Latin-1 would make V8 hold, and read at every call, the whole source in two bytes a letter.
    charset: 'ascii',
    minify,
    legalComments: 'none',
    metafile: true,
    write: false,
    logLevel: 'warning',
    plugins: [dataModules(root), lazyModules(root), slimMetar, ...(strip ? [stripTexts(root)] : [])],
  });
  const carried = notices(root, metafile);
  const head = carried === '' ? '' : `/*\n${carried}\n*/\n`;
  return `${head}${outputFiles[0]?.text ?? ''}\n${wrapperSource(registry, bundleName)}\n${hostSource(bundleName)}`;
}
