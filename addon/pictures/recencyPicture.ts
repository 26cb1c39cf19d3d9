// How long something still holds, as a line of days: the day it is judged on, the days looked back over with what was done in
// them, the last good day and what is left; for a whole list, below it, what lapses next.
import type { Verdict } from '../../core/basics/verdict';
import { verdictTints } from '../../sheets-templates/look';
import { lapsingNext, type Lapsing } from './lapsingNext';
import { bar, diamond, keyLine, lineHeight, margin, spanOf } from './recencyMarks';
import { arrowhead, colours, element, label, svgDocument, widthOfText, wrapped } from './svg';
import { dayInWords, dayLine, daysInWords, dayTicks, dotRadius, groupedEvents, type DayEvent, type DayLine, type EventGroup } from './timeLine';

export interface LookedBack {
  readonly firstDay: number;
  readonly lastDay: number;
  /** Such as "90 days". */
  readonly words: string;
}

/** Days are spreadsheet serial numbers. */
export interface RecencyRequest {
  readonly selected: Lapsing;
  readonly asOfDay: number;
  readonly counted?: number;
  readonly needed?: number;
  readonly lookedBack?: LookedBack;
  /** All that was done in the days shown; those in the days looked back over count. */
  readonly events: readonly DayEvent[];
  /** From this day on it is CHECK, up to its last good day. */
  readonly checkFromDay?: number;
  /** Why, as the sheet says it. */
  readonly reason?: string;
  /** The other items of its list. */
  readonly others?: readonly Lapsing[];
}

/** "38 days left", "lapsed 3 days ago", hours, or that no day is known. */
export function leftInWords({ goodThroughDay, hoursLeft }: Lapsing, asOfDay: number): string {
  const days = goodThroughDay === undefined ? undefined : goodThroughDay - asOfDay;
  const byDay =
    days === undefined
      ? []
      : [days > 0 ? `${daysInWords(days)} left` : days === 0 ? 'this is the last good day' : `lapsed ${daysInWords(-days)} ago`];
  const byHours = hoursLeft === undefined ? [] : [hoursLeft < 0 ? `${(-hoursLeft).toFixed(1)} h over` : `${hoursLeft.toFixed(1)} h left`];
  const words = [...byDay, ...byHours];
  return words.length === 0 ? 'no last good day' : words.join(', ');
}

const countsIn = ({ lookedBack, asOfDay }: RecencyRequest, { day }: DayEvent): boolean =>
  lookedBack !== undefined && day >= lookedBack.firstDay && day <= Math.min(lookedBack.lastDay, asOfDay);

function verdictMark(verdict: Verdict, y: number): { readonly svg: string; readonly right: number } {
  const width = widthOfText(verdict) + 14;
  const box = element('rect', { x: margin, y: y - 14, width, height: 20, fill: verdictTints[verdict], stroke: colours.faint });
  return { svg: box + label(verdict, { x: margin + width / 2, y }, { anchor: 'middle', bold: true }), right: margin + width };
}

interface Part {
  readonly svg: string;
  readonly height: number;
}

function heading({ selected, asOfDay, counted, needed, reason }: RecencyRequest, width: number): Part {
  const title = wrapped(selected.item, width - 2 * margin);
  const verdictY = 24 + title.length * lineHeight;
  const mark = verdictMark(selected.verdict, verdictY);
  const count = counted === undefined || needed === undefined ? [] : [`${Number(counted.toFixed(2))} counted, ${needed} needed`];
  const why = [...count, ...(reason === undefined ? [] : wrapped(reason, width - 2 * margin, 4))];
  const svg = [
    ...title.map((text, index) => label(text, { x: margin, y: 18 + index * lineHeight }, { bold: true })),
    mark.svg,
    label(leftInWords(selected, asOfDay), { x: mark.right + 8, y: verdictY }, { bold: true }),
    ...why.map((text, index) =>
      label(text, { x: margin, y: verdictY + 24 + index * lineHeight }, { color: index < count.length ? colours.ink : colours.faint }),
    ),
  ];
  return { svg: svg.join(''), height: verdictY + 14 + why.length * lineHeight };
}

/** A dot, or a long one over several days, with its number above; hollow where it does not count. */
function eventMark({ left, right, words }: EventGroup, y: number, counts: boolean): string {
  const shape = element('rect', {
    x: left,
    y: y - dotRadius,
    width: right - left,
    height: 2 * dotRadius,
    rx: dotRadius,
    fill: counts ? colours.path : colours.paper,
    stroke: counts ? colours.paper : colours.faint,
    'stroke-width': counts ? 0.8 : 1.6,
  });
  return shape + label(words, { x: (left + right) / 2, y: y - 9 }, { anchor: 'middle', bold: counts, color: counts ? colours.ink : colours.faint });
}

/** What does not count stands lower than what does: side by side their numbers would read as one. */
const [firstLane, laneHeight, lastLane] = [26, 28, 20];

const backFill = { fill: colours.band, stroke: colours.faint, 'stroke-dasharray': '3 2', 'stroke-width': 0.8 } as const;
const checkFill = { fill: colours.paper, stroke: colours.ink, 'stroke-dasharray': '1 2', 'stroke-width': 1 } as const;

function line(request: RecencyRequest, days: DayLine, top: number): Part {
  const { selected, asOfDay, lookedBack, checkFromDay, events } = request;
  const { x } = days;
  const lanes = [true, false].filter((counts) => events.some((event) => countsIn(request, event) === counts));
  const base = lanes.length > 0 ? top + firstLane + (lanes.length - 1) * laneHeight + lastLane : top + 22;
  const block = (from: number, to: number, attributes: Readonly<Record<string, string | number>>): string =>
    element('rect', { x: x(from), y: top + 4, width: Math.max(1, x(to) - x(from)), height: base - top - 4, ...attributes });
  const marks = (counts: boolean, lane: number): string =>
    groupedEvents(
      events.filter((event) => countsIn(request, event) === counts),
      x,
    )
      .map((group) => eventMark(group, top + firstLane + lane * laneHeight, counts))
      .join('');
  const through = selected.goodThroughDay;
  const svg = [
    lookedBack === undefined ? '' : block(lookedBack.firstDay, lookedBack.lastDay, backFill),
    checkFromDay === undefined || through === undefined ? '' : block(checkFromDay, through, checkFill),
    dayTicks(days, base),
    through === undefined ? '' : bar(spanOf(days, asOfDay, through), base, 8, selected.verdict, through < asOfDay),
    ...lanes.map(marks),
    element('line', { x1: x(asOfDay), x2: x(asOfDay), y1: top, y2: base, stroke: colours.ink, 'stroke-width': 2 }),
    arrowhead({ x: x(asOfDay), y: base + 1 }, 180, colours.ink),
    through === undefined ? '' : diamond(days, through, base),
  ];
  return { svg: svg.join(''), height: base - top + 28 };
}

function key(request: RecencyRequest, width: number, top: number): Part {
  const { asOfDay, lookedBack, selected, checkFromDay, events } = request;
  const through = selected.goodThroughDay;
  const [counting, not] = [true, false].map((counts) => events.some((event) => countsIn(request, event) === counts));
  const dot = (counts: boolean) => (x: number, y: number) =>
    element('circle', {
      cx: x + 12,
      cy: y,
      r: dotRadius,
      fill: counts ? colours.path : colours.paper,
      stroke: counts ? colours.paper : colours.faint,
      'stroke-width': counts ? 0.8 : 1.6,
    });
  const box = (attributes: Readonly<Record<string, string | number>>) => (x: number, y: number) =>
    element('rect', { x, y: y - 6, width: 24, height: 12, ...attributes });
  const lapsed = through !== undefined && through < asOfDay;
  const lines = [
    keyLine(
      `as of ${dayInWords(asOfDay)}`,
      (x, y) =>
        element('line', { x1: x + 12, x2: x + 12, y1: y - 7, y2: y + 4, stroke: colours.ink, 'stroke-width': 2 }) +
        arrowhead({ x: x + 12, y: y + 7 }, 180, colours.ink),
    ),
    ...(lookedBack === undefined ? [] : [keyLine(`the ${lookedBack.words} looked back over`, box(backFill))]),
    ...(counting === true ? [keyLine('counted, with how many (long: several days)', dot(true))] : []),
    ...(not === true ? [keyLine('not counted', dot(false))] : []),
    ...(checkFromDay === undefined || through === undefined ? [] : [keyLine(`CHECK from ${dayInWords(checkFromDay)}`, box(checkFill))]),
    ...(through === undefined
      ? []
      : [
          keyLine(`good through ${dayInWords(through)}`, (x, y) => diamond({ x: () => x + 12 }, 0, y)),
          keyLine(lapsed ? 'lapsed since' : 'what is left', (x, y) => bar({ from: x, to: x + 24 }, y, 8, selected.verdict, lapsed)),
        ]),
  ];
  const rows = lines.flatMap(({ text, sample }) =>
    wrapped(text, width - 2 * margin - 32).map((words, index) => ({ words, sample: index === 0 ? sample : undefined })),
  );
  const svg = rows.map(({ words, sample }, index) => {
    const y = top + 12 + index * lineHeight;
    return (sample?.(margin, y - 4) ?? '') + label(words, { x: margin + 32, y });
  });
  return { svg: svg.join(''), height: rows.length * lineHeight + 4 };
}

/** What is on the line of days; for a list only the year round the day it is judged on, so that the next lapses stand apart. */
function daysOf({ asOfDay, lookedBack, selected, events, checkFromDay, others }: RecencyRequest, shown: readonly Lapsing[]): number[] {
  const own = [selected.goodThroughDay, lookedBack?.firstDay, lookedBack?.lastDay, checkFromDay, ...events.map(({ day }) => day)];
  const all = [...own, ...shown.map(({ goodThroughDay }) => goodThroughDay)].filter((day) => day !== undefined);
  const maxDays = others === undefined ? Infinity : 366;
  return [asOfDay - 7, asOfDay + 7, ...all.map((day) => Math.min(asOfDay + maxDays, Math.max(asOfDay - maxDays, day)))];
}

function described(request: RecencyRequest, othersInWords: string): string {
  const { selected, asOfDay, lookedBack, events, counted, needed, reason } = request;
  const counting = events.filter((event) => countsIn(request, event)).map(({ day, count }) => `${count} on ${dayInWords(day)}`);
  const sentences = [
    `${selected.item}: ${selected.verdict} as of ${dayInWords(asOfDay)}, ${leftInWords(selected, asOfDay)}`,
    ...(selected.goodThroughDay === undefined ? [] : [`Good through ${dayInWords(selected.goodThroughDay)}`]),
    ...(counted === undefined || needed === undefined ? [] : [`${counted} counted, ${needed} needed`]),
    ...(lookedBack === undefined
      ? []
      : [
          `Looked back over ${lookedBack.words}, from ${dayInWords(lookedBack.firstDay)} to ${dayInWords(lookedBack.lastDay)}: ${counting.length === 0 ? 'nothing' : counting.join(', ')}`,
        ]),
    ...(reason === undefined ? [] : [reason]),
    ...(othersInWords === '' ? [] : [othersInWords]),
  ];
  return sentences.map((sentence) => `${sentence}.`).join(' ');
}

/** As high as its lines need, at this width in pixels. */
export function recencyPicture(request: RecencyRequest, width: number): string {
  const next = lapsingNext(request.others ?? [], request.asOfDay);
  const days = dayLine(daysOf(request, next.shown), margin, width - margin);
  const head = heading(request, width);
  const drawn = line(request, days, head.height + 6);
  const keyTop = head.height + 6 + drawn.height;
  const words = key(request, width, keyTop);
  const others = next.draw(days, request.asOfDay, width, keyTop + words.height);
  const height = Math.ceil(keyTop + words.height + others.height + 8);
  return svgDocument({ width, height, title: `How long it holds: ${request.selected.item}`, description: described(request, next.inWords) }, [
    head.svg,
    drawn.svg,
    words.svg,
    others.svg,
  ]);
}
