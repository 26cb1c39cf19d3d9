// The other items of a list below the line of the selected one: those that lapse next as thin bars, the rest in words.
import { verdicts, type Verdict } from '../../core/basics/verdict';
import { bar, diamond, lineHeight, margin, spanOf } from './recencyMarks';
import { colours, element, label, shortened, widthOfText, wrapped } from './svg';
import { dayInWords, type DayLine } from './timeLine';

export interface Lapsing {
  readonly item: string;
  readonly verdict: Verdict;
  /** Spreadsheet serial number. Undefined where none is known, or where hours alone decide. */
  readonly goodThroughDay?: number | undefined;
  readonly hoursLeft?: number | undefined;
}

const maxBars = 8;

export interface LapsingNext {
  /** Those drawn as bars, in the order of their list. */
  readonly shown: readonly Lapsing[];
  readonly inWords: string;
  readonly draw: (days: DayLine, asOfDay: number, width: number, top: number) => { readonly svg: string; readonly height: number };
}

function nameAndWhy({ item, goodThroughDay, hoursLeft }: Lapsing): string {
  if (goodThroughDay !== undefined) return `${item} (lapsed ${dayInWords(goodThroughDay)})`;
  return hoursLeft === undefined ? `${item} (no last good day)` : `${item} (${hoursLeft.toFixed(1)} h left)`;
}

/** Items without a day to come, by their verdict, the worst first. */
const restInWords = (rest: readonly Lapsing[]): string[] =>
  verdicts.flatMap((verdict) => {
    const found = rest.filter((one) => one.verdict === verdict);
    return found.length === 0 ? [] : [`${verdict}: ${found.map(nameAndWhy).join('; ')}`];
  });

/** Name to the left, day and verdict to the right, on one line where both fit; the bar below them. */
function barLine(
  { item, verdict, goodThroughDay = 0 }: Lapsing,
  days: DayLine,
  asOfDay: number,
  width: number,
  top: number,
): { readonly svg: string; readonly height: number } {
  const when = `${dayInWords(goodThroughDay)} ${verdict}`;
  const room = width - 2 * margin;
  const together = widthOfText(item) + 10 + widthOfText(when) <= room;
  const whenY = top + (together ? 13 : 28);
  const svg = [
    label(shortened(item, room), { x: margin, y: top + 13 }),
    label(when, { x: width - margin, y: whenY }, { anchor: 'end', color: colours.faint }),
    element('line', { x1: days.x(asOfDay), x2: days.x(asOfDay), y1: whenY + 4, y2: whenY + 12, stroke: colours.ink, 'stroke-width': 1.6 }),
    bar(spanOf(days, asOfDay, goodThroughDay), whenY + 8, 5, verdict, false),
    diamond(days, goodThroughDay, whenY + 8, 4),
  ];
  return { svg: svg.join(''), height: whenY - top + 14 };
}

export function lapsingNext(items: readonly Lapsing[], asOfDay: number): LapsingNext {
  const toCome = items.filter(({ goodThroughDay }) => goodThroughDay !== undefined && goodThroughDay >= asOfDay);
  const byDay = [...toCome].sort((one, other) => (one.goodThroughDay ?? 0) - (other.goodThroughDay ?? 0));
  const nearest = new Set(byDay.slice(0, maxBars));
  const shown = toCome.filter((one) => nearest.has(one));
  const later = toCome.length - shown.length;
  const rest = [...(later === 0 ? [] : [`Later than these: ${later} more`]), ...restInWords(items.filter((one) => !toCome.includes(one)))];
  const next = shown.map(({ item, verdict, goodThroughDay = 0 }) => `${item} ${dayInWords(goodThroughDay)} ${verdict}`);
  const inWords = [...(next.length === 0 ? [] : [`Next to lapse: ${next.join('; ')}`]), ...rest].join('. ');
  const draw: LapsingNext['draw'] = (days, asOf, width, top) => {
    if (items.length === 0) return { svg: '', height: 0 };
    const parts = [label('The others: what lapses next', { x: margin, y: top + 18 }, { bold: true })];
    let y = top + 24;
    for (const one of shown) {
      const drawn = barLine(one, days, asOf, width, y);
      parts.push(drawn.svg);
      y += drawn.height;
    }
    if (shown.length === 0) y += lineHeight;
    const none = shown.length === 0 ? label('no day to come', { x: margin, y: y - 4 }, { color: colours.faint }) : '';
    const words = rest.flatMap((text) => wrapped(text, width - 2 * margin, 4));
    const said = words.map((text, index) => label(text, { x: margin, y: y + 16 + index * lineHeight }));
    return { svg: [...parts, none, ...said].join(''), height: y - top + words.length * lineHeight + 8 };
  };
  return { shown, inWords, draw };
}
