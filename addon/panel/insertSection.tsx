// Inserting sheets: all of them at once, or one with whatever it reads.
import { AskButton } from './askButton';
import type { Asking } from './asking';
import type { Catalogue } from './catalogue';
import type { PanelHost, Watch } from './host';

interface InsertSectionProps {
  readonly host: PanelHost;
  readonly sheets: Catalogue['sheets'];
  readonly asking: Asking;
}

async function insert(host: PanelHost, keys: readonly string[], watch: Watch): Promise<string> {
  const { inserted, reads } = await host.ask('insertSheets', { keys }, watch);
  const read = reads.length === 0 ? '' : ` ${inserted.length === 1 ? 'It reads' : 'They read'} what was there already: ${reads.join(', ')}.`;
  return `Inserted: ${inserted.join(', ')}.${read}`;
}

export function InsertSection({ host, sheets, asking }: InsertSectionProps) {
  const ask = (keys: readonly string[]): void => asking.run('Inserting. This takes some seconds.', (watch) => insert(host, keys, watch));
  return (
    <section>
      <h2>Insert sheets</h2>
      <p>Ready to fill, with invented data to show how. Nothing of yours is overwritten: where a name is taken, the new sheet gets a number.</p>
      <AskButton look="main" asking={asking} ask={() => ask(sheets.map(({ key }) => key))}>
        Insert every sheet
      </AskButton>
      <h3>Or one, with the sheets it reads</h3>
      <ul class="plain">
        {sheets.map(({ key, name }) => (
          <li key={key}>
            <AskButton look="wide" asking={asking} ask={() => ask([key])}>
              {name}
            </AskButton>
          </li>
        ))}
      </ul>
    </section>
  );
}
