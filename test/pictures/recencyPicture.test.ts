// The line of days: what counts is told from what does not, nothing missing looks good, and at most eight next lapses are drawn.
import { describe, expect, it } from 'vitest';
import type { Lapsing } from '../../addon/pictures/lapsingNext';
import { recencyPicture, type RecencyRequest } from '../../addon/pictures/recencyPicture';
import { widthOfText, wrapped } from '../../addon/pictures/svg';
import { dayLine, dayTicks, groupedEvents } from '../../addon/pictures/timeLine';
import { serialFromIso } from '../../addon/workbook/serialDates';
import { numbersIn, textSizes } from '../support/svgText';

const day = serialFromIso;
const asOfDay = day('2026-11-25');
const landings: RecencyRequest = {
  selected: { item: 'landings', verdict: 'OK', goodThroughDay: day('2026-12-31') },
  asOfDay,
  counted: 3,
  needed: 3,
  lookedBack: { firstDay: day('2026-08-28'), lastDay: asOfDay, words: '90 days' },
  events: [
    { day: day('2026-08-20'), count: 5 },
    { day: day('2026-10-03'), count: 1 },
    { day: day('2026-11-10'), count: 2 },
  ],
};
const described = (svg: string): string => /<desc>(.*)<\/desc>/.exec(svg)?.[1] ?? '';
const written = (svg: string): string[] => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text = '']) => text);
const okFill = '#009e73';

describe('one item', () => {
  it('says the verdict, the count, the days and what is left', () => {
    const svg = recencyPicture(landings, 276);
    expect(described(svg)).toBe(
      'landings: OK as of 2026-11-25, 36 days left. Good through 2026-12-31. 3 counted, 3 needed. Looked back over 90 days, from 2026-08-28 to 2026-11-25: 1 on 2026-10-03, 2 on 2026-11-10.',
    );
    expect(written(svg)).toEqual(
      expect.arrayContaining([
        'landings',
        'OK',
        '36 days left',
        '3 counted, 3 needed',
        'as of 2026-11-25',
        'the 90 days looked back over',
        'good through 2026-12-31',
      ]),
    );
  });

  it('draws what counts full, and what does not hollow', () => {
    const dots = [...recencyPicture(landings, 505).matchAll(/<rect [^>]*rx="5" fill="([^"]*)"/g)].map(([, fill]) => fill);
    expect(dots.sort()).toEqual(['#0072b2', '#0072b2', '#ffffff']);
  });

  it('never writes the number of what counts beside that of what does not, so that 2 and 3 are not read as 23', () => {
    const events = [
      { day: day('2026-10-31'), count: 2 },
      { day: day('2026-11-02'), count: 3 },
    ];
    const svg = recencyPicture(
      { ...landings, lookedBack: { firstDay: day('2026-05-01'), lastDay: day('2026-10-31'), words: '6 calendar months' }, events },
      268,
    );
    const heights = ['2', '3'].map((count) => new RegExp(`y="([\\d.]+)"[^>]*>${count}</text>`).exec(svg)?.[1]);
    expect(Math.abs(Number(heights[0]) - Number(heights[1]))).toBeGreaterThanOrEqual(20);
    const bottoms = numbersIn(svg).map(({ y }) => y);
    expect(Math.max(...bottoms)).toBeLessThanOrEqual(Number(/height="(\d+)"/.exec(svg)?.[1]));
  });

  it.each([
    ['the last good day', 0, 'this is the last good day'],
    ['a day left', 1, '1 day left'],
    ['lapsed yesterday', -1, 'lapsed 1 day ago'],
  ] as const)('counts days: %s', (_, left, words) =>
    expect(written(recencyPicture({ ...landings, selected: { ...landings.selected, goodThroughDay: asOfDay + left } }, 276))).toContain(words),
  );

  it('draws nothing as left where it has lapsed, or where no day is known', () => {
    for (const goodThroughDay of [asOfDay - 20, undefined]) {
      const svg = recencyPicture({ ...landings, selected: { item: 'landings', verdict: 'NO', goodThroughDay } }, 276);
      expect(svg).not.toContain(okFill);
      expect(written(svg)).not.toContain('what is left');
    }
    expect(written(recencyPicture({ ...landings, selected: { item: 'landings', verdict: 'NO' } }, 276))).toContain('no last good day');
  });

  it('fills only an OK', () => {
    for (const verdict of ['CHECK', 'NO', 'UNKNOWN'] as const)
      expect(recencyPicture({ ...landings, selected: { ...landings.selected, verdict } }, 276)).not.toContain(okFill);
    expect(recencyPicture(landings, 276)).toContain(okFill);
  });
});

describe('events', () => {
  it('are put together until each number has its room, none lost', () => {
    const events = Array.from({ length: 40 }, (_, index) => ({ day: 46000 + 2 * index, count: 1 }));
    const groups = groupedEvents(events, (at) => (at - 46000) * 2.5);
    expect(groups.reduce((sum, { words }) => sum + Number(words), 0)).toBe(40);
    const middles = groups.map(({ left, right, words }) => ({ at: (left + right) / 2, half: widthOfText(words) / 2 }));
    middles.slice(1).forEach(({ at, half }, index) => expect(at - half).toBeGreaterThan((middles[index]?.at ?? 0) + (middles[index]?.half ?? 0)));
    expect(groups.length).toBeGreaterThan(3);
  });

  it('stay apart where they have room, and lose their last binary bits', () => {
    expect(
      groupedEvents(
        [
          { day: 10, count: 0.1 + 0.2 },
          { day: 0, count: 2 },
        ],
        (at) => at * 5,
      ),
    ).toEqual([
      { left: -5, right: 5, words: '2' },
      { left: 45, right: 55, words: '0.3' },
    ]);
  });
});

describe('ticks', () => {
  it.each([[20], [120], [700], [4000]])('over %i days keep clear of each other and of the edges', (length) => {
    const svg = dayTicks(dayLine([46000, 46000 + length], 14, 262), 50);
    const words = [...svg.matchAll(/<text x="([\d.]+)"[^>]*>([^<]*)</g)].map(([, x, text = '']) => ({ x: Number(x), half: widthOfText(text) / 2 }));
    expect(words.length).toBeGreaterThan(1);
    words.forEach(({ x, half }, index) => {
      expect(x - half).toBeGreaterThanOrEqual(index === 0 ? 0 : (words[index - 1]?.x ?? 0) + (words[index - 1]?.half ?? 0));
      expect(x + half).toBeLessThanOrEqual(276);
    });
  });
});

describe('a list', () => {
  const others = Array.from({ length: 30 }, (_, index): Lapsing => ({
    item: `paper ${index + 1}`,
    verdict: 'OK',
    goodThroughDay: asOfDay + ((index * 7) % 30) + 1,
  }));
  const withOthers: RecencyRequest = {
    ...landings,
    others: [
      ...others,
      { item: 'old <paper>', verdict: 'NO', goodThroughDay: asOfDay - 1 },
      { item: 'lost paper', verdict: 'UNKNOWN' },
      { item: 'engine', verdict: 'CHECK', hoursLeft: 7.25 },
    ],
  };

  it('draws the eight that lapse next, in the order of the list, and says how many come later', () => {
    const svg = recencyPicture(withOthers, 276);
    const days = others.map(({ goodThroughDay = 0 }) => goodThroughDay - asOfDay);
    const next = others.filter((_, index) => (days[index] ?? 0) <= 8).map(({ item }) => item);
    expect(next).toHaveLength(8);
    expect(written(svg).filter((text) => text.startsWith('paper '))).toEqual(next);
    expect(written(svg)).toContain('Later than these: 22 more');
  });

  it('says what has lapsed, what has no day, and what goes by hours, with their verdicts', () => {
    const words = described(recencyPicture(withOthers, 276));
    expect(words).toContain('NO: old &lt;paper&gt; (lapsed 2026-11-24). UNKNOWN: lost paper (no last good day). CHECK: engine (7.3 h left)');
  });

  it('draws an arrow where a day lies beyond the year shown', () => {
    const far = recencyPicture({ ...landings, others: [{ item: 'far', verdict: 'OK', goodThroughDay: asOfDay + 3000 }] }, 276);
    expect(far).toContain('d="M-4,-4L4,0L-4,4Z"');
  });

  it.each([276, 505])('draws inside its edges at %i pixels, in text of 12, each line below the one before', (width) => {
    const svg = recencyPicture(
      {
        ...withOthers,
        selected: { ...landings.selected, item: 'a very long item, of a class with a long name, in an aircraft with another' },
        reason: 'a rule with a paragraph, and which reading of it is taken '.repeat(4),
      },
      width,
    );
    const height = Number(/height="(\d+)"/.exec(svg)?.[1]);
    expect(textSizes(svg)).toEqual([12]);
    for (const { x, y } of numbersIn(svg)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(height);
    }
    for (const [, x, anchor, escaped = ''] of svg.matchAll(/<text x="([\d.]+)" y="[\d.]+" text-anchor="(\w+)"[^>]*>([^<]*)</g)) {
      const text = escaped.replace(/&\w+;/g, '<');
      if (anchor === 'start') expect(Number(x) + widthOfText(text), text).toBeLessThanOrEqual(width);
      if (anchor === 'end') expect(Number(x) - widthOfText(text), text).toBeGreaterThanOrEqual(0);
    }
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe('broken lines of text', () => {
  it('fit their width, and end in dots where more is left out', () => {
    const text = 'one two three four five six seven eight nine ten';
    expect(wrapped(text, 90).join(' ')).toBe(text);
    for (const line of wrapped(text, 90, 2)) expect(widthOfText(line)).toBeLessThanOrEqual(90);
    expect(wrapped(text, 90, 2)).toHaveLength(2);
    expect(wrapped(text, 90, 2)[1]).toMatch(/\.\.\.$/);
  });
});
