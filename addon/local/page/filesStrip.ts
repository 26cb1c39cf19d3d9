// The two buttons at the foot for files: the calendar that goes out, the flights that come in, and what became of them.
import type { FUniver } from '@univerjs/core/facade';
import type { DateOrder } from '../importLog';
import { elementNamed } from './elements';
import type { Workbook } from './grid';

const orders: readonly DateOrder[] = ['day first', 'month first'];

/** Works every formula out anew and waits, so that what is read is what was typed. */
function calculated(api: FUniver): Promise<void> {
  const formula = api.getFormula();
  return new Promise((resolve) => {
    const heard = formula.calculationEnd(() => {
      heard.dispose();
      resolve();
    });
    formula.executeCalculation();
  });
}

function download(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/calendar;charset=utf-8' }));
  link.download = name;
  link.click();
  // The browser must have begun to read before the text goes.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** UTF-8, else the older encoding of spreadsheets that write files for western Europe. */
async function textOf(file: File): Promise<string> {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** The button pressed goes with the sentence, so the keyboard is put back on one that stays. */
function close(): void {
  say('');
  elementNamed('calendar-button').focus();
}

/** Shows sentences in the strip, with buttons for what may be answered, until they are closed. */
function say(sentence: string, choices: readonly { readonly label: string; readonly chosen: () => void }[] = []): void {
  elementNamed('files-said').textContent = sentence;
  const buttons = [...choices, { label: 'Close', chosen: close }].map(({ label, chosen }) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = label;
    button.addEventListener('click', chosen);
    return button;
  });
  elementNamed('files-choices').replaceChildren(...(sentence === '' ? [] : buttons));
}

const sayFailure = (thrown: unknown): void => say(`Not done: ${thrown instanceof Error ? thrown.message : String(thrown)}`);

async function sendCalendar(api: FUniver, workbook: Workbook): Promise<void> {
  const { calendarFile } = await import('./calendarFile');
  await calculated(api);
  const { text, said } = calendarFile(workbook);
  if (text !== undefined) download('rampwright.ics', text);
  say(said);
}

async function takeFlights(workbook: Workbook, text: string, order?: DateOrder): Promise<void> {
  const { importFlights } = await import('./flightFile');
  const { said, asksOrder } = importFlights(workbook, text, order);
  const choices = orders.map((one) => ({ label: one === 'day first' ? 'Day first' : 'Month first', chosen: () => void takeFlights(workbook, text, one).catch(sayFailure) }));
  say(said, asksOrder ? choices : []);
}

export function offerFiles(api: FUniver, workbook: Workbook): void {
  const chooser = elementNamed('flights-file') as HTMLInputElement;
  elementNamed('calendar-button').addEventListener('click', () => void sendCalendar(api, workbook).catch(sayFailure));
  elementNamed('flights-button').addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0];
    if (file !== undefined) textOf(file).then((text) => takeFlights(workbook, text)).catch(sayFailure);
    // The same file may be chosen again.
    chooser.value = '';
  });
}
