// After the flight: its times are typed, the row for the log is shown, and written when the button below it is pressed.
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { flightRow, type Flown, type FlightRow } from '../workbook/afterFlight';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import type { PanelHost } from './host';
import { pageTemplates } from './pageTemplates';

const nothing: Flown = {
  ...{ offBlock: '', takeOff: '', landing: '', onBlock: '' },
  ...{ landings: '1', fullStops: '1', byNight: '', approaches: '', flownAs: 'in command', remark: '', fuelUsed: '' },
};
type Typed = Exclude<keyof Flown, 'flownAs'>;
const times: readonly (readonly [Typed, string])[] = [
  ['offBlock', 'off block, UTC'],
  ['takeOff', 'take-off'],
  ['landing', 'landing'],
  ['onBlock', 'on block'],
];
const counts: readonly (readonly [Typed, string])[] = [
  ['landings', 'landings'],
  ['fullStops', 'to a full stop'],
  ['byNight', 'by night (blank: by the Sun)'],
  ['approaches', 'approaches'],
  ['fuelUsed', 'fuel used in the air (blank: not kept)'],
];

interface FlightEntriesProps {
  readonly flown: Flown;
  readonly change: (part: Partial<Flown>) => void;
}

function FlightEntries({ flown, change }: FlightEntriesProps) {
  const field = ([key, label]: readonly [Typed, string]) => (
    <label class="entry" key={key}>
      <span>{label}</span>
      <input
        value={flown[key]}
        inputMode={key === 'remark' ? 'text' : 'numeric'}
        autocomplete="off"
        onInput={({ currentTarget }) => change({ [key]: currentTarget.value })}
      />
    </label>
  );
  return (
    <div class="entries">
      {[...times, ...counts].map(field)}
      <label class="entry">
        <span>flown</span>
        <select value={flown.flownAs} onChange={({ currentTarget }) => change({ flownAs: currentTarget.value as Flown['flownAs'] })}>
          <option>in command</option>
          <option>with instructor</option>
          <option>neither</option>
        </select>
      </label>
      {field(['remark', 'remark'])}
    </div>
  );
}

function ShownRow({ row, children }: { readonly row: FlightRow; readonly children: ComponentChildren }) {
  return (
    <section class="set">
      <h3>
        Row {row.row} of {row.sheet}
      </h3>
      <dl class="row-shown">
        {row.shown.map(([heading, text]) => (
          <div key={heading}>
            <dt>{heading}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p>{row.said}</p>
      {children}
    </section>
  );
}

export function FlightSection({ host, asking }: { readonly host: PanelHost; readonly asking: Asking }) {
  const [flown, setFlown] = useState(nothing);
  const [shown, setShown] = useState<FlightRow>();
  const change = (part: Partial<Flown>): void => {
    setShown(undefined);
    setFlown({ ...flown, ...part });
  };
  const worked = async (): Promise<FlightRow> => flightRow(await host.ask('readWorkbook', { sheets: 'all' }), pageTemplates(), flown);
  const look = async (): Promise<string> => {
    setShown(undefined);
    setShown(await worked());
    return 'Nothing is written yet. Read the row, then press the button below it.';
  };
  const write = async (seen: FlightRow): Promise<string> => {
    const now = await worked();
    if (JSON.stringify(now) !== JSON.stringify(seen)) {
      setShown(now);
      throw new Error('The sheets were changed since you looked. Read the row again, then press once more.');
    }
    await host.ask('writeEntries', { entries: now.entries });
    setShown(undefined);
    setFlown(nothing);
    return `The flight stands in row ${now.row} of "${now.sheet}".`;
  };
  return (
    <section>
      <h2>After the flight</h2>
      <p>Four times make the row of the log: hours, landings by day or by night. Day, aircraft and fields are those of the Trip sheet.</p>
      <FlightEntries flown={flown} change={change} />
      <AskButton look="wide" asking={asking} ask={() => asking.run('Reading the workbook.', look)}>
        Show the row
      </AskButton>
      {shown !== undefined && (
        <ShownRow row={shown}>
          <AskButton look="main" asking={asking} ask={() => asking.run('Writing.', () => write(shown))}>
            Write it into the log
          </AskButton>
        </ShownRow>
      )}
    </section>
  );
}
