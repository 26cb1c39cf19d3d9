// The buttons at the foot for files: the calendar and the Excel file that go out, the flights that come in, and what became of them.
import type { DateOrder } from '../importLog';
import { download } from './download';
import { elementNamed } from './elements';
import type { LiveWorkbook } from './liveWorkbook';
import { say, sayFailure } from './toldStrip';

const orders: readonly DateOrder[] = ['day first', 'month first'];

const mediaTypes = { calendar: 'text/calendar;charset=utf-8', excel: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet' } as const;

/** UTF-8, else the older encoding of spreadsheets that write files for western Europe. */
async function textOf(file: File): Promise<string> {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

async function sendCalendar({ settled, snapshot }: LiveWorkbook): Promise<void> {
  const { calendarFile } = await import('../../calendar/calendarFile');
  await settled();
  const { text, said } = calendarFile(snapshot('all'));
  if (text !== undefined) download('rampwright.ics', text, mediaTypes.calendar);
  say(said);
}

async function sendExcel({ settled, workbook, snapshot }: LiveWorkbook): Promise<void> {
  const { xlsxFile } = await import('../xlsx/xlsxFile');
  await settled();
  const { bytes, said } = await xlsxFile(workbook.save(), snapshot('all'));
  download('rampwright.xlsx', bytes, mediaTypes.excel);
  say(said);
}

async function takeFlights(live: LiveWorkbook, text: string, order?: DateOrder): Promise<void> {
  const { importFlights } = await import('./flightFile');
  await live.settled();
  const { said, asksOrder } = importFlights(live, text, order);
  const choices = orders.map((one) => ({ label: one === 'day first' ? 'Day first' : 'Month first', chosen: () => void takeFlights(live, text, one).catch(sayFailure) }));
  say(said, asksOrder ? choices : []);
}

export function offerFiles(live: LiveWorkbook): void {
  const chooser = elementNamed('flights-file') as HTMLInputElement;
  elementNamed('calendar-button').addEventListener('click', () => void sendCalendar(live).catch(sayFailure));
  elementNamed('excel-button').addEventListener('click', () => void sendExcel(live).catch(sayFailure));
  elementNamed('flights-button').addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0];
    if (file !== undefined) textOf(file).then((text) => takeFlights(live, text)).catch(sayFailure);
    // The same file may be chosen again.
    chooser.value = '';
  });
}
