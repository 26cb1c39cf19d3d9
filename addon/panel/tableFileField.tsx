// A CSV file of a table, which goes into the field of the pasted text: so it is seen, asked about and written like one that is pasted.
import { useId, useState } from 'preact/hooks';
import { separatedText, separators, type SeparatedText, type Separator } from '../workbook/pasted/separatedText';
import { ChoiceField } from './choiceField';

export function TableFileField({ onText }: { readonly onText: (text: string) => void }) {
  const id = useId();
  const [file, setFile] = useState('');
  const [separator, setSeparator] = useState<Separator>();
  const [read, setRead] = useState<SeparatedText>();
  const take = (text: string, chosen?: Separator): void => {
    const taken = separatedText(text, chosen);
    setFile(text);
    setSeparator(chosen);
    // The question stays in sight once it is answered.
    if (chosen === undefined || 'problem' in taken) setRead(taken);
    onText('text' in taken ? taken.text : '');
  };
  return (
    <>
      <div class="field">
        <label for={id}>Or a CSV file of a table, from here or from another program</label>
        <input
          id={id}
          type="file"
          accept=".csv,.txt,text/csv,text/plain"
          onChange={({ currentTarget }) => void currentTarget.files?.[0]?.text().then((text) => take(text))}
        />
      </div>
      {read !== undefined && 'choices' in read && (
        <ChoiceField
          label="What parts the columns of the file"
          value={separator}
          choices={read.choices.map((one) => ({ value: one, label: separators[one] }))}
          onAnswer={(one) =>
            take(
              file,
              read.choices.find((choice) => choice === one),
            )
          }
        />
      )}
      {read !== undefined && 'problem' in read && <p class="problem">{read.problem}</p>}
    </>
  );
}
