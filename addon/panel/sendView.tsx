// What leaves the workbook: its dates as a calendar file, and a sheet as plain values for somebody without the add-on.
import { useState } from 'preact/hooks';
import { calendarFile } from '../calendar/calendarFile';
import { AskButton } from './askButton';
import { useAsking, type Said } from './asking';
import { FileLink, type OwnFile } from './fileLink';
import type { PanelHost } from './host';
import { OutcomeLine } from './outcomeLine';

interface Calendar {
  readonly file: OwnFile;
  /** What is in it and what is not, in sentences; there may be many. */
  readonly said: string;
}

export function SendView({ host }: { readonly host: PanelHost }) {
  const asking = useAsking();
  const [calendar, setCalendar] = useState<Calendar>();
  const makeCalendar = async (): Promise<Said> => {
    let next: Calendar | undefined;
    try {
      const { text, said } = calendarFile(await host.ask('readWorkbook', { sheets: 'all' }), new Date());
      if (text === undefined) return said;
      next = { said, file: { name: 'rampwright.ics', type: 'text/calendar', text } };
      return { shown: said };
    } finally {
      setCalendar(next);
    }
  };
  const freeze = async (): Promise<string> => {
    const { sheet, formulas } = await host.ask('freezeSheet', {});
    return `The copy is the sheet "${sheet}": ${formulas === 1 ? '1 formula is' : `${formulas} formulas are`} values there. It shows today's answers and never changes by itself.`;
  };
  return (
    <section>
      <h2>Dates for your calendar</h2>
      <p>
        Visits to load data, ends of licences and the last good days of the Currency log, as a file that calendar programs take in. Import it again
        later: events are updated, not duplicated.
      </p>
      <AskButton look="main" asking={asking} ask={() => asking.run('Reading the workbook.', makeCalendar)}>
        Make the calendar file
      </AskButton>
      {calendar !== undefined && (
        <>
          <FileLink file={calendar.file} label="Save rampwright.ics" atOnce />
          <p>{calendar.said}</p>
        </>
      )}
      <h2>A sheet as plain values</h2>
      <p>
        For somebody without Rampwright, or for your records. The sheet in sight is copied beside itself, and in the copy each formula becomes the
        value that it shows now. Your sheet stays as it is.
      </p>
      <AskButton look="main" asking={asking} ask={() => asking.run('Copying the sheet.', freeze)}>
        Copy this sheet as values
      </AskButton>
      <OutcomeLine outcome={asking.outcome} />
    </section>
  );
}
