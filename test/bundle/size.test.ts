// How large the bundle is, by part, and how fast it starts, printed. No test fails on a time.
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { googleBuild } from '../../addon/build/googleBundle';
import { registry } from '../../functions/registry/index.generated';
import { builtCode, root } from './built';
import { coldStart } from './coldStart';

const kilobytes = (bytes: number): string => (bytes / 1024).toFixed(1);
const bytesOf = (text: string): number => Buffer.byteLength(text);

/** The part of the house, or the package, that a bundled module belongs to. */
function partOf(input: string): string {
  const library = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1];
  if (library !== undefined) return library.includes('date-fns') ? 'date-fns' : library;
  if (input.startsWith('functions/registry')) return 'functions/registry';
  return /^(core|functions|sheets-templates|addon\/\w+)\//.exec(input)?.[1] ?? 'lazy starts';
}

/** Bytes of each part as esbuild itself makes it small, which differs from the two passes of the build by a hundredth. */
async function bundledParts(): Promise<Map<string, number>> {
  const { metafile } = await build({ ...googleBuild(root), minify: true, outfile: 'Code.js' });
  const parts = new Map<string, number>();
  for (const output of Object.values(metafile.outputs)) {
    for (const [input, { bytesInOutput }] of Object.entries(output.inputs)) parts.set(partOf(input), (parts.get(partOf(input)) ?? 0) + bytesInOutput);
  }
  return parts;
}

it('says the size and the cold start of Code.js', async () => {
  const { code } = await builtCode();
  const withoutComments = code.replace(/^\/\*[\s\S]*?\*\/\n/gm, '');
  const wrappers = bytesOf(withoutComments.slice(withoutComments.indexOf('\nfunction ')));
  const parts = new Map([...(await bundledParts()), ['JSDoc', bytesOf(code) - bytesOf(withoutComments)], ['wrappers', wrappers]]);
  const largest = [...parts].sort(([, one], [, other]) => other - one);
  const times = ['PRESSURE_ALTITUDE(5883,30.1)', 'COURSE_LEG(0,0,0,1)'].map((expression) => {
    const { compile, run, call, total, least } = coldStart(code, expression);
    return `  ${expression}: ${total.toFixed(1)} ms (compile ${compile.toFixed(1)}, run ${run.toFixed(1)}, first call ${call.toFixed(1)}); least ${least.toFixed(1)}`;
  });
  console.log(
    [
      `Code.js: ${registry.length} functions, ${kilobytes(bytesOf(code))} KB, ${kilobytes(bytesOf(withoutComments))} KB without the comments`,
      `by part, KB: ${largest.map(([part, bytes]) => `${part} ${kilobytes(bytes)}`).join(', ')}`,
      'cold start, median:',
      ...times,
    ].join('\n'),
  );
  const sum = [...parts.values()].reduce((total, bytes) => total + bytes, 0);
  expect(Math.abs(sum - bytesOf(code)) / bytesOf(code), 'the parts make the whole').toBeLessThan(0.03);
});
