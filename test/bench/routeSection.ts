// Twenty legs in one call, warm in the bundle.
import { Script } from 'node:vm';
import { calls, doorsIn, target, timesOf } from './longRoute';
import { median } from './numbers';
import { met, milliseconds, type Section } from './table';

const runs = 300;

export function longRoute(code: string): Section {
  const door = doorsIn(new Script(code));
  return {
    title: 'A route of 20 legs with climb, descent and alternate in one call of Code.js, milliseconds',
    heads: ['function', 'least', 'median', 'target', ''],
    rows: calls.map((one) => {
      const times = timesOf(door(one.name), one, runs);
      const least = Math.min(...times);
      return [one.name, milliseconds(least), milliseconds(median(times)), String(target), met(median(times) <= target)];
    }),
    notes: [`${runs} calls, the first tenth left out.`],
  };
}
