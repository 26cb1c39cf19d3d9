// The panel's host inside Google Sheets: google.script.run, turned into promises.
import type { PanelHost, PanelReply } from '../../panel/host';

/** The little of google.script.run that is used. Its replies are plain data, never checked by the platform. */
interface ScriptRunner {
  withSuccessHandler(handler: (reply: PanelReply<never>) => void): ScriptRunner;
  withFailureHandler(handler: (error: Error) => void): ScriptRunner;
  answerPanel(question: string, given: unknown): void;
}

declare const google: { readonly script: { readonly run: ScriptRunner } };

/** The platform fails without words of use when several accounts are signed in, so its failure is told with what helps. */
function failureInWords({ message }: Error): string {
  const said = message.trim().replace(/\.?$/, '.');
  return `Google Sheets could not run the add-on. It said: ${said} Reload the document and try again. If several Google accounts are signed in, sign out of the others or use a window of its own for this one.`;
}

export const googleHost: PanelHost = {
  ask: (question, given) =>
    new Promise((resolve, reject) => {
      google.script.run
        .withSuccessHandler((reply) => ('answer' in reply ? resolve(reply.answer) : reject(new Error(reply.refusal))))
        .withFailureHandler((error) => reject(new Error(failureInWords(error))))
        .answerPanel(question, given);
    }),
};
