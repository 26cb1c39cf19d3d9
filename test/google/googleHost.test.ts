// The panel's side of the door: google.script.run as a promise, every failure in words, and both sides of one type.
import { afterEach, describe, expect, it } from 'vitest';
import { googleHost } from '../../addon/google/client/googleHost';
import type { answerPanel } from '../../addon/google/commands';
import type { attendRun } from '../../addon/google/followedRun';
import type { PanelScript } from '../../addon/google/panelApi';

type Behaviour = (question: string, given: unknown, success: (reply: unknown) => void, failure: (thrown: unknown) => void) => void;

const asked: (readonly [string, unknown, string | null])[] = [];

/** A google.script.run that does this at every call. */
function platform(behaviour: Behaviour): void {
  const runner = (success: (reply: unknown) => void, failure: (thrown: unknown) => void): object => ({
    withSuccessHandler: (handler: (reply: unknown) => void) => runner(handler, failure),
    withFailureHandler: (handler: (thrown: unknown) => void) => runner(success, handler),
    answerPanel: (question: string, given: unknown, run: string | null) => {
      asked.push([question, given, run]);
      behaviour(question, given, success, failure);
    },
  });
  const nobody = (): never => {
    throw new Error('no handler');
  };
  Object.assign(globalThis, { google: { script: { run: runner(nobody, nobody) } } });
}

const help =
  'Reload the document and try again. If several Google accounts are signed in, sign out of the others or use a window of its own for this one.';
const go = () => googleHost.ask('goTo', { sheet: 'Yard', row: 1, column: 2 });

afterEach(() => {
  asked.splice(0);
  Reflect.deleteProperty(globalThis, 'google');
});

describe("the panel's host inside Google Sheets", () => {
  it('passes on the question and what is given, and the answer back', async () => {
    platform((_, __, success) => success({ answer: { cell: 'B1' } }));
    expect(await go()).toEqual({ cell: 'B1' });
    expect(asked).toEqual([['goTo', { sheet: 'Yard', row: 1, column: 2 }, null]]);
  });

  it('names a run that is watched, so that it can be followed', async () => {
    platform((_, __, success) => success({ answer: { inserted: ['Yard'], reads: [] } }));
    const watch = { stop: new AbortController().signal, onProgress: () => undefined };
    await googleHost.ask('insertSheets', { keys: ['start'] }, watch);
    await googleHost.ask('insertSheets', { keys: ['start'] }, watch);
    const runs = asked.map(([, , run]) => run);
    expect([runs.every((run) => typeof run === 'string' && run.length < 100), new Set(runs).size]).toEqual([true, 2]);
  });

  it('rejects with the sentence of a refusal, and nothing else', async () => {
    platform((_, __, success) => success({ refusal: 'There is no sheet "Yard" in this document any more.' }));
    await expect(go()).rejects.toThrow(/^There is no sheet "Yard" in this document any more\.$/);
  });

  it.each<readonly [string, Behaviour, string]>([
    ['the platform fails', (_, __, ___, failure) => failure(new Error('PERMISSION_DENIED')), 'PERMISSION_DENIED.'],
    [
      'it fails with a full stop of its own',
      (_, __, ___, failure) => failure(new Error('We are sorry, a server error occurred. ')),
      'We are sorry, a server error occurred.',
    ],
    ['it fails with text', (_, __, ___, failure) => failure('ScriptError'), 'ScriptError.'],
    ['nothing comes back', (_, __, success) => success(null), 'no answer came back.'],
    [
      'the call itself is refused',
      () => {
        throw new TypeError('Failed due to illegal value in property: 0');
      },
      'Failed due to illegal value in property: 0.',
    ],
  ])('tells in one wording that %s, and names the trouble with several accounts', async (_, behaviour, said) => {
    platform(behaviour);
    await expect(go()).rejects.toEqual(new Error(`Google Sheets could not run the add-on. It said: ${said} ${help}`));
  });

  it('says so where there is no platform at all', async () => {
    await expect(go()).rejects.toThrow(/^Google Sheets could not run the add-on\. It said: google is not defined\. Reload the document/);
  });
});

/** Checked by the compiler: what the script keeps at its top level is what the client calls, question by question. */
export const sameDoor: PanelScript = { answerPanel: {} as typeof answerPanel, attendRun: {} as typeof attendRun };

export const unknownQuestions = [
  // @ts-expect-error a question that neither side knows
  () => googleHost.ask('tellFortune', {}),
  // @ts-expect-error a known question with what belongs to another one
  () => googleHost.ask('goTo', { keys: ['trip'] }),
  // @ts-expect-error likewise on the side of the script
  (door: typeof answerPanel) => door('tellFortune', {}, null),
  // @ts-expect-error likewise, on the side of the script
  (door: typeof answerPanel) => door('goTo', { keys: ['trip'] }, null),
];
