// The pocket view: the sheet in sight as large, labelled entries and answers instead of a grid, for narrow windows and by choice. It lies
// over the grid, which goes on working below: same cells, same commands, same answers.
import { ICommandService, UndoCommand, type Injector } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import type { FUniver } from '@univerjs/core/facade';
import { render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Form } from '../../../form/form';
import { SheetForm } from '../../../form/sheetForm';
import { Verdict } from '../../../form/verdict';
import { localToday } from '../../../panel/localToday';
import { tripFigures, tripNames, type TripNames } from '../../../workbook/pocket/tripFigures';
import { markedSheets } from '../../saved/documentState';
import { valuesNamed } from '../cells';
import { markupOf } from '../drawnBox';
import { elementNamed } from '../elements';
import type { LiveWorkbook } from '../liveWorkbook';
import { notify, notifyFailure } from '../notices';
import { isUsersChange } from '../usersChange';
import { emptyCells, enter } from './enter';
import { pocketModel, type PocketModel } from './pocketModel';
import { narrow, showPocket, themes, useTheme, wantsPocket } from './viewChoice';

interface ViewProps {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly live: LiveWorkbook;
}

/** Counts what has changed in the cells, so that the view is drawn anew; and apart from that what has moved them. */
function useChanges({ api }: ViewProps): readonly [changed: number, moved: number] {
  const [counts, setCounts] = useState<readonly [number, number]>([0, 0]);
  useEffect(() => {
    let waiting = 0;
    let moved = false;
    const soon = (): void => {
      clearTimeout(waiting);
      waiting = window.setTimeout(() => {
        setCounts(([changed, before]) => [changed + 1, before + (moved ? 1 : 0)]);
        moved = false;
      }, 20);
    };
    const heard = [
      api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
        if (!isUsersChange(id, type, options)) return;
        if (id !== SetRangeValuesMutation.id) moved = true;
        soon();
      }),
      api.addEvent(api.Event.ActiveSheetChanged, () => {
        moved = true;
        soon();
      }),
      api.getFormula().calculationEnd(soon),
    ];
    return () => heard.forEach((one) => one.dispose());
  }, [api]);
  return counts;
}

/** What the page says of the saving, outside of this view. */
function useSaved(): string {
  const [text, setText] = useState(elementNamed('saved').textContent ?? '');
  useEffect(() => {
    const watching = new MutationObserver(() => setText(elementNamed('saved').textContent ?? ''));
    watching.observe(elementNamed('saved'), { childList: true, characterData: true, subtree: true });
    return () => watching.disconnect();
  }, []);
  return text;
}

function SheetChoice({ live: { workbook } }: ViewProps) {
  const sheets = workbook.getSheets().filter((sheet) => !sheet.isSheetHidden());
  return (
    <select
      aria-label="Sheet"
      value={workbook.getActiveSheet().getSheetId()}
      onChange={({ currentTarget }) => void workbook.setActiveSheet(currentTarget.value)}
    >
      {sheets.map((sheet) => (
        <option key={sheet.getSheetId()} value={sheet.getSheetId()}>
          {sheet.getSheetName()}
        </option>
      ))}
    </select>
  );
}

interface VerdictProps {
  readonly live: LiveWorkbook;
  readonly names: TripNames | undefined;
  readonly working: boolean;
}

function TripVerdict({ live: { workbook }, names, working }: VerdictProps) {
  if (names === undefined) return null;
  const figures = tripFigures(names, (name) => valuesNamed(workbook, name), localToday());
  return <Verdict figures={figures} sheet={names.sheet} working={working} caution={elementNamed('caution').textContent ?? ''} />;
}

function Top(props: ViewProps & VerdictProps) {
  const saved = useSaved();
  return (
    <header>
      <div class="bar">
        <SheetChoice {...props} />
        <button type="button" onClick={() => showPocket(false)}>
          Grid
        </button>
      </div>
      <TripVerdict {...props} />
      <p class={saved.startsWith('NOT SAVED') ? 'saving failed' : 'saving'}>{saved}</p>
    </header>
  );
}

function Drawings({ live: { workbook }, model }: ViewProps & { readonly model: PocketModel }) {
  const boxes = model.sheet.getAllFloatDoms();
  return (
    <>
      {boxes.map((box) => (
        <div key={box.id} class="drawing" dangerouslySetInnerHTML={{ __html: markupOf(workbook, box) }} />
      ))}
    </>
  );
}

function Foot({ injector }: ViewProps) {
  const [theme, setTheme] = useTheme();
  return (
    <div class="bar">
      <button type="button" onClick={() => void injector.get(ICommandService).executeCommand(UndoCommand.id)}>
        Undo
      </button>
      <select aria-label="Colours" value={theme} onChange={({ currentTarget }) => setTheme(currentTarget.value)}>
        {Object.entries(themes).map(([key, words]) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}

function Sheet(props: ViewProps & { readonly model: PocketModel | undefined; readonly edits: Pick<Form, 'submit' | 'empty'> }) {
  const { model, live, edits } = props;
  if (model === undefined) return <p>This sheet is not one of this version's own, so it is shown as a grid only: press "Grid" above.</p>;
  const form: Form = { ...model, ...edits, goTo: (id) => void live.workbook.setActiveSheet(id) };
  return (
    <main key={model.sheet.getSheetId()}>
      <SheetForm form={form} />
      <Drawings {...props} model={model} />
    </main>
  );
}

function Pocket(props: ViewProps) {
  const [, moved] = useChanges(props);
  const [[model, names], setFound] = useState<readonly [PocketModel | undefined, TripNames | undefined]>([undefined, undefined]);
  const [open, setOpen] = useState(0);
  const { workbook } = props.live;
  const editing = { injector: props.injector, workbook };
  const find = (): void =>
    setFound([pocketModel(editing, props.live), tripNames(markedSheets(workbook.save()), workbook.getActiveSheet().getSheetName())]);
  useEffect(find, [moved]);
  /** Until the answers are there, the verdict of before is not shown. */
  const work = (done: () => Promise<string | undefined> | undefined): void => {
    setOpen((count) => count + 1);
    notify('');
    Promise.resolve(done())
      .then((refused) => {
        if (refused !== undefined) notify(refused);
        return props.live.settled();
      })
      .catch(notifyFailure)
      .finally(() => setOpen((count) => count - 1));
  };
  // What the file says of the last time is no answer of today's.
  useEffect(() => work(() => undefined), []);
  const edits: Pick<Form, 'submit' | 'empty'> = {
    submit: (cell, text) => work(() => model && enter(editing, model.inGrid(cell), text)),
    empty: (cells) =>
      work(() => {
        if (model !== undefined) emptyCells(editing, cells.map(model.inGrid));
        return undefined;
      }),
  };
  return (
    <>
      <Top {...props} names={names} working={open > 0} />
      <Sheet {...props} model={model} edits={edits} />
      <Foot {...props} />
    </>
  );
}

export function offerPocket(api: FUniver, injector: Injector, live: LiveWorkbook): void {
  const place = elementNamed('pocket');
  place.classList.add('form');
  const follow = (wanted: boolean): void => {
    document.body.classList.toggle('pocket', wanted);
    elementNamed('grid').inert = wanted;
    render(wanted ? <Pocket api={api} injector={injector} live={live} /> : null, place);
  };
  elementNamed('pocket-button').addEventListener('click', () => showPocket(true));
  narrow.addEventListener('change', () => follow(wantsPocket()));
  window.addEventListener('rampwright-view', () => follow(wantsPocket()));
  // Before the page saves for the same reason: what is still being typed is entered.
  document.addEventListener('visibilitychange', () => document.hidden && (document.activeElement as HTMLElement | null)?.blur(), { capture: true });
  follow(wantsPocket());
}
