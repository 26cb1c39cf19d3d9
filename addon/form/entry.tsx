// One entry, as large as a thumb: a list of choices, a day, a number pad, a box for a report, or a line of text.
import { useEffect, useState } from 'preact/hooks';
import { isDatePattern } from '../workbook/datePattern';
import type { EntryRule } from '../workbook/pocket/typedEntry';
import { isoDay } from '../workbook/serialDates';
import { isoFromSerial } from '../workbook/serialDates';
import type { Form, FormCell } from './form';

export interface EntryProps {
  readonly cell: FormCell;
  /** What it is called, for whoever does not see where it stands. */
  readonly label: string;
  /** A number, by the look of its cell. */
  readonly isNumber: boolean;
  readonly isReport: boolean;
  readonly submit: Form['submit'];
}

/** What stands in the cell, as it would be typed. */
function typedIn({ content, shown, hasFormula, pattern }: FormCell): string {
  if (content === '') return '';
  if (typeof content === 'number' && isDatePattern(pattern)) return Number.isInteger(content) ? isoFromSerial(content) : shown;
  // A number of fixed digits (0630) is typed as it is shown; others without the marks of thousands and in full.
  return typeof content === 'number' && !hasFormula && !/^0+$/.test(pattern) ? String(content) : shown;
}

interface Field {
  readonly value: string;
  readonly label: string;
  readonly submit: (text: string) => void;
}

/** Entered when it is left, or by the key that ends a line. */
function useTyping({ value, submit }: Field) {
  const [typed, setTyped] = useState<string | undefined>(undefined);
  useEffect(() => setTyped(undefined), [value]);
  const done = (): void => {
    if (typed !== undefined && typed.trim() !== value) submit(typed.trim());
    setTyped(undefined);
  };
  return { shown: typed ?? value, setTyped, done };
}

function Choices({ value, label, submit, choices }: Field & { readonly choices: readonly string[] }) {
  const all = ['', ...choices.filter((one) => one !== '')];
  return (
    <select aria-label={label} value={value} onChange={({ currentTarget }) => submit(currentTarget.value)}>
      {(all.includes(value) ? all : [value, ...all]).map((one) => (
        <option key={one} value={one}>
          {one === '' ? '(blank)' : one}
        </option>
      ))}
    </select>
  );
}

function Report(field: Field) {
  const { shown, setTyped, done } = useTyping(field);
  return (
    <textarea
      aria-label={field.label}
      rows={3}
      autocapitalize="characters"
      autocomplete="off"
      spellcheck={false}
      value={shown}
      // A report on several lines is one report.
      onInput={({ currentTarget }) => setTyped(currentTarget.value.replace(/\s+/g, ' '))}
      onBlur={done}
    />
  );
}

function Line({ pad, mayBeNegative, ...field }: Field & { readonly pad: 'decimal' | 'text' | 'date'; readonly mayBeNegative: boolean }) {
  const { shown, setTyped, done } = useTyping(field);
  const turned = shown.startsWith('-') ? shown.slice(1) : `-${shown}`;
  return (
    <span class="typed">
      <input
        aria-label={field.label}
        type={pad === 'date' ? 'date' : 'text'}
        inputMode={pad === 'decimal' ? 'decimal' : 'text'}
        autocomplete="off"
        spellcheck={false}
        value={shown}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key === 'Enter') done();
          if (event.key === 'Escape') setTyped(undefined);
        }}
      />
      {/* Pickers write days in the order of the device's country. */}
      {pad === 'date' && shown !== '' && <small>{shown}</small>}
      {pad === 'decimal' && mayBeNegative && shown !== '' && (
        <button type="button" class="sign" aria-label={`${field.label}: change its sign`} onClick={() => field.submit(turned)}>
          ±
        </button>
      )}
    </span>
  );
}

/** Letters may be needed where no rule asks for a number: a wind may be VRB. */
function padFor(rule: EntryRule, isNumber: boolean, isDay: boolean, pattern: string): 'decimal' | 'text' | 'date' {
  if (isDay) return 'date';
  if (rule?.kind === 'number') return 'decimal';
  return isNumber && /[#.]|^0000$/.test(pattern) ? 'decimal' : 'text';
}

export function Entry({ cell, label, isNumber, isReport, submit }: EntryProps) {
  const { rule, pattern } = cell;
  const value = typedIn(cell);
  const field = { value, label, submit: (text: string) => submit(cell, text) };
  if (isReport) return <Report {...field} />;
  if (rule?.kind === 'choices') return <Choices {...field} choices={rule.choices} />;
  const isDay = (rule?.kind === 'date' || isDatePattern(pattern)) && (value === '' || isoDay.test(value));
  const mayBeNegative = rule?.kind === 'number' ? rule.minimum < 0 : !/^0+$/.test(pattern);
  return <Line {...field} pad={padFor(rule, isNumber, isDay, pattern)} mayBeNegative={mayBeNegative} />;
}
