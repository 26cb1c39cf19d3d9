// The side panel beside the grid: a frame of its own, which asks by messages for what it wants done in the workbook.
import type { PanelAnswer, PanelGiven, PanelQuestion, PanelReply } from '../../panel/host';
import { isQuestionMessage, type ReplyMessage } from './panelFrame/messages';
import { contentAt } from './cells';
import { elementNamed } from './elements';
import type { Workbook } from './grid';

type Answers = { readonly [Question in PanelQuestion]: (given: PanelGiven<Question>) => PanelAnswer<Question> };

/** Narrower windows start without the panel, since the grid needs the room. */
const roomForPanel = 1400;
const memory = 'rampwright-panel';

function putFormula(workbook: Workbook, formula: string): PanelAnswer<'putFormula'> {
  if (!formula.startsWith('=')) throw new Error('A formula starts with an equals sign.');
  const cell = workbook.getActiveCell();
  if (cell === null) throw new Error('Select a cell in the sheet first.');
  const place = cell.getA1Notation();
  const { v, f } = contentAt(workbook.getActiveSheet(), cell.getRow(), cell.getColumn());
  if (f || (v !== undefined && v !== null && v !== '')) throw new Error(`Cell ${place} is not empty, and nothing is overwritten. Select an empty cell.`);
  cell.setValue({ f: formula });
  return { cell: place };
}

const notYet = (): never => {
  throw new Error('This is not built yet.');
};

function answersFrom(workbook: Workbook): Answers {
  return {
    putFormula: ({ formula }) => putFormula(workbook, formula),
    readWorkbook: notYet,
    goTo: notYet,
    freezeSheet: notYet,
    updateSheets: notYet,
    insertSheets: () => {
      throw new Error('The local workbook has every sheet from the start. To begin again with fresh ones, start with another file: npm start -- --file trips.json.');
    },
  };
}

function replyTo(answers: Answers, question: string, given: unknown): PanelReply<unknown> {
  const answer = Object.entries(answers).find(([name]) => name === question)?.[1] as ((given: unknown) => unknown) | undefined;
  if (answer === undefined) return { refusal: `The panel asked for "${question}", which this workbook cannot do.` };
  try {
    return { answer: answer(given) };
  } catch (thrown) {
    return { refusal: thrown instanceof Error ? thrown.message : String(thrown) };
  }
}

function answerPanel(frame: HTMLIFrameElement, workbook: Workbook): void {
  const answers = answersFrom(workbook);
  window.addEventListener('message', ({ data, origin, source }: MessageEvent<unknown>) => {
    if (origin !== location.origin || source !== frame.contentWindow || !isQuestionMessage(data)) return;
    const message: ReplyMessage = { id: data.id, reply: replyTo(answers, data.question, data.given) };
    frame.contentWindow?.postMessage(message, location.origin);
  });
}

export function showPanel(workbook: Workbook): void {
  const frame = elementNamed('panel') as HTMLIFrameElement;
  const button = elementNamed('panel-button');
  answerPanel(frame, workbook);
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
