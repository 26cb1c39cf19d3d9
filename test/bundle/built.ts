// Builds Code.js, or all of dist/google, for the tests, once for each test file that asks.
import { fileURLToPath } from 'node:url';
import { googleFiles, type GoogleFiles } from '../../addon/build/build';
import { googleCode, type GoogleCode } from '../../addon/build/googleBundle';

export const root = fileURLToPath(new URL('../..', import.meta.url));

let files: Promise<GoogleFiles> | undefined;
export const builtFiles = (): Promise<GoogleFiles> => (files ??= googleFiles());

let bundle: Promise<GoogleCode> | undefined;
/** Code.js alone, which needs neither the panel nor the templates. */
export const builtCode = (): Promise<GoogleCode> => (bundle ??= googleCode({ root }));

/** Code.js before minification, its texts kept. */
export const plainCode = async (): Promise<string> => (await googleCode({ root, minify: false, strip: false })).code;
