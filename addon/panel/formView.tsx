// A sheet of the workbook as a form in the panel, the trip first of all: the verdict with its reasons on top, then large labelled entries and answers
// in sections, for people who dislike grids.
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Form } from '../form/form';
import { SheetForm } from '../form/sheetForm';
import { Verdict } from '../form/verdict';
import { snapshotForm } from '../workbook/pocket/snapshotForm';
import { tripFigures, tripNames } from '../workbook/pocket/tripFigures';
import { placeOf, valuesIn } from '../workbook/readPlace';
import type { SheetSnapshot, WorkbookSnapshot } from '../workbook/snapshot';
import type { PanelHost } from './host';
import { localToday } from './localToday';
import { OutcomeLine } from './outcomeLine';
import { pageTemplates } from './pageTemplates';
import { useSheetForm, type SheetRead } from './useSheetForm';

const marked = ({ sheets }: WorkbookSnapshot) => sheets.flatMap(({ name, mark }) => (mark === undefined ? [] : [{ name, mark }]));

/** The sheet that was chosen, else the one in sight, else the trip; of those that are ours. */
function sheetFor(workbook: WorkbookSnapshot, chosen: string | undefined): SheetSnapshot | undefined {
  const ours = workbook.sheets.filter(({ mark }) => mark !== undefined);
  const named = (name: string | undefined) => ours.find((one) => one.name === name);
  return named(chosen) ?? named(workbook.selected.sheet) ?? ours.find(({ mark }) => mark?.key === 'trip') ?? ours[0];
}

interface TopProps {
  readonly read: SheetRead;
  readonly sheet: string;
  readonly isWorking: boolean;
}

function TripVerdict({ read: { workbook, at, isAnswered }, sheet, isWorking }: TopProps) {
  const names = tripNames(marked(workbook), sheet);
  if (names === undefined) return null;
  if (!isAnswered && !isWorking) return <p>The verdict is not known: the workbook could not be read. Press "Read again" below.</p>;
  const valuesNamed = (name: string) => {
    const place = placeOf(workbook, sheet, name);
    return place === undefined ? [] : valuesIn(place);
  };
  const caution = `As the workbook was at ${at}.`;
  return <Verdict figures={tripFigures(names, valuesNamed, localToday())} sheet={names.sheet} working={isWorking} caution={caution} />;
}

/** The tabs stay in sight above, however many rows they take. */
function useTabsHeight() {
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    const measure = (): void => {
      const tabs = document.querySelector<HTMLElement>('[role=tablist]');
      place.current?.style.setProperty('--tabs', `${tabs?.offsetHeight ?? 0}px`);
    };
    measure();
    window.addEventListener('resize', measure);
    return () => window.removeEventListener('resize', measure);
  }, []);
  return place;
}

type Sheets = ReturnType<typeof useSheetForm>;

function SheetShown({ sheets, sheet, choose }: { readonly sheets: Sheets; readonly sheet: SheetSnapshot; readonly choose: (name: string) => void }) {
  const { read, isWorking, submit, empty } = sheets;
  if (read === undefined) return null;
  const cells = snapshotForm(read.workbook, pageTemplates(), sheet);
  const form: Form | undefined = cells && {
    ...cells,
    submit: (cell, text) => submit(sheet.name, cell, text),
    empty: (places) => empty(sheet.name, places),
    goTo: choose,
  };
  return (
    <>
      <div class="on-top">
        <select class="sheet-choice" aria-label="Sheet" value={sheet.name} onChange={({ currentTarget }) => choose(currentTarget.value)}>
          {marked(read.workbook).map(({ name }) => (
            <option key={name}>{name}</option>
          ))}
        </select>
        <TripVerdict read={read} sheet={sheet.name} isWorking={isWorking} />
      </div>
      {form === undefined ? (
        <p>
          Where the entries of "{sheet.name}" stand cannot be told: it is of another version, or its hidden keys are gone. Bring it up to date, or
          type into the sheet itself.
        </p>
      ) : (
        <div key={sheet.name} aria-busy={isWorking}>
          <SheetForm form={form} />
        </div>
      )}
    </>
  );
}

export function FormView({ host, back }: { readonly host: PanelHost; readonly back: () => void }) {
  const sheets = useSheetForm(host);
  const [chosen, choose] = useState<string>();
  const place = useTabsHeight();
  const heading = useRef<HTMLHeadingElement>(null);
  // The sections are gone, so the keyboard and the screen reader start at the head of this page.
  useEffect(() => heading.current?.focus(), []);
  const { read, outcome, isWorking, readAgain, undo } = sheets;
  const sheet = read && sheetFor(read.workbook, chosen);
  // A sheet that comes into sight later does not change the form under somebody's hands.
  useEffect(() => choose(sheet?.name), [sheet?.name]);
  return (
    <article class="form" ref={place}>
      <button type="button" class="back" onClick={back}>
        Back to the sheets
      </button>
      <h2 tabIndex={-1} ref={heading}>
        {sheet?.name ?? 'The trip'} as a form
      </h2>
      {read !== undefined && sheet === undefined && <p>There is no sheet of ours in this workbook yet. Go back, and insert the sheets first.</p>}
      {sheet !== undefined && <SheetShown sheets={sheets} sheet={sheet} choose={choose} />}
      {undo !== undefined && (
        <button type="button" class="wide" onClick={undo}>
          Undo the last entry
        </button>
      )}
      <button type="button" class="wide" aria-disabled={isWorking} onClick={readAgain}>
        Read again
      </button>
      <OutcomeLine outcome={outcome ?? (isWorking ? { kind: 'waiting', text: 'Reading the workbook, until its answers are there.' } : undefined)} />
    </article>
  );
}
