// Logs from files: any order of columns, separators, dates and decimals of several countries, and nothing taken silently.
import { describe, expect, it } from 'vitest';
import { dateOrderOf } from '../../addon/workbook/typed/writtenDays';
import { importLog, rowsUnder } from '../../addon/local/importLog';
import { askOwner, pilotsNamed, withOwner } from '../../addon/local/page/flightOwner';
import { compareFlights } from '../../addon/local/knownFlights';
import { currencyLogSheet } from '../../sheets-templates/currency/sheet';
import { call, plain } from '../support/call';

const file = (...lines: readonly string[]): string => lines.join('\r\n');

describe('a file of flights', () => {
  it('is read whatever the order of its columns, and says what it passed over', () => {
    const log = importLog(
      file(
        'Route,Landings (Day),Remarks,REGISTRATION,Date,Night Landings,PIC',
        'A-B,2,"windy, gusts",North,2026-11-21,,1.4',
        'B-A,,,South,2026-11-22,1,0.9',
        '',
      ),
    );
    expect(log.flights).toEqual([
      { date: '2026-11-21', aircraft: 'North', dayLandings: 2, commandHours: 1.4 },
      { date: '2026-11-22', aircraft: 'South', nightLandings: 1, commandHours: 0.9 },
    ]);
    expect(log.found).toEqual({
      date: 'Date',
      aircraft: 'REGISTRATION',
      dayLandings: 'Landings (Day)',
      nightLandings: 'Night Landings',
      commandHours: 'PIC',
    });
    expect(log.passedOver).toEqual(['Route', 'Remarks']);
    expect(log.problems).toEqual([]);
  });

  it('takes semicolons, decimal commas, points in dates, a byte order mark and lines of title', () => {
    const log = importLog(
      `\uFEFF${file('Flugbuch 2026', '', 'date;aircraft;flight time;day landings', '21.11.2026;Nord;1,4;3', '1.12.2026;Nord;1:30;1')}`,
    );
    expect(log.flights).toEqual([
      { date: '2026-11-21', aircraft: 'Nord', hours: 1.4, dayLandings: 3 },
      { date: '2026-12-01', aircraft: 'Nord', hours: 1.5, dayLandings: 1 },
    ]);
  });

  it('takes tabs, quoted line ends, and marks for yes', () => {
    const log = importLog('date\taircraft\tholds\tremarks\n2026-11-21\tNorth\tx\t"two\nlines"\n2026-11-22\tNorth\tno\t\n');
    expect(log.flights.map(({ date, holds }) => [date, holds])).toEqual([
      ['2026-11-21', 1],
      ['2026-11-22', 0],
    ]);
  });

  it('reads the order of day and month from the dates, and asks where they do not show it', () => {
    expect(dateOrderOf(['03/04/2026', '13/04/2026'])).toBe('day first');
    expect(dateOrderOf(['03/04/2026', '03/14/2026'])).toBe('month first');
    expect(dateOrderOf(['13/04/2026', '03/14/2026'])).toBe('both');
    const two = file('date,aircraft,day landings', '03/04/2026,North,1');
    expect(importLog(two)).toMatchObject({
      flights: [],
      problems: ['dates such as 03/04/2026 can be read two ways: say whether the day or the month comes first'],
    });
    expect(importLog(two, { order: 'day first' }).flights[0]?.date).toBe('2026-04-03');
    expect(importLog(two, { order: 'month first' }).flights[0]?.date).toBe('2026-03-04');
    expect(importLog(file('date,aircraft', '03/14/2026,North', '03/04/2026,North'), { order: 'day first' }).flights.map(({ date }) => date)).toEqual([
      '2026-03-14',
      '2026-03-04',
    ]);
    expect(importLog(file('date,aircraft', '13/04/2026,North', '03/14/2026,North')).problems).toEqual([
      'some dates can only be day first and some only month first',
    ]);
  });

  it('leaves out a row that it cannot read, and names its line', () => {
    const log = importLog(
      file('date,aircraft,day landings', '2026-02-30,North,1', '2026-03-01,North,several', '2026-03-02,North,2', '21/11/26,North,1'),
    );
    expect(log.flights.map(({ date }) => date)).toEqual(['2026-03-02']);
    expect(log.problems).toEqual([
      'line 2: "2026-02-30" is no date',
      'line 3: "several" under "day landings" is no whole number from 0 to 1,000',
      'line 5: "21/11/26" is no date',
    ]);
  });

  it('says which headings would do where it knows none', () => {
    expect(importLog(file('Flugbuch', 'Datum;Kennzeichen;Landungen', '21.11.2026;Nord;3')).problems).toEqual([
      'no line of headings with a date and an aircraft was found: the day must stand under "date", "flight date", "day", the aircraft under "aircraft", "registration", "aircraft registration", "reg", "tail number", "ident"; line 2 has "Datum", "Kennzeichen", "Landungen"',
    ]);
  });

  it.each(['20261121', '21 Nov 2026', '21-Nov-2026', '21. November 2026', 'Nov 21, 2026', '2026/11/21', '21.11.2026 10:00'])(
    'takes %s for a day',
    (day) => {
      expect(importLog(`date;aircraft\n${day};North`).flights.map(({ date }) => date)).toEqual(['2026-11-21']);
    },
  );

  it.each(['1950-01-01', '2100-12-31'])('takes %s, the first or last day that the log itself can be read with', (day) =>
    expect(importLog(`date;aircraft\n${day};North`).flights.map(({ date }) => date)).toEqual([day]),
  );

  it.each(['1949-12-31', '2101-01-01'])('refuses %s, with which the log could not be read', (day) =>
    expect(importLog(`date;aircraft\n${day};North`).problems).toEqual([`line 2: "${day}" is no date`]),
  );

  it('does not take hours for counts, nor a count or hours that cannot be', () => {
    const log = importLog(
      file(
        'date,aircraft,day landings,day full stop,hours',
        '2026-11-21,North,1:30,,1:30',
        '2026-11-22,North,1.4,,1',
        '2026-11-23,North,-1,,1',
        '2026-11-24,North,1,3,1',
        '2026-11-25,North,1,,-1',
        '2026-11-26,North,2,1,1:15',
      ),
    );
    expect(log.flights).toEqual([{ date: '2026-11-26', aircraft: 'North', dayLandings: 2, dayFullStops: 1, hours: 1.25 }]);
    expect(log.problems).toEqual([
      'line 2: "1:30" under "day landings" is no whole number from 0 to 1,000',
      'line 3: "1.4" under "day landings" is no whole number from 0 to 1,000',
      'line 4: "-1" under "day landings" is no whole number from 0 to 1,000',
      'line 5: 3 under "day full stop", more than landings',
      'line 6: "-1" under "hours" is no number from 0 to 1,000',
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

describe('a file of several pilots', () => {
  const club = file(
    'date,aircraft,Pilot,day landings',
    '2026-11-21,North,Ada,3',
    '2026-11-22,North,Bo,2',
    '2026-11-23,North,ADA,1',
    '2026-11-24,North,,1',
  );

  it('is never taken as that of one: it is asked whose they are', () => {
    const log = importLog(club);
    expect(log.flights).toEqual([]);
    expect(log.pilots).toEqual(['Ada', 'Bo', '']);
    expect(log.problems).toEqual([
      'the file has flights of 3 pilots under "Pilot": "Ada", "Bo", "nobody named". Say whose they are: other people\'s landings are not yours',
    ]);
  });

  it('gives the flights of the one that is chosen', () => {
    const ada = importLog(club, { pilot: { named: 'Ada' } });
    expect(ada.flights.map(({ date }) => date)).toEqual(['2026-11-21', '2026-11-23']);
    expect([ada.lines, ada.ofOthers]).toEqual([[2, 4], 2]);
    expect(importLog(club, { pilot: 'everyone' }).flights.length).toBe(4);
  });

  it.each(['Pilot name', 'Pilot in command', 'PIC', 'Name', 'Flown by', 'Piloto', 'Crew'])('is known by names under "%s"', (heading) => {
    expect(importLog(file(`date,aircraft,${heading}`, '2026-11-21,North,Ada', '2026-11-22,North,Bo')).pilots).toEqual(['Ada', 'Bo']);
  });

  it.each(['Instructor', 'Co-pilot', 'Passenger name', 'PIC'])('is not known by what stands under "%s" in one\'s own log', (heading) => {
    const values = heading === 'PIC' ? ['1.4', '0:30'] : ['Ada', 'Bo'];
    expect(importLog(file(`date,aircraft,${heading}`, `2026-11-21,North,${values[0]}`, `2026-11-22,North,${values[1]}`)).flights.length).toBe(2);
  });

  const headings = ['aircraft', 'date', 'day landings', 'pilot'];

  it('keeps the name of each, not where the column names others beside the pilot', () => {
    const ada = importLog(club, { pilot: { named: 'Ada' } });
    expect(rowsUnder(headings, ada)).toEqual([
      ['North', '2026-11-21', 3, 'Ada'],
      ['North', '2026-11-23', 1, 'ADA'],
    ]);
    expect(rowsUnder(headings, importLog(club, { pilot: 'everyone' })).map((row) => row[3])).toEqual(['', '', '', '']);
    expect(rowsUnder(headings.slice(0, 3), ada)[0]).toEqual(['North', '2026-11-21', 3]);
  });

  it('writes names only into a log that has some, and asks whose flights are that name nobody', () => {
    const ada = importLog(club, { pilot: { named: 'Ada' } });
    const plainLog = pilotsNamed(headings, [['North', 46_300, 2, '']]);
    const shared = pilotsNamed(headings, [
      ['North', 46_300, 2, 'Ada'],
      ['North', 46_301, 2, 'ada '],
      ['North', 46_302, 2, 'Bo'],
    ]);
    expect([plainLog, shared]).toEqual([[], ['Ada', 'Bo']]);
    expect(withOwner(ada, plainLog, undefined).flights.some((flight) => 'pilot' in flight)).toBe(false);
    expect(withOwner(ada, shared, undefined).flights[0]?.pilot).toBe('Ada');
    expect(askOwner(ada, shared, {})).toBeUndefined();
    const nobody = importLog(file('date,aircraft,hours', '2026-11-21,North,1'));
    expect(askOwner(nobody, plainLog, {})).toBeUndefined();
    const asked = askOwner(nobody, shared, {});
    expect(asked?.said).toMatch(/^Nothing was added yet\. The log names pilots, and 1 flight of the file does not: whose\?/);
    expect(asked?.choices.map(({ label }) => label)).toEqual(['Of Ada', 'Of Bo', 'Without a name']);
    expect(askOwner(nobody, shared, { owner: '' })).toBeUndefined();
    expect(withOwner(nobody, shared, 'Bo').flights[0]?.pilot).toBe('Bo');
  });

  it('has a flight of its own for each of two pilots on one day', () => {
    const columns = ['date', 'aircraft', 'dayLandings'] as const;
    const log = [['North', '2026-11-21', 3, 'Bo']];
    const of = (named: string) => compareFlights(headings, log, importLog(club, { pilot: { named } }).flights.slice(0, 1), columns);
    expect(of('Ada')).toEqual({ fresh: [0], known: 0, doubtful: [] });
    const ada = importLog(club, { pilot: { named: 'Ada' } }).flights.slice(0, 1);
    expect(compareFlights(headings, [['North', '2026-11-21', 3, 'ada']], ada, columns).known).toBe(1);
    expect(compareFlights(headings, [['North', '2026-11-21', 3, '']], ada, columns).known).toBe(1);
  });

  it('is taken where every row names the same one', () => {
    const log = importLog(file('date,aircraft,pilot,hours', '2026-11-21,North,Ada,1', '2026-11-22,North,ada,1'));
    expect([log.flights.length, log.passedOver]).toEqual([2, []]);
  });
});

describe('flights that the log has already', () => {
  const headings = ['aircraft', 'date', 'day landings', 'night landings', 'hours'];
  const day = 46_347; // 2026-11-21
  const log = [
    ['DEMO-1', day, 3, '', 1.4],
    ['DEMO-1', day, 1, '', 0.5],
    ['DEMO-2', '2026-11-22', 2, 0, 2],
  ];
  const compared = (...lines: readonly string[]) => {
    const { flights, found } = importLog(file(...lines));
    return compareFlights(headings, log, flights, Object.keys(found) as Parameters<typeof compareFlights>[3]);
  };

  it('are known in any notation', () => {
    const same = { fresh: [], known: 3, doubtful: [] };
    expect(compared('date,aircraft,day landings,hours', '2026-11-21,DEMO-1,3,1:24', '2026-11-21,demo 1,1,0:30', '2026-11-22,DEMO2,2,2:00')).toEqual(
      same,
    );
    expect(compared('date;aircraft;day landings;hours', '21.11.2026;DEMO-1;3;1,4', '21.11.2026;DEMO-1;1;0,5', '22.11.2026;DEMO-2;2;2,0')).toEqual(
      same,
    );
    expect(compared('hours,day landings,date,aircraft', '1:26,3,21 Nov 2026,DEMO-1', '0:28,1,20261121,DEMO-1', '1.97,2,11/22/2026,DEMO-2')).toEqual(
      same,
    );
  });

  it('are new where the log has no flight of that day and aircraft left', () => {
    expect(compared('date,aircraft,day landings,hours', '2026-11-21,DEMO-1,3,1.4', '2026-11-21,DEMO-1,3,1.4', '2026-11-23,DEMO-1,3,1.4')).toEqual({
      fresh: [2],
      known: 1,
      doubtful: [{ index: 1, row: 1, columns: ['dayLandings', 'hours'] }],
    });
    expect(compared('date,aircraft,day landings,hours', ...Array.from({ length: 3 }, () => '2026-11-22,DEMO-2,2,2')).fresh).toEqual([1, 2]);
  });

  it('are doubtful where only some of it agrees', () => {
    expect(compared('date,aircraft,day landings,hours', '2026-11-22,DEMO-2,2,2.1')).toEqual({
      fresh: [],
      known: 0,
      doubtful: [{ index: 0, row: 2, columns: ['hours'] }],
    });
    expect(compared('date,aircraft,night landings,hours', '2026-11-22,DEMO-2,2,2').doubtful.map(({ columns }) => columns)).toEqual([
      ['nightLandings'],
    ]);
  });
});

it('fits under the headings of the Currency log, and counts as typed flights do', () => {
  const head = currencyLogSheet.cells.find(({ value }) => value === 'day landings')?.row;
  const headings = Array.from({ length: 14 }, (_, index) =>
    String(currencyLogSheet.cells.find(({ row, column }) => row === head && column === index + 1)?.value ?? ''),
  );
  const rows = rowsUnder(headings, importLog(file('aircraft,night landings,night full stop,date,hours', 'North,3,3,2026-11-01,1:15')));
  expect(rows[0]?.slice(0, 8)).toEqual(['North', '2026-11-01', '', '', 3, 3, '', '']);
  const list = call(
    'PILOT_STATUS',
    [headings, ...rows],
    [
      ['aircraft', 'category', 'class'],
      ['North', 'airplane', 'SEL'],
    ],
    [['', '']],
    '2026-11-25',
  ) as unknown[][];
  expect(
    list
      .find((row) => row[0] === 'passengers at night, SEL')
      ?.slice(1, 5)
      .map(plain),
  ).toEqual([3, 3, 'OK', '2027-01-29']);
});

it('takes 20,000 flights', () => {
  const lines = Array.from(
    { length: 20_000 },
    (_, index) => `${new Date(Date.UTC(2000, 0, 1) + Math.floor(index / 2) * 86_400_000).toISOString().slice(0, 10)},North,1,1.1`,
  );
  expect(importLog(file('date,aircraft,day landings,hours', ...lines)).flights.length).toBe(20_000);
});
