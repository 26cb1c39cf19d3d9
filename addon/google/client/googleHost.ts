// The panel's host inside Google Sheets: google.script.run, turned into promises.
import type { PanelAnswer, PanelGiven, PanelHost, PanelQuestion, PanelReply, Watch } from '../../panel/host';
import type { PanelScript, RunAttended } from '../panelApi';
import { reasonOf } from '../reason';
import { followRun } from './followRun';

/** The little of google.script.run that is used: the script's own functions, which answer through the handlers. */
type ScriptRunner = {
  readonly [Name in keyof PanelScript]: (...given: Parameters<PanelScript[Name]>) => void;
} & {
  withSuccessHandler(handler: (answer: never) => void): ScriptRunner;
  withFailureHandler(handler: (error: Error) => void): ScriptRunner;
};

declare const google: { readonly script: { readonly run: ScriptRunner } };

/** The platform fails without words of use when several accounts are signed in, so every failure is told with what helps. */
function failureInWords(reason: string): string {
  const said = reason.trim().replace(/\.?$/, '.');
  return `Google Sheets could not run the add-on. It said: ${said} Reload the document and try again. If several Google accounts are signed in, sign out of the others or use a window of its own for this one.`;
}

/** One request to the script, whichever of its functions `call` calls. */
function request<Answer>(call: (runner: ScriptRunner) => void): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const fail = (thrown: unknown): void => reject(new Error(failureInWords(reasonOf(thrown))));
    const take = (answer: Answer | null | undefined): void =>
      answer === null || answer === undefined ? fail('no answer came back') : resolve(answer);
    try {
      call(google.script.run.withSuccessHandler(take).withFailureHandler(fail));
    } catch (thrown) {
      fail(thrown);
    }
  });
}

async function asked<Question extends PanelQuestion>(question: Question, given: PanelGiven<Question>, run: string | null) {
  const reply = await request<PanelReply<PanelAnswer<Question>>>((runner) => runner.answerPanel(question, given, run));
  if ('answer' in reply) return reply.answer;
  throw new Error(reply.refusal);
}

let runs = 0;

/** Nobody else's run of the same user has this name. */
const runName = (): string => `${Date.now().toString(36)} ${Math.random().toString(36).slice(2)} ${(runs += 1)}`;

function ask<Question extends PanelQuestion>(question: Question, given: PanelGiven<Question>, watch?: Watch): Promise<PanelAnswer<Question>> {
  if (watch === undefined) return asked(question, given, null);
  const run = runName();
  return followRun(asked(question, given, run), watch, (stop) => request<RunAttended>((runner) => runner.attendRun({ run, stop })));
}

export const googleHost: PanelHost = { ask };
