// The buttons at the foot for files: the calendar and the Excel file that go out, the flights that come in, and what became of them.
import { fileColumns } from '../namedColumns';
import { askColumns } from './columnsForm';
import { download } from './download';
import { elementNamed } from './elements';
import type { FileAnswers } from './flightOwner';
import type { LiveWorkbook } from './liveWorkbook';
import { notify, notifyFailure } from './notices';
import { rememberColumns, rememberedColumns } from './rememberedColumns';
import { sharedName } from './sharedName';

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

/** The sheet in sight, to be handed on: a member's own statement, say. */
async function sendSheet({ settled, workbook, snapshot, shown }: LiveWorkbook): Promise<void> {
  const { xlsxOfSheet } = await import('../xlsx/xlsxFile');
  await settled();
  const { sheetId, snapshot: sheet } = shown();
  const name = `${sharedName(sheet)}.xlsx`;
  const { bytes, said } = await xlsxOfSheet(workbook.save(), snapshot('all'), sheetId, name);
  download(name, bytes, mediaTypes.excel);
  notify(said);
}

/** The answers to what the file does not show are asked one after another. */
async function takeFlights(live: LiveWorkbook, text: string, answers: FileAnswers = {}): Promise<void> {
  const { importFlights } = await import('./flightFile');
  await live.settled();
  if (answers.columns !== undefined) rememberColumns(answers.columns);
  const known = answers.columns ?? rememberedColumns(fileColumns(text));
  const { said, choices, columns } = importFlights(live, text, { ...answers, ...(known && { columns: known }) });
  const go = (next: FileAnswers): void => void takeFlights(live, text, next).catch(notifyFailure);
  notify(said, [
    ...choices.map((choice) => ({ label: choice.label, chosen: () => go(choice.answers) })),
    ...(columns === undefined
      ? []
      : [{ label: columns.label, chosen: () => askColumns(columns.of, columns.now, (named) => go({ ...answers, columns: named })) }]),
  ]);
}

export function offerFiles(live: LiveWorkbook): void {
  const chooser = elementNamed('flights-file') as HTMLInputElement;
  elementNamed('calendar-button').addEventListener('click', () => void sendCalendar(live).catch(notifyFailure));
  elementNamed('excel-button').addEventListener('click', () => void sendExcel(live).catch(notifyFailure));
  elementNamed('sheet-button').addEventListener('click', () => void sendSheet(live).catch(notifyFailure));
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
