// The lists of the currency log against rules and examples published outside the project, to the day. Statuses as in
// DEVELOPERS.md. What each row says was read or worked by hand from the rule, never from our own answer.
import { describe, expect, it } from 'vitest';
import { call, plain } from '../../support/call';

type Row = Readonly<Record<'item' | 'counted' | 'needed' | 'verdict' | 'good_through' | 'days_left' | 'rule', unknown>>;
const names = ['item', 'counted', 'needed', 'verdict', 'good_through', 'days_left', 'rule'] as const;

const heads = ['date', 'aircraft', 'day landings', 'day full stop', 'night landings', 'night full stop', 'approaches', 'holds', 'tracking', 'hours', 'hours in command', 'hours with instructor'];
const fleetHeads = ['aircraft', 'category', 'class', 'type rating', 'tailwheel', 'device', 'hours now'];
const fleet = [fleetHeads, ['North', 'airplane', 'single-engine land', '', '', '', ''], ['South', 'airplane', 'multi-engine land', '', '', '', ''], ['Tail', 'airplane', 'single-engine land', '', 'yes', '', ''], ['Jet', 'airplane', 'multi-engine land', 'J-1', '', '', ''], ['Box', 'airplane', 'single-engine land', '', '', 'ATD', ''], ['Dome', 'airplane', 'single-engine land', '', '', 'FFS', '']];

const flight = (date: string, changes: Readonly<Record<string, unknown>> = {}): unknown[] => heads.map((head) => (head === 'date' ? date : (changes[head] ?? (head === 'aircraft' ? 'North' : ''))));

function list(asOf: string, flights: readonly unknown[][], papers: readonly unknown[][] = [], rules = 'FAA'): readonly Row[] {
  const rows = call('PILOT_STATUS', [heads, ...flights], fleet, papers.length === 0 ? [['', '', '']] : papers.map((paper) => [...paper, ...Array<string>(3 - paper.length).fill('')]), asOf, rules) as unknown[][];
  return rows.map((row) => Object.fromEntries(names.map((name, index) => [name, plain(row[index])])) as Row);
}

function item(rows: readonly Row[], name: string): Row {
  const found = rows.find((row) => row.item === name);
  if (found === undefined) throw new Error(`no row "${name}" among ${rows.map((row) => String(row.item)).join(' | ')}`);
  return found;
}
const short = ({ counted, verdict, good_through: through }: Row): unknown[] => [counted, verdict, through];
const through = (row: Row): unknown[] => [row.verdict, row.good_through];

describe('flight review, 14 CFR 61.56(c)', () => {
  const review = (done: string, asOf: string): unknown[] => through(item(list(asOf, [], [['flight review', done]]), 'flight review'));
  // RE-01, R*: a review on 1 July 2010 serves through 31 July 2012. RE-02, R*: 8 August, through 31 August two years later (FAA test question).
  it('lasts to the end of the 24th month', () => {
    expect(review('2010-07-01', '2012-07-31')).toEqual(['CHECK', '2012-07-31']);
    expect(review('2010-07-01', '2012-08-01')).toEqual(['NO', '2012-07-31']);
    expect(review('2018-08-08', '2019-01-01')).toEqual(['OK', '2020-08-31']);
  });
  // Month ends and leap years, D.
  it('ends on the last day of February', () => {
    expect(review('2022-02-28', '2023-01-01')).toEqual(['OK', '2024-02-29']);
    expect(review('2024-02-29', '2024-03-01')).toEqual(['OK', '2026-02-28']);
  });
  // 61.56(d), R: a practical test or proficiency check within the period stands for the review; the later of them holds.
  it('is replaced by a practical test', () => {
    expect(through(item(list('2026-11-25', [], [['flight review', '2024-01-10'], ['practical test', '2025-05-02']]), 'flight review'))).toEqual(['OK', '2027-05-31']);
  });
});

describe('an award programme instead of the flight review, 14 CFR 61.56(e)', () => {
  // R: who has within the period completed one or more phases of an FAA-sponsored pilot proficiency award program need not accomplish the review.
  it.each(['award program phase', 'pilot proficiency award program phase', 'WINGS phase'])('%s counts as the review', (paper) => {
    const rows = list('2026-11-25', [], [['flight review', '2024-01-10'], [paper, '2025-06-02']]);
    expect(through(item(rows, 'flight review'))).toEqual(['OK', '2027-06-30']);
    expect(rows.some(({ item: name }) => name === paper)).toBe(false);
    expect(through(item(list('2026-11-25', [], [[paper, '2024-10-02']]), 'flight review'))).toEqual(['NO', '2026-10-31']);
  });
});

describe('three landings in 90 days, 14 CFR 61.57(a) and (b)', () => {
  const landed = (asOf: string, ...flights: unknown[][]): readonly Row[] => list(asOf, flights);
  const single = 'passengers, single-engine land';
  // RE-05, D: landings on 1 January 2025; the flight day counted, the last day is 31 March (the other reading gives 1 April).
  it('counts the day of the flight', () => {
    const done = flight('2025-01-01', { 'day landings': 3 });
    expect(short(item(landed('2025-03-31', done), single))).toEqual([3, 'CHECK', '2025-03-31']);
    expect(short(item(landed('2025-04-01', done), single))).toEqual([0, 'NO', '2025-03-31']);
    // In a leap year the day comes a day sooner: 1 January + 89 days.
    expect(item(landed('2024-01-01', flight('2024-01-01', { 'day landings': 3 })), single).good_through).toBe('2024-03-30');
  });
  // RE-03, R: same category and class, and type where a type rating is required.
  it('does not count landings of another class or type', () => {
    const rows = landed('2026-11-25', flight('2026-11-01', { aircraft: 'South', 'day landings': 3 }), flight('2026-11-02', { aircraft: 'North', 'day landings': 2 }));
    expect(short(item(rows, 'passengers, multi-engine land'))).toEqual([3, 'OK', '2027-01-29']);
    expect(short(item(rows, single))).toEqual([2, 'NO', '']);
    expect(short(item(rows, 'passengers, J-1'))).toEqual([0, 'NO', '']);
    const jet = landed('2026-11-25', flight('2026-11-01', { aircraft: 'Jet', 'day landings': 3 }));
    expect([item(jet, 'passengers, J-1').verdict, item(jet, 'passengers, multi-engine land').verdict, item(jet, single).verdict]).toEqual(['OK', 'OK', 'NO']);
  });
  // RE-03, R: in a tailwheel, to a full stop, in a tailwheel.
  it('asks for full stops in a tailwheel', () => {
    const tailwheel = 'passengers, tailwheel, single-engine land';
    expect(item(landed('2026-11-25', flight('2026-11-01', { aircraft: 'Tail', 'day landings': 3 })), tailwheel).verdict).toBe('NO');
    expect(item(landed('2026-11-25', flight('2026-11-01', { aircraft: 'North', 'day landings': 3, 'day full stop': 3 })), tailwheel).verdict).toBe('NO');
    const rows = landed('2026-11-25', flight('2026-11-01', { aircraft: 'Tail', 'day landings': 2, 'day full stop': 2, 'night landings': 1, 'night full stop': 1 }));
    expect(short(item(rows, tailwheel))).toEqual([3, 'OK', '2027-01-29']);
    expect(short(item(rows, single))).toEqual([3, 'OK', '2027-01-29']);
  });
  // RE-03, R: by night, three to a full stop at night.
  it('asks for full stops at night', () => {
    const night = 'passengers at night, single-engine land';
    expect(item(landed('2026-11-25', flight('2026-11-01', { 'night landings': 3, 'night full stop': 2 })), night).verdict).toBe('NO');
    expect(item(landed('2026-11-25', flight('2026-11-01', { 'day landings': 3, 'day full stop': 3 })), night).verdict).toBe('NO');
    expect(short(item(landed('2026-11-25', flight('2026-10-01', { 'night landings': 3, 'night full stop': 3 })), night))).toEqual([3, 'OK', '2026-12-29']);
  });
  // 61.57(a)(3), R: a device counts only in a part 142 course, which a log cannot show; FCL.060(b)(1), R*: a full flight simulator counts.
  it('counts training devices only where the rule does', () => {
    const flown = [flight('2026-11-01', { aircraft: 'Dome', 'day landings': 3 }), flight('2026-11-01', { aircraft: 'Box', 'day landings': 3 })];
    expect(short(item(list('2026-11-25', flown), single))).toEqual([0, 'NO', '']);
    expect(short(item(list('2026-11-25', flown, [], 'EASA'), single))).toEqual([3, 'OK', '2027-01-29']);
  });
});

describe('instrument flight, 14 CFR 61.57(c) and (d)', () => {
  const tasks = { approaches: 6, holds: 1, tracking: 1 };
  const all = (asOf: string, flights: readonly unknown[][], papers: readonly unknown[][] = []): unknown[] => {
    const rows = list(asOf, flights, papers);
    return [...through(item(rows, 'instrument flight, airplane')), ...through(item(rows, 'IFR, no check due, airplane'))];
  };
  // RE-07, D: tasks on 1 or 31 January 2013: current through 31 July 2013, no check needed through 31 January 2014.
  it.each(['2013-01-01', '2013-01-31'])('done on %s', (done) => {
    const flights = [flight(done, tasks)];
    expect(all('2013-06-01', flights)).toEqual(['OK', '2013-07-31', 'OK', '2014-01-31']);
    expect(all('2013-07-31', flights)).toEqual(['CHECK', '2013-07-31', 'OK', '2014-01-31']);
    expect(all('2013-08-01', flights)).toEqual(['NO', '2013-07-31', 'OK', '2014-01-31']);
    expect(all('2014-01-31', flights)).toEqual(['NO', '2013-07-31', 'CHECK', '2014-01-31']);
    expect(all('2014-02-01', flights)).toEqual(['NO', '2013-07-31', 'NO', '2014-01-31']);
  });
  // RE-08, R*: for a flight in September the window is March to August.
  it('looks at March to August for a flight in September', () => {
    const one = (date: string): unknown => item(list('2026-09-15', [flight(date, tasks)]), 'approaches, airplane').counted;
    expect(['2026-02-28', '2026-03-01', '2026-08-31', '2026-09-01'].map(one)).toEqual([0, 6, 6, 0]);
    expect(all('2026-09-15', [flight('2026-09-01', tasks)])).toEqual(['CHECK', '2027-03-31', 'OK', '2027-09-30']);
  });
  // D: all three tasks must hold at once; approaches long after the hold have lapsed do not move the day.
  it('ends with the first task to lapse', () => {
    const flights = [flight('2026-03-10', tasks), flight('2026-08-10', { approaches: 6 })];
    expect(all('2026-09-01', flights)).toEqual(['CHECK', '2026-09-30', 'OK', '2027-03-31']);
    const apart = [flight('2025-01-10', { holds: 1, tracking: 1 }), flight('2026-03-10', { approaches: 6 })];
    expect(all('2026-04-01', apart)).toEqual(['NO', '', 'NO', '']);
  });
  // D from (d)(1): after more than six months lapsed only a check restores; then tasks count again.
  it('is not restored by flying once a check is due', () => {
    const flights = [flight('2025-01-10', tasks), flight('2026-02-10', tasks)];
    expect(all('2026-03-01', flights)).toEqual(['NO', '2025-07-31', 'NO', '2026-01-31']);
    expect(item(list('2026-03-01', flights), 'instrument flight, airplane').rule).toMatch(/^lapsed more than 6 months: an instrument proficiency check is needed first; to do: instrument proficiency check; 14 CFR 61\.57\(c\)/);
    expect(all('2026-03-01', [flights[0] ?? [], flight('2026-01-31', tasks)])).toEqual(['OK', '2026-07-31', 'OK', '2027-01-31']);
    expect(all('2026-05-01', flights, [['instrument proficiency check', '2026-04-10']])).toEqual(['OK', '2026-10-31', 'OK', '2027-04-30']);
    expect(all('2026-04-01', flights, [['instrument proficiency check', '2026-04-10']])).toEqual(['NO', '2025-07-31', 'NO', '2026-01-31']);
  });
  // 61.57(c)(2), M: a flight simulator, training device or aviation training device serves for the tasks.
  it('counts training devices', () => expect(all('2026-06-01', [flight('2026-05-10', { ...tasks, aircraft: 'Box' })])).toEqual(['OK', '2026-11-30', 'OK', '2027-05-31']));
});

describe('medical', () => {
  const medical = (exam: string, birth: string, medicalClass: unknown, asOf: string, rules: string): unknown[] =>
    list(asOf, [], [['medical examination', exam], ['birth date', birth], ['medical class', medicalClass]], rules).filter((row) => String(row.item).startsWith('medical')).map((row) => [row.item, row.verdict, row.good_through]);
  // RE-12, R*: third class at 36, examined on 10 August: 31 August five years later (FAA test question).
  it('third class', () => expect(medical('2020-08-10', '1984-02-03', 3, '2021-01-01', 'FAA')).toEqual([['medical, private', 'OK', '2025-08-31']]));
  // RE-11, R*: first class, 40 or more at the examination: 6, 12 and 24 months; on the very birthday forty is reached (D).
  it('first class steps down', () => {
    const steps = (atp: string, commercial: string, private_: string) => [['medical, airline transport', 'OK', atp], ['medical, commercial', 'OK', commercial], ['medical, private', 'OK', private_]];
    expect(medical('2026-05-12', '1986-05-12', 'first', '2026-06-01', 'FAA')).toEqual(steps('2026-11-30', '2027-05-31', '2028-05-31'));
    expect(medical('2026-05-11', '1986-05-12', 'class 1', '2026-06-01', 'FAA')).toEqual(steps('2027-05-31', '2027-05-31', '2031-05-31'));
  });
  // RE-25, R*: MED.A.045 class 2, 60 months to 40, capped at the 42nd birthday; RE-27, R*: LAPL.
  it('class 2 and LAPL', () => {
    expect(medical('2026-05-12', '1986-06-01', 2, '2026-06-01', 'EASA')).toEqual([['medical, private', 'OK', '2028-05-31']]);
    expect(medical('2026-05-12', '1990-06-01', 'LAPL', '2026-06-01', 'EASA')).toEqual([['medical, private', 'OK', '2031-05-12']]);
  });
  it('says what it cannot tell', () => {
    expect(medical('2026-05-12', '2026-01-01', 2, '2026-06-01', 'EASA')).toEqual([['medical', 'UNKNOWN', '']]);
    expect(medical('2026-05-12', '1990-06-01', 'LAPL', '2026-06-01', 'FAA')).toEqual([['medical', 'UNKNOWN', '']]);
    expect(medical('2026-07-12', '1990-06-01', 2, '2026-06-01', 'EASA')).toEqual([['medical', 'UNKNOWN', '']]);
  });
});

// RE-14 and RE-15, R*: AC 68-1A, course and examination of 15 January 2020. RE-16, R*: examination 10 May 2017, courses 20 May 2017 and 31 May 2019.
describe('BasicMed', () => {
  const papers = (exam: string, ...courses: string[]) => [['BasicMed examination', exam], ...courses.map((course) => ['BasicMed course', course])];
  const both = (asOf: string, given: readonly string[][]): unknown[] => ['BasicMed course', 'BasicMed examination'].map((name) => item(list(asOf, [], given), name).good_through);
  it('lasts 24 calendar months by the course, 48 months to the day by the examination', () => {
    expect(both('2020-02-01', papers('2020-01-15', '2020-01-15'))).toEqual(['2022-01-31', '2024-01-15']);
    expect(both('2019-05-31', papers('2017-05-10', '2017-05-20'))[0]).toBe('2019-05-31');
    expect(both('2019-06-01', papers('2017-05-10', '2017-05-20', '2019-05-31'))).toEqual(['2021-05-31', '2021-05-10']);
  });
  it('is not listed for who has none', () => expect(list('2020-02-01', []).some((row) => String(row.item).startsWith('Basic'))).toBe(false));
});

describe('BasicMed instead of a medical certificate, 14 CFR 61.23(c)(3)', () => {
  const byBasicMed = 'medical, private, by BasicMed';
  const medicals = (asOf: string, papers: readonly string[][]) => list(asOf, [], papers).filter(({ item: name }) => /^medical/.test(String(name)));
  // R*, association of owners and pilots, legal notes of March 2018: examination 10 May 2017, course 20 May 2017: through 31 May 2019;
  // course again 31 May 2019: through 10 May 2021 (48 months from the examination), not 31 May 2021; examination 11 May 2021: through 31 May 2021.
  const first = [['BasicMed examination', '2017-05-10'], ['BasicMed course', '2017-05-20']];
  const again = [...first, ['BasicMed course', '2019-05-31']];
  it('is good while both the course and the examination are', () => {
    expect(medicals('2018-03-01', first).map((row) => [row.item, ...through(row)])).toEqual([[byBasicMed, 'OK', '2019-05-31']]);
    expect(through(item(list('2019-06-15', [], again), byBasicMed))).toEqual(['OK', '2021-05-10']);
    expect(through(item(list('2021-05-11', [], [...again, ['BasicMed examination', '2021-05-11']]), byBasicMed))).toEqual(['CHECK', '2021-05-31']);
  });
  it('is NO once either has lapsed, and UNKNOWN without one of them', () => {
    expect(medicals('2019-06-01', first).map((row) => [row.item, ...through(row)])).toEqual([[byBasicMed, 'NO', '2019-05-31']]);
    expect(medicals('2021-05-11', again).map((row) => [row.item, ...through(row)])).toEqual([[byBasicMed, 'NO', '2021-05-10']]);
    expect(medicals('2018-03-01', [['BasicMed course', '2017-05-20']]).map((row) => [row.item, row.verdict, row.rule])).toEqual([
      [byBasicMed, 'UNKNOWN', expect.stringMatching(/^not written down in the papers: BasicMed examination; 14 CFR 61\.23\(c\)\(3\)/)],
    ]);
  });
  // 61.113(i), R, with the numbers of the amendment of 18 November 2024, R* (FAA press release of 15 November 2024).
  it('says its limits', () => {
    const { rule } = item(list('2018-03-01', [], first), byBasicMed);
    for (const limit of ['7 occupants', '6 passengers', '12,500 lb', '18,000 ft', '250 kt', 'not for hire', 'driving licence', '14 July 2006']) expect(rule).toContain(limit);
  });
  it('stands for what a lapsed certificate gave as a private pilot, and leaves a better certificate', () => {
    const certificate = (exam: string) => [['medical examination', exam], ['birth date', '1960-01-01'], ['medical class', '3']];
    expect(medicals('2018-03-01', [...first, ...certificate('2015-01-10')]).map((row) => [row.item, ...through(row)])).toEqual([[byBasicMed, 'OK', '2019-05-31']]);
    expect(medicals('2018-03-01', [...first, ...certificate('2018-01-10')]).map((row) => [row.item, ...through(row)])).toEqual([['medical, private', 'OK', '2020-01-31']]);
    expect(medicals('2018-03-01', certificate('2015-01-10')).map((row) => [row.item, ...through(row)])).toEqual([['medical, private', 'NO', '2017-01-31']]);
  });
});

describe('FCL.060 and FCL.740.A', () => {
  const night = 'passengers at night, single-engine land';
  // RE-23, R* and M: one at night, or an instrument rating; landings of a type rating do not count for the class.
  it('asks for one at night, or an instrument rating', () => {
    expect(short(item(list('2026-11-25', [flight('2026-11-01', { 'night landings': 1 })], [], 'EASA'), night))).toEqual([1, 'OK', '2027-01-29']);
    expect(short(item(list('2026-11-25', [flight('2026-11-01')], [], 'EASA'), night))).toEqual([0, 'NO', '']);
    expect(short(item(list('2026-11-25', [flight('2026-11-01')], [['instrument rating valid to', '2027-06-30']], 'EASA'), night))).toEqual([0, 'OK', '2027-06-30']);
    expect(short(item(list('2026-11-25', [flight('2026-11-01')], [['instrument rating valid to', '2026-11-24']], 'EASA'), night))).toEqual([0, 'NO', '']);
    expect(item(list('2026-11-25', [flight('2026-11-01', { aircraft: 'Jet', 'day landings': 3 })], [], 'EASA'), 'passengers, multi-engine land').verdict).toBe('NO');
  });
  // RE-24, R*: 12 h with 6 in command, 12 landings, 1 h with an instructor within the 12 months before expiry, or a check in its last 3.
  const month = (number: number, hours: number): unknown[] => flight(`2026-${String(number).padStart(2, '0')}-10`, { hours, 'hours in command': hours, 'day landings': 2 });
  const papers = [['class rating valid to', '2026-12-31']];
  const rating = (asOf: string, flights: readonly unknown[][], more: readonly unknown[][] = []) => item(list(asOf, flights, [...papers, ...more], 'EASA'), 'class rating by experience, single-engine land');
  it('counts what is done in the 12 months before the expiry', () => {
    const flown = [1, 3, 5, 7, 9, 11].map((number) => month(number, 2));
    expect(short(rating('2026-11-25', flown))).toEqual([3, 'CHECK', '2026-12-31']);
    const trained = [...flown, flight('2026-10-01', { hours: '1:00', 'hours with instructor': 1 })];
    expect(short(rating('2026-11-25', trained))).toEqual([4, 'OK', '2026-12-31']);
    expect(short(rating('2027-01-01', trained))).toEqual([4, 'NO', '2026-12-31']);
    expect(item(list('2026-11-25', trained, papers, 'EASA'), 'hours, single-engine land').counted).toBe(13);
    // A flight on 31 December 2025 is a day too early in the stricter reading.
    const early = [flight('2025-12-31', { hours: 9, 'hours in command': 9, 'day landings': 12, 'hours with instructor': 1 }), month(5, 3)];
    expect(short(rating('2026-11-25', early))).toEqual([0, 'CHECK', '2026-12-31']);
    const justInTime = [flight('2026-01-01', { hours: 9, 'hours in command': 9, 'day landings': 12, 'hours with instructor': 1 }), month(5, 3)];
    expect(short(rating('2026-11-25', justInTime))).toEqual([4, 'OK', '2026-12-31']);
  });
  it('takes a check of the last three months instead', () => {
    expect(short(rating('2026-11-25', [flight('2026-11-01')], [['class rating proficiency check', '2026-10-01']]))).toEqual([0, 'OK', '2026-12-31']);
    expect(short(rating('2026-11-25', [flight('2026-11-01')], [['class rating proficiency check', '2026-09-30']]))).toEqual([0, 'CHECK', '2026-12-31']);
  });
  it('waits for the 12 months to begin', () => expect(rating('2025-12-31', [flight('2025-11-01')]).rule).toMatch(/^the qualifying period has not started/));
});

describe('two classes together, FCL.740.A(b)(2)', () => {
  // R*: who holds both a single-engine piston aeroplane-land and a TMG rating may complete the requirements of (1) in either class or a
  // combination thereof, and achieve revalidation of both ratings.
  const fleetOf = (...classes: readonly string[]) => [fleetHeads, ...classes.map((own, index) => [`A${index}`, 'aeroplane', own, '', '', '', ''])];
  const year = (aircraft: string, hours: number, landings: number, trained: number): unknown[] =>
    flight('2026-05-10', { aircraft, hours, 'hours in command': hours, 'day landings': landings, 'hours with instructor': trained });
  const ratings = (classes: readonly string[], flights: readonly unknown[][], papers: readonly unknown[][] = []): unknown[][] =>
    (call('PILOT_STATUS', [heads, ...flights], fleetOf(...classes), [['class rating valid to', '2026-12-31', ''], ...papers], '2026-11-25', 'EASA') as unknown[][])
      .filter(([name]) => String(name).startsWith('class rating by experience'))
      .map(([name, counted, , verdict]) => [name, counted, verdict]);
  const flown = [year('A0', 7, 6, 0), year('A1', 6, 6, 1)];
  it('adds 7 h in the one and 6 h in the other', () => {
    expect(ratings(['SEP (land)', 'TMG'], flown)).toEqual([['class rating by experience, SEP (land) and TMG', 4, 'OK']]);
    expect(ratings(['SEP (land)', 'touring motor glider'], [year('A0', 5, 6, 0), year('A1', 6, 6, 1)])).toEqual([
      ['class rating by experience, SEP (land) and touring motor glider', 3, 'CHECK'],
    ]);
  });
  it('does not add those of a seaplane', () => {
    expect(ratings(['SEP (sea)', 'TMG'], flown).map(([, , verdict]) => verdict)).toEqual(['CHECK', 'CHECK']);
  });
  // FCL.740.A(b)(1)(ii), R*: exempted from the refresher training who passed a check or test in any other class or type of aeroplane.
  it('needs no refresher flight after a check in another class within the months', () => {
    const untrained = [year('A0', 13, 12, 0)];
    expect(ratings(['SEP (land)'], untrained)).toEqual([['class rating by experience, SEP (land)', 3, 'CHECK']]);
    expect(ratings(['SEP (land)'], untrained, [['skill test in another class', '2026-03-01', '']])).toEqual([['class rating by experience, SEP (land)', 4, 'OK']]);
    expect(ratings(['SEP (land)'], untrained, [['skill test in another class', '2025-03-01', '']])).toEqual([['class rating by experience, SEP (land)', 3, 'CHECK']]);
  });
});

const itemHeads = ['aircraft', 'item', 'done on', 'done at hours', 'was due at hours', 'every months', 'every days', 'every hours'];

describe('the aircraft', () => {
  const standing = (asOf: string, row: readonly unknown[], hoursNow: unknown = '', rules = 'FAA'): unknown[] => {
    const padded = ['North', ...row, ...Array<string>(7 - row.length).fill('')];
    return ((call('AIRCRAFT_STATUS', [itemHeads, padded], [['aircraft', 'hours now'], ['North', hoursNow]], asOf, rules) as unknown[][])[0] ?? []).slice(0, 4).map(plain);
  };
  // RE-19, R* inputs, R rule: due at 3302.5, done at 3309.5, next due at 3402.5.
  it('100 hours: an overrun shortens the next', () => {
    const row = ['100 hour', '', 3309.5, 3302.5];
    expect(standing('2026-11-25', row, 3309.5)).toEqual(['OK', '', '', 93]);
    expect(standing('2026-11-25', row, 3392.4)).toEqual(['OK', '', '', 10.1]);
    expect(standing('2026-11-25', row, 3402.5)).toEqual(['CHECK', '', '', 0]);
    expect(standing('2026-11-25', row, 3402.6)).toEqual(['NO', '', '', -0.1]);
    expect(standing('2026-11-25', ['100 hour inspection', '', 3295, 3302.5], 3300)).toEqual(['OK', '', '', 95]);
  });
  // RE-20, R*: 91.411 and 91.413 done on 22 July 2020: through 31 July 2022.
  it.each(['altimeter and static system', 'transponder'])('%s: 24 calendar months', (name) => {
    expect(standing('2022-07-31', [name, '2020-07-22'])).toEqual(['CHECK', '2022-07-31', 0, '']);
    expect(standing('2022-08-01', [name, '2020-07-22'])).toEqual(['NO', '2022-07-31', -1, '']);
  });
  // 91.409(a)(1), R: within the preceding 12 calendar months. RE-22, R*: ELT 12 calendar months. February of a leap year, D.
  it.each(['annual inspection', 'ELT inspection'])('%s: 12 calendar months', (name) => {
    expect(standing('2024-01-01', [name, '2023-02-28'])).toEqual(['OK', '2024-02-29', 59, '']);
  });
  // RE-21, R: the preceding 30 days; the day of the flight counted, D: 1 November serves through 30 November.
  it('VOR check: 30 days', () => {
    expect(standing('2026-11-25', ['VOR check', '2026-11-01'])).toEqual(['CHECK', '2026-11-30', 5, '']);
    expect(standing('2026-12-01', ['VOR', '2026-11-01'])).toEqual(['NO', '2026-11-30', -1, '']);
  });
  // 91.207(c), M: the expiry date marked on the battery. 49 CFR 180.209(a), M: 5 and 3 years.
  it('ELT battery and oxygen bottles', () => {
    expect(standing('2026-11-25', ['ELT battery', '2027-03-31'])).toEqual(['OK', '2027-03-31', 126, '']);
    expect(standing('2026-11-25', ['oxygen bottle 3AA', '2024-02-29'])).toEqual(['OK', '2029-02-28', 826, '']);
    expect(standing('2026-11-25', ['oxygen bottle 3HT', '2024-06-15'])).toEqual(['OK', '2027-06-15', 202, '']);
  });
});
