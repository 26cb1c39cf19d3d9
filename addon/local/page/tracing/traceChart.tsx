// The window in which a chart is traced. What was done in it stays until the page is closed, or the points were taken.
import { useMemo, useState } from 'preact/hooks';
import type { TracedText } from '../../../panel/host';
import type { Place } from '../../../tracing/greyPicture';
import { tableKinds, type TableKind } from '../../../workbook/pasted/tableKinds';
import { showDialog } from '../dialog';
import { AxesForm } from './axesForm';
import { openChartFile, ChartFileLink } from './chartFile';
import type { ChartPicture } from './chartPicture';
import { CurvesForm, type Tool } from './curvesForm';
import { cornerValue, emptyDraft, frameOf, noCurve, typedNumber, type Draft } from './draft';
import { handedOver, handOverProblems } from './handOver';
import { axesOverlay, curvesOverlay } from './overlay';
import { PictureView } from './pictureView';
import { chartWork, followFrom, pointMoved, pointRemoved, pointSet, type ChartWork, type Done } from './work';

interface Kept {
  readonly picture: ChartPicture | undefined;
  readonly draft: Draft;
}
const kept = new Map<TableKind['list'], Kept>();
const nothing: Kept = { picture: undefined, draft: emptyDraft };

interface StageProps {
  readonly kind: TableKind;
  readonly picture: ChartPicture;
  readonly draft: Draft;
  readonly say: (sentence: string) => void;
  readonly onDraft: (draft: Draft) => void;
}

/** Four significant figures, and no more than that anybody can point at. */
const inShort = (value: number): string => String(Number(value.toPrecision(4)));

function valuesSaid(draft: Draft) {
  const found = frameOf(draft);
  return (place: Place): string => {
    const value = 'frame' in found ? found.frame.valueAt(place) : undefined;
    return value === undefined ? '' : `${inShort(value.across)} ${draft.axes.across.unit}, ${inShort(value.up)} ${draft.axes.up.unit}`;
  };
}

function AxesStage({ kind, picture, draft, say, onDraft }: StageProps) {
  const [target, setTarget] = useState(0);
  const [further, setFurther] = useState({ across: '', up: '' });
  const overlay = axesOverlay(draft, (index) => cornerValue(draft, index));
  const set = draft.corners.flatMap((at, index) => (at === undefined ? [] : [index]));
  const withCorner = (index: number, at: Place | undefined): Draft => ({
    ...draft,
    corners: draft.corners.map((one, own) => (own === index ? at : one)),
  });
  const press = (at: Place): void => {
    if (target < 4) {
      const next = withCorner(target, at);
      onDraft(next);
      const open = next.corners.indexOf(undefined);
      return setTarget(open < 0 ? 4 : open);
    }
    const [across, up] = [typedNumber(further.across), typedNumber(further.up)];
    if (across === undefined || up === undefined) return say('Type the two values of the point first, or choose which corner you click.');
    onDraft({ ...draft, further: [...draft.further, { at, value: { across, up } }] });
    return setFurther({ across: '', up: '' });
  };
  const change = (handle: number, at: Place | undefined): void => {
    const corner = set[handle];
    if (corner !== undefined) return onDraft(withCorner(corner, at));
    const own = handle - set.length;
    return onDraft({ ...draft, further: draft.further.flatMap((one, index) => (index !== own ? [one] : at === undefined ? [] : [{ ...one, at }])) });
  };
  return (
    <>
      <PictureView
        image={picture.image}
        overlay={overlay}
        said={valuesSaid(draft)}
        overPoints
        onPress={press}
        onMove={change}
        onRemove={(handle) => change(handle, undefined)}
      />
      <div class="questions">
        <AxesForm
          kind={kind}
          draft={draft}
          target={target}
          further={further}
          onDraft={onDraft}
          onTarget={setTarget}
          onFurther={setFurther}
          onSettle={() => onDraft({ ...draft, settled: true })}
        />
      </div>
    </>
  );
}

interface CurvesStageProps extends StageProps {
  readonly work: ChartWork;
  readonly onTake: (taken: TracedText) => void;
}

function CurvesStage({ kind, picture, draft, say, onDraft, work, onTake }: CurvesStageProps) {
  const [tool, setTool] = useState<Tool>('follow');
  const [withGrid, setGrid] = useState(false);
  const take = ({ draft: next, said }: Done): void => {
    onDraft(next);
    say(said);
  };
  return (
    <>
      <PictureView
        image={picture.image}
        overlay={curvesOverlay(work, draft, withGrid)}
        said={valuesSaid(draft)}
        overPoints={false}
        onPress={(place) => take(tool === 'follow' ? followFrom(work, draft, place) : pointSet(work, draft, place))}
        onMove={(index, place) => take(pointMoved(work, draft, index, place))}
        onRemove={(index) => onDraft(pointRemoved(draft, index))}
      />
      <div class="questions">
        <CurvesForm
          kind={kind}
          draft={draft}
          work={work}
          tool={tool}
          withGrid={withGrid}
          problems={handOverProblems(work, draft)}
          onDraft={onDraft}
          onTool={setTool}
          onGrid={setGrid}
          onAxes={() => onDraft({ ...draft, settled: false, curves: [noCurve], current: 0 })}
          onTake={() => onTake(handedOver(work, draft, picture))}
        />
        <ChartFileLink picture={picture} draft={draft} />
      </div>
    </>
  );
}

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
