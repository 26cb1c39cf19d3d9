// An aircraft as a whole: what it has and lacks, a new one, one saved to a file or taken from one, one removed. Every value is shown first.
import { useRef, useState } from 'preact/hooks';
import { aircraftNames, manualTables } from '../workbook/aircraft/aircraftLists';
import type { CellsChanged } from '../workbook/cellChanges';
import type { CellValue, WorkbookSnapshot } from '../workbook/snapshot';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import { ChoiceField } from './choiceField';
import type { PanelHost } from './host';
import { pageTemplates } from './pageTemplates';
import { TakeBack, type LastChange } from './takeBack';
import { NewTask, RemoveTask, SaveTask, StandingTask, TakeTask } from './wholeTasks';

const tasks = [
  { value: 'standing', label: 'See what it has and what is missing', task: StandingTask, ofOne: true },
  { value: 'new', label: 'New aircraft', task: NewTask, ofOne: false },
  { value: 'save', label: 'Save an aircraft to a file', task: SaveTask, ofOne: true },
  { value: 'take', label: 'Take one from a file', task: TakeTask, ofOne: false },
  { value: 'remove', label: 'Remove an aircraft', task: RemoveTask, ofOne: true },
] as const;

/** What a task wants written: worked out again from the workbook as it is when the button is pressed. */
export interface Wanted {
  readonly what: string;
  readonly from: (workbook: WorkbookSnapshot) => readonly CellsChanged[];
}

export interface TaskProps {
  readonly workbook: WorkbookSnapshot;
  readonly name: CellValue;
  readonly names: readonly CellValue[];
  readonly asking: Asking;
  readonly write: (wanted: Wanted) => void;
}

interface WholeState {
  readonly workbook: WorkbookSnapshot | undefined;
  readonly last: LastChange | undefined;
  readonly read: () => Promise<WorkbookSnapshot>;
  readonly write: (shown: WorkbookSnapshot, wanted: Wanted) => Promise<string>;
  readonly takenBack: () => Promise<void>;
}

/** `moveOn` puts the keyboard where it goes on once a button is gone. */
function useWhole(host: PanelHost, moveOn: () => void): WholeState {
  const [workbook, setWorkbook] = useState<WorkbookSnapshot>();
  const [last, setLast] = useState<LastChange>();
  const read = async (): Promise<WorkbookSnapshot> => {
    const now = await host.ask('readWorkbook', { sheets: 'all' });
    manualTables(now, pageTemplates());
    setWorkbook(now);
    return now;
  };
  const write = async (shown: WorkbookSnapshot, { what, from }: Wanted): Promise<string> => {
    const changes = from(await read());
    if (JSON.stringify(changes) !== JSON.stringify(from(shown)))
      throw new Error('The sheets were changed since you looked. Read again what would be written, then press once more.');
    await host.ask('changeCells', { changes });
    setLast({ what, changes });
    await read();
    moveOn();
    return `Done: ${what}.`;
  };
  const takenBack = async (): Promise<void> => {
    setLast(undefined);
    moveOn();
    await read();
  };
  return { workbook, last, read, write, takenBack };
}

interface TasksProps {
  readonly workbook: WorkbookSnapshot;
  readonly asking: Asking;
  readonly write: (wanted: Wanted) => void;
}

function Tasks({ workbook, asking, write }: TasksProps) {
  const [chosen, setChosen] = useState<CellValue>();
  const [task, setTask] = useState<string>('standing');
  const names = aircraftNames(manualTables(workbook, pageTemplates()));
  const name = names.find((one) => one === chosen) ?? names[0];
  const { task: Task, ofOne } = tasks.find(({ value }) => value === task) ?? tasks[0];
  return (
    <>
      <h3>What is to be done</h3>
      <ChoiceField label="Task" value={task} choices={tasks} onAnswer={setTask} />
      {ofOne && (
        <ChoiceField
          label="Which aircraft"
          value={name === undefined ? undefined : String(name)}
          choices={names.map((one) => ({ value: String(one), label: String(one) }))}
          onAnswer={(text) => setChosen(names.find((one) => String(one) === text))}
        />
      )}
      {(name !== undefined || !ofOne) && (
        <Task key={`${task} ${String(ofOne ? name : '')}`} workbook={workbook} name={name ?? ''} names={names} asking={asking} write={write} />
      )}
    </>
  );
}

export function WholeSection({ host, asking }: { readonly host: PanelHost; readonly asking: Asking }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const { workbook, last, read, write, takenBack } = useWhole(host, () => heading.current?.focus());
  return (
    <section>
      <h2 tabIndex={-1} ref={heading}>
        An aircraft as a whole
      </h2>
      <p>Units, limits, stations, tanks, envelope, tables and corrections of one aircraft together. Every value is shown before it is written.</p>
      {last !== undefined && <TakeBack host={host} asking={asking} last={last} onDone={takenBack} />}
      <AskButton
        look={workbook === undefined ? 'main' : 'wide'}
        asking={asking}
        ask={() => asking.run('Reading the workbook.', async () => `${(await read()).sheets.length} sheets are read.`)}
      >
        {workbook === undefined ? 'Look at the aircraft' : 'Look again'}
      </AskButton>
      {workbook !== undefined && (
        <Tasks workbook={workbook} asking={asking} write={(wanted) => asking.run('Writing.', () => write(workbook, wanted))} />
      )}
    </section>
  );
}
