// The lists against rules that came later than the others, and against authorities beside the first two, to the day. What each row says was
// read or worked by hand from the text named above it, never from our own answer. Statuses as in DEVELOPERS.md.
import { describe, expect, it } from 'vitest';
import { call, plain } from '../../support/call';

const heads = ['date', 'aircraft', 'day landings', 'night landings', 'night full stop', 'hours', 'hours in command', 'hours with instructor', 'approaches', 'holds', 'tracking'];
const fleetHeads = ['aircraft', 'category', 'class', 'device', 'hours now'];
const fleetOf = (...rows: readonly (readonly string[])[]): unknown[][] => [fleetHeads, ...rows.map((row) => [...row, ...Array<string>(5 - row.length).fill('')])];
const usual = fleetOf(['North', 'aeroplane', 'SEP (land)'], ['Motor', 'aeroplane', 'TMG'], ['Twin', 'aeroplane', 'MEP'], ['Dome', 'aeroplane', 'SEP (land)', 'FFS'], ['Kite', 'glider', '']);
const flown = (date: string, changes: Readonly<Record<string, unknown>> = {}): unknown[] => heads.map((head) => (head === 'date' ? date : (changes[head] ?? (head === 'aircraft' ? 'North' : ''))));

type Found = readonly unknown[];
/** Item, counted, needed, verdict, good through, days left, why. */
function list(rules: string, asOf: string, flights: readonly unknown[][], papers: readonly (readonly [string, unknown])[] = [], fleet = usual, own?: readonly unknown[][]): Found[] {
  const written = papers.length === 0 ? [['', '', '']] : papers.map((paper) => [...paper, '']);
  const given = ['PILOT_STATUS', [heads, ...flights], fleet, written, asOf, rules, '', ...(own === undefined ? [] : [own])] as const;
  return (call(...(given as unknown as Parameters<typeof call>)) as unknown[][]).map((row) => row.map(plain));
}
const item = (rows: readonly Found[], name: string): Found => {
  const found = rows.find(([own]) => own === name);
  if (found === undefined) throw new Error(`no row "${name}" among ${rows.map(([own]) => String(own)).join(' | ')}`);
  return found;
};
const standing = (rows: readonly Found[], name: string): unknown[] => {
  const [, counted, , verdict, through] = item(rows, name);
  return [counted, verdict, through];
};

describe('UK, single-engine piston rating by experience since 1 October 2025, FCL.740.A(b)(1)(ii)', () => {
  // R* (CAA, "What to do if your rating is about to expire"): within the validity period 12 h of flight time in the relevant class, including
  // 6 h during the 12 months preceding the expiry date, 6 h as PIC, 12 take-offs and 12 landings, refresher training of at least 1 h.
  const name = 'class rating by experience, SEP (land)';
  const alone = fleetOf(['North', 'aeroplane', 'SEP (land)']);
  const rated = [['class rating valid to', '2027-03-31']] as const;
  const rating = (asOf: string, flights: readonly unknown[][], papers: readonly (readonly [string, unknown])[] = rated): unknown[] => standing(list('UK', asOf, flights, papers, alone), name);
  const year = (date: string, hours: number, landings: number, trained = 0): unknown[] => flown(date, { hours, 'hours in command': hours - trained, 'day landings': landings, 'hours with instructor': trained });
  // Five things of the six, since a log without take-offs is taken to have as many as landings.
  it('is met by six hours in each year', () => {
    expect(rating('2026-11-25', [year('2025-06-10', 6, 6, 1), year('2026-06-10', 6, 6)])).toEqual([5, 'OK', '2027-03-31']);
  });
  it('is not met by twelve hours in the first year alone, nor by eleven in both', () => {
    expect(rating('2026-11-25', [year('2025-06-10', 12, 12, 1)])).toEqual([4, 'CHECK', '2027-03-31']);
    expect(rating('2026-11-25', [year('2025-06-10', 5, 6, 1), year('2026-06-10', 6, 6)])).toEqual([4, 'CHECK', '2027-03-31']);
    expect(rating('2026-11-25', [year('2025-06-10', 6.1, 6, 1), year('2026-06-10', 5.9, 6)])).toEqual([4, 'CHECK', '2027-03-31']);
  });
  it('counts the last twelve months and the two years from the day after the same date', () => {
    expect(rating('2026-11-25', [year('2025-06-10', 6, 6, 1), year('2026-03-31', 6, 6)])).toEqual([4, 'CHECK', '2027-03-31']);
    expect(rating('2026-11-25', [year('2025-06-10', 6, 6, 1), year('2026-04-01', 6, 6)])).toEqual([5, 'OK', '2027-03-31']);
    expect(rating('2026-11-25', [year('2025-03-31', 6, 6, 1), year('2026-06-10', 6, 6)])).toEqual([2, 'CHECK', '2027-03-31']);
    expect(rating('2026-11-25', [year('2025-04-01', 6, 6, 1), year('2026-06-10', 6, 6)])).toEqual([5, 'OK', '2027-03-31']);
  });
  it('to the leap day', () => {
    const leap = [['class rating valid to', '2028-02-29']] as const;
    expect(rating('2027-12-01', [year('2026-03-01', 6, 6, 1), year('2027-03-01', 6, 6)], leap)).toEqual([5, 'OK', '2028-02-29']);
    expect(rating('2027-12-01', [year('2026-03-01', 6, 6, 1), year('2027-02-28', 6, 6)], leap)).toEqual([4, 'CHECK', '2028-02-29']);
  });
  it('says what is left to do', () => {
    expect(item(list('UK', '2026-11-25', [year('2025-06-10', 6, 6, 1), year('2026-06-10', 4.5, 4)], rated, alone), name)[6]).toMatch(
      /^to do: 1\.5 more hours and 2 more landings and 1\.5 more hours, or class rating proficiency check by 31 March 2027; UK FCL\.740\.A\(b\)\(1\)/,
    );
  });
  it('before that day is the rule of twelve months, and after it no more', () => {
    const flights = [year('2024-06-10', 6, 6, 1), year('2025-05-10', 6, 6)];
    const old = [['class rating valid to', '2026-03-31']] as const;
    expect(rating('2025-09-30', flights, old)).toEqual([1, 'CHECK', '2026-03-31']);
    expect(rating('2025-10-01', flights, old)).toEqual([5, 'OK', '2026-03-31']);
  });
  // FCL.740.A(b)(2) in its UK text, R* (CAA): valid ratings for TMG and SEP may use the same flight time for both.
  it('adds both classes', () => {
    const both = list('UK', '2026-11-25', [year('2025-06-10', 6, 6, 1), flown('2026-06-10', { aircraft: 'Motor', hours: 6, 'hours in command': 6, 'day landings': 6 })], rated);
    expect(standing(both, 'class rating by experience, SEP (land) and TMG')).toEqual([5, 'OK', '2027-03-31']);
  });
});

describe('UK, a national licence and the medical declaration', () => {
  // ANO 2016, schedule 8, part 3 (R* as made): the rating has a period of its own, and no rating of Part-FCL is asked for.
  it.each<[string, string, unknown[]]>([
    ['on its last day', '2026-11-25', ['', 'CHECK', '2026-11-25']],
    ['the day after', '2026-11-24', ['', 'NO', '2026-11-24']],
    ['long before', '2028-02-29', ['', 'OK', '2028-02-29']],
  ])('rating %s', (_, last, found) => {
    const rows = list('UK', '2026-11-25', [flown('2026-11-01', { hours: 1 })], [['NPPL', 'yes'], ['NPPL class rating valid to', last]]);
    expect(standing(rows, 'NPPL class rating')).toEqual(found);
    expect(rows.some(([name]) => name === 'class rating')).toBe(false);
    expect(item(rows, 'NPPL class rating')[6]).toContain('the hours that revalidate it are not judged');
  });
  it('is UNKNOWN without its date, and not asked of who has none', () => {
    expect(standing(list('UK', '2026-11-25', [], [['NPPL', 'yes']]), 'NPPL class rating')).toEqual(['', 'UNKNOWN', '']);
    expect(list('UK', '2026-11-25', []).some(([name]) => name === 'NPPL class rating')).toBe(false);
  });
  // R* (CAA): a declaration to the 70th birthday, then each for three years; within limits that nothing here can see, so CHECK at best.
  it.each<[string, string, string]>([
    ['2030-05-12', 'CHECK', 'private, by declaration'],
    ['2026-11-25', 'CHECK', 'private, by declaration'],
    ['2026-11-24', 'NO', 'private, by declaration'],
  ])('declaration to %s is %s', (last, verdict, about) =>
    expect(standing(list('UK', '2026-11-25', [], [['medical declaration valid to', last]]), `medical, ${about}`)).toEqual(['', verdict, last]));
  it('a good certificate goes before it', () => {
    const papers = [['medical examination', '2026-03-01'], ['birth date', '1980-01-01'], ['medical class', '2'], ['medical declaration valid to', '2050-01-01']] as const;
    expect(standing(list('UK', '2026-11-25', [], papers), 'medical, private')[1]).toBe('OK');
  });
  it('is no paper of the other authority', () =>
    expect(list('EASA', '2026-11-25', [], [['medical declaration valid to', '2050-01-01']]).filter(([name]) => String(name).startsWith('medical'))[0]?.[3]).toBe('UNKNOWN'));
});

describe('UK, FCL.060(b) and MED.A.045', () => {
  // R* (consolidated text of March 2022): at least 3 take-offs, approaches and landings in the preceding 90 days, in the type or class or an FFS of it.
  it('recent landings', () => {
    expect(standing(list('UK', '2026-03-31', [flown('2026-01-01', { 'day landings': 3 })]), 'passengers, SEP (land)')).toEqual([3, 'CHECK', '2026-03-31']);
    expect(standing(list('UK', '2026-04-01', [flown('2026-01-01', { 'day landings': 3 })]), 'passengers, SEP (land)')).toEqual([0, 'NO', '2026-03-31']);
    expect(standing(list('UK', '2026-03-31', [flown('2026-03-01', { aircraft: 'Dome', 'day landings': 3 })]), 'passengers, SEP (land)')).toEqual([3, 'OK', '2026-05-29']);
    expect(standing(list('UK', '2026-03-31', [flown('2026-03-01', { aircraft: 'Twin', 'day landings': 3 })]), 'passengers, SEP (land)')).toEqual([0, 'NO', '']);
    expect(standing(list('UK', '2026-03-31', [flown('2026-03-01', { 'night landings': 1 })]), 'passengers at night, SEP (land)')).toEqual([1, 'OK', '2026-05-29']);
    expect(standing(list('UK', '2026-03-31', [flown('2026-03-01')], [['instrument rating valid to', '2026-12-31']]), 'passengers at night, SEP (land)')).toEqual([0, 'OK', '2026-12-31']);
  });
  // R* (consolidated text of November 2020): class 2, 60 months, ended after 42; 24 months to 50, ended after 51; then 12.
  it.each([
    ['2024-02-29', '1990-05-01', '2029-02-28'],
    ['2024-05-04', '1984-11-20', '2026-11-19'],
    ['2026-01-31', '1984-01-31', '2028-01-31'],
    ['2025-08-31', '1976-08-31', '2027-08-30'],
    ['2026-02-28', '1976-02-28', '2027-02-28'],
    ['2025-05-04', '1975-11-20', '2026-11-19'],
  ])('medical of class 2 examined on %s, born on %s', (exam, birth, through) => {
    const rows = list('UK', '2026-03-01', [], [['medical examination', exam], ['birth date', birth], ['medical class', '2']]);
    expect(item(rows, 'medical, private')[4]).toBe(through);
  });
});

describe('EASA, light aircraft licence, FCL.140.A', () => {
  // R* (quotations of 2011 and 2020): in the last 24 months, as pilots of aeroplanes or TMG, 12 hours including 12 take-offs and landings, and
  // refresher training of 1 hour with an instructor; or a proficiency check.
  const name = 'light aircraft licence, aeroplane';
  const lapl = (asOf: string, flights: readonly unknown[][], more: readonly (readonly [string, unknown])[] = []): Found[] => list('EASA', asOf, flights, [['LAPL', 'yes'], ...more]);
  const enough = (date: string, hours = 12, landings = 12, trained = 1): unknown[] => flown(date, { hours, 'day landings': landings, 'hours with instructor': trained });
  it('rolls on from the day of the flights', () => {
    expect(standing(lapl('2026-11-25', [enough('2024-11-26')]), name)).toEqual([12, 'CHECK', '2026-11-25']);
    expect(standing(lapl('2026-11-26', [enough('2024-11-26')]), name)).toEqual([0, 'NO', '2026-11-25']);
    expect(standing(lapl('2026-02-28', [enough('2024-02-29')]), name)).toEqual([12, 'CHECK', '2026-02-28']);
    expect(standing(lapl('2026-03-01', [enough('2024-02-29')]), name)).toEqual([0, 'NO', '2026-02-28']);
  });
  it('asks for hours, landings and an instructor', () => {
    expect(standing(lapl('2026-11-25', [enough('2026-05-01', 11.9)]), name)).toEqual([11.9, 'NO', '']);
    expect(standing(lapl('2026-11-25', [enough('2026-05-01', 12, 11)]), name)).toEqual([11, 'NO', '']);
    expect(standing(lapl('2026-11-25', [enough('2026-05-01', 12, 12, 0.9)]), name)).toEqual([0.9, 'NO', '']);
    expect(item(lapl('2026-11-25', [enough('2026-05-01', 12, 12, 0.5)]), name)[6]).toMatch(/^to do: 0\.5 more hours with an instructor; FCL\.140\.A/);
  });
  it('adds aeroplanes and motor gliders, takes a check, and asks for no date of a class rating', () => {
    const both = [enough('2026-05-01', 7, 6, 0), flown('2026-06-01', { aircraft: 'Motor', hours: 5, 'day landings': 6, 'hours with instructor': 1 })];
    expect(standing(lapl('2026-11-25', both), name)).toEqual([12, 'OK', '2028-04-30']);
    expect(standing(lapl('2026-11-25', [flown('2026-05-01')], [['LAPL proficiency check', '2026-01-10']]), name)).toEqual([0, 'OK', '2028-01-09']);
    expect(lapl('2026-11-25', both).some(([own]) => String(own).startsWith('class rating'))).toBe(false);
    expect(list('EASA', '2026-11-25', both).some(([own]) => own === name)).toBe(false);
  });
});

describe('Canada, CAR 401.05 and 404.04', () => {
  // 401.05(2)(b)(i), R* (text of 2014; excerpt of 2026): within the six months preceding the flight five take-offs and five landings in the category
  // and class or a simulator of it, at night where the flight is; six months from the day after the same date, the stricter reading.
  const name = 'passengers, SEP (land)';
  it('five landings in six months', () => {
    expect(standing(list('Canada', '2026-11-25', [flown('2026-05-26', { 'day landings': 5 })]), name)).toEqual([5, 'CHECK', '2026-11-25']);
    expect(standing(list('Canada', '2026-11-26', [flown('2026-05-26', { 'day landings': 5 })]), name)).toEqual([0, 'NO', '2026-11-25']);
    expect(standing(list('Canada', '2026-11-25', [flown('2026-11-01', { 'day landings': 3, 'night landings': 1 })]), name)).toEqual([4, 'NO', '']);
    expect(standing(list('Canada', '2026-11-25', [flown('2026-11-01', { 'day landings': 2, 'night landings': 3 })]), name)).toEqual([5, 'OK', '2027-04-30']);
    expect(standing(list('Canada', '2026-11-25', [flown('2026-11-01', { aircraft: 'Twin', 'day landings': 5 })]), name)).toEqual([0, 'NO', '']);
    expect(standing(list('Canada', '2026-11-25', [flown('2026-11-01', { aircraft: 'Dome', 'day landings': 5 })]), name)).toEqual([5, 'OK', '2027-04-30']);
  });
  it('to the ends of months and the leap day', () => {
    expect(standing(list('Canada', '2027-12-01', [flown('2027-08-31', { 'day landings': 5 })]), name)).toEqual([5, 'OK', '2028-02-29']);
    expect(standing(list('Canada', '2026-12-01', [flown('2026-08-31', { 'day landings': 5 })]), name)).toEqual([5, 'OK', '2027-02-28']);
    expect(standing(list('Canada', '2026-06-01', [flown('2026-02-28', { 'day landings': 5 })]), name)).toEqual([5, 'OK', '2026-08-27']);
  });
  it('five at night for a flight at night', () => {
    expect(standing(list('Canada', '2026-11-25', [flown('2026-11-01', { 'day landings': 5, 'night landings': 4 })]), 'passengers at night, SEP (land)')).toEqual([4, 'NO', '']);
    expect(standing(list('Canada', '2026-11-25', [flown('2026-11-01', { 'night landings': 5 })]), 'passengers at night, SEP (land)')).toEqual([5, 'OK', '2027-04-30']);
  });
  // 401.05(1)(a) and (2)(a), R*: pilot in command or co-pilot within five years; a recurrent training program within 24 months.
  it('one flight in five years, training in two', () => {
    expect(standing(list('Canada', '2026-11-25', [flown('2021-11-26')]), 'five-year recency')).toEqual([1, 'CHECK', '2026-11-25']);
    expect(standing(list('Canada', '2026-11-26', [flown('2021-11-26')]), 'five-year recency')).toEqual([0, 'NO', '2026-11-25']);
    expect(item(list('Canada', '2026-11-25', [], [['recurrent training', '2025-02-28']]), 'recurrent training').slice(3, 5)).toEqual(['OK', '2027-02-28']);
    expect(item(list('Canada', '2026-11-25', [], [['recurrent training', '2024-11-24']]), 'recurrent training').slice(3, 5)).toEqual(['NO', '2026-11-24']);
  });
  // 404.04(6), R*: private pilot, 60 months under 40, 24 from 40 on; a thread on the rule: examined on 18 November 2021 at 38, good through 30 November 2026.
  it.each([
    ['2021-11-18', '1983-05-01', '3', '2026-11-30'],
    ['2025-02-10', '1985-02-10', '3', '2027-02-28'],
    ['2025-02-10', '1985-02-11', '3', '2030-02-28'],
    ['2024-02-29', '1990-01-01', '1', '2029-02-28'],
    ['2026-02-01', '1970-01-01', '3', '2028-02-29'],
    ['2026-01-31', '1970-01-01', '1', '2028-01-31'],
  ])('medical examined on %s, born on %s, category %s', (exam, birth, category, through) => {
    const rows = list('Canada', '2026-03-01', [], [['medical examination', exam], ['birth date', birth], ['medical class', category]]);
    expect(item(rows, 'medical, private')[4]).toBe(through);
  });
  it('says that nothing is known of its aircraft', () => {
    const items = [['aircraft', 'item', 'done on'], ['North', 'annual inspection', '2027-03-31']];
    const rows = call('AIRCRAFT_FOR_FLIGHT', items, fleetOf(['North', 'aeroplane', 'SEP (land)']), 'North', '2026-11-26', '2026-11-25', 'Canada') as unknown[][];
    expect(rows[0]?.slice(1)).toEqual(['UNKNOWN', '', expect.stringContaining('Canada rules: no rule for an aircraft is known here')]);
  });
});

describe('the United States, papers that are not reviews', () => {
  // 61.56(d)(2), R* (rule of 15 September 2013): a practical test for a flight instructor certificate.
  it('a test for an instructor counts as the review', () => expect(item(list('FAA', '2026-11-25', [], [['flight instructor practical test', '2025-02-10']]), 'flight review').slice(3, 5)).toEqual(['OK', '2027-02-28']));
  // 61.31, M: given once.
  it('an endorsement does not lapse', () => {
    expect(item(list('FAA', '2026-11-25', [], [['tailwheel endorsement', '2015-05-02']]), 'tailwheel endorsement').slice(3, 5)).toEqual(['OK', '']);
    expect(item(list('FAA', '2026-11-25', [], [['complex endorsement', '2027-05-02']]), 'endorsement')[3]).toBe('UNKNOWN');
  });
  // 61.58(a)(1), R*: within the preceding 12 calendar months.
  it.each([['2025-11-30', 'CHECK', '2026-11-30'], ['2025-10-31', 'NO', '2026-10-31'], ['2026-02-28', 'OK', '2027-02-28']])('pilot in command check on %s', (done, verdict, through) => {
    expect(item(list('FAA', '2026-11-25', [], [['pilot in command check', done]]), 'pilot in command check').slice(3, 5)).toEqual([verdict, through]);
  });
  // 61.23(c)(1)(i), R* (final rule of 2025): sport pilots on a driving licence; the limits cannot be seen, so it is never OK.
  it('a driving licence is good within limits', () => {
    const rows = list('FAA', '2026-11-25', [], [['driving licence valid to', '2028-05-31']]);
    expect(item(rows, 'medical, private, by driving licence').slice(3, 5)).toEqual(['CHECK', '2028-05-31']);
    expect(item(rows, 'medical, private, by driving licence')[6]).toMatch(/^good only within the limits said here; 14 CFR 61\.23\(c\)\(1\)/);
    const certified = [...[['medical examination', '2025-05-12'], ['birth date', '1990-01-01'], ['medical class', '3']], ['driving licence valid to', '2035-05-31']] as const;
    expect(item(list('FAA', '2026-11-25', [], certified as unknown as readonly (readonly [string, unknown])[]), 'medical, private').slice(3, 5)).toEqual(['OK', '2030-05-31']);
    expect(item(list('FAA', '2028-06-01', [], [['driving licence valid to', '2028-05-31']]), 'medical, private, by driving licence')[3]).toBe('NO');
  });
  // 61.57(c), R*: six approaches "in an aircraft (other than a glider)".
  it('six approaches are not asked in a glider', () => {
    const rows = list('FAA', '2026-11-25', [flown('2026-11-01', { aircraft: 'Kite', approaches: 6, holds: 1, tracking: 1 })]);
    expect(item(rows, 'instrument flight, glider').slice(3, 5)).toEqual(['UNKNOWN', '']);
    expect(item(rows, 'instrument flight, glider')[6]).toMatch(/^not judged here; 14 CFR 61\.57\(c\)/);
  });
});

describe('the aircraft', () => {
  const itemHeads = ['aircraft', 'item', 'done on', 'done at hours', 'was due at hours', 'every hours', 'every landings'];
  const aircraft = (asOf: string, rows: readonly (readonly unknown[])[], hoursNow: unknown = '', log?: readonly unknown[][], readOn = ''): unknown[][] =>
    (call('AIRCRAFT_STATUS', [itemHeads, ...rows.map((row) => ['North', ...row, ...Array<string>(6 - row.length).fill('')])], [['aircraft', 'hours now', 'hours read on'], ['North', hoursNow, readOn]], asOf, 'FAA', '', ...(log === undefined ? [] : [[heads, ...log]])) as unknown[][]).map((row) => row.map(plain));
  // 47.40, R (87 FR 71210, in effect on 23 January 2023): seven years, to the end of the month in which it was issued.
  it.each([
    ['2026-11-25', '2020-02-10', 'OK', '2027-02-28'],
    ['2026-11-25', '2019-12-31', 'CHECK', '2026-12-31'],
    ['2026-11-30', '2019-11-01', 'CHECK', '2026-11-30'],
    ['2026-12-01', '2019-11-30', 'NO', '2026-11-30'],
    ['2026-11-25', '2021-02-28', 'OK', '2028-02-29'],
    // The rule before that day: three years.
    ['2023-01-22', '2019-12-31', 'NO', '2022-12-31'],
    ['2023-01-23', '2019-12-31', 'OK', '2026-12-31'],
  ])('on %s a registration of %s', (asOf, issued, verdict, through) => expect(aircraft(asOf, [['registration', issued]])[0]?.slice(0, 2)).toEqual([verdict, through]));
  // 91.409(b), R: within the preceding 100 hours an annual or 100-hour inspection.
  it('an annual counts for a 100 hour inspection', () => {
    const rows = [['100 hour inspection', '', 1200], ['annual inspection', '2026-05-10', 1260]];
    expect(aircraft('2026-11-25', rows, 1350)[0]?.slice(0, 4)).toEqual(['CHECK', '', '', 10]);
    expect(aircraft('2026-11-25', rows, 1361)[0]?.slice(0, 4)).toEqual(['NO', '', '', -1]);
    expect(aircraft('2026-11-25', [rows[0] ?? [], ['annual inspection', '2026-05-10', 1190]], 1290)[0]?.slice(0, 4)).toEqual(['CHECK', '', '', 10]);
    expect(aircraft('2026-11-25', [rows[0] ?? [], ['annual inspection', '2026-05-10']], 1290)[0]?.slice(0, 4)).toEqual(['CHECK', '', '', 10]);
    expect(aircraft('2026-11-25', [['100 hour inspection', '', 1209.5, 1202.5], ['annual inspection', '2026-05-10', 1205]], 1290)[0]?.slice(0, 4)).toEqual(['OK', '', '', 12.5]);
    expect(aircraft('2026-11-25', rows, 1350)[0]?.[4]).toMatch(/^90 of 100 h; the annual inspection counts, done at later hours; 14 CFR 91\.409\(b\)/);
  });
  // 49 CFR 180.209(a), table 1, R*: 3AA 5 years, 3HT 3 years.
  it.each([['oxygen bottle 3AA', '2024-02-29', '2029-02-28'], ['oxygen bottle 3HT', '2024-02-29', '2027-02-28']])('%s', (name, done, through) => expect(aircraft('2026-11-25', [[name, done]])[0]?.[1]).toBe(through));
  // By hand: hours read on 1 November, 2.5 h and 1.5 h flown after it; 20 h in the 56 days of the log, so 26 h take 72.8 days.
  it('hours by the log, landings, and the day they come up', () => {
    const log = [flown('2026-10-01', { hours: 16, 'day landings': 10 }), flown('2026-11-02', { hours: 2.5, 'day landings': 3 }), flown('2026-11-20', { hours: 1.5, 'night landings': 2 }), flown('2026-11-26', { hours: 9 })];
    const [oil, gear] = aircraft('2026-11-25', [['oil change', '2026-10-15', 1280, '', 50], ['gear', '2026-10-15', '', '', '', 20]], 1300, log, '2026-11-01');
    expect(oil?.slice(0, 4)).toEqual(['OK', '', '', 26]);
    expect(oil?.[4]).toBe('24 of 50 h; comes up about 5 February 2027 at the rate of this log; your own item');
    expect(gear?.[0]).toBe('OK');
    expect(gear?.[4]).toBe('15 landings left by this log; your own item');
    expect(aircraft('2026-11-25', [['gear', '2026-09-15', '', '', '', 20]], 1300, log)[0]?.slice(0, 1)).toEqual(['CHECK']);
    expect(aircraft('2026-11-25', [['gear', '2026-09-15', '', '', '', 14]], 1300, log)[0]?.slice(0, 1)).toEqual(['NO']);
    expect(aircraft('2026-11-25', [['gear', '2026-10-15', '', '', '300 landings']], 1300)[0]).toEqual(['UNKNOWN', '', '', '', 'no log of landings; your own item']);
  });
});

describe('two definitions of night, 14 CFR 61.57(b)(1) and 1.1, Part-FCL', () => {
  // R: passengers in the period from 1 hour after sunset to 1 hour before sunrise, three take-offs and landings to a full stop in that period;
  // night in Part-FCL is from the end of evening civil twilight. A landing between the two counts for the one and not for the other.
  const [row] = [['date', 'aircraft', 'day landings', 'night landings', 'night full stop', 'late landings', 'late full stop']];
  const nightly = (rules: string, ...flights: unknown[][]): Found[] =>
    (call('PILOT_STATUS', [row, ...flights], usual, [['', '', '']], '2026-11-25', rules) as unknown[][]).map((one) => one.map(plain));
  const name = 'passengers at night, SEP (land)';
  it.each([
    ['FAA', 3, 3, [3, 'OK', '2027-01-29']],
    ['FAA', 3, 2, [2, 'NO', '']],
    ['FAA', 3, 0, [0, 'NO', '']],
    ['EASA', 3, 0, [3, 'OK', '2027-01-29']],
    ['UK', 1, 0, [1, 'OK', '2027-01-29']],
    ['Canada', 5, 0, [5, 'OK', '2027-04-30']],
  ])('%s: %i at night, %i of them an hour after sunset', (rules, night, late, expected) => {
    expect(standing(nightly(rules, ['2026-11-01', 'North', '', night, night, late, late]), name)).toEqual(expected);
  });
  it('a log with one column of the night is taken at its word', () => {
    const [, counted, , verdict] = item(list('FAA', '2026-11-25', [flown('2026-11-01', { 'night landings': 3, 'night full stop': 3 })]), name);
    expect([counted, verdict]).toEqual([3, 'OK']);
  });
});
