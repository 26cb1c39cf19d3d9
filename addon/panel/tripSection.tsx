// A new trip, or the next leg: what would be emptied is said first, and done when the button is pressed again.
import { useState } from 'preact/hooks';
import { newTrip, nextLeg, type TripChange } from '../workbook/newTrip';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import { FlightAdding } from './flightAdding';
import type { PanelHost } from './host';
import { localToday } from './localToday';
import { pageTemplates } from './pageTemplates';

const changes = { 'New trip': newTrip, 'Next leg': nextLeg } as const;
type Kind = keyof typeof changes;

export function TripSection({ host, asking }: { readonly host: PanelHost; readonly asking: Asking }) {
  const [asked, setAsked] = useState<{ readonly kind: Kind; readonly change: TripChange }>();
  const [keeps, setKeeps] = useState(false);
  const worked = async (kind: Kind): Promise<TripChange> => changes[kind](await host.ask('readWorkbook', { sheets: 'all' }), pageTemplates());
  const look = async (kind: Kind): Promise<string> => {
    setAsked(undefined);
    setAsked({ kind, change: await worked(kind) });
    return 'Nothing is changed yet. Read what would be, then press the button below it.';
  };
  const change = async (kind: Kind, shown: TripChange): Promise<string> => {
    const now = await worked(kind);
    if (JSON.stringify(now) !== JSON.stringify(shown)) {
      setAsked({ kind, change: now });
      throw new Error('The sheets were changed since you looked. Read again what would be emptied, then press once more.');
    }
    const copyFirst = { sheet: now.sheet, suffix: ` ${now.day ?? localToday()}` };
    const { cells, copy } = await host.ask('writeEntries', { entries: now.entries, ...(keeps && { copyFirst }) });
    setAsked(undefined);
    return `${kind}: ${cells} cells written or emptied.${copy === undefined ? '' : ` The old trip is the sheet "${copy}", values only.`} The trip is UNKNOWN until you have typed what is missing.`;
  };
  return (
    <section>
      <h2>The next flight</h2>
      <p>
        New trip empties the entries of the Trip sheet; Next leg begins where this one ends. The old trip can be kept as a sheet of values with its
        date. Add a flight keeps this one, and begins the next of the day on sheets of its own.
      </p>
      {(Object.keys(changes) as Kind[]).map((kind) => (
        <AskButton key={kind} look="wide" asking={asking} ask={() => asking.run('Reading the workbook.', () => look(kind))}>
          {kind}
        </AskButton>
      ))}
      <FlightAdding host={host} asking={asking} />
      {asked !== undefined && (
        <section class="set">
          <h3>{asked.kind}</h3>
          <p>{asked.change.said}</p>
          <label class="choice">
            <input type="checkbox" checked={keeps} onChange={({ currentTarget }) => setKeeps(currentTarget.checked)} />
            Keep a copy of values first
          </label>
          <AskButton look="main" asking={asking} ask={() => asking.run('Writing.', () => change(asked.kind, asked.change))}>
            {asked.kind === 'New trip' ? 'Empty them' : 'Begin this leg'}
          </AskButton>
        </section>
      )}
    </section>
  );
}
