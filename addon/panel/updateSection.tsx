// Bringing older sheets up to date: which sets there are, what of each is carried over and what is not, and only then the update.
import { useRef, useState } from 'preact/hooks';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import type { PanelHost, Watch } from './host';
import { OlderSet } from './olderSet';
import { pageTemplates } from './pageTemplates';
import { isSame, lookThrough, lookedInWords, updatedInWords, type LookedSet } from './updateSets';

interface UpdateSectionProps {
  readonly host: PanelHost;
  readonly asking: Asking;
}

export function UpdateSection({ host, asking }: UpdateSectionProps) {
  const [sets, setSets] = useState<readonly LookedSet[]>();
  const heading = useRef<HTMLHeadingElement>(null);
  const read = async (): Promise<LookedSet[]> => lookThrough(await host.ask('readWorkbook', { sheets: 'all' }), pageTemplates());
  const look = async (): Promise<string> => {
    let found: LookedSet[] | undefined;
    try {
      found = await read();
      return lookedInWords(found);
    } finally {
      setSets(found);
    }
  };
  const bring = async (shown: LookedSet, watch: Watch): Promise<string> => {
    // The user may have typed since; what is written is what stands there now, and what was read out must still hold.
    const found = await read();
    const now = found.find(({ set }) => set === shown.set);
    if (now?.carried === undefined || !isSame(now, shown)) {
      setSets(found);
      throw new Error('The sheets were changed since you looked. Read again what is carried over, then press once more.');
    }
    const answer = await host.ask('updateSheets', { set: now.set, entries: now.carried.entries }, watch);
    setSets(found.filter((one) => one !== now));
    // Its button is gone.
    heading.current?.focus();
    return updatedInWords(answer);
  };
  return (
    <section>
      <h2 tabIndex={-1} ref={heading}>
        Bring up to date
      </h2>
      <p>
        Sheets that an older version of Rampwright put in are replaced by those of today, with your entries in them. The older ones stay beside them.
      </p>
      <AskButton look="main" asking={asking} ask={() => asking.run('Reading the workbook.', look)}>
        Look for older sheets
      </AskButton>
      {sets?.map((one, index) => (
        <OlderSet
          key={one.set}
          looked={one}
          number={index + 1}
          asking={asking}
          bring={() => asking.run('Bringing the sheets up to date. This takes some seconds.', (watch) => bring(one, watch))}
        />
      ))}
    </section>
  );
}
