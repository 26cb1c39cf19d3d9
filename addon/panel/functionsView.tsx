// Finding a function: a search field over the list by subject, and the page of the one chosen.
import { useEffect, useRef, useState } from 'preact/hooks';
import type { FunctionEntry } from './catalogue';
import { FunctionPage } from './functionPage';
import type { PanelHost } from './host';
import { searchFunctions } from './search';

interface FunctionsViewProps {
  readonly host: PanelHost;
  readonly functions: readonly FunctionEntry[];
}

interface ListProps {
  readonly found: readonly FunctionEntry[];
  /** With words to look for, the best comes first; without, functions stand under their subjects. */
  readonly grouped: boolean;
  readonly choose: (entry: FunctionEntry) => void;
}

function FunctionList({ found, grouped, choose }: ListProps) {
  const subjects = grouped ? [...new Set(found.map(({ subject }) => subject))].sort() : ['Found'];
  return (
    <>
      {subjects.map((subject) => (
        <section key={subject}>
          <h3>{subject}</h3>
          <ul class="plain">
            {found
              .filter((entry) => !grouped || entry.subject === subject)
              .map((entry) => (
                <li key={entry.name}>
                  <button type="button" class="entry" id={`function-${entry.name}`} onClick={() => choose(entry)}>
                    <code>{entry.name}</code>
                    <span>{entry.summary}</span>
                  </button>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}

const foundInWords = (count: number): string =>
  count === 0 ? 'No function matches. Try fewer words.' : `${count} ${count === 1 ? 'function' : 'functions'}`;

export function FunctionsView({ host, functions }: FunctionsViewProps) {
  const [wanted, setWanted] = useState('');
  const [chosen, setChosen] = useState<FunctionEntry>();
  const last = useRef<string>();
  // Back from a function's page, the keyboard is where it was in the list.
  useEffect(() => {
    if (chosen !== undefined) last.current = chosen.name;
    else if (last.current !== undefined) document.getElementById(`function-${last.current}`)?.focus();
  }, [chosen]);
  if (chosen !== undefined) return <FunctionPage key={chosen.name} host={host} entry={chosen} back={() => setChosen(undefined)} />;
  const found = searchFunctions(functions, wanted);
  return (
    <section>
      <h2>Find a function</h2>
      <label for="search">Search</label>
      <input
        id="search"
        type="search"
        autocomplete="off"
        placeholder="crosswind, hold, balance"
        value={wanted}
        onInput={(event) => setWanted(event.currentTarget.value)}
      />
      <p class="count" role="status" aria-live="polite">
        {foundInWords(found.length)}
      </p>
      <FunctionList found={found} grouped={wanted.trim() === ''} choose={setChosen} />
    </section>
  );
}
