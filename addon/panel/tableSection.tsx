// "Put in a table": the aircraft and the table, the pasted text, what is open of it, and once nothing is, the table and its writing.
import { useId, useRef, useState } from 'preact/hooks';
import { aircraftNames, manualTables } from '../workbook/aircraft/aircraftLists';
import type { TablePlan } from '../workbook/aircraft/tablePlan';
import { cellsIn, type RowsMoved } from '../workbook/cellChanges';
import { keysIn } from '../workbook/keys';
import { answerTo } from '../workbook/pasted/tableQuestions';
import { tableKinds } from '../workbook/pasted/tableKinds';
import type { Split } from '../workbook/pasted/tableShape';
import type { CellValue, SheetSnapshot } from '../workbook/snapshot';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import { ChoiceField, TextField } from './choiceField';
import type { PanelHost } from './host';
import { pageTemplates } from './pageTemplates';
import { PastedGrid } from './pastedGrid';
import { PasteQuestions } from './pasteQuestions';
import { tableLook, type TableLook, type TablePasted } from './tableLook';
import { TableFileField } from './tableFileField';
import { TableShown } from './tableShown';
import { TakeBack, type LastChange } from './takeBack';

const nothingYet = { text: '', paste: {}, split: undefined, answers: {}, existing: undefined } as const;

interface FormProps {
  readonly names: readonly CellValue[];
  readonly given: TablePasted;
  readonly look: TableLook;
  readonly onGiven: (given: TablePasted) => void;
  /** Undefined where the host cannot. */
  readonly trace: (() => void) | undefined;
  readonly asking: Asking;
}

const splitText = ({ side, figures }: Split): string => `${side}-${figures}`;

/** What is open of the table, and what was understood. */
function TableQuestions({ given, look: { found, understood, existing }, onGiven }: Pick<FormProps, 'given' | 'look' | 'onGiven'>) {
  return (
    <>
      {found.splits.length > 1 && (
        <ChoiceField
          label="How the columns stand"
          value={given.split && splitText(given.split)}
          choices={found.splits.map((split) => ({
            value: splitText(split),
            label: `${split.side} at the side, ${split.figures === 1 ? '1 figure' : `${split.figures} figures`} for each value across`,
          }))}
          onAnswer={(text) => onGiven({ ...given, answers: {}, split: found.splits.find((split) => splitText(split) === text) })}
        />
      )}
      {understood?.questions.map((question) => {
        const field = {
          label: question.label,
          value: answerTo(question, given.answers),
          understood: given.answers[question.id] === undefined,
          optional: question.optional ?? false,
          onAnswer: (answer: string) => onGiven({ ...given, answers: { ...given.answers, [question.id]: answer } }),
        };
        return question.choices === undefined ? (
          <TextField key={question.id} {...field} />
        ) : (
          <ChoiceField key={question.id} choices={question.choices} {...field} />
        );
      })}
      {understood !== undefined && existing > 0 && (
        <ChoiceField
          label={`${String(given.aircraft)} has ${existing} rows there`}
          value={given.existing}
          choices={[
            { value: 'replace', label: 'replace them' },
            { value: 'keep', label: 'keep them, and add these below' },
          ]}
          onAnswer={(answer) => onGiven({ ...given, existing: answer as 'keep' })}
        />
      )}
      {[...found.problems, ...(understood?.problems ?? [])].map((sentence) => (
        <p key={sentence} class="problem">
          {sentence}
        </p>
      ))}
    </>
  );
}

function TableForm({ names, given, look, onGiven, trace, asking }: FormProps) {
  const id = useId();
  const { pasted, found } = look;
  return (
    <>
      <ChoiceField
        label="Aircraft"
        value={String(given.aircraft)}
        choices={names.map((name) => ({ value: String(name), label: String(name) }))}
        onAnswer={(name) => onGiven({ ...given, existing: undefined, aircraft: names.find((one) => String(one) === name) ?? name })}
      />
      <ChoiceField
        label="Table"
        value={given.kind.list}
        choices={tableKinds.map(({ list, title }) => ({ value: list, label: title }))}
        onAnswer={(list) => onGiven({ ...given, answers: {}, existing: undefined, kind: tableKinds.find((one) => one.list === list) ?? given.kind })}
      />
      {trace !== undefined && (
        <div class="field">
          <AskButton look="wide" asking={asking} ask={trace}>
            Trace a chart in a picture
          </AskButton>
        </div>
      )}
      <div class="field">
        <label for={id}>The table, pasted as it was copied: a block, a list, lines of a document</label>
        <textarea
          id={id}
          rows={7}
          wrap="off"
          spellcheck={false}
          value={given.text}
          onInput={({ currentTarget }) => onGiven({ ...given, ...nothingYet, text: currentTarget.value })}
        />
      </div>
      <TableFileField onText={(text) => onGiven({ ...given, ...nothingYet, text })} />
      {given.text.trim() !== '' && (
        <>
          <h3>The text as it was read</h3>
          <PastedGrid rows={pasted.rows} />
          <PasteQuestions
            text={given.text}
            pasted={pasted}
            readBy={look.readBy}
            answers={given.paste}
            onAnswers={(paste) => onGiven({ ...given, paste })}
          />
          {found.leftOut.length > 0 && <p class="faint">Not used: {found.leftOut.map((line) => `"${line}"`).join(', ')}.</p>}
          {(found.splits.length > 1 || found.problems.length > 0 || look.understood !== undefined) && <h3>What it is</h3>}
          <TableQuestions given={given} look={look} onGiven={onGiven} />
        </>
      )}
    </>
  );
}

/** Where the rows that were put in stand, with the keys as they are now: by them an undo knows that nothing was moved since. */
function rowsSince(sheet: SheetSnapshot, { rowsIn }: TablePlan): RowsMoved | undefined {
  const keys = keysIn(sheet)?.cell;
  return rowsIn === undefined || keys === undefined ? undefined : { ...rowsIn, keys };
}

interface TableState {
  readonly sheet: SheetSnapshot | undefined;
  readonly given: TablePasted | undefined;
  readonly last: LastChange | undefined;
  readonly setGiven: (given: TablePasted) => void;
  readonly begin: () => Promise<string>;
  readonly trace: (what: TablePasted) => Promise<string>;
  readonly write: (shown: TableLook, what: TablePasted) => Promise<string>;
  readonly takenBack: () => Promise<void>;
}

/** `moveOn` puts the keyboard where it goes on once a button is gone. */
function useTable(host: PanelHost, moveOn: () => void): TableState {
  const [sheet, setSheet] = useState<SheetSnapshot>();
  const [given, setGiven] = useState<TablePasted>();
  const [last, setLast] = useState<LastChange>();
  const read = async (): Promise<SheetSnapshot> => manualTables(await host.ask('readWorkbook', { sheets: 'all' }), pageTemplates());
  const begin = async (): Promise<string> => {
    const now = await read();
    const [aircraft] = aircraftNames(now);
    const [kind] = tableKinds;
    if (aircraft === undefined || kind === undefined) throw new Error(`The aircraft list of "${now.name}" is empty. Put the aircraft in first.`);
    setSheet(now);
    setGiven((before) => before ?? { ...nothingYet, aircraft, kind });
    return `"${now.name}" is read. Choose the aircraft and the table, then paste.`;
  };
  const trace = async (what: TablePasted): Promise<string> => {
    const traced = await host.traceChart?.(what.kind.list);
    if (traced === undefined) return 'No chart was taken over. What you traced is kept until this page is closed.';
    setGiven({ ...what, ...nothingYet, ...traced });
    return 'The points of the chart stand below as a list. Answer what is open, and compare every curve once more.';
  };
  const write = async (shown: TableLook, what: TablePasted): Promise<string> => {
    const now = await read();
    const { plan } = tableLook(now, what);
    setSheet(now);
    if (plan === undefined || JSON.stringify(plan) !== JSON.stringify(shown.plan))
      throw new Error('The sheet was changed since you looked. Read again what would be written, then press once more.');
    await host.ask('changeCells', { changes: plan.changes, ...(plan.rowsIn && { rowsIn: plan.rowsIn }) });
    const said = `${what.kind.title} of ${String(what.aircraft)}, ${plan.rows} rows`;
    setGiven({ ...what, ...nothingYet });
    const after = await read();
    setSheet(after);
    setLast({ what: said, changes: plan.changes, rowsIn: rowsSince(after, plan) });
    moveOn();
    const verdict = plan.verdict === 'OK' ? 'Compare it once more with the manual.' : `${plan.verdict}: ${plan.reasons}.`;
    return `Written: ${said}, in ${plan.place} (${cellsIn(plan.changes)} cells changed). ${verdict}`;
  };
  const takenBack = async (): Promise<void> => {
    setLast(undefined);
    moveOn();
    setSheet(await read());
  };
  return { sheet, given, last, setGiven, begin, trace, write, takenBack };
}

interface ShownProps {
  readonly look: TableLook;
  readonly asking: Asking;
  readonly write: () => Promise<string>;
}

function Planned({ look: { plan, problem }, asking, write }: ShownProps) {
  if (problem !== undefined) return <p class="problem">{problem}</p>;
  if (plan === undefined) return null;
  return (
    <>
      <TableShown plan={plan} />
      {plan.verdict === 'NO' ? (
        <p class="problem">A table that cannot be read is not written.</p>
      ) : (
        <AskButton look="main" asking={asking} ask={() => asking.run('Writing.', write)}>
          Write into Manual tables
        </AskButton>
      )}
    </>
  );
}

export function TableSection({ host, asking }: { readonly host: PanelHost; readonly asking: Asking }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const { sheet, given, last, setGiven, begin, trace, write, takenBack } = useTable(host, () => heading.current?.focus());
  const look = sheet === undefined || given === undefined ? undefined : tableLook(sheet, given);
  return (
    <section>
      <h2 tabIndex={-1} ref={heading}>
        Put in a table
      </h2>
      <p>Copy a table out of the manual and paste it here. You see every number, and what it is taken for, before anything is written.</p>
      {last !== undefined && <TakeBack host={host} asking={asking} last={last} onDone={takenBack} />}
      {sheet === undefined || given === undefined || look === undefined ? (
        <AskButton look="main" asking={asking} ask={() => asking.run('Reading the workbook.', begin)}>
          Begin
        </AskButton>
      ) : (
        <>
          <TableForm
            names={aircraftNames(sheet)}
            given={given}
            look={look}
            onGiven={setGiven}
            trace={host.traceChart && (() => asking.run('Tracing a chart, in a window over the page.', () => trace(given)))}
            asking={asking}
          />
          <Planned look={look} asking={asking} write={() => write(look, given)} />
        </>
      )}
    </section>
  );
}
