// Builds the files of dist/google for the tests, once for each test file that asks.
import { fileURLToPath } from 'node:url';
import { googleFiles, type GoogleFiles } from '../../addon/build/build';
import { googleCode } from '../../addon/build/googleBundle';

export const root = fileURLToPath(new URL('../..', import.meta.url));

let files: Promise<GoogleFiles> | undefined;
export const builtFiles = (): Promise<GoogleFiles> => (files ??= googleFiles());

/** Code.js before minification, its texts kept. */
export const plainCode = (): Promise<string> => googleCode({ root, minify: false, strip: false });
