// The button and the window in which a text is found in the lists, and a list is sorted. Nothing is hidden by it: a hidden row could be the one with NO.
import type { Injector } from '@univerjs/core';
import { useState } from 'preact/hooks';
import { a1FromRange } from '../engine/a1';
import { rowsWith, type FoundRow } from '../../workbook/foundText';
import { sortableLists, sortedList, type SortableList } from '../../workbook/sortedList';
import type { WorkbookSnapshot } from '../../workbook/snapshot';
import { changeCells } from './changeCells';
import { showDialog } from './dialog';
import { elementNamed } from './elements';
import { goTo } from './goTo';
import type { LiveWorkbook } from './liveWorkbook';
import { notify, notifyFailure } from './notices';

const mostShown = 200;

interface Props {
  readonly injector: Injector;
  readonly live: LiveWorkbook;
  readonly snapshot: WorkbookSnapshot;
  readonly close: () => void;
}

const cellWords = ({ row, column }: FoundRow): string =>
  a1FromRange({ startRow: row - 1, endRow: row - 1, startColumn: column - 1, endColumn: column - 1 });

function Find({ live, snapshot, close }: Props) {
  const [text, setText] = useState('');
  const [everywhere, setEverywhere] = useState(false);
  const sheets = everywhere ? snapshot.sheets : snapshot.sheets.filter(({ name }) => name === snapshot.selected.sheet);
  const found = rowsWith(sheets, text);
  const show = ({ sheet, row, column }: FoundRow): void => {
    close();
    void goTo(live, { sheet, row, column }).catch(notifyFailure);
  };
  return (
    <section>
      <p class="choices">
        <input aria-label="Text to find" placeholder="Text to find" value={text} onInput={({ currentTarget }) => setText(currentTarget.value)} />
        <label>
          <input type="checkbox" checked={everywhere} onChange={({ currentTarget }) => setEverywhere(currentTarget.checked)} /> on every sheet
        </label>
        <span role="status">{text.trim() === '' ? '' : `${found.length} ${found.length === 1 ? 'row' : 'rows'}`}</span>
      </p>
      <ul class="found-rows">
        {found.slice(0, mostShown).map((one) => (
          <li key={`${one.sheet} ${one.row}`}>
            <button type="button" onClick={() => show(one)}>
              {everywhere ? `${one.sheet} ${cellWords(one)}` : cellWords(one)}
            </button>{' '}
            {one.words}
          </li>
        ))}
      </ul>
      {found.length > mostShown && <p>The first {mostShown} are shown. Type more of the text.</p>}
    </section>
  );
}

async function sort({ injector, live, close }: Props, sortable: SortableList, place: number, direction: 'up' | 'down'): Promise<void> {
  const { changes, rows } = sortedList(sortable, place, direction);
  const heading = sortable.columns.find((one) => one.place === place)?.heading ?? '';
  close();
  if (changes.length === 0) return notify(`The list "${sortable.name}" is sorted by "${heading}" so already.`);
  await changeCells(injector, live, { changes });
  notify(
    `The list "${sortable.name}" is sorted by "${heading}": ${rows} rows, in one step that Ctrl+Z takes back. Notes and looks of single cells stay where they were.`,
  );
}

function Sort(props: Props & { readonly sortable: SortableList }) {
  const { sortable } = props;
  const [place, setPlace] = useState(sortable.columns[0]?.place ?? 0);
  const [said, say] = useState('');
  const press = (direction: 'up' | 'down') => (): void =>
    void sort(props, sortable, place, direction).catch((thrown: unknown) => say(thrown instanceof Error ? thrown.message : String(thrown)));
  return (
    <p class="choices">
      <label>
        Sort the list "{sortable.name}" by{' '}
        <select value={String(place)} onChange={({ currentTarget }) => setPlace(Number(currentTarget.value))}>
          {sortable.columns.map((one) => (
            <option key={one.place} value={String(one.place)}>
              {one.heading}
            </option>
          ))}
        </select>
      </label>
      <button type="button" onClick={press('up')}>
        A to Z, oldest first
      </button>
      <button type="button" onClick={press('down')}>
        Z to A, newest first
      </button>
      <span role="status">{said}</span>
    </p>
  );
}

const noList =
  'No list of this sheet can be sorted here: in its lists the order of the rows counts, or its hidden keys are gone. Flights, payments and licences can be.';

function FindAndSort(props: Props) {
  const sheet = props.snapshot.sheets.find(({ name }) => name === props.snapshot.selected.sheet);
  const lists = sheet === undefined ? [] : sortableLists(sheet);
  return (
    <>
      <h1>Find and sort</h1>
      <Find {...props} />
      {lists.length === 0 ? <p>{noList}</p> : lists.map((one) => <Sort key={one.name} {...props} sortable={one} />)}
      <p class="choices">
        <button type="button" onClick={props.close}>
          Close
        </button>
      </p>
    </>
  );
}

async function show(injector: Injector, live: LiveWorkbook): Promise<void> {
  await live.settled();
  const snapshot = live.snapshot('all');
  showDialog('Find and sort', (close) => <FindAndSort injector={injector} live={live} snapshot={snapshot} close={close} />);
}

export const offerFindAndSort = (injector: Injector, live: LiveWorkbook): void =>
  elementNamed('find-button').addEventListener('click', () => void show(injector, live).catch(notifyFailure));
