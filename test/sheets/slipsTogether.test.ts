// What is honestly so must leave the trip OK; two slips at once never give OK, and leave nothing behind.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../support/seededRandom';
import { slips } from './slips/all';
import { honest } from './slips/honest';
import { demoTrip, weight } from './slips/trySlips';

const book = demoTrip();

it('has slips in hundreds, each once', () => {
  expect(slips.length).toBeGreaterThanOrEqual(300);
  expect(new Set(slips.map(([what]) => what)).size).toBe(slips.length);
});

describe('what is honestly so', () => {
  it.each(honest)('%s: OK', async (_what, typed) => {
    const { verdict, said } = await book().seenWith(typed);
    expect({ verdict, said }).toEqual({ verdict: 'OK', said: expect.stringMatching(/^(Every item below is OK|OK for what is judged)/) as string });
  });
});

describe('two slips at once', () => {
  const random = randomFrom(20261125);
  const any = () => slips[Math.floor(random() * slips.length)] ?? slips[0];
  const pairs = Array.from({ length: 60 }, () => [any(), any()] as const).flatMap(([one, other]) =>
    one === undefined || other === undefined ? [] : [[`${one[0]}, and ${other[0]}`, [...one[1], ...other[1]]] as const],
  );
  it.each(pairs)('%s: not OK', async (_what, typed) => {
    expect(weight((await book().seenWith(typed)).verdict)).toBeGreaterThan(0);
  });

  it('and nothing is left of all of them', async () => {
    expect((await book().seenWith([])).verdict).toBe('OK');
  });
});
