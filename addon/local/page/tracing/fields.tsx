// The fields of the window: a choice or a text under its name. What is open says so.
import { useId } from 'preact/hooks';

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onAnswer: (value: string) => void;
}

export function Choice({
  label,
  value,
  choices,
  onAnswer,
}: FieldProps & { readonly choices: readonly { readonly value: string; readonly label: string }[] }) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={({ currentTarget }) => onAnswer(currentTarget.value)}>
        {!choices.some((one) => one.value === value) && <option value={value}>choose</option>}
        {choices.map((one) => (
          <option key={one.value} value={one.value}>
            {one.label}
          </option>
        ))}
      </select>
    </div>
  );
}

export function Typed({ label, value, onAnswer }: FieldProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input id={id} value={value} autocomplete="off" inputMode="decimal" onInput={({ currentTarget }) => onAnswer(currentTarget.value)} />
    </div>
  );
}

export const Problems = ({ sentences }: { readonly sentences: readonly string[] }) => (
  <>
    {sentences.map((sentence) => (
      <p key={sentence} class="problem">
        {sentence}
      </p>
    ))}
  </>
);
