// Twenty legs in one call, warm: the least of many, which a busy machine does not raise much, stays under 5 ms.
import { Script } from 'node:vm';
import { expect, it } from 'vitest';
import { calls, doorsIn, target, timesOf } from '../bench/longRoute';
import { builtCode } from './built';

it.each(calls)('$name answers twenty legs in 5 ms at its best', { timeout: 60_000 }, async (one) => {
  const { code } = await builtCode();
  const times = timesOf(doorsIn(new Script(code))(one.name), one, 200);
  console.log(`${one.name}: least ${Math.min(...times).toFixed(1)} ms`);
  expect(Math.min(...times)).toBeLessThan(target);
});
