// The tasks with an aircraft as a whole. Each shows every value that it would write, and only then offers to.
import { useId, useState } from 'preact/hooks';
import { aircraftFile, aircraftInFile } from '../workbook/aircraft/aircraftFile';
import { manualTables } from '../workbook/aircraft/aircraftLists';
import { aircraftStanding, standingVerdict } from '../workbook/aircraft/aircraftStanding';
import { newAircraft, newEntries, type TypedEntries } from '../workbook/aircraft/newAircraft';
import { aircraftPutIn, aircraftRemoved, columnsOf, wholeAircraft, type WholeAircraft } from '../workbook/aircraft/wholeAircraft';
import { tableFile } from '../workbook/pasted/tableFile';
import { tableKinds } from '../workbook/pasted/tableKinds';
import type { WorkbookSnapshot } from '../workbook/snapshot';
import { ShownAircraft } from './aircraftRows';
import { AskButton } from './askButton';
import { ChoiceField, TextField } from './choiceField';
import { FileLink, type OwnFile } from './fileLink';
import { pageTemplates } from './pageTemplates';
import type { TaskProps } from './wholeSection';

const tablesOf = (workbook: WorkbookSnapshot) => manualTables(workbook, pageTemplates());

/** The sentence of a refusal; a fault is no refusal. */
function attempt<Result>(work: () => Result): { readonly result: Result } | { readonly refusal: string } {
  try {
    return { result: work() };
  } catch (thrown) {
    if (thrown instanceof Error && thrown.name === 'Error') return { refusal: thrown.message };
    throw thrown;
  }
}

const Problem = ({ text }: { readonly text: string }) => <p class="problem">{text}</p>;

export function StandingTask({ workbook, name }: TaskProps) {
  const parts = aircraftStanding(workbook, tablesOf(workbook), name);
  return (
    <>
      <p>
        <strong>{standingVerdict(parts)}</strong> for {String(name)} altogether, in the order in which it is put in:
      </p>
      <ul class="plain parts">
        {parts.map(({ title, verdict, said }) => (
          <li key={title}>
            <strong>{verdict}</strong> {title}: {said}.
          </li>
        ))}
      </ul>
    </>
  );
}

/** An aircraft that would go into blank rows, and the button. */
function PutIn({ aircraft, workbook, asking, write }: { readonly aircraft: WholeAircraft } & Pick<TaskProps, 'workbook' | 'asking' | 'write'>) {
  const from = (now: WorkbookSnapshot) => aircraftPutIn(now, tablesOf(now), aircraft);
  const tried = attempt(() => from(workbook));
  if ('refusal' in tried) return <Problem text={tried.refusal} />;
  return (
    <>
      <h3>Every value that will be written</h3>
      <ShownAircraft lists={aircraft.lists} heads={columnsOf(workbook, tablesOf(workbook))} />
      <p class="faint">Into blank rows. Loads of the day, such as seats and fuel on board, stay blank: the trip is UNKNOWN until they are typed.</p>
      <AskButton look="main" asking={asking} ask={() => write({ what: `${String(aircraft.name)} put in`, from })}>
        Put in {String(aircraft.name)}
      </AskButton>
    </>
  );
}

export function NewTask({ workbook, names, asking, write }: TaskProps) {
  const [name, setName] = useState('');
  const [copyOf, setCopyOf] = useState<string>();
  const [typed, setTyped] = useState<TypedEntries>({});
  const original = names.find((one) => String(one) === copyOf);
  const copied = original === undefined ? undefined : wholeAircraft(workbook, tablesOf(workbook), original).lists;
  const { aircraft, problems } = newAircraft(name, typed, copied);
  return (
    <>
      <TextField label="Name" value={name} onAnswer={setName} />
      <ChoiceField
        label="Begin as"
        value={copyOf}
        choices={[
          { value: 'new', label: 'an aircraft of its own' },
          ...names.map((one) => ({ value: String(one), label: `a copy of ${String(one)}` })),
        ]}
        onAnswer={setCopyOf}
      />
      {copyOf !== undefined &&
        copied === undefined &&
        newEntries.map(({ key, label, choices, needed }) => {
          const field = { label, value: typed[key], optional: !needed, onAnswer: (value: string) => setTyped({ ...typed, [key]: value }) };
          return choices === undefined ? (
            <TextField key={key} {...field} />
          ) : (
            <ChoiceField key={key} {...field} choices={choices.map((value) => ({ value, label: value }))} />
          );
        })}
      {problems.map((text) => (
        <Problem key={text} text={text} />
      ))}
      {copyOf !== undefined && aircraft !== undefined && <PutIn aircraft={aircraft} workbook={workbook} asking={asking} write={write} />}
    </>
  );
}

const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');

/** One file for each table that the aircraft has. */
function tableFiles({ name, lists }: WholeAircraft, heads: ReturnType<typeof columnsOf>): OwnFile[] {
  return tableKinds.flatMap((kind) => {
    const [rows = [], headings] = [lists[kind.list], heads.get(kind.list)];
    if (rows.length === 0 || headings === undefined) return [];
    return [{ name: `${plainName(String(name))}.${plainName(kind.title)}.csv`, type: 'text/csv', text: tableFile(kind, headings, rows) }];
  });
}

export function SaveTask({ workbook, name }: TaskProps) {
  const tables = tablesOf(workbook);
  const aircraft = wholeAircraft(workbook, tables, name);
  const heads = columnsOf(workbook, tables);
  const file = { name: `${plainName(String(name))}.aircraft.json`, type: 'application/json', text: aircraftFile(aircraft) };
  return (
    <>
      <FileLink file={file} label={`Save ${file.name}`} />
      {tableFiles(aircraft, heads).map((one) => (
        <p key={one.name}>
          <FileLink file={one} label={`Save ${one.name}`} />
        </p>
      ))}
      <p class="faint">A table as CSV goes to other programs, and comes back by "Put in a table".</p>
      <p class="faint">Loads of the day are left out, and so are dates, cards and flights of other sheets. This is what is in the file:</p>
      <ShownAircraft lists={aircraft.lists} heads={heads} />
    </>
  );
}

export function TakeTask({ workbook, asking, write }: TaskProps) {
  const id = useId();
  const [text, setText] = useState<string>();
  const [name, setName] = useState<string>();
  const tried = text === undefined ? undefined : attempt(() => aircraftInFile(text, columnsOf(workbook, tablesOf(workbook))));
  const inFile = tried !== undefined && 'result' in tried ? tried.result : undefined;
  const { aircraft, problems } =
    inFile === undefined ? { aircraft: undefined, problems: [] } : newAircraft(name ?? String(inFile.name), {}, inFile.lists);
  return (
    <>
      <div class="field">
        <label for={id}>A file that Rampwright saved of an aircraft</label>
        <input
          id={id}
          type="file"
          accept=".json,application/json"
          onChange={({ currentTarget }) => {
            setName(undefined);
            void currentTarget.files?.[0]?.text().then(setText);
          }}
        />
      </div>
      {tried !== undefined && 'refusal' in tried && <Problem text={tried.refusal} />}
      {inFile !== undefined && <TextField label="Its name here" value={name ?? String(inFile.name)} onAnswer={setName} />}
      {problems.map((one) => (
        <Problem key={one} text={one} />
      ))}
      {aircraft !== undefined && <PutIn aircraft={aircraft} workbook={workbook} asking={asking} write={write} />}
    </>
  );
}

export function RemoveTask({ workbook, name, asking, write }: TaskProps) {
  const tables = tablesOf(workbook);
  const tried = attempt(() => aircraftRemoved(workbook, tables, name));
  if ('refusal' in tried) return <Problem text={tried.refusal} />;
  const { rows } = tried.result;
  return (
    <>
      <h3>Every row that is emptied</h3>
      <div class="scroll rows" role="region" aria-label="Every row that is emptied" tabIndex={0}>
        <table class="grid">
          <tbody>
            {rows.map(({ title, sheet, row, contents }) => (
              <tr key={`${sheet} ${title} ${row}`}>
                <th scope="row">
                  {title}, row {row}
                </th>
                {contents
                  .filter((content) => content !== '')
                  .map((content, index) => (
                    <td key={index}>{typeof content === 'object' ? content.formula : String(content)}</td>
                  ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="faint">
        Loads and fuel of its rows go too. What the Data ledger and the Currency log hold of it stays: flights and cards are records.
      </p>
      <AskButton
        look="main"
        asking={asking}
        ask={() => write({ what: `${String(name)} removed, ${rows.length} rows`, from: (now) => aircraftRemoved(now, tablesOf(now), name).changes })}
      >
        Remove {String(name)}
      </AskButton>
    </>
  );
}
