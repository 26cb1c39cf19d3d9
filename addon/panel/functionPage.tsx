// One function: how it is written, its arguments and results with their units, examples to put into a cell, its source.
import { useEffect, useRef } from 'preact/hooks';
import { AskButton } from './askButton';
import { useAsking, type Asking } from './asking';
import type { ExampleEntry, FunctionEntry, ParameterEntry, ResultEntry } from './catalogue';
import type { PanelHost } from './host';
import { OutcomeLine } from './outcomeLine';

function Terms({ entries }: { readonly entries: readonly (ParameterEntry | ResultEntry)[] }) {
  return (
    <dl>
      {entries.map((entry) => (
        <div key={entry.name}>
          <dt>
            <code>{entry.name}</code>
            {entry.unit !== '' && <span class="unit">{entry.unit}</span>}
            {'optional' in entry && entry.optional && <span class="mark">optional</span>}
          </dt>
          <dd>{entry.help}</dd>
        </div>
      ))}
    </dl>
  );
}

/** One cell as a word in the line, more as a small table. */
function Answer({ rows }: { readonly rows: ExampleEntry['answer'] }) {
  const [[only] = []] = rows;
  if (rows.length === 1 && rows[0]?.length === 1) {
    return (
      <p>
        gives <strong>{only}</strong>
      </p>
    );
  }
  return (
    <>
      <p>gives</p>
      <div class="scroll" tabIndex={0} role="group" aria-label="Answer of the example">
        <table>
          <tbody>
            {rows.map((row, index) => (
              <tr key={index}>
                {row.map((cell, column) => (
                  <td key={column}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

interface ExampleProps {
  readonly example: ExampleEntry;
  readonly host: PanelHost;
  readonly asking: Asking;
}

function Example({ example, host, asking }: ExampleProps) {
  const { formula, answer, source, whole } = example;
  const put = async (): Promise<string> => `The example is in ${(await host.ask('putFormula', { formula })).cell}.`;
  return (
    <li>
      <code class="formula">{formula}</code>
      <Answer rows={answer} />
      <p class="faint">{source}.</p>
      {whole ? (
        <AskButton asking={asking} ask={() => asking.run('Putting it into the cell.', put)}>
          Put into the selected cell
        </AskButton>
      ) : (
        <p class="faint">The ranges stand for your own cells.</p>
      )}
    </li>
  );
}

interface FunctionPageProps {
  readonly host: PanelHost;
  readonly entry: FunctionEntry;
  readonly back: () => void;
}

export function FunctionPage({ host, entry, back }: FunctionPageProps) {
  const asking = useAsking();
  const heading = useRef<HTMLHeadingElement>(null);
  // The list is gone, so the keyboard and the screen reader start at the head of this page.
  useEffect(() => heading.current?.focus(), []);
  return (
    <article onKeyDown={(event) => event.key === 'Escape' && back()}>
      <button type="button" class="back" onClick={back}>
        Back to the list
      </button>
      <h2 tabIndex={-1} ref={heading}>
        {entry.name}
      </h2>
      <p>{entry.summary}</p>
      <code class="formula">={entry.signature}</code>
      <h3>Arguments</h3>
      <Terms entries={entry.parameters} />
      <h3>Returns</h3>
      <Terms entries={entry.results} />
      <h3>Notes</h3>
      <p>{entry.notes}</p>
      <h3>{entry.examples.length === 1 ? 'Example' : 'Examples'}</h3>
      <ul class="plain examples">
        {entry.examples.map((example) => (
          <Example key={example.formula} example={example} host={host} asking={asking} />
        ))}
      </ul>
      <h3>Source</h3>
      <p>{entry.source}.</p>
      <OutcomeLine outcome={asking.outcome} />
    </article>
  );
}
