// The button and the list of the dated copies that the server keeps beside the workbook's file.
import { render } from 'preact';
import { useState } from 'preact/hooks';
import { CopyRows } from './copyRows';
import { showDialog } from './dialog';
import { elementNamed } from './elements';
import { goBackTo } from './goBack';
import type { KeptCopy } from './keeper';
import { notifyFailure } from './notices';
import type { StartedPage } from './startPage';

const title = 'Older copies of this workbook';

function Copies({ copies, started, close }: { readonly copies: readonly KeptCopy[]; readonly started: StartedPage; readonly close: () => void }) {
  const [said, say] = useState('');
  const goBack = (made: number): void => {
    say('Going back...');
    goBackTo(started, made, '"Older copies"').catch((thrown: unknown) =>
      say(`Not done: ${thrown instanceof Error ? thrown.message : String(thrown)}`),
    );
  };
  return (
    <>
      <h1>{title}</h1>
      <p>
        As it was before the first change after each start of the program, and of each day. The ten newest are kept, and of those before them one a
        week. Whoever goes back loses nothing: what stands here now becomes a copy first.
      </p>
      {copies.length === 0 ? <p>There is none yet: the first is made with the first change.</p> : <CopyRows copies={copies} goBack={goBack} />}
      <p role="status">{said}</p>
      <p class="choices">
        <button type="button" onClick={close}>
          Close
        </button>
      </p>
    </>
  );
}

async function show(started: StartedPage): Promise<void> {
  const copies = await started.file.copies();
  showDialog(title, (close) => <Copies copies={copies} started={started} close={close} />);
}

export function offerOlderCopies(started: StartedPage): void {
  render(
    <button
      id="copies-button"
      type="button"
      title="The workbook as it was before, by day and time"
      onClick={() => void show(started).catch(notifyFailure)}
    >
      Older copies
    </button>,
    elementNamed('keeper'),
  );
}
