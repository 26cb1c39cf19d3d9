// Logs from files: any order of columns, separators, dates and decimals of several countries, and nothing taken silently.
import { describe, expect, it } from 'vitest';
import { dateOrderOf, importLog, rowsUnder } from '../../addon/local/importLog';
import { currencyLogSheet } from '../../sheets-templates/currencyLog';
import { call, plain } from '../support/call';

const file = (...lines: readonly string[]): string => lines.join('\r\n');

describe('a file of flights', () => {
  it('is read whatever the order of its columns, and says what it passed over', () => {
    const log = importLog(file('Route,Landings (Day),Remarks,REGISTRATION,Date,Night Landings,PIC', 'A-B,2,"windy, gusts",North,2026-11-21,,1.4', 'B-A,,,South,2026-11-22,1,0.9', ''));
    expect(log.flights).toEqual([
      { date: '2026-11-21', aircraft: 'North', dayLandings: 2, commandHours: 1.4 },
      { date: '2026-11-22', aircraft: 'South', nightLandings: 1, commandHours: 0.9 },
    ]);
    expect(log.found).toEqual({ date: 'Date', aircraft: 'REGISTRATION', dayLandings: 'Landings (Day)', nightLandings: 'Night Landings', commandHours: 'PIC' });
    expect(log.passedOver).toEqual(['Route', 'Remarks']);
    expect(log.problems).toEqual([]);
  });

  it('takes semicolons, decimal commas, points in dates, a byte order mark and lines of title', () => {
    const log = importLog(`\uFEFF${file('Flugbuch 2026', '', 'date;aircraft;flight time;day landings', '21.11.2026;Nord;1,4;3', '1.12.2026;Nord;1:30;1')}`);
    expect(log.flights).toEqual([{ date: '2026-11-21', aircraft: 'Nord', hours: 1.4, dayLandings: 3 }, { date: '2026-12-01', aircraft: 'Nord', hours: 1.5, dayLandings: 1 }]);
  });

  it('takes tabs, quoted line ends, and marks for yes', () => {
    const log = importLog('date\taircraft\tholds\tremarks\n2026-11-21\tNorth\tx\t"two\nlines"\n2026-11-22\tNorth\tno\t\n');
    expect(log.flights.map(({ date, holds }) => [date, holds])).toEqual([['2026-11-21', 1], ['2026-11-22', 0]]);
  });

  it('reads the order of day and month from the dates, and asks where they do not show it', () => {
    expect(dateOrderOf(['03/04/2026', '13/04/2026'])).toBe('day first');
    expect(dateOrderOf(['03/04/2026', '03/14/2026'])).toBe('month first');
    expect(dateOrderOf(['13/04/2026', '03/14/2026'])).toBe('both');
    const two = file('date,aircraft,day landings', '03/04/2026,North,1');
    expect(importLog(two)).toMatchObject({ flights: [], problems: ['dates such as 03/04/2026 can be read two ways: say whether the day or the month comes first'] });
    expect(importLog(two, 'day first').flights[0]?.date).toBe('2026-04-03');
    expect(importLog(two, 'month first').flights[0]?.date).toBe('2026-03-04');
    expect(importLog(file('date,aircraft', '03/14/2026,North', '03/04/2026,North'), 'day first').flights.map(({ date }) => date)).toEqual(['2026-03-14', '2026-03-04']);
    expect(importLog(file('date,aircraft', '13/04/2026,North', '03/14/2026,North')).problems).toEqual(['some dates can only be day first and some only month first']);
  });

  it('leaves out a row that it cannot read, and names its line', () => {
    const log = importLog(file('date,aircraft,day landings', '2026-02-30,North,1', '2026-03-01,North,several', '2026-03-02,North,2', '21/11/26,North,1'));
    expect(log.flights.map(({ date }) => date)).toEqual(['2026-03-02']);
    expect(log.problems).toEqual(['line 2: "2026-02-30" is no date', 'line 3: "several" under "day landings" is no whole number from 0 to 1,000', 'line 5: "21/11/26" is no date']);
    expect(importLog('nothing of the kind\n1,2,3').problems).toEqual(['no line of headings with a date and an aircraft was found']);
  });

  it('does not take hours for counts, nor a count or hours that cannot be', () => {
    const log = importLog(file('date,aircraft,day landings,day full stop,hours', '2026-11-21,North,1:30,,1:30', '2026-11-22,North,1.4,,1', '2026-11-23,North,-1,,1', '2026-11-24,North,1,3,1', '2026-11-25,North,1,,-1', '2026-11-26,North,2,1,1:15'));
    expect(log.flights).toEqual([{ date: '2026-11-26', aircraft: 'North', dayLandings: 2, dayFullStops: 1, hours: 1.25 }]);
    expect(log.problems).toEqual([
      'line 2: "1:30" under "day landings" is no whole number from 0 to 1,000', 'line 3: "1.4" under "day landings" is no whole number from 0 to 1,000', 'line 4: "-1" under "day landings" is no whole number from 0 to 1,000',
      'line 5: 3 under "day full stop", more than landings', 'line 6: "-1" under "hours" is no number from 0 to 1,000',
    ]);
  });

  it('does not take a row that decimal commas have moved along, nor rows that a quotation mark has run together', () => {
    const commas = importLog(file('date,aircraft,hours,day landings', '2026-11-21,North,1,4,2', '2026-11-22,North,1,2,', ''));
    expect(commas.flights).toEqual([{ date: '2026-11-22', aircraft: 'North', hours: 1, dayLandings: 2 }]);
    expect(commas.problems).toEqual(['line 2: more cells than headings']);
    const open = importLog(file('date,aircraft,hours', '2026-11-20,North,1', '2026-11-21,"North,1', '2026-11-22,South,1'));
    expect([open.flights, open.problems]).toEqual([[], [expect.stringMatching(/^line 3: a quotation mark is not closed/)]]);
  });

  it('counts lines as the file has them, and passes over a time of day after a date', () => {
    const log = importLog(file('date,aircraft,remarks,hours', '21.11.2026 10:00,North,"two', 'lines",1', 'Total,,,1'));
    expect(log.flights.map(({ date }) => date)).toEqual(['2026-11-21']);
    expect(log.problems).toEqual(['line 4: "Total" is no date']);
  });

  it('does not take landings of day and night together for those by day', () => {
    const log = importLog(file('date,aircraft,landings,night landings', '2026-11-21,North,4,1'));
    expect(log.flights[0]).toEqual({ date: '2026-11-21', aircraft: 'North', nightLandings: 1 });
    expect(log.passedOver).toEqual(['landings']);
    expect(importLog(file('date,aircraft,landings', '2026-11-21,North,4')).flights[0]?.dayLandings).toBe(4);
  });

  it('prefers the plainer heading where two could be meant', () => {
    const log = importLog(file('date,aircraft,total time,flight time', '2026-11-21,North,99,1.2'));
    expect(log.flights[0]?.hours).toBe(1.2);
    expect(log.passedOver).toEqual(['total time']);
  });
});

it('fits under the headings of the Currency log, and counts as typed flights do', () => {
  const head = currencyLogSheet.cells.find(({ value }) => value === 'day landings')?.row;
  const headings = Array.from({ length: 14 }, (_, index) => String(currencyLogSheet.cells.find(({ row, column }) => row === head && column === index + 1)?.value ?? ''));
  const rows = rowsUnder(headings, importLog(file('aircraft,night landings,night full stop,date,hours', 'North,3,3,2026-11-01,1:15')));
  expect(rows[0]?.slice(0, 8)).toEqual(['North', '2026-11-01', '', '', 3, 3, '', '']);
  const list = call('PILOT_STATUS', [headings, ...rows], [['aircraft', 'category', 'class'], ['North', 'airplane', 'SEL']], [['', '']], '2026-11-25') as unknown[][];
  expect(list.find((row) => row[0] === 'passengers at night, SEL')?.slice(1, 5).map(plain)).toEqual([3, 3, 'OK', '2027-01-29']);
});

it('takes 20,000 flights', () => {
  const lines = Array.from({ length: 20_000 }, (_, index) => `${new Date(Date.UTC(2000, 0, 1) + Math.floor(index / 2) * 86_400_000).toISOString().slice(0, 10)},North,1,1.1`);
  expect(importLog(file('date,aircraft,day landings,hours', ...lines)).flights.length).toBe(20_000);
});
