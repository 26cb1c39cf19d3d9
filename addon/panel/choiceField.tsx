// A question with a few answers, or one that is typed. What was understood stands there already; what is open says so in a word.
import { useId } from 'preact/hooks';

interface FieldProps {
  readonly label: string;
  readonly value: string | undefined;
  /** Nobody chose it: it was read out of the text. */
  readonly understood?: boolean;
  readonly optional?: boolean;
  readonly onAnswer: (value: string) => void;
}

function Label({ id, label, value, understood = false, optional = false }: Omit<FieldProps, 'onAnswer'> & { readonly id: string }) {
  const open = !optional && (value ?? '') === '';
  return (
    <label for={id} class={open ? 'open' : ''}>
      {label} {open && <strong class="openMark">open</strong>}
      {understood && !open && !optional && <em>as read</em>}
    </label>
  );
}

interface ChoiceProps extends FieldProps {
  readonly choices: readonly { readonly value: string; readonly label: string }[];
}

export function ChoiceField({ choices, onAnswer, ...field }: ChoiceProps) {
  const id = useId();
  return (
    <div class="field">
      <Label id={id} {...field} />
      <select id={id} value={field.value ?? ''} onChange={({ currentTarget }) => onAnswer(currentTarget.value)}>
        {(field.value ?? '') === '' && <option value="">choose</option>}
        {choices.map(({ value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </div>
  );
}

export function TextField({ onAnswer, ...field }: FieldProps) {
  const id = useId();
  return (
    <div class="field">
      <Label id={id} {...field} />
      <input id={id} value={field.value ?? ''} autocomplete="off" onInput={({ currentTarget }) => onAnswer(currentTarget.value)} />
    </div>
  );
}
