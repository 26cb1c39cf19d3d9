// What the two axes are, and the known points by which the picture is understood.
import type { TableKind } from '../../../workbook/pasted/tableKinds';
import {
  axisChoices,
  axisProblems,
  cornerValue,
  corners,
  frameOf,
  nameOf,
  oddHeadings,
  typedNumber,
  unitsOf,
  type AxisDraft,
  type Draft,
} from './draft';
import { Choice, Problems, Typed } from './fields';
import { frameSentence } from './words';

export interface AxesFormProps {
  readonly kind: TableKind;
  readonly draft: Draft;
  /** Which known point the next click is: 0 to 3 the corners, 4 one more. */
  readonly target: number;
  readonly further: { readonly across: string; readonly up: string };
  readonly onDraft: (draft: Draft) => void;
  readonly onTarget: (target: number) => void;
  readonly onFurther: (value: { readonly across: string; readonly up: string }) => void;
  readonly onSettle: () => void;
}

interface AxisFieldsProps extends Pick<AxesFormProps, 'kind'> {
  readonly which: 'across' | 'up';
  readonly axis: AxisDraft;
  readonly onAxis: (axis: AxisDraft) => void;
}

function AxisFields({ kind, which, axis, onAxis }: AxisFieldsProps) {
  const [first, last] = which === 'across' ? ['left', 'right'] : ['lower', 'upper'];
  const units = unitsOf(axis.role, kind);
  const withRole = (role: string): AxisDraft => ({ ...axis, role, unit: unitsOf(role, kind).includes(axis.unit) ? axis.unit : '' });
  return (
    <fieldset>
      <legend>{which === 'across' ? 'Across the page' : 'Up the page'}</legend>
      <div class="pair">
        <Choice label="What it is" value={axis.role} choices={axisChoices(kind)} onAnswer={(role) => onAxis(withRole(role))} />
        <Choice
          label="Unit"
          value={axis.unit}
          choices={units.map((unit) => ({ value: unit, label: unit }))}
          onAnswer={(unit) => onAxis({ ...axis, unit })}
        />
      </div>
      <div class="three">
        <Typed label={`At the ${first} end`} value={axis.start} onAnswer={(start) => onAxis({ ...axis, start })} />
        <Typed label={`At the ${last} end`} value={axis.end} onAnswer={(end) => onAxis({ ...axis, end })} />
        <Typed label="Smallest step" value={axis.minor} onAnswer={(minor) => onAxis({ ...axis, minor })} />
      </div>
    </fieldset>
  );
}

function worded(draft: Draft, index: number): string {
  const [value, ends] = [cornerValue(draft, index), corners[index]];
  const place = `${ends?.up === 'end' ? 'upper' : 'lower'} ${ends?.across === 'end' ? 'right' : 'left'}`;
  return value === undefined ? place : `${place}: ${value.across} ${draft.axes.across.unit}, ${value.up} ${draft.axes.up.unit}`;
}

function KnownPoints({ draft, target, further, onDraft, onTarget, onFurther }: AxesFormProps) {
  const ready = typedNumber(further.across) !== undefined && typedNumber(further.up) !== undefined;
  return (
    <fieldset>
      <legend>Known points</legend>
      <p>Click each in the picture, where the two printed lines cross. Make the picture larger for that.</p>
      {corners.map((_, index) => (
        <label key={index} class="choice">
          <input type="radio" name="known-point" checked={target === index} onChange={() => onTarget(index)} />
          {index + 1}: {worded(draft, index)}
          <em>{draft.corners[index] === undefined ? '' : ' clicked'}</em>
        </label>
      ))}
      {draft.further.map(({ value }, index) => (
        <p key={index} class="choices">
          {index + 5}: {value.across} {draft.axes.across.unit}, {value.up} {draft.axes.up.unit}
          <button type="button" onClick={() => onDraft({ ...draft, further: draft.further.filter((_, at) => at !== index) })}>
            Remove point {index + 5}
          </button>
        </p>
      ))}
      <label class="choice">
        <input type="radio" name="known-point" checked={target === 4} onChange={() => onTarget(4)} />
        One more, to check the others: best in the middle
      </label>
      {target === 4 && (
        <>
          <div class="pair">
            <Typed
              label={`Value across (${draft.axes.across.unit})`}
              value={further.across}
              onAnswer={(across) => onFurther({ ...further, across })}
            />
            <Typed label={`Value up (${draft.axes.up.unit})`} value={further.up} onAnswer={(up) => onFurther({ ...further, up })} />
          </div>
          <p>{ready ? 'Now click it in the picture.' : 'Type its two values first, then click it.'}</p>
        </>
      )}
    </fieldset>
  );
}

const headingWords = { right: 'to the right', left: 'to the left', up: 'upwards', down: 'downwards' } as const;

function Understood({ draft, onDraft, onSettle, kind }: AxesFormProps) {
  const open = axisProblems(draft, kind);
  const found = frameOf(draft);
  if ('problem' in found) return <Problems sentences={[...open, frameSentence(found.problem)]} />;
  const odd = oddHeadings(draft, found.frame.grows);
  const told = odd.map(
    ({ which, heading }) => `The ${nameOf(draft.axes[which].role) || `axis ${which}`} grows ${headingWords[heading]} in this picture.`,
  );
  const settled = open.length === 0 && (odd.length === 0 || draft.headingsSeen);
  return (
    <>
      <Problems sentences={[...open, ...told]} />
      {odd.length > 0 && (
        <label class="choice">
          <input
            type="checkbox"
            checked={draft.headingsSeen}
            onChange={({ currentTarget }) => onDraft({ ...draft, headingsSeen: currentTarget.checked })}
          />
          The picture lies so, and no points are confused
        </label>
      )}
      <p>
        The blue lines are the grid as it was understood. They must lie on the printed one everywhere, in the middle too.
        {draft.further.length === 0
          ? ' Four points cannot disagree: one more would check them.'
          : ` The points agree to ${found.frame.off.toFixed(1)} pixels.`}
      </p>
      <p class="choices">
        <button type="button" class="main" disabled={!settled} onClick={onSettle}>
          They lie on it: go on to the curves
        </button>
      </p>
    </>
  );
}

export function AxesForm(props: AxesFormProps) {
  const { kind, draft, onDraft } = props;
  const withAxis = (which: 'across' | 'up') => (axis: AxisDraft) => onDraft({ ...draft, axes: { ...draft.axes, [which]: axis } });
  return (
    <>
      <AxisFields kind={kind} which="across" axis={draft.axes.across} onAxis={withAxis('across')} />
      <AxisFields kind={kind} which="up" axis={draft.axes.up} onAxis={withAxis('up')} />
      <KnownPoints {...props} />
      <Understood {...props} />
    </>
  );
}
