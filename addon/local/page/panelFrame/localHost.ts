// The panel's host in the local workbook: questions go to the page round the panel as messages, answers come back so.
import type { PanelHost, PanelReply } from '../../../panel/host';
import { isReplyMessage, type QuestionMessage } from './messages';

type Settle = (reply: PanelReply<never>) => void;

export function connectToPage(): PanelHost {
  const waiting = new Map<number, Settle>();
  let asked = 0;
  window.addEventListener('message', ({ data, origin, source }: MessageEvent<unknown>) => {
    if (origin !== location.origin || source !== window.parent || !isReplyMessage(data)) return;
    waiting.get(data.id)?.(data.reply as PanelReply<never>);
    waiting.delete(data.id);
  });
  const send = <Answer>(question: string, given: unknown): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const message: QuestionMessage = { id: (asked += 1), question, given };
      waiting.set(message.id, (reply) => ('answer' in reply ? resolve(reply.answer) : reject(new Error(reply.refusal))));
      window.parent.postMessage(message, location.origin);
    });
  return { ask: (question, given) => send(question, given), traceChart: (list) => send('traceChart', list) };
}
