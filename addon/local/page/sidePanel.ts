// The side panel beside the grid: a frame of its own, which asks by messages for what it wants done in the workbook.
import type { PanelHost, PanelReply } from '../../panel/host';
import { isQuestionMessage, type ReplyMessage } from './panelFrame/messages';
import { elementNamed } from './elements';
import type { PanelAnswers } from './panelAnswers';

/** Narrower windows start without the panel, since the grid needs the room. */
const roomForPanel = 1400;
const memory = 'rampwright-panel';

/** Loaded when it is first wanted. */
const traceChart: NonNullable<PanelHost['traceChart']> = async (list) => (await import('./tracing/traceChart')).traceChart(list);

async function replyTo(answers: object, question: string, given: unknown): Promise<PanelReply<unknown>> {
  const answer = Object.entries(answers).find(([name]) => name === question)?.[1] as ((given: unknown) => Promise<unknown>) | undefined;
  if (answer === undefined) return { refusal: `The panel asked for "${question}", which this workbook cannot do.` };
  try {
    return { answer: await answer(given) };
  } catch (thrown) {
    return { refusal: thrown instanceof Error ? thrown.message : String(thrown) };
  }
}

function answerPanel(frame: HTMLIFrameElement, answers: object): void {
  const reply = async (id: number, question: string, given: unknown): Promise<void> => {
    const message: ReplyMessage = { id, reply: await replyTo(answers, question, given) };
    frame.contentWindow?.postMessage(message, location.origin);
  };
  window.addEventListener('message', ({ data, origin, source }: MessageEvent<unknown>) => {
    if (origin === location.origin && source === frame.contentWindow && isQuestionMessage(data)) void reply(data.id, data.question, data.given);
  });
}

export function showPanel(answers: PanelAnswers): void {
  const frame = elementNamed('panel') as HTMLIFrameElement;
  const button = elementNamed('panel-button');
  answerPanel(frame, { ...answers, traceChart });
  const show = (shown: boolean): void => {
    // The panel loads only when it is first wanted.
    if (shown && frame.src === '') frame.src = 'panel.html';
    frame.hidden = !shown;
    button.textContent = shown ? 'Hide panel' : 'Show panel';
    button.setAttribute('aria-expanded', String(shown));
  };
  const remembered = localStorage.getItem(memory);
  show(remembered === null ? window.innerWidth >= roomForPanel : remembered === 'shown');
  button.addEventListener('click', () => {
    show(frame.hidden);
    localStorage.setItem(memory, frame.hidden ? 'hidden' : 'shown');
  });
}
