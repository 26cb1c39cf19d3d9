// How large the bundle is and how fast it starts, printed. No test fails on a time.
import { expect, it } from 'vitest';
import { registry } from '../../functions/registry/index.generated';
import { builtFiles } from './built';
import { coldStart } from './coldStart';

it('says the size and the cold start of Code.js', async () => {
  const code = (await builtFiles())['Code.js'];
  const withoutComments = code.replace(/^\/\*[\s\S]*?\*\/\n/gm, '');
  const kilobytes = (text: string): string => (Buffer.byteLength(text) / 1024).toFixed(1);
  const times = ['PRESSURE_ALTITUDE(5883,30.1)', 'COURSE_LEG(0,0,0,1)'].map((expression) => {
    const { compile, run, call, total } = coldStart(code, expression);
    return `  ${expression}: ${total.toFixed(1)} ms (compile ${compile.toFixed(1)}, run ${run.toFixed(1)}, first call ${call.toFixed(1)})`;
  });
  console.log(`Code.js: ${registry.length} functions, ${kilobytes(code)} KB, ${kilobytes(withoutComments)} KB without the comments\ncold start, median:\n${times.join('\n')}`);
  expect(withoutComments.length).toBeGreaterThan(0);
});
