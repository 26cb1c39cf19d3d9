// The bundle answers as the registry does: every worked example, every bad input, ranges, blanks and dates.
import { beforeAll, describe, expect, it } from 'vitest';
import { registry } from '../../functions/registry/index.generated';
import type { FunctionDeclaration } from '../../functions/registry/declaration';
import { evaluate } from '../../functions/registry/evaluate';
import { utcDateHost } from '../../functions/registry/utcDateHost';
import { Double } from '../google/double/services';
import { bareContext, type BareContext } from './bareContext';
import { builtCode } from './built';

let code = '';
let bare: BareContext;

beforeAll(async () => {
  ({ code } = await builtCode());
  bare = bareContext(code, new Double('Etc/UTC').globals());
});

const bad: readonly unknown[] = [
  'warm',
  '',
  -1234.5,
  1e300,
  '#N/A',
  true,
  [[1, 2]],
  [
    [1, 2],
    [3, 4],
  ],
  [['', '']],
  [[1], ['x'], ['']],
  undefined,
];

type Answer = { readonly answer: unknown } | { readonly sentence: string };

/** Dates of whichever realm as text that compares. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return (value as unknown[]).map(plain);
  return Object.prototype.toString.call(value) === '[object Date]' ? `date ${(value as Date).toISOString()}` : value;
}

function answerOf(work: () => unknown, isError: (thrown: unknown) => boolean): Answer {
  try {
    return { answer: plain(work()) };
  } catch (thrown) {
    expect(isError(thrown)).toBe(true);
    return { sentence: (thrown as Error).message };
  }
}

/** The same arguments with their dates made in the context, as the platform does. */
function inContext(value: unknown): unknown {
  if (Array.isArray(value)) return (value as unknown[]).map(inContext);
  return value instanceof Date ? bare.date(value.getTime()) : value;
}

function compare(declaration: FunctionDeclaration, given: readonly unknown[]): void {
  const wanted = answerOf(
    () => evaluate(declaration, given, utcDateHost),
    (thrown) => thrown instanceof Error,
  );
  const got = answerOf(
    () => bare.call(declaration.name, ...given.map(inContext)),
    (thrown) => bare.isError(thrown),
  );
  expect(got, `${declaration.name}(${JSON.stringify(given)})`).toEqual(wanted);
  if ('answer' in got && Array.isArray(got.answer)) {
    const widths = new Set((got.answer as unknown[]).map((row) => (Array.isArray(row) ? row.length : -1)));
    expect(widths.size).toBe(1);
    expect(widths.has(-1)).toBe(false);
  }
}

describe.each(registry.map((declaration) => ({ name: declaration.name, declaration })))('$name', ({ declaration }) => {
  const example = declaration.examples[0]?.arguments ?? [];

  it('answers its examples, also with dates as cells hold them', () => {
    for (const { arguments: given } of declaration.examples) {
      compare(declaration, given);
      compare(
        declaration,
        given.map((one) => (typeof one === 'string' && /^\d{4}-\d\d-\d\d$/.test(one) ? new Date(`${one}T00:00:00Z`) : one)),
      );
      compare(
        declaration,
        given.map((one) => (Array.isArray(one) ? one : [[one], [one]])),
      );
    }
  });

  it('says the same sentence about every bad argument', () => {
    Object.keys(declaration.parameters).forEach((_, index) => {
      for (const value of bad)
        compare(
          declaration,
          Object.keys(declaration.parameters).map((__, place) => (place === index ? value : example[place])),
        );
    });
    compare(declaration, [...Object.keys(declaration.parameters).map((_, place) => example[place]), 1]);
  });
});

describe('weather reports', () => {
  // Invented reports; the bundle lacks the parser's half for remarks, the registry has it.
  const ends = [
    '',
    ' RMK AO2 SLP134 T00781018',
    ' RMK AO2 PK WND 28045/1955 RAB05E30 10123 4/012 58033',
    ' RMK',
    ' RMK nonsense //',
    '=RMK AO2',
    '=',
    ' TEMPO 4000 RA RMK T00781018',
    ' NOSIG',
    ' BECMG FM1230 25015KT',
  ];
  const starts = [
    'METAR ZZZZ 121955Z 12015G22KT 10SM FEW040 08/M02 A2999',
    'ZZZZ 121950Z AUTO VRB03MPS CAVOK M00/M01 Q1013',
    'SPECI ZZZZ 121955Z 00000KT 9999 10/05',
    'METAR ZZZZ 121955Z 12015KT 10SM CLR 08/',
    'METAR ZZZZ 121955Z COR 35010KT 1/2SM R09/2400FT FG VV002 15/15 Q0998',
  ];

  it('are read alike with any remarks', () => {
    const declaration = registry.find(({ name }) => name === 'METAR_READ');
    expect(declaration).toBeDefined();
    if (declaration === undefined) return;
    for (const start of starts) for (const end of ends) compare(declaration, [start + end]);
  });
});

describe('libraries without what is left out', () => {
  /** The same numbers at every run. */
  function* evenly(): Generator<number, never> {
    for (let state = 12345; ; state = (state * 1103515245 + 12345) % 2147483648) yield state / 2147483648;
  }
  const numbers = evenly();
  const between = (low: number, high: number): number => low + (high - low) * numbers.next().value;
  const rows = Array.from({ length: 2000 }, (_, row) => row);
  const column = (value: (row: number) => number): number[][] => rows.map((row) => [value(row)]);
  const latitudes = column((row) => [between(-90, 90), 0, 90, -90, between(-0.01, 0.01)][row % 5] ?? 0);
  const longitudes = column(() => between(-180, 180));
  const named = (name: string): FunctionDeclaration => {
    const found = registry.find((declaration) => declaration.name === name);
    if (found === undefined) throw new Error(`no ${name}`);
    return found;
  };

  /** Alike, and answers indeed: not two thousand times the same sentence. */
  function compareNumbers(name: string, given: readonly unknown[]): void {
    compare(named(name), given);
    const answers = bare.call(name, ...given) as unknown[][];
    expect(answers.filter(([first]) => typeof first === 'number').length, name).toBeGreaterThan(rows.length * 0.95);
  }

  it('measure the earth alike, near opposite points, along the equator and at the poles too', () => {
    // Every third pair is nearly opposite, where the way to the answer is another.
    const otherLatitudes = latitudes.map(([latitude = 0], row) => [
      row % 3 === 0 ? Math.max(-90, Math.min(90, -latitude + between(-0.5, 0.5))) : between(-90, 90),
    ]);
    const otherLongitudes = longitudes.map(([longitude = 0], row) => [
      row % 3 === 0 ? Math.max(-180, Math.min(180, longitude + (longitude > 0 ? -180 : 180) + between(-0.5, 0.5))) : between(-180, 180),
    ]);
    compareNumbers('COURSE_LEG', [latitudes, longitudes, otherLatitudes, otherLongitudes]);
    compareNumbers('COURSE_POINT', [latitudes, longitudes, column(() => between(0, 360)), column(() => between(0, 10000))]);
  });

  it('give the same variation everywhere', () => {
    const dates = rows.map((row) => [`202${5 + (row % 5)}-0${1 + (row % 9)}-15`]);
    compareNumbers('MAGNETIC_VARIATION', [latitudes, longitudes, dates, column(() => between(-1000, 40000))]);
  });
});

describe('dates', () => {
  const zones = ['Pacific/Auckland', 'Pacific/Kiritimati', 'Pacific/Pago_Pago', 'America/Los_Angeles', 'Asia/Kolkata', 'Etc/UTC'];

  it.each(zones)('mean the day of the spreadsheet in %s, though the script runs elsewhere', (zone) => {
    const double = new Double(zone);
    double.recorder.mode = 'CUSTOM_FUNCTION';
    const there = bareContext(code, double.globals());
    const known = registry.find(({ name }) => name === 'CYCLE_ID');
    expect(known).toBeDefined();
    // Midnight of 22 January 2026 there, found without the host: the first second that shows that day.
    const around = Date.UTC(2026, 0, 22);
    const clock = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' });
    const midnight =
      Array.from({ length: 27 * 4 }, (_, quarter) => around - 14 * 3_600_000 + quarter * 900_000).find(
        (instant) => clock.format(instant) === '2026-01-22 00:00:00',
      ) ?? Number.NaN;
    // 22 January 2026 is the first effective date of the year (ICAO: cycle 2601), the day before belongs to 2513.
    expect(there.call('CYCLE_ID', there.date(midnight))).toBe('2601');
    expect(there.call('CYCLE_ID', there.date(midnight - 1000))).toBe('2513');
    const next = there.call('CYCLE_NEXT', there.date(midnight)) as Date;
    expect(clock.format(next.getTime())).toBe('2026-02-19 00:00:00');
    expect(double.recorder.calls.filter(({ name }) => name === 'Spreadsheet.getSpreadsheetTimeZone')).toHaveLength(2 + 1);
  });

  it('cost no service call where there is none', () => {
    const double = new Double('Asia/Kolkata');
    const there = bareContext(code, double.globals());
    there.call('PRESSURE_ALTITUDE', 5883, 30.1);
    there.call('CYCLE_ID', '2026-01-22');
    expect(double.recorder.calls).toEqual([]);
  });

  it('that cannot be placed are told as such, not as a mistake of the function', () => {
    const double = new Double('Asia/Kolkata');
    double.recorder.failAt = 1;
    const there = bareContext(code, double.globals());
    const given = [[there.date(Date.UTC(2026, 0, 22))], [there.date(Date.UTC(2026, 1, 22))]];
    expect(() => there.call('CYCLE_ID', given)).toThrow(
      /^CYCLE_ID: the spreadsheet's time zone must be readable for dates; got "Service Spreadsheets failed/,
    );
  });

  it("of another realm than the script's are taken too", () => {
    const there = bareContext(code, new Double('Etc/UTC').globals());
    expect(there.call('CYCLE_ID', new Date(Date.UTC(2026, 0, 22)))).toBe('2601');
    expect(there.call('CYCLE_ID', [[new Date(Date.UTC(2026, 0, 22))], ['']])).toEqual([['2601'], ['']]);
  });

  it('need no platform at all in a bare context', () => {
    const there = bareContext(code);
    expect(there.call('CYCLE_ID', there.run('new Date(2026, 0, 22)'))).toBe('2601');
  });
});
