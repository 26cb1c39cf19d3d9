// Inserting sheets: all of them at once, or one with whatever it reads.
import { useAsking } from './asking';
import type { Catalogue } from './catalogue';
import type { PanelHost } from './host';
import { OutcomeLine } from './outcomeLine';

interface SheetsViewProps {
  readonly host: PanelHost;
  readonly sheets: Catalogue['sheets'];
}

const listed = (names: readonly string[]): string => names.join(', ');

async function insert(host: PanelHost, keys: readonly string[]): Promise<string> {
  const { inserted, reads } = await host.ask('insertSheets', { keys });
  const read = reads.length === 0 ? '' : ` They read what was there already: ${listed(reads)}.`;
  return `Inserted: ${listed(inserted)}.${read}`;
}

export function SheetsView({ host, sheets }: SheetsViewProps) {
  const { outcome, busy, run } = useAsking();
  const ask = (keys: readonly string[]) => (): void => {
    if (!busy) run('Inserting. This takes some seconds.', () => insert(host, keys));
  };
  return (
    <section>
      <h2>Insert sheets</h2>
      <p>Ready to fill, with invented data to show how. Nothing of yours is overwritten: where a name is taken, the new sheet gets a number.</p>
      <button type="button" class="main" aria-disabled={busy} onClick={ask(sheets.map(({ key }) => key))}>
        Insert every sheet
      </button>
      <h3>Or one, with the sheets it reads</h3>
      <ul class="plain">
        {sheets.map(({ key, name }) => (
          <li key={key}>
            <button type="button" class="wide" aria-disabled={busy} onClick={ask([key])}>
              {name}
            </button>
          </li>
        ))}
      </ul>
      <OutcomeLine outcome={outcome} />
    </section>
  );
}
