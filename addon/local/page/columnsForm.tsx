// The form in which a person says what each column of a file of flights is.
import { useState } from 'preact/hooks';
import { logHeadings } from '../../../core/currency/flightLog';
import { columnMeanings, plainHeadings, wrongNaming, type FileColumns, type Meaning, type NamedColumns } from '../namedColumns';
import { showDialog } from './dialog';

const inWords = (meaning: Meaning): string =>
  meaning === '' ? 'not used' : meaning === 'pilot' ? 'pilot (whose flight it is)' : (logHeadings[meaning][0] ?? meaning);

const choices: readonly Meaning[] = ['', 'date', 'aircraft', 'pilot', ...columnMeanings.filter((one) => one !== 'date' && one !== 'aircraft')];

interface Props {
  readonly of: FileColumns;
  readonly now: NamedColumns;
  readonly done: (named: NamedColumns) => void;
  readonly close: () => void;
}

const longest = 24;
const shortened = (text: string): string => (text.length > longest ? `${text.slice(0, longest)}...` : text);

interface RowProps {
  readonly heading: string;
  readonly samples: readonly string[];
  readonly meaning: Meaning;
  readonly set: (meaning: string) => void;
}

function ColumnRow({ heading, samples, meaning, set }: RowProps) {
  return (
    <tr>
      <td>{heading}</td>
      <td>{samples.map(shortened).join(', ') || 'nothing'}</td>
      <td>
        <select aria-label={heading} value={meaning} onChange={({ currentTarget }) => set(currentTarget.value)}>
          {choices.map((one) => (
            <option key={one} value={one}>
              {inWords(one)}
            </option>
          ))}
        </select>
      </td>
    </tr>
  );
}

function Form({ of: { headings, samples }, now, done, close }: Props) {
  const [meanings, setMeanings] = useState<readonly Meaning[]>(headings.map((_, index) => now.meanings[index] ?? ''));
  const [said, say] = useState('');
  const set = (at: number, meaning: string): void => {
    say('');
    setMeanings(meanings.map((one, index) => (index === at ? (meaning as Meaning) : one)));
  };
  const take = (): void => {
    const wrong = wrongNaming({ meanings }, inWords);
    if (wrong !== undefined) return say(wrong);
    close();
    done({ headings: plainHeadings(headings), meanings });
  };
  return (
    <>
      <h1>Columns of the file</h1>
      <p>Say what each column is; what is not used is left out. This browser remembers it for files with the same headings.</p>
      <div class="columns-of-file">
        <table>
          <thead>
            <tr>
              <th>heading</th>
              <th>holds</th>
              <th>is</th>
            </tr>
          </thead>
          <tbody>
            {headings.map((heading, index) => (
              <ColumnRow
                key={`${index} ${heading}`}
                heading={heading || `column ${index + 1}`}
                samples={samples[index] ?? []}
                meaning={meanings[index] ?? ''}
                set={(meaning) => set(index, meaning)}
              />
            ))}
          </tbody>
        </table>
      </div>
      <p role="status">{said}</p>
      <p class="choices">
        <button type="button" onClick={take}>
          Read the file so
        </button>
        <button type="button" onClick={close}>
          Cancel
        </button>
      </p>
    </>
  );
}

export const askColumns = (of: FileColumns, now: NamedColumns, done: (named: NamedColumns) => void): void =>
  showDialog('Columns of the file', (close) => <Form of={of} now={now} done={done} close={close} />);
