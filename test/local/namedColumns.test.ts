// A file whose headings nobody here knows: a person says once what the columns are; and a long file of another program, as it comes.
import { describe, expect, it } from 'vitest';
import { importLog } from '../../addon/local/importLog';
import { compareFlights } from '../../addon/local/knownFlights';
import { fileColumns, plainHeadings, strange, wrongNaming, type Meaning, type NamedColumns } from '../../addon/local/namedColumns';

const named = (headings: readonly string[], ...meanings: readonly Meaning[]): NamedColumns => ({ headings: plainHeadings(headings), meanings });
const foreign = ['Tag', 'Flugzeug', 'Wer', 'Zeit', 'Ldg', 'Ldg', 'Bemerkung'];
const meant: readonly Meaning[] = ['date', 'aircraft', 'pilot', 'hours', 'dayLandings', 'nightLandings', ''];

describe('columns that a person has named', () => {
  it('are those of the fullest of the first lines, with what stands below', () => {
    const text = ['Klub der Erfundenen', '', foreign.join(';'), '02.10.2026;N;Ada;1:12;2;0;"a;b"', '03.10.2026;N;Bo;1:12;1;1;'].join('\n');
    expect(fileColumns(text)).toEqual({
      headings: foreign,
      samples: [['02.10.2026', '03.10.2026'], ['N'], ['Ada', 'Bo'], ['1:12'], ['2', '1'], ['0', '1'], ['a;b']],
    });
    expect(fileColumns('only words')).toBeUndefined();
    expect(fileColumns('')).toBeUndefined();
  });

  it('are read whatever they are called, also two of one name', () => {
    const text = [foreign.join(';'), '22.10.2026;N;Ada;1:12;2;0;x', '23.10.2026;N;Ada;0,8;1;3;'].join('\n');
    const log = importLog(text, { columns: named(foreign, ...meant) });
    expect(log.flights).toEqual([
      { date: '2026-10-22', aircraft: 'N', hours: 1.2, dayLandings: 2, nightLandings: 0, pilot: 'Ada' },
      { date: '2026-10-23', aircraft: 'N', hours: 0.8, dayLandings: 1, nightLandings: 3, pilot: 'Ada' },
    ]);
    expect(log.found.nightLandings).toBe('Ldg');
    expect(log.passedOver).toEqual(['Bemerkung']);
  });

  it('go before what a heading says, and a column of people is asked about', () => {
    const headings = ['date', 'aircraft', 'hours', 'landings', 'who flew'];
    const columns = named(headings, 'date', 'aircraft', '', 'nightLandings', 'pilot');
    const text = `${headings.join(',')}\n2026-10-02,N,9,2,Ada\n2026-10-03,N,9,1,Bo`;
    expect(importLog(text, { columns }).pilots).toEqual(['Ada', 'Bo']);
    expect(importLog(text, { columns, pilot: { named: 'Bo' } }).flights).toEqual([
      { date: '2026-10-03', aircraft: 'N', nightLandings: 1, pilot: 'Bo' },
    ]);
  });

  it('are not taken for those of a file with other headings', () => {
    const columns = named(foreign, ...meant);
    expect(importLog('date,aircraft,hours\n2026-10-02,N,1', { columns }).problems[0]).toContain('no line of headings');
  });

  it.each<readonly [readonly Meaning[], string | undefined]>([
    [['date', 'aircraft', 'hours'], undefined],
    [['date', 'aircraft', 'pilot'], 'Say at least one column that counts something: landings, take-offs or hours.'],
    [['date', 'hours', ''], 'Say which column is the aircraft: a flight cannot be read without.'],
    [['', 'hours', ''], 'Say which column is the date, and which the aircraft: a flight cannot be read without.'],
    [['date', 'aircraft', 'hours', 'hours'], 'Two columns are given as "HOURS". One of them is another, or not used.'],
  ])('%j: %s', (meanings, wrong) => expect(wrongNaming({ meanings }, (one) => one.toUpperCase())).toBe(wrong));

  it('ask for headings that could hold something that counts, not for routes and remarks', () => {
    expect(strange(['Route', 'Remarks', 'Bumps', 'From', '', 'Total of landings'])).toEqual(['Bumps', 'Total of landings']);
  });
});

describe('2,000 flights of an invented program', () => {
  const days = Array.from({ length: 2000 }, (_, index) => new Date(Date.UTC(2021, 0, 1 + index)).toISOString().slice(0, 10));
  const heads = ['Nr.', 'Datum', 'Kennung', 'Start', 'Ziel', 'Blockzeit', 'Ldg T', 'Ldg N', 'Betrag', 'Notiz'];
  const meanings: readonly Meaning[] = ['', 'date', 'aircraft', '', '', 'hours', 'dayLandings', 'nightLandings', '', ''];
  const rows = days.map((day, index) => {
    const [year, month, date] = day.split('-');
    const time = index % 3 === 0 ? `${1 + (index % 4)}:0${index % 10}` : `${1 + (index % 4)},${index % 10}`;
    return `${index + 1};${date}.${month}.${year};DEMO-${index % 7};Alder;Birch;${time};${index % 3};${index % 2};480,50;"line one\nline ""two"""`;
  });
  const text = `\uFEFFAuszug\n\n${heads.join(';')}\n${rows.join('\n')}\nSumme;;;;;2400,00;2000;1000;;\n`;
  const columns = named(heads, ...meanings);

  it('are read but for the line of sums, within a second, and never added twice', () => {
    const begun = performance.now();
    const log = importLog(text, { columns });
    expect([log.flights.length, log.problems]).toEqual([2000, ['line 4004: "" is no date']]);
    expect(log.flights[1]).toEqual({ date: '2021-01-02', aircraft: 'DEMO-1', hours: 2.1, dayLandings: 1, nightLandings: 1 });
    expect(log.flights[3]?.hours).toBeCloseTo(4 + 3 / 60, 12);
    const headings = ['aircraft', 'date', 'hours', 'day landings', 'night landings'];
    const inLog = log.flights.map(({ aircraft, date, hours, dayLandings, nightLandings }) => [
      aircraft.replace('-', ' '),
      date,
      // As another program rounds them.
      Math.round((hours ?? 0) * 10) / 10,
      dayLandings ?? 0,
      nightLandings ?? 0,
    ]);
    const compared = compareFlights(headings, inLog, log.flights, ['date', 'aircraft', 'hours', 'dayLandings', 'nightLandings']);
    expect([compared.fresh.length, compared.known, compared.doubtful.length]).toEqual([0, 2000, 0]);
    const milliseconds = performance.now() - begun;
    console.log(`2,000 flights read and compared in ${milliseconds.toFixed(0)} ms`);
  });
});
