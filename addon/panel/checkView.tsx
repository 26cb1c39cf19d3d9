// Checking the whole workbook: the counts in words, then every finding with a button that goes to its cell.
import { useState } from 'preact/hooks';
import { checkWorkbook, type CheckReport, type Finding } from '../workbook/check/checkWorkbook';
import { AskButton } from './askButton';
import { useAsking, type Asking, type Said } from './asking';
import { CheckedCalls } from './checkedCalls';
import { CheckedSheet } from './checkedSheet';
import { countsInWords, daysInWords, totalInWords } from './checkWords';
import type { PanelHost } from './host';
import { localTime, localToday } from './localToday';
import { OutcomeLine } from './outcomeLine';
import { pageTemplates } from './pageTemplates';

interface Checked {
  readonly report: CheckReport;
  /** Sentences: the days on which the sheets judge. */
  readonly days: readonly string[];
  /** Of the user's clock. */
  readonly at: string;
}

interface CheckedReportProps {
  readonly checked: Checked;
  readonly asking: Asking;
  readonly goTo: (finding: Finding) => void;
}

function CheckedReport({ checked: { report, days, at }, asking, goTo }: CheckedReportProps) {
  const sheets = [...new Set(report.findings.map(({ sheet }) => sheet))];
  return (
    <>
      <h3>Summary</h3>
      <ul class="counts">
        {countsInWords(report).map(({ text, found }) => (
          <li key={text} class={found ? 'found' : ''}>
            {text}
          </li>
        ))}
        {[...days, ...report.said].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <p class="faint">
        As the workbook was at {at}. The check looks at the sheets, not at the flight: a wrong entry is still wrong when nothing is found here, and a
        NO is still a NO.
      </p>
      {sheets.map((sheet) => (
        <CheckedSheet key={sheet} name={sheet} findings={report.findings.filter((one) => one.sheet === sheet)} asking={asking} goTo={goTo} />
      ))}
      <CheckedCalls report={report} />
    </>
  );
}

export function CheckView({ host }: { readonly host: PanelHost }) {
  const asking = useAsking();
  const [checked, setChecked] = useState<Checked>();
  const check = async (): Promise<Said> => {
    let next: Checked | undefined;
    try {
      const workbook = await host.ask('readWorkbook', { sheets: 'all' });
      next = { report: checkWorkbook(workbook, pageTemplates(), localToday()), days: daysInWords(workbook), at: localTime() };
      return { shown: totalInWords(next.report) };
    } finally {
      // A report of before is never left standing after a check that failed.
      setChecked(next);
    }
  };
  const goTo = ({ sheet, row, column }: Finding): void =>
    asking.run('Going there.', async () => `${(await host.ask('goTo', { sheet, row, column })).cell} is selected.`);
  return (
    <section>
      <h2>Check this workbook</h2>
      <p>Looks through every sheet for errors, for UNKNOWN, for formulas of ours that were changed and for a day gone by. It changes nothing.</p>
      <AskButton look="main" asking={asking} ask={() => asking.run('Reading and checking the workbook.', check)}>
        Check this workbook
      </AskButton>
      {checked !== undefined && <CheckedReport checked={checked} asking={asking} goTo={goTo} />}
      <OutcomeLine outcome={asking.outcome} />
    </section>
  );
}
