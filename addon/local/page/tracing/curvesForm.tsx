// The curves: what they are, which one clicks belong to, its points as numbers, and what is still open.
import type { Reading } from '../../../tracing/readings';
import type { TableKind } from '../../../workbook/pasted/tableKinds';
import { inputChoices, nameOf, noCurve, unitsOf, type Draft } from './draft';
import { Choice, Problems, Typed } from './fields';
import { pointRemoved, type ChartWork } from './work';

export type Tool = 'follow' | 'points';

export interface CurvesFormProps {
  readonly kind: TableKind;
  readonly draft: Draft;
  readonly work: ChartWork;
  readonly tool: Tool;
  readonly withGrid: boolean;
  readonly problems: readonly string[];
  readonly onDraft: (draft: Draft) => void;
  readonly onTool: (tool: Tool) => void;
  readonly onGrid: (shown: boolean) => void;
  readonly onAxes: () => void;
  readonly onTake: () => void;
}

const howWords: Readonly<Record<Reading['how'], string>> = { seen: '', gap: 'not seen here', hand: 'by hand' };

function CurveKind({ kind, draft, work, onDraft }: CurvesFormProps) {
  const isCurve = draft.curveRole !== '';
  const units = unitsOf(draft.curveRole, kind).map((unit) => ({ value: unit, label: unit }));
  const step = `A point at every (${draft.axes[work.axis].unit})`;
  return (
    <fieldset>
      <legend>The curves</legend>
      <div class="pair">
        <Choice
          label="Each curve is one"
          value={draft.curveRole}
          choices={[{ value: '', label: 'there is one curve alone' }, ...inputChoices]}
          onAnswer={(curveRole) =>
            onDraft({ ...draft, curveRole, curveUnit: unitsOf(curveRole, kind).find((unit) => unit === draft.curveUnit) ?? '' })
          }
        />
        {isCurve && (
          <Choice label="Unit of the curves" value={draft.curveUnit} choices={units} onAnswer={(curveUnit) => onDraft({ ...draft, curveUnit })} />
        )}
      </div>
      <Typed label={step} value={draft.step} onAnswer={(typed) => onDraft({ ...draft, step: typed })} />
    </fieldset>
  );
}

function CurveChoice({ draft, tool, onDraft, onTool }: CurvesFormProps) {
  const current = draft.curves[draft.current] ?? noCurve;
  const isCurve = draft.curveRole !== '';
  const withValue = (value: string): Draft => ({ ...draft, curves: draft.curves.map((one, at) => (at === draft.current ? { ...one, value } : one)) });
  const removed = (): Draft => {
    const curves = draft.curves.filter((_, at) => at !== draft.current);
    return { ...draft, curves: curves.length === 0 ? [noCurve] : curves, current: 0 };
  };
  return (
    <fieldset>
      <legend>Clicks belong to</legend>
      <div class="pair">
        <Choice
          label="Curve"
          value={String(draft.current)}
          choices={draft.curves.map(({ value, readings }, at) => ({
            value: String(at),
            label: `${value === '' ? `curve ${at + 1}` : value}: ${readings.length} points`,
          }))}
          onAnswer={(at) => onDraft({ ...draft, current: Number(at) })}
        />
        {isCurve && (
          <Typed
            label={`Its ${nameOf(draft.curveRole)} (${draft.curveUnit})`}
            value={current.value}
            onAnswer={(value) => onDraft(withValue(value))}
          />
        )}
      </div>
      <p class="choices">
        {isCurve && (
          <button type="button" onClick={() => onDraft({ ...draft, curves: [...draft.curves, noCurve], current: draft.curves.length })}>
            Next curve
          </button>
        )}
        <button type="button" onClick={() => onDraft(removed())}>
          Remove this curve
        </button>
      </p>
      <label class="choice">
        <input type="radio" name="tool" checked={tool === 'follow'} onChange={() => onTool('follow')} />A click follows the dark line both ways
      </label>
      <label class="choice">
        <input type="radio" name="tool" checked={tool === 'points'} onChange={() => onTool('points')} />A click sets one point
      </label>
    </fieldset>
  );
}

/** In the order of the inputs, each with its place in the draft. */
const inOrder = (readings: readonly Reading[]) =>
  readings.map((reading, index) => ({ reading, index })).sort((one, other) => one.reading.input - other.reading.input);

function Points({ draft, work, onDraft }: CurvesFormProps) {
  const readings = draft.curves[draft.current]?.readings ?? [];
  const [own, other] = work.axis === 'across' ? [draft.axes.across, draft.axes.up] : [draft.axes.up, draft.axes.across];
  if (readings.length === 0)
    return <p>Click on the curve in the picture. Its points stand here then; each can be dragged in the picture, or removed.</p>;
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">
            {nameOf(own.role)}, {own.unit}
          </th>
          <th scope="col">
            {nameOf(other.role)}, {other.unit}
          </th>
          <th scope="col">how</th>
          <th scope="col">
            <span class="unseen">remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {inOrder(readings).map(({ reading, index }) => (
          <tr key={index}>
            <td>{reading.input}</td>
            <td>{reading.figure}</td>
            <td>{howWords[reading.how]}</td>
            <td>
              <button type="button" aria-label={`Remove the point at ${reading.input}`} onClick={() => onDraft(pointRemoved(draft, index))}>
                Remove
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function CurvesForm(props: CurvesFormProps) {
  const { withGrid, problems, onGrid, onAxes, onTake } = props;
  return (
    <>
      <CurveKind {...props} />
      <CurveChoice {...props} />
      <Points {...props} />
      <label class="choice">
        <input type="checkbox" checked={withGrid} onChange={({ currentTarget }) => onGrid(currentTarget.checked)} />
        Show the grid as it was understood
      </label>
      <Problems sentences={problems} />
      <p class="choices">
        <button type="button" class="main" disabled={problems.length > 0} onClick={onTake}>
          Take the points into the table's text
        </button>
        <button type="button" onClick={onAxes}>
          Change the axes: takes the curves away
        </button>
      </p>
      <p>Nothing is written by that. In the panel you see every row, answer what is open, and write it with an undo.</p>
    </>
  );
}
