// Calendar files read back by another program's parser (ical.js): days and moments, in whichever zone they are written, and
// importing twice.
import { build } from 'esbuild';
import ICAL from 'ical.js';
import { afterEach, describe, expect, it } from 'vitest';
import { aircraftEntries, diaryEntries, licenceEntries, pilotEntries, together, type AnswerRow } from '../../addon/calendar/calendarEntries';
import { calendarText, slug, type CalendarEntries } from '../../addon/calendar/calendarText';
import { call, plain } from '../support/call';

const rowsOf = (value: unknown): AnswerRow[] => (value as unknown[][]).map((row) => row.map(plain) as AnswerRow);
const noon = (day: string): Date => new Date(`${day}T12:00:00Z`);
const licences = [
  ['North', 'navigation', '2024-12-31', 12, 300, 'EUR'],
  ['South', 'charts', '', 12, 90, 'EUR'],
];
/** As the calendar reads them: without the months. */
const licenceRows = licences.map((row) => row.filter((_, column) => column !== 3));
const diary = (from: string): AnswerRow[] =>
  rowsOf(
    call('LEDGER_DIARY', [['North'], ['South']], [['navigation'], ['charts']], [['28-day'], ['56-day']], from, 2, licences, [['0901Z'], ['0000Z']]),
  );
const pilot = (asOf: string, landed: string): AnswerRow[] =>
  rowsOf(
    call(
      'PILOT_STATUS',
      [
        ['date', 'aircraft', 'day landings'],
        [landed, 'North', 3],
      ],
      [
        ['aircraft', 'category', 'class'],
        ['North', 'airplane', 'SEL'],
      ],
      [
        ['flight review', '2023-05-01', ''],
        ['club talk', '2025-01-31', ''],
      ],
      asOf,
      'FAA, EASA',
    ),
  );

interface Read {
  readonly uid: string;
  readonly sequence: number;
  readonly title: string;
  readonly details: string;
  readonly when: string;
  readonly allDay: boolean;
  readonly stamp: string;
}

function read(text: string): Read[] {
  const component = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return component.getAllSubcomponents('vevent').map((one) => {
    const event = new ICAL.Event(one);
    return {
      uid: event.uid,
      sequence: Number(event.sequence),
      title: event.summary,
      details: event.description,
      when: event.startDate.isDate ? event.startDate.toString() : event.startDate.toJSDate().toISOString(),
      allDay: event.startDate.isDate,
      stamp: String(one.getFirstPropertyValue('dtstamp')),
    };
  });
}

const zone = process.env.TZ;
afterEach(() => {
  process.env.TZ = zone;
});

describe('the file, read back', () => {
  const all = (): CalendarEntries =>
    together(diaryEntries(diary('2024-11-11'), ['North', 'South']), licenceEntries(licenceRows), pilotEntries(pilot('2024-11-11', '2024-11-01')));

  it.each(['Etc/UTC', 'Pacific/Honolulu', 'Pacific/Kiritimati', 'Europe/Paris'])('has each day and moment of UTC, written in %s', (name) => {
    process.env.TZ = name;
    const events = read(calendarText('Rampwright', all(), noon('2024-11-11')));
    // AIRAC dates 28 November and 26 December 2024 (Airservices Australia); three landings on 1 November serve through 29 January.
    expect(events.map(({ title, when, allDay }) => [title, when, allDay])).toEqual([
      ['Load data: 28-day, cycle 2412 (North)', '2024-11-28T09:01:00.000Z', false],
      ['Load data: 56-day, cycle 2413 (South)', '2024-12-26T00:00:00.000Z', false],
      ['Load data: 28-day, cycle 2413 (North)', '2024-12-26T09:01:00.000Z', false],
      ['Licence ends: navigation (North)', '2024-12-31', true],
      ['Last good day: passengers, SEL', '2025-01-29', true],
      ['Last good day: flight review', '2025-05-31', true],
      ['Last good day: passengers, SEL', '2025-01-29', true],
      ['Last good day: club talk', '2025-01-31', true],
    ]);
    expect(new Set(events.map(({ stamp }) => stamp))).toEqual(new Set(['2024-11-11T12:00:00Z']));
  });

  it('has a UID of its own for each, the same every time', () => {
    const [one, again] = [calendarText('Rampwright', all(), noon('2024-11-11')), calendarText('Rampwright', all(), noon('2024-11-11'))];
    expect(again).toBe(one);
    const ids = read(one).map(({ uid }) => uid);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids[0]).toBe('load-2024-11-28@rampwright');
  });

  it('moves a lapse that another flight has put off, and leaves the rest where it was', () => {
    const before = read(calendarText('Rampwright', pilotEntries(pilot('2024-11-11', '2024-11-01')), noon('2024-11-11')));
    const after = read(calendarText('Rampwright', pilotEntries(pilot('2024-11-20', '2024-11-15')), noon('2024-11-20')));
    const of = (events: readonly Read[], title: string): Read | undefined => events.find((event) => event.title === title);
    for (const title of before.map((event) => event.title)) {
      expect(of(after, title)?.uid).toBe(of(before, title)?.uid);
      expect(of(after, title)?.sequence).toBe((of(before, title)?.sequence ?? 0) + 9 * 86_400);
    }
    expect(of(after, 'Last good day: passengers, SEL')?.when).toBe('2025-02-12');
    expect(of(after, 'Last good day: flight review')?.when).toBe('2025-05-31');
    const visits = (from: string): string[] =>
      read(calendarText('Rampwright', diaryEntries(diary(from), ['North']), noon(from))).map(({ uid }) => uid);
    expect(visits('2024-11-11').filter((uid) => visits('2024-11-20').includes(uid)).length).toBe(3);
  });

  /** What stands in a calendar after one file and then another: the higher SEQUENCE of a UID, then the later DTSTAMP (RFC 5546, 2.1.5). */
  function imported(...files: readonly string[]): string[] {
    const there = new Map<string, Read>();
    for (const event of files.flatMap(read)) {
      const known = there.get(event.uid);
      const newer = known === undefined || event.sequence > known.sequence || (event.sequence === known.sequence && event.stamp > known.stamp);
      if (newer) there.set(event.uid, event);
    }
    return [...there.values()].map(({ title, when }) => `${title} ${when}`);
  }

  it('moves the end of a licence that is corrected or renewed, on the same day too, and leaves nothing behind', () => {
    const file = (end: string, at: string): string =>
      calendarText('Rampwright', licenceEntries([['North', 'navigation', end, 300, 'EUR']]), new Date(at));
    const first = file('2024-12-31', '2024-11-11T10:00:00Z');
    expect(imported(first)).toEqual(['Licence ends: navigation (North) 2024-12-31']);
    expect(imported(first, file('2024-12-13', '2024-11-11T10:00:05Z'))).toEqual(['Licence ends: navigation (North) 2024-12-13']);
    // Renewed by two years: beyond the months of the diary.
    expect(imported(first, file('2026-12-31', '2024-11-12T10:00:00Z'))).toEqual(['Licence ends: navigation (North) 2026-12-31']);
    expect(imported(file('2026-12-31', '2024-11-12T10:00:00Z'), first)).toEqual(['Licence ends: navigation (North) 2026-12-31']);
  });

  it('moves a load of which the time is corrected', () => {
    const load = (time: string, at: string): string =>
      calendarText(
        'Rampwright',
        diaryEntries([['load', '', '2024-11-28', time, '', '', '28-day, cycle 2412: navigation (North)']], []),
        new Date(at),
      );
    expect(imported(load('0000Z', '2024-11-11T10:00:00Z'), load('0901Z', '2024-11-11T10:01:00Z'))).toEqual([
      'Load data: 28-day, cycle 2412 2024-11-28T09:01:00.000Z',
    ]);
  });

  it.each([
    ['28-day, cycle 2412: navigation (North, South)', '28-day, cycle 2412'],
    ['28-day, cycle 2413: navigation (North); 56-day, cycle 2413: charts: north (South)', '28-day and 56-day, cycle 2413'],
    ['28-day, cycle 2413: navigation (North); 28 from 2026-01-22: terrain (South)', '28-day, cycle 2413; 28 from 2026-01-22'],
    ['something else', 'something else'],
  ])('titles a visit for %s by every series that changes', (about, title) =>
    expect(diaryEntries([['load', '', '2026-11-26', '0901Z', '', '', about]], []).entries).toMatchObject([
      { title: `Load data: ${title}`, details: about, identity: 'load 2026-11-26' },
    ]),
  );

  it('names the aircraft of a visit: those in its words, each once, of many the first three', () => {
    const about = '28-day, cycle 2412: navigation (North, South (old)); 56-day, cycle 2412: charts (South (old), West, East)';
    const title = (names: readonly string[]): string | undefined =>
      diaryEntries([['load', '', '2026-11-26', '0901Z', '', '', about]], names).entries[0]?.title;
    expect(title(['North', 'North', '', 'Nor', 'Middle'])).toBe('Load data: 28-day and 56-day, cycle 2412 (North)');
    expect(title(['North', 'South (old)', 'West', 'East'])).toBe('Load data: 28-day and 56-day, cycle 2412 (North, South (old), West and 1 more)');
  });

  it('reminds of a load two days before, of an end two weeks before at 9 in the morning', () => {
    const component = new ICAL.Component(ICAL.parse(calendarText('Rampwright', all(), noon('2024-11-11'))) as unknown[]);
    const reminders = component.getAllSubcomponents('vevent').map((event) => {
      const alarms = event.getAllSubcomponents('valarm');
      const [one] = alarms;
      // RFC 5545, 3.6.6: a display alarm has its words, and a trigger before the start.
      return [
        alarms.length,
        one?.getFirstPropertyValue('action'),
        one?.getFirstPropertyValue('description'),
        String(one?.getFirstPropertyValue('trigger')),
      ];
    });
    expect(reminders[0]).toEqual([1, 'DISPLAY', 'Load data: 28-day, cycle 2412 (North)', '-P2D']);
    expect(reminders[3]).toEqual([1, 'DISPLAY', 'Licence ends: navigation (North)', '-P13DT15H']);
  });

  it('says what it leaves out', () => {
    expect(all().leftOut).toContain('1 licence without an end not in this list');
    expect(all().leftOut).toContain('passengers at night: no last good day');
    expect(pilotEntries(pilot('2025-03-01', '2024-11-01')).leftOut).toContain('passengers, SEL: lapsed on 2025-01-29');
  });

  it('takes the inspections of an aircraft by its calendar, and keeps commas, lines and other alphabets', () => {
    const rows: AnswerRow[] = [
      ['OK', '2027-03-31', 126, '', '14 CFR 91.409(a)(1)'],
      ['OK', '', '', 12, 'hours'],
      ['', '', '', '', ''],
      ['CHECK', '2026-12-01', 6, '', 'a; b, c\nd \\ e'],
    ];
    const items = [
      { aircraft: 'Möwe', item: 'annual inspection' },
      { aircraft: 'Möwe', item: 'oil' },
      { aircraft: '', item: '' },
      { aircraft: 'Кайра', item: 'rope, checked; weekly' },
    ];
    const { entries, leftOut } = aircraftEntries(rows, items);
    expect(leftOut).toEqual(['Möwe oil: no last good day']);
    const events = read(calendarText('Aircraft', { entries, leftOut }, noon('2026-11-25')));
    expect(events.map(({ title, details, when }) => [title, details, when])).toEqual([
      ['Last good day: Möwe annual inspection', '14 CFR 91.409(a)(1)', '2027-03-31'],
      ['Last good day: Кайра rope, checked; weekly', 'a; b, c\nd \\ e', '2026-12-01'],
    ]);
    expect(events.every(({ uid }) => /^[a-z0-9-]+@rampwright$/.test(uid))).toBe(true);
  });

  it('keeps the lines to 75 bytes and ends them as the standard says', () => {
    const text = calendarText(
      'Rampwright',
      { entries: [{ identity: 'x', title: 'ö'.repeat(200), details: '', when: '2026-11-25', remindDays: 1 }], leftOut: [] },
      noon('2026-11-25'),
    );
    const lines = text.split('\r\n');
    expect(lines.every((line) => Buffer.byteLength(line) <= 75)).toBe(true);
    expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
    expect(read(text)[0]?.title).toBe('ö'.repeat(200));
  });
});

it('tells apart what would look alike, and numbers what is alike', () => {
  expect(slug('A b')).toBe('a-b');
  expect(slug('Ä')).not.toBe(slug('Ö'));
  const entry = { identity: 'same', title: 'one', details: '', when: '2026-11-25', remindDays: 1 };
  expect(read(calendarText('x', { entries: [entry, entry], leftOut: [] }, noon('2026-11-25'))).map(({ uid }) => uid)).toEqual([
    'same@rampwright',
    'same-2@rampwright',
  ]);
  expect(() => calendarText('x', { entries: [{ ...entry, when: 'soon' }], leftOut: [] }, noon('2026-11-25'))).toThrow('got "soon"');
});

it('bundles for the browser without anything of Node', async () => {
  const { outputFiles, metafile } = await build({
    entryPoints: ['addon/calendar/calendarText.ts'],
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2019',
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  expect(Object.keys(metafile.inputs).some((path) => path.includes('ical-generator'))).toBe(true);
  expect(outputFiles[0]?.text.length).toBeLessThan(60_000);
});

describe('texts with characters that a calendar file may not hold', () => {
  const controls = Array.from({ length: 160 }, (_, code) => code)
    .filter((code) => code < 32 || code > 126)
    .map((code) => String.fromCharCode(code))
    .join('');
  const text = calendarText(
    'Dates',
    {
      entries: [
        { identity: 'one', title: `Last\u0007 good day${controls}end`, details: `two\r\nlines \ud800${controls}`, when: '2026-11-26', remindDays: 1 },
      ],
      leftOut: [],
    },
    new Date('2026-11-25T00:00:00Z'),
  );

  it('are written without them', () => {
    expect(text.replace(/\r\n/g, '')).not.toMatch(/[\u0000-\u0008\u000a-\u001f\u007f-\u009f]/);
    expect(text).not.toMatch(/[\ud800-\udfff]/);
  });

  it('and read back', () => {
    const event = new ICAL.Component(ICAL.parse(text) as unknown[]).getFirstSubcomponent('vevent');
    expect(String(event?.getFirstPropertyValue('summary'))).toMatch(/^Last {2}good day .*end$/s);
    expect(String(event?.getFirstPropertyValue('description'))).toMatch(/^two\nlines \ufffd/);
  });
});
