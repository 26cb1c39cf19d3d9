// A log of several pilots: only the chosen one's flights count, blanks for nobody, and what is taken is said.
import { describe, expect, it } from 'vitest';
import { call, plain, sentenceOf } from '../../support/call';

const fleet = [
  ['aircraft', 'category', 'class'],
  ['North', 'airplane', 'SEL'],
];
const heads = ['date', 'aircraft', 'day landings', 'hours', 'pilot'];
const shared = [
  heads,
  ['2026-11-01', 'North', 2, 1, 'Ada Quill'],
  ['2026-11-02', 'North', 3, 1.5, 'Bo Marrow'],
  ['2026-11-03', 'North', 2, 0.5, ''],
  ['2026-11-04', 'North', 1, 0.7, ' ada  quill '],
];
const list = (log: unknown, pilot = ''): unknown[][] =>
  (call('PILOT_STATUS', log, fleet, [['', '', '']], '2026-11-25', 'FAA', '', '', pilot) as unknown[][]).map((row) => row.map(plain));
const row = (rows: readonly unknown[][], item: string): unknown[] => rows.find(([name]) => String(name).startsWith(item)) ?? [];
const counted = (rows: readonly unknown[][]): unknown => row(rows, 'passengers, SEL')[1];

describe('PILOT_STATUS with a column of pilots', () => {
  it('counts the chosen pilot alone, however the name is spelled, and says what names nobody', () => {
    expect(counted(list(shared, 'Ada Quill'))).toBe(3);
    expect(counted(list(shared, 'BO MARROW'))).toBe(3);
    const left = row(list(shared, 'Ada Quill'), 'flights not counted');
    expect(left.slice(0, 4)).toEqual(['flights not counted', 1, '', 'CHECK']);
    expect(left[6]).toBe('they name no pilot, in a log that names pilots');
  });

  it('counts nothing until one of several is chosen', () => {
    const rows = list(shared);
    expect(rows[0]?.slice(0, 4)).toEqual(['flights not counted, Ada Quill, Bo Marrow', '', '', 'UNKNOWN']);
    expect(rows[0]?.[6]).toBe('the log names several pilots: choose whose flights count');
    expect(row(rows, 'passengers')[3]).toBe('UNKNOWN');
    expect(rows.some(([, , , verdict]) => verdict === 'OK')).toBe(false);
  });

  it('counts nothing of others where the log has none of the chosen one', () => {
    const rows = list(shared, 'Cy Thorn');
    expect(rows[0]?.[3]).toBe('UNKNOWN');
    expect(rows[0]?.[6]).toBe('no flight of the log names the pilot chosen, only these');
  });

  it('takes the only pilot named, and a log that names nobody as a whole', () => {
    const alone = shared.filter(([, , , , pilot]) => pilot !== 'Bo Marrow');
    expect(counted(list(alone))).toBe(3);
    const blank = shared.map((one, index) => (index === 0 ? one : [...one.slice(0, 4), '']));
    expect(counted(list(blank))).toBe(8);
    expect(counted(list(blank, 'Ada Quill'))).toBe(8);
    expect(row(list(blank), 'flights not counted')).toEqual([]);
  });

  it('judges the papers all the same', () => {
    const rows = call('PILOT_STATUS', shared, fleet, [['flight review', '2026-06-01', '']], '2026-11-25', 'FAA') as unknown[][];
    expect(row(rows, 'flight review')[3]).toBe('OK');
  });

  it('leaves a column of the names in command to its owner', () => {
    const other = [heads.map((head) => (head === 'pilot' ? 'name of pic' : head)), ...shared.slice(1)];
    expect(counted(list(other))).toBe(8);
  });
});

describe('what else reads a log of several pilots', () => {
  const flight = (pilot: string): unknown[][] =>
    call(
      'PILOT_FOR_FLIGHT',
      ...[shared, fleet, [['', '', '']], 'North', '2026-11-26', '2026-11-25', 'FAA', 'yes', 'no', 'no', '', '', pilot],
    ) as unknown[][];

  it('PILOT_FOR_FLIGHT: the chosen one, or UNKNOWN with the names', () => {
    expect(row(flight('Bo Marrow'), 'passengers, SEL')[1]).toBe('OK');
    const unclear = flight('');
    expect(unclear[0]?.[1]).toBe('UNKNOWN');
    expect(String(unclear[0]?.[3])).toContain('Ada Quill, Bo Marrow');
  });

  const totals = (...given: readonly unknown[]): unknown[][] =>
    (call('LOG_TOTALS', shared, fleet, '2026-11-25', ...given) as unknown[][]).map((one) => one.slice(0, 3));

  it('LOG_TOTALS: of one, of each, and never of several together', () => {
    expect(totals('all', '', '', 'Ada Quill')).toEqual([
      ['all', 2, 1.7],
      ['no pilot named', 1, 0.5],
    ]);
    expect(totals('pilot')).toEqual([
      ['Ada Quill', 2, 1.7],
      ['Bo Marrow', 1, 1.5],
      ['no pilot named', 1, 0.5],
      ['all', 4, 3.7],
    ]);
    expect(sentenceOf('LOG_TOTALS', shared, fleet, '2026-11-25', 'all')).toBe(
      'LOG_TOTALS: pilot must be one of those whom the log names ("Ada Quill", "Bo Marrow"); got none.',
    );
    expect(sentenceOf('LOG_TOTALS', shared, fleet, '2026-11-25', 'all', '', '', 'Ada Qill')).toContain('; got "Ada Qill".');
  });

  it('AIRCRAFT_STATUS: everybody, since the aircraft flew them all', () => {
    const items = [
      ['aircraft', 'item', 'done at hours', 'every hours'],
      ['North', 'oil change', 100, 50],
    ];
    const craft = [
      ['aircraft', 'hours now', 'hours read on'],
      ['North', 100, '2026-10-31'],
    ];
    const [found] = call('AIRCRAFT_STATUS', items, craft, '2026-11-25', 'FAA', '', shared) as unknown[][];
    expect(found?.[3]).toBeCloseTo(50 - 3.7, 6);
  });
});
