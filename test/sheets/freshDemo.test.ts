// The demonstration opened on days that are awkward in the calendar, and a workbook opened again days after it was written.
import { describe, expect, it } from 'vitest';
import { openHeadless, openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { workbookData } from '../../addon/local/engine/workbookData';
import { demoOn } from '../../addon/workbook/demoOn';
import { sheetTemplates } from '../../sheets-templates';
import { defaultRoom, placesFor } from '../../sheets-templates/ledger/places';

const overall = (workbook: HeadlessWorkbook): unknown => workbook.named('trip_verdict')[0]?.[0];
const itemsNotOk = (workbook: HeadlessWorkbook): unknown[][] => workbook.named('trip_reasons').filter(([item, word]) => item !== '' && word !== 'OK');

async function opened<Seen>(written: string, today: string, see: (workbook: HeadlessWorkbook) => Seen | Promise<Seen>): Promise<Seen> {
  const workbook = await openHeadless(demoOn(sheetTemplates, written), today);
  try {
    return await see(workbook);
  } finally {
    workbook.dispose();
  }
}

describe('the demonstration, opened first on', () => {
  it.each([
    ['2026-01-01', 'the first day of a year'],
    ['2026-01-31', 'the end of a month, before a short one'],
    ['2027-02-25', 'a trip from one month into the next'],
    ['2026-12-20', 'four days before data changes, so in the middle of a trip three days ahead'],
    ['2026-12-21', 'three days before data changes, so on the first day of the trip'],
    ['2026-12-24', 'a day on which data changes'],
    ['2026-12-28', 'a trip from one year into the next'],
    ['2028-02-25', 'a trip over a leap day'],
    ['2028-02-29', 'a leap day'],
    ['2028-12-31', 'the end of a leap year'],
    ['2029-12-26', 'the last days of the magnetic model'],
  ])('%s, %s, is OK', async (day) => {
    const seen = await opened(day, day, (workbook) => [
      overall(workbook),
      itemsNotOk(workbook),
      workbook.value('Start', 'A8'),
      workbook.value('Descent and hold card', 'B2'),
    ]);
    expect(seen).toEqual(['OK', [], 'OK', 'OK']);
  });

  it('a day beyond the magnetic model is UNKNOWN for the wind, and for nothing that does not rest on it', async () => {
    const [verdict, items] = await opened('2032-02-29', '2032-02-29', (workbook) => [overall(workbook), itemsNotOk(workbook).map(([item]) => item)]);
    expect(verdict).toBe('UNKNOWN');
    expect(items).toEqual(['Take-off runway', 'Landing runway', 'Landing, alternate', 'Wind limits']);
  });
});

describe('a workbook opened four days after it was written', () => {
  const inWords = 'judged on 25 November 2026, not on today, 29 November 2026: as_of on Start takes today, or =TODAY()';

  it('says so on Start, on the Trip sheet, on the Data ledger and on the Currency log, and in the verdict', async () => {
    const seen = await opened('2026-11-25', '2026-11-29', (workbook) => ({
      start: workbook.values('Start', 'A8:B8'),
      verdict: overall(workbook),
      dates: workbook.named('trip_reasons').find(([item]) => item === 'Dates'),
      tops: [workbook.value('Trip sheet', 'G4'), workbook.value('Data ledger', 'L1'), workbook.value('Currency log', 'L1')],
      ledger: workbook.value('Data ledger', 'E3'),
      currency: workbook.values('Currency log', 'B3:B4').flat(),
    }));
    expect(seen).toEqual({
      start: [['CHECK', inWords]],
      verdict: 'CHECK',
      dates: ['Dates', 'CHECK', inWords],
      tops: Array(3).fill('judged on 25 November 2026, not today'),
      ledger: expect.stringContaining(`CHECK: ${inWords}. `) as string,
      currency: Array(2).fill(expect.stringContaining(`CHECK: ${inWords}. `)) as string[],
    });
  });

  it('makes of a ledger whose cards are all OK a CHECK', async () => {
    const rowsOf = (letters: string, from: number, rows: number, kept: number): string[] =>
      [...letters].flatMap((column) =>
        Array.from({ length: rows }, (_, index) => from + index).flatMap((row) => (row === kept ? [] : `${column}${row}`)),
      );
    // The obstacles of the first aircraft and their one load are left.
    const { cards, loads } = placesFor(defaultRoom);
    const emptied = [...rowsOf('FEDCBA', cards.first, 10, cards.first + 2), ...rowsOf('IHGFEDCBA', loads.first, 13, loads.first + 6)];
    const blanks = Object.fromEntries(emptied.map((place) => [place, '']));
    const verdicts = [];
    for (const today of ['2026-11-25', '2026-11-26'])
      verdicts.push(
        await opened('2026-11-25', today, async (workbook) => {
          await workbook.set('Data ledger', blanks);
          return workbook.value('Data ledger', 'C3');
        }),
      );
    expect(verdicts).toEqual(['OK', 'CHECK']);
  });

  it('is OK again once as_of is today, typed or by formula', async () => {
    const seen = await opened('2026-11-25', '2026-11-25', async (workbook) => {
      await workbook.set('Start', { A6: { date: '2026-11-24' } });
      const before = [overall(workbook), itemsNotOk(workbook).map(([item]) => item)];
      await workbook.set('Start', { A6: { date: '2026-11-25' } });
      const typed = overall(workbook);
      await workbook.set('Start', { A6: '=TODAY()' });
      return [before, typed, overall(workbook)];
    });
    // The reports are of the day after as_of then.
    const weather = ['departure', 'destination', 'alternate'].map((place) => `Weather, ${place}`);
    expect(seen).toEqual([['CHECK', ['Dates', ...weather]], 'OK', 'OK']);
  });

  it('is told when it is loaded from its file on the later day', async () => {
    const workbook = await openSaved(workbookData(sheetTemplates), '2027-01-02');
    expect([overall(workbook), workbook.value('Start', 'A8')]).toEqual(['CHECK', 'CHECK']);
    workbook.dispose();
  });
});
