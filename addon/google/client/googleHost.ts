// The panel's host inside Google Sheets: google.script.run, turned into promises.
import type { PanelAnswer, PanelGiven, PanelHost, PanelQuestion, PanelReply } from '../../panel/host';
import type { PanelScript } from '../panelApi';
import { reasonOf } from '../reason';

/** The little of google.script.run that is used: the script's own functions, which answer through the handlers. */
type ScriptRunner<Answer> = {
  readonly [Name in keyof PanelScript]: (...given: Parameters<PanelScript[Name]>) => void;
} & {
  withSuccessHandler(handler: (reply: PanelReply<Answer> | null | undefined) => void): ScriptRunner<Answer>;
  withFailureHandler(handler: (error: Error) => void): ScriptRunner<Answer>;
};

declare const google: { readonly script: { readonly run: ScriptRunner<never> } };

/** The platform fails without words of use when several accounts are signed in, so every failure is told with what helps. */
function failureInWords(reason: string): string {
  const said = reason.trim().replace(/\.?$/, '.');
  return `Google Sheets could not run the add-on. It said: ${said} Reload the document and try again. If several Google accounts are signed in, sign out of the others or use a window of its own for this one.`;
}

function run<Question extends PanelQuestion>(question: Question, given: PanelGiven<Question>): Promise<PanelAnswer<Question>> {
  return new Promise((resolve, reject) => {
    const fail = (thrown: unknown): void => reject(new Error(failureInWords(reasonOf(thrown))));
    const take = (reply: PanelReply<PanelAnswer<Question>> | null | undefined): void => {
      if (reply === null || reply === undefined) fail('no answer came back');
      else if ('answer' in reply) resolve(reply.answer);
      else reject(new Error(reply.refusal));
    };
    try {
      google.script.run.withSuccessHandler(take).withFailureHandler(fail).answerPanel(question, given);
    } catch (thrown) {
      fail(thrown);
    }
  });
}

export const googleHost: PanelHost = { ask: run };
