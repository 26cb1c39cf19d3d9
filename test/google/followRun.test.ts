// The panel's side of a run that is followed: how often it asks, and what it makes of the answers.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followRun } from '../../addon/google/client/followRun';
import type { RunAttended } from '../../addon/google/panelApi';
import type { Progress } from '../../addon/panel/host';

const step = (done: number): Progress => ({ doing: `Writing ${done}.`, done, of: 3 });

interface Scene {
  readonly asked: boolean[];
  readonly shown: Progress[];
  readonly stop: AbortController;
  readonly finish: (answer: string) => void;
  readonly fail: (reason: Error) => void;
  readonly outcome: Promise<string>;
}

/** `attend` answers the questions after the run, in their order. */
function scene(attend: (nth: number) => Promise<RunAttended>): Scene {
  const [asked, shown, stop]: [boolean[], Progress[], AbortController] = [[], [], new AbortController()];
  let [finish, fail]: [(answer: string) => void, (reason: Error) => void] = [() => undefined, () => undefined];
  const answer = new Promise<string>((resolve, reject) => ([finish, fail] = [resolve, reject]));
  const outcome = followRun(answer, { stop: stop.signal, onProgress: (progress) => void shown.push(progress) }, (stopping) => {
    asked.push(stopping);
    return attend(asked.length);
  });
  return { asked, shown, stop, finish, fail, outcome };
}

const later = (seconds: number): Promise<unknown> => vi.advanceTimersByTimeAsync(seconds * 1000);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('followRun', () => {
  it('asks every second and a half, shows what it hears, and ends with the answer', async () => {
    const { asked, shown, finish, outcome } = scene((nth) => Promise.resolve({ progress: nth === 1 ? null : step(nth) }));
    await later(4.6);
    expect([asked, shown]).toEqual([
      [false, false, false],
      [step(2), step(3)],
    ]);
    finish('inserted');
    expect(await outcome).toBe('inserted');
    await later(10);
    expect(asked).toHaveLength(3);
  });

  it('tells a stop at once, again at every turn, and shows no step after it', async () => {
    const { asked, shown, stop, fail, outcome } = scene((nth) => Promise.resolve({ progress: step(nth) }));
    await later(1.6);
    stop.abort();
    await later(0.1);
    expect(asked).toEqual([false, true]);
    await later(1.6);
    expect(asked).toEqual([false, true, true]);
    expect(shown).toEqual([step(1)]);
    fail(new Error('Stopped. No sheet was inserted.'));
    await expect(outcome).rejects.toThrow('Stopped. No sheet was inserted.');
  });

  it('tells a stop that comes during a question right after its answer', async () => {
    let answered = (): void => undefined;
    const { asked, shown, stop } = scene(() => new Promise((resolve) => (answered = () => resolve({ progress: step(1) }))));
    await later(1.6);
    stop.abort();
    answered();
    await later(0);
    expect([asked, shown]).toEqual([[false, true], []]);
  });

  it('goes on asking where a question fails', async () => {
    const { asked, shown, finish, outcome } = scene((nth) =>
      nth === 1 ? Promise.reject(new Error('PERMISSION_DENIED')) : Promise.resolve({ progress: step(nth) }),
    );
    await later(3.2);
    expect([asked, shown]).toEqual([[false, false], [step(2)]]);
    finish('inserted');
    expect(await outcome).toBe('inserted');
  });

  it('shows no step that is heard after the answer', async () => {
    let answered = (): void => undefined;
    const { shown, finish, outcome } = scene(() => new Promise((resolve) => (answered = () => resolve({ progress: step(1) }))));
    await later(1.6);
    finish('inserted');
    await outcome;
    answered();
    await later(5);
    expect(shown).toEqual([]);
  });
});
