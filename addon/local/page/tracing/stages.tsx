// The two stages of a tracing, each with its picture and its questions: the axes with their known points, then the curves.
import { useState } from 'preact/hooks';
import type { TracedText } from '../../../panel/host';
import type { Place } from '../../../tracing/greyPicture';
import type { TableKind } from '../../../workbook/pasted/tableKinds';
import { AxesForm } from './axesForm';
import { SaveChart } from './chartFile';
import type { ChartPicture } from './chartPicture';
import { CurvesForm, type Tool } from './curvesForm';
import { cornerValue, frameOf, inputAxisOf, noCurve, typedNumber, type Draft } from './draft';
import { handedOver, handOverProblems } from './handOver';
import { axesOverlay, curvesOverlay } from './overlay';
import { PictureView } from './pictureView';
import { followFrom, pointMoved, pointRemoved, pointSet, type ChartWork, type Done } from './work';

export interface StageProps {
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

export function AxesStage({ kind, picture, draft, say, onDraft }: StageProps) {
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
          onSettle={() => onDraft(settled(draft))}
        />
      </div>
    </>
  );
}

/** Points at every small printed step, until another one is typed. */
function settled(draft: Draft): Draft {
  const axis = inputAxisOf(draft);
  return { ...draft, settled: true, step: draft.step === '' && axis !== undefined ? draft.axes[axis].minor : draft.step };
}

interface CurvesStageProps extends StageProps {
  readonly work: ChartWork;
  readonly onTake: (taken: TracedText) => void;
}

export function CurvesStage({ kind, picture, draft, say, onDraft, work, onTake }: CurvesStageProps) {
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
        <SaveChart picture={picture} draft={draft} />
      </div>
    </>
  );
}
