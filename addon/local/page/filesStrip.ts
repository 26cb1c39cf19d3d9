// The buttons at the foot for files: the calendar and the Excel file that go out, the flights that come in, and what became of them.
import { download } from './download';
import { elementNamed } from './elements';
import type { FileAnswers } from './flightOwner';
import type { LiveWorkbook } from './liveWorkbook';
import { notify, notifyFailure } from './notices';

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
  const { text, said } = calendarFile(snapshot('all'), new Date());
  if (text !== undefined) download('rampwright.ics', text, mediaTypes.calendar);
  notify(said);
}

async function sendExcel({ settled, workbook, snapshot }: LiveWorkbook): Promise<void> {
  const { xlsxFile } = await import('../xlsx/xlsxFile');
  await settled();
  const { bytes, said } = await xlsxFile(workbook.save(), snapshot('all'));
  download('rampwright.xlsx', bytes, mediaTypes.excel);
  notify(said);
}

/** The answers to what the file does not show are asked one after another. */
async function takeFlights(live: LiveWorkbook, text: string, answers: FileAnswers = {}): Promise<void> {
  const { importFlights } = await import('./flightFile');
  await live.settled();
  const { said, choices } = importFlights(live, text, answers);
  notify(
    said,
    choices.map((choice) => ({ label: choice.label, chosen: () => void takeFlights(live, text, choice.answers).catch(notifyFailure) })),
  );
}

export function offerFiles(live: LiveWorkbook): void {
  const chooser = elementNamed('flights-file') as HTMLInputElement;
  elementNamed('calendar-button').addEventListener('click', () => void sendCalendar(live).catch(notifyFailure));
  elementNamed('excel-button').addEventListener('click', () => void sendExcel(live).catch(notifyFailure));
  elementNamed('flights-button').addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0];
    if (file !== undefined)
      textOf(file)
        .then((text) => takeFlights(live, text))
        .catch(notifyFailure);
    // The same file may be chosen again.
    chooser.value = '';
  });
}
