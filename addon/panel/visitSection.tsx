// A visit to load cards: the Load list's cards are ticked, their lines of the history shown, and written when the button below them is pressed.
import { useState } from 'preact/hooks';
import { cardsToLoad, visitLines, type CardToLoad, type Visit, type VisitLines } from '../workbook/loadVisit';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import type { PanelHost } from './host';
import { pageTemplates } from './pageTemplates';

const nothing: Visit = { cards: [], day: '', by: '', seen: true, remark: '' };
const fields = [
  ['day', 'loaded on'],
  ['by', 'by'],
  ['remark', 'remark'],
] as const;

interface TickProps {
  readonly card: CardToLoad;
  readonly at: number;
  readonly visit: Visit;
  readonly change: (part: Partial<Visit>) => void;
}

function CardTick({ card, at, visit, change }: TickProps) {
  const own = visit.cards.find((one) => one.at === at);
  const others = visit.cards.filter((one) => one.at !== at);
  const tick = (isTicked: boolean, failed: boolean): void =>
    change({ cards: isTicked ? [...others, { at, failed }].sort((one, other) => one.at - other.at) : others });
  const name = `${card.aircraft}, ${card.box}, ${card.database}`;
  return (
    <li>
      <label>
        <input type="checkbox" checked={own !== undefined} onChange={({ currentTarget }) => tick(currentTarget.checked, false)} /> {name}
        {card.cycle === '' ? '' : `, cycle ${card.cycle}`} ({card.when}
        {card.who === '' ? '' : `, ${card.who}`})
      </label>
      {own !== undefined && (
        <label>
          {' '}
          <input
            type="checkbox"
            aria-label={`${name}: the load failed`}
            checked={own.failed}
            onChange={({ currentTarget }) => tick(true, currentTarget.checked)}
          />{' '}
          failed
        </label>
      )}
    </li>
  );
}

/** Every card of an aircraft at one press; those that are ticked already stay as they are. */
function TickAll({ cards, visit, change }: Pick<TickProps, 'visit' | 'change'> & { readonly cards: readonly CardToLoad[] }) {
  const all = [...new Set(cards.map(({ aircraft }) => aircraft))];
  const tick = (aircraft: string): void => {
    const own = cards.flatMap((card, at) => (card.aircraft === aircraft ? (visit.cards.find((one) => one.at === at) ?? { at, failed: false }) : []));
    const others = visit.cards.filter(({ at }) => cards[at]?.aircraft !== aircraft);
    change({ cards: [...others, ...own].sort((one, other) => one.at - other.at) });
  };
  return (
    <p class="choices">
      <span>Tick every card of</span>
      {all.map((aircraft) => (
        <button key={aircraft} type="button" onClick={() => tick(aircraft)}>
          {aircraft}
        </button>
      ))}
    </p>
  );
}

function VisitEntries({ visit, change }: Pick<TickProps, 'visit' | 'change'>) {
  return (
    <div class="entries">
      {fields.map(([key, label]) => (
        <label class="entry" key={key}>
          <span>{label}</span>
          <input value={visit[key]} autocomplete="off" onInput={({ currentTarget }) => change({ [key]: currentTarget.value })} />
        </label>
      ))}
      <label>
        <input type="checkbox" checked={visit.seen} onChange={({ currentTarget }) => change({ seen: currentTarget.checked })} /> each seen on its unit
        after loading, on that day
      </label>
    </div>
  );
}

interface ShownLinesProps {
  readonly lines: VisitLines;
  readonly asking: Asking;
  readonly write: () => Promise<string>;
}

function ShownLines({ lines, asking, write }: ShownLinesProps) {
  return (
    <section class="set">
      <h3>
        From row {lines.firstRow} of {lines.sheet}
      </h3>
      <ul>
        {lines.shown.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <AskButton look="main" asking={asking} ask={() => asking.run('Writing.', write)}>
        Write them into the history
      </AskButton>
    </section>
  );
}

/** What is listed, typed and shown, and the three presses; each answers with a sentence. */
function useVisit(host: PanelHost) {
  const [cards, setCards] = useState<readonly CardToLoad[]>();
  const [visit, setVisit] = useState(nothing);
  const [shown, setShown] = useState<VisitLines>();
  const change = (part: Partial<Visit>): void => {
    setShown(undefined);
    setVisit({ ...visit, ...part });
  };
  const read = () => host.ask('readWorkbook', { sheets: 'all' });
  const list = async (): Promise<string> => {
    const found = cardsToLoad(await read(), pageTemplates());
    setShown(undefined);
    setCards(found.cards);
    setVisit({ ...visit, cards: [], day: found.day });
    return found.cards.length === 0 ? 'Nothing is to be loaded.' : 'Tick the cards that were loaded, also those whose load failed.';
  };
  const worked = async (): Promise<VisitLines> => {
    const now = await read();
    if (JSON.stringify(cardsToLoad(now, pageTemplates()).cards) !== JSON.stringify(cards))
      throw new Error('The load list was changed since you looked. List the cards again.');
    return visitLines(now, pageTemplates(), visit);
  };
  const look = async (): Promise<string> => {
    setShown(undefined);
    setShown(await worked());
    return 'Nothing is written yet. Read the lines, then press the button below them.';
  };
  const write = async (seen: VisitLines): Promise<string> => {
    const now = await worked();
    if (JSON.stringify(now) !== JSON.stringify(seen)) {
      setShown(now);
      throw new Error('The sheets were changed since you looked. Read the lines again, then press once more.');
    }
    await host.ask('writeEntries', { entries: now.entries });
    setShown(undefined);
    setCards(undefined);
    setVisit(nothing);
    return `${now.shown.length} ${now.shown.length === 1 ? 'line' : 'lines'} of the history, from row ${now.firstRow} of "${now.sheet}" on.`;
  };
  return { cards, visit, shown, change, list, look, write };
}

export function VisitSection({ host, asking }: { readonly host: PanelHost; readonly asking: Asking }) {
  const { cards = [], visit, shown, change, list, look, write } = useVisit(host);
  return (
    <section>
      <h2>Cards loaded</h2>
      <p>One press for a whole visit: each card ticked becomes a line of the history of loads.</p>
      <AskButton look="wide" asking={asking} ask={() => asking.run('Reading the workbook.', list)}>
        List the cards to load
      </AskButton>
      {cards.length > 0 && (
        <>
          <TickAll cards={cards} visit={visit} change={change} />
          <ul class="ticks">
            {cards.map((card, at) => (
              <CardTick key={JSON.stringify(card)} card={card} at={at} visit={visit} change={change} />
            ))}
          </ul>
          <VisitEntries visit={visit} change={change} />
          <AskButton look="wide" asking={asking} ask={() => asking.run('Reading the workbook.', look)}>
            Show the lines
          </AskButton>
        </>
      )}
      {shown !== undefined && <ShownLines lines={shown} asking={asking} write={() => write(shown)} />}
    </section>
  );
}
