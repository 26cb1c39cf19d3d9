// The calendar file read from a workbook as plain data: which sheets, which calls, and what is said where they are not there.
import { beforeAll, describe, expect, it } from 'vitest';
import ICAL from 'ical.js';
import { calendarFile } from '../../addon/calendar/calendarFile';
import { openHeadless } from '../../addon/local/engine/headless';
import type { SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { headlessSnapshot, withRowsInserted } from '../support/headlessSnapshot';

interface Event {
  readonly title: string;
  readonly when: string;
}

function events(text: string | undefined): Event[] {
  const component = new ICAL.Component(ICAL.parse(text ?? '') as unknown[]);
  return component.getAllSubcomponents('vevent').map((one) => {
    const event = new ICAL.Event(one);
    return { title: event.summary, when: event.startDate.isDate ? event.startDate.toString() : event.startDate.toJSDate().toISOString() };
  });
}

const madeAt = new Date('2026-11-25T10:00:00Z');

let demo: WorkbookSnapshot;
beforeAll(async () => {
  const workbook = await openHeadless(sheetTemplates);
  demo = headlessSnapshot(sheetTemplates, workbook, { sheet: 'Start', row: 1, column: 1 });
  workbook.dispose();
});

const changed = (change: (sheet: SheetSnapshot) => SheetSnapshot | undefined, workbook = demo): WorkbookSnapshot => ({
  ...workbook,
  sheets: workbook.sheets.flatMap((sheet) => change(sheet) ?? []),
});
const without = (key: string): WorkbookSnapshot => changed((sheet) => (sheet.mark?.key === key ? undefined : sheet));

describe('the demo', () => {
  it('has every visit, renewal and lapse with its day', () => {
    const { text, said } = calendarFile(demo, madeAt);
    const found = events(text);
    // AIRAC dates 26 November and 24 December 2026; the demo's cards change at 0000Z, those of several series together.
    expect(found.filter(({ when }) => when === '2026-11-26T00:00:00.000Z')).toEqual([
      { title: 'Load data: 14-day and 28-day, cycle 2612 (Quillon Four, Brindle Two, Sable Twin and 1 more)', when: '2026-11-26T00:00:00.000Z' },
    ]);
    expect(found.find(({ when }) => when === '2026-12-24T00:00:00.000Z')?.title).toBe(
      'Load data: 14-day and 28-day and 56-day, cycle 2613 (Quillon Four, Brindle Two, Sable Twin and 1 more)',
    );
    expect(found.find(({ title }) => title === 'Licence ends: charts (Quillon Four)')?.when).toBe('2026-12-15');
    expect(found.find(({ title }) => title === 'Last good day: Quillon Four annual inspection')?.when).toBe('2027-03-31');
    expect(said).toMatch(
      new RegExp(
        `^Calendar file rampwright\\.ics: ${found.length} dates, as of 2026-11-25\\. Not in it: .*Sable Twin annual inspection: no last good day`,
      ),
    );
  });

  it('is the same after rows were inserted and the sheets renamed', () => {
    const moved = withRowsInserted(withRowsInserted(demo, 'Data ledger', 10, 4), 'Currency log', 3, 2);
    const renamed = { ...moved, sheets: moved.sheets.map((sheet) => (sheet.mark?.key === 'ledger' ? { ...sheet, name: 'Cards' } : sheet)) };
    expect(events(calendarFile(renamed, madeAt).text)).toEqual(events(calendarFile(demo, madeAt).text));
  });

  it('is the same whatever the headings say, and whatever calls stand beside', () => {
    const reworded = changed((sheet) => ({
      ...sheet,
      values: sheet.values.map((line) =>
        line.map((value) => (value === 'item' || value === 'aircraft' || value === 'licence end' ? 'other words' : value)),
      ),
      // A list of somebody's own above ours.
      formulas: [{ row: 1, column: 9, text: '=PILOT_STATUS(A1:B2,A1:B2,A1:B2,as_of)' }, ...sheet.formulas],
    }));
    expect(events(calendarFile(reworded, madeAt).text)).toEqual(events(calendarFile(demo, madeAt).text));
  });
});

describe('what is not there', () => {
  it('is said, and the rest is written', () => {
    const { text, said } = calendarFile(without('ledger'), madeAt);
    expect(events(text).some(({ title }) => title.startsWith('Load data'))).toBe(false);
    expect(said).toContain('The sheet "Data ledger" is no longer in this workbook.');
  });

  it('leaves no file', () => {
    const { text, said } = calendarFile(
      changed((sheet) => (sheet.mark?.key === 'ledger' || sheet.mark?.key === 'currency' ? undefined : sheet)),
      madeAt,
    );
    expect(text).toBeUndefined();
    expect(said).toBe(
      'No calendar file: no dates were found. The sheet "Data ledger" is no longer in this workbook. The sheet "Currency log" is no longer in this workbook.',
    );
  });

  it('is a sheet without its keys', () => {
    const lost = changed((sheet) => ({ ...sheet, formulas: sheet.formulas.filter(({ text }) => !text.includes('Rampwright keys')) }));
    expect(calendarFile(lost, madeAt).said).toBe(
      'No calendar file: no dates were found. The cells of the sheet "Data ledger" are not found: it is of a version before sheets had keys, or has lost them. Bring the sheet up to date. The cells of the sheet "Currency log" are not found: it is of a version before sheets had keys, or has lost them. Bring the sheet up to date.',
    );
  });

  it('is a call that was typed over, or wrapped in another', () => {
    const bare = changed((sheet) => ({
      ...sheet,
      formulas: sheet.formulas.map((cell) => ({ ...cell, text: cell.text.replace(/^=LEDGER_DIARY\(/, '=COUNTA(LEDGER_DIARY(') })),
    }));
    expect(calendarFile(bare, madeAt).said).toContain('The sheet "Data ledger" no longer has its formula with LEDGER_DIARY.');
  });

  it('is an answer that is an error, or a day that is no date', () => {
    const failing = (name: string): WorkbookSnapshot =>
      changed((sheet) => {
        const call = sheet.formulas.find(({ text }) => text.startsWith(`=${name}(`));
        return call === undefined
          ? sheet
          : {
              ...sheet,
              values: sheet.values.map((line, row) =>
                line.map((value, column) => (row + 1 === call.row && column + 1 === call.column ? '#ERROR!' : value)),
              ),
            };
      });
    expect(calendarFile(failing('PILOT_STATUS'), madeAt).said).toContain(
      'PILOT_STATUS in the sheet "Currency log" has no answer; select its cell to see why.',
    );
    const noDay = changed((sheet) =>
      sheet.mark?.key === 'start' ? { ...sheet, values: sheet.values.map((line, row) => (row === 5 ? ['today', ...line.slice(1)] : line)) } : sheet,
    );
    const { text, said } = calendarFile(noDay, madeAt);
    expect(text).toBeUndefined();
    expect(said).toContain('The day "as_of" that LEDGER_DIARY in the sheet "Data ledger" is given is not there, or is no date.');
  });
});

describe('several sets', () => {
  /** The demo and a copy of its sheets, renamed as an insertion renames them, with another day in it. */
  const twice = (): WorkbookSnapshot => {
    const second = (text: string): string => text.replace(/'([^']+)'!/g, "'$1 2'!").replace(/\bas_of\b/g, 'as_of_2');
    const copies = demo.sheets.map((sheet) => ({
      ...sheet,
      name: `${sheet.name} 2`,
      ...(sheet.mark !== undefined && { mark: { ...sheet.mark, set: 'two' } }),
      formulas: sheet.formulas.map((cell) => ({ ...cell, text: second(cell.text) })),
      values: sheet.mark?.key === 'start' ? sheet.values.map((line, row) => (row === 5 ? [46000, ...line.slice(1)] : line)) : sheet.values,
    }));
    return {
      ...demo,
      sheets: [...demo.sheets, ...copies],
      names: [...demo.names, ...demo.names.map((one) => ({ ...one, name: `${one.name}_2`, sheet: `${one.sheet} 2` }))],
    };
  };

  it('gives the one in sight, and says so', () => {
    const both = twice();
    expect(calendarFile(both, madeAt).said).toContain(
      'as of 2026-11-25. Read from "Data ledger" and "Currency log", not from "Data ledger 2" and "Currency log 2"',
    );
    const other = calendarFile({ ...both, selected: { sheet: 'Trip sheet 2', row: 1, column: 1 } }, madeAt);
    expect(other.said).toContain('as of 2025-12-09. Read from "Data ledger 2" and "Currency log 2", not from "Data ledger" and "Currency log"');
  });

  it('takes a sheet that only another set has, and says which day judges it', () => {
    const both = twice();
    const mixed = { ...both, sheets: both.sheets.filter(({ name }) => name !== 'Currency log' && name !== 'Data ledger 2') };
    const { said } = calendarFile(mixed, madeAt);
    expect(said).toContain('as of 2026-11-25. "Currency log 2" is judged on 2025-12-09.');
    expect(said).not.toContain('Read from');
  });
});
