// Sections of a form: lines of a label with entries and answers, and lists whose rows are cards.
import { useState } from 'preact/hooks';
import type { PocketPart, PocketSection, PocketValue } from '../workbook/pocket/sections';
import { isVerdict, typingHelp, worstFirst } from '../workbook/pocket/verdictWords';
import { Entry } from './entry';
import type { Form, FormCell } from './form';

export interface PartsProps {
  readonly form: Form;
}

type Line = Extract<PocketPart, { readonly kind: 'line' }>;
type List = Extract<PocketPart, { readonly kind: 'list' }>;

export const Answer = ({ text }: { readonly text: string }) =>
  isVerdict(text) ? <b class={`word ${text}`}>{text}</b> : <span class="answer">{text === '' ? '–' : text}</span>;

const textOf = (cell: FormCell | undefined): string => cell?.shown ?? '';

/** The note of an entry without a label says what it is. */
const labelOf = ({ label, values }: Line): string =>
  label === '' && values[0]?.isEntry === true ? (values[0].cell.note ?? '').replace(/\.$/, '') : label;

const headOf = ({ cellOf }: Form, { head, headCell }: PocketValue): string => (headCell === undefined ? head : textOf(cellOf(headCell)));

interface ValueProps extends PartsProps {
  readonly value: PocketValue;
  readonly cell: FormCell | undefined;
  readonly label: string;
}

function Value({ value, cell, label, form }: ValueProps) {
  if (cell === undefined) return <span class="answer">see the grid</span>;
  if (!value.isEntry || !cell.isEntry) return <Answer text={cell.shown} />;
  return <Entry cell={cell} label={label} isNumber={value.cell.style === 'input'} isReport={/^(?:METAR|TAF)\b/.test(label)} submit={form.submit} />;
}

/** Rows that a call lays out have their label in their first cell. */
function spilled({ label, values }: Line, texts: readonly string[]): { readonly label: string; readonly skipped: number } {
  const isLaidOut = label === '' && values.length > 1 && values.every(({ isEntry }) => !isEntry) && !isVerdict(texts[0] ?? '');
  return isLaidOut ? { label: texts[0] ?? '', skipped: 1 } : { label, skipped: 0 };
}

/** Letters that have room beside others. */
const longest = 20;

/** Names need more room than numbers: then each value has a row of its own. */
const lookOf = (values: readonly PocketValue[]): string => {
  if (values.length < 2) return 'line';
  return values.some(({ cell, isEntry, head }) => isEntry && head !== '' && cell.style === 'inputText') ? 'line several names' : 'line several';
};

function LineShown({ part, ...props }: PartsProps & { readonly part: Line }) {
  const cells = part.values.map(({ cell }) => props.form.cellOf(cell));
  const texts = cells.map(textOf);
  if (part.values.every(({ isEntry }, index) => !isEntry && texts[index] === '')) return null;
  const { label, skipped } = spilled({ ...part, label: labelOf(part) }, texts);
  const unit = part.unit === undefined ? '' : textOf(props.form.cellOf(part.unit));
  const values = part.values.slice(skipped);
  const isBlank = ({ isEntry }: PocketValue, index: number): boolean => !isEntry && texts[index + skipped] === '' && values.length > 1;
  return (
    <div class={lookOf(values)}>
      <span class="label">
        {label}
        {unit !== '' && !typingHelp.has(unit) && <small> {unit}</small>}
      </span>
      {values.map((value, index) => {
        const head = values.length > 1 ? headOf(props.form, value) : '';
        if (isBlank(value, index) && (head === '' || value.cell.style === 'reason')) return null;
        return (
          <span
            class={!value.isEntry && (value.cell.style === 'reason' || (texts[index + skipped] ?? '').length > longest) ? 'value wide' : 'value'}
            key={value.cell.column}
          >
            {head !== '' && head !== 'verdict' && head !== 'reason' && <small class="head">{head}</small>}
            <Value {...props} value={value} cell={cells[index + skipped]} label={[label, head, unit].filter((word) => word !== '').join(', ')} />
          </span>
        );
      })}
    </div>
  );
}

interface Card {
  readonly number: number;
  readonly cells: readonly (FormCell | undefined)[];
  readonly texts: readonly string[];
}

function cardsOf({ rowsOf }: Form, { first, last, columns }: List): Card[] {
  const rows = columns.map(({ cell }) => rowsOf(first, last, cell));
  const count = Math.max(0, ...rows.map((one) => one.length));
  return Array.from({ length: count }, (_, index) => {
    const cells = rows.map((one) => one[index]);
    return { number: index + 1, cells, texts: cells.map(textOf) };
  });
}

/** What somebody entered tells whether a row is in use; in a list of answers whatever stands there. */
const isFilled = (columns: readonly PocketValue[], { texts }: Card): boolean =>
  columns.some(({ isEntry }) => isEntry) ? columns.some(({ isEntry }, index) => isEntry && texts[index] !== '') : texts.some((text) => text !== '');

const cardsAtOnce = 20;

function CardShown({ card, part, ...props }: PartsProps & { readonly card: Card; readonly part: List }) {
  const [open, setOpen] = useState(false);
  const words = card.texts.filter((text) => text !== '');
  const verdict = words.find(isVerdict);
  const filled = part.columns.flatMap(({ isEntry }, index) => {
    const cell = card.cells[index];
    return isEntry && cell?.isEntry === true && cell.shown !== '' ? [cell] : [];
  });
  return (
    <details class="card" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        {words.length === 0
          ? `New, row ${card.number}`
          : words
              .filter((text) => text !== verdict)
              .slice(0, 3)
              .join(', ')}
        {verdict !== undefined && <Answer text={verdict} />}
      </summary>
      {open &&
        part.columns.map((value, index) => {
          const head = headOf(props.form, value);
          return (
            <div class="line" key={value.cell.column}>
              <span class="label">{head}</span>
              <span class="value">
                <Value {...props} value={value} cell={card.cells[index]} label={`${head}, row ${card.number}`} />
              </span>
            </div>
          );
        })}
      {open && filled.length > 0 && (
        <button type="button" onClick={() => props.form.empty(filled)}>
          Empty this row
        </button>
      )}
    </details>
  );
}

function ListShown({ part, ...props }: PartsProps & { readonly part: List }) {
  const [[most, added], set] = useState([cardsAtOnce, 0]);
  const cards = cardsOf(props.form, part);
  const filled = cards.filter((card) => isFilled(part.columns, card));
  const free = cards.filter((card) => !filled.includes(card));
  const takesEntries = part.columns.some(({ isEntry }) => isEntry);
  return (
    <div class="cards">
      {[...filled.slice(0, most), ...free.slice(0, added)].map((card) => (
        <CardShown key={card.number} {...props} part={part} card={card} />
      ))}
      {filled.length > most && (
        <button type="button" onClick={() => set([most + cardsAtOnce, added])}>
          Show more ({filled.length - most})
        </button>
      )}
      {takesEntries && free.length > added && (
        <button type="button" onClick={() => set([most, added + 1])}>
          Add
        </button>
      )}
      {takesEntries && free.length === 0 && <p>This list is full: in the grid, insert rows between its first and its last.</p>}
      {!takesEntries && filled.length === 0 && <p>Nothing here.</p>}
    </div>
  );
}

function Said({ part, form: { cellOf, goTo } }: PartsProps & { readonly part: Extract<PocketPart, { readonly kind: 'said' }> }) {
  const cell = cellOf(part.cell);
  const text = textOf(cell);
  if (text === '' || cell === undefined) return null;
  const { goesTo } = cell;
  if (goesTo === undefined) return <p class={part.cell.style}>{text}</p>;
  return (
    <button type="button" class="link" onClick={() => goTo(goesTo)}>
      {text}
    </button>
  );
}

export function Parts({ parts, ...props }: PartsProps & { readonly parts: readonly PocketPart[] }) {
  return (
    <>
      {parts.map((part, index) =>
        part.kind === 'line' ? (
          <LineShown key={index} {...props} part={part} />
        ) : part.kind === 'list' ? (
          <ListShown key={index} {...props} part={part} />
        ) : (
          <Said key={index} {...props} part={part} />
        ),
      )}
    </>
  );
}

const hasEntries = ({ parts }: PocketSection): boolean =>
  parts.some((part) =>
    part.kind === 'line' ? part.values.some(({ isEntry }) => isEntry) : part.kind === 'list' && part.columns.some(({ isEntry }) => isEntry),
  );

/** How often each word of a verdict stands in a section, the worst first: what is folded away must not hide a NO. */
function wordsIn({ parts }: PocketSection, { cellOf }: Form): [string, number][] {
  const words = parts.flatMap((part) => (part.kind === 'line' ? part.values.map(({ cell }) => textOf(cellOf(cell))) : []));
  return worstFirst.flatMap((word): [string, number][] => {
    const count = words.filter((one) => one === word).length;
    return count === 0 ? [] : [[word, count]];
  });
}

export function Section({ section, ...props }: PartsProps & { readonly section: PocketSection }) {
  const [open, setOpen] = useState(hasEntries(section));
  return (
    <details class="section" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <h2>{section.title}</h2>
        {wordsIn(section, props.form).map(([word, count]) => (
          <b key={word} class={`word ${word}`}>
            {count > 1 ? `${count} ${word}` : word}
          </b>
        ))}
      </summary>
      {open && <Parts {...props} parts={section.parts} />}
    </details>
  );
}
