// The window in which a chart is traced. What was done in it stays until the page is closed, or the points were taken.
import { useMemo, useState } from 'preact/hooks';
import type { TracedText } from '../../../panel/host';
import { tableKinds, type TableKind } from '../../../workbook/pasted/tableKinds';
import { showDialog } from '../dialog';
import { openChartFile } from './chartFile';
import type { ChartPicture } from './chartPicture';
import { emptyDraft, type Draft } from './draft';
import { AxesStage, CurvesStage } from './stages';
import { chartWork } from './work';

interface Kept {
  readonly picture: ChartPicture | undefined;
  readonly draft: Draft;
}
const kept = new Map<TableKind['list'], Kept>();
const nothing: Kept = { picture: undefined, draft: emptyDraft };

function Opening({
  onOpen,
  say,
  again,
}: {
  readonly onOpen: (opened: Kept) => void;
  readonly say: (sentence: string) => void;
  readonly again: boolean;
}) {
  const open = (file: File | undefined): void => {
    if (file === undefined) return;
    say('Opening the picture.');
    void openChartFile(file)
      .then(({ picture, draft }) => {
        onOpen({ picture, draft: draft ?? emptyDraft });
        say(`"${picture.name}" is open. It stays on this machine.`);
      })
      .catch((thrown: unknown) => say(thrown instanceof Error ? thrown.message : String(thrown)));
  };
  return (
    <label class="opening">
      {again ? 'Another picture (takes what was traced away)' : 'Picture of the chart: a photograph or a scan, PNG or JPEG, or a chart saved here'}
      <input type="file" accept="image/png,image/jpeg,application/json,.json" onChange={({ currentTarget }) => open(currentTarget.files?.[0])} />
    </label>
  );
}

interface WindowProps {
  readonly kind: TableKind;
  readonly close: () => void;
  readonly onTake: (taken: TracedText) => void;
}

function TraceWindow({ kind, close, onTake }: WindowProps) {
  const [{ picture, draft }, setKept] = useState(kept.get(kind.list) ?? nothing);
  const [said, say] = useState('');
  const keep = (now: Kept): void => {
    kept.set(kind.list, now);
    setKept(now);
  };
  const onDraft = (next: Draft): void => keep({ picture, draft: next });
  const work = useMemo(() => (picture !== undefined && draft.settled ? chartWork(picture, draft) : undefined), [picture, draft.settled]);
  const stage = picture && { kind, picture, draft, say, onDraft };
  return (
    <div class="tracing">
      <div class="top">
        <h1>Trace a chart: {kind.title}</h1>
        <button type="button" onClick={close}>
          Close
        </button>
      </div>
      <Opening onOpen={keep} say={say} again={picture !== undefined} />
      <p role="status" class="said">
        {said}
      </p>
      <div class="stage">
        {stage !== undefined && work === undefined && <AxesStage {...stage} />}
        {stage !== undefined && work !== undefined && <CurvesStage {...stage} work={work} onTake={onTake} />}
      </div>
    </div>
  );
}

/** Undefined where the user closed the window without taking points over. */
export function traceChart(list: TableKind['list']): Promise<TracedText | undefined> {
  const kind = tableKinds.find((one) => one.list === list);
  if (kind === undefined) return Promise.reject(new Error(`There is no table "${list}".`));
  return new Promise((resolve) => {
    let taken: TracedText | undefined;
    const content = (close: () => void) => (
      <TraceWindow
        kind={kind}
        close={close}
        onTake={(text) => {
          taken = text;
          close();
        }}
      />
    );
    showDialog('Trace a chart', content, () => resolve(taken));
  });
}
