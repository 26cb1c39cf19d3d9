// The pilot's list of each authority against a plain count, flight by flight and day by day, over random logs, papers and days.
// Nothing here comes from core: days are counted with Date.UTC, each rule is written again from its text (paragraphs beside it).
// RANDOM_LOGS=20000 npx vitest run test/functions/currency/bruteForce tries that many logs for each authority.
import { describe, expect, it } from 'vitest';
import { call, plain } from '../../support/call';

const runs = Number(process.env['RANDOM_LOGS'] ?? 60);

/** Numbers that look random and are the same each time. */
function randomFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return Math.floor((state / 4294967296) * below);
  };
}

const dayMs = 86_400_000;
const dayOf = (year: number, month: number, day: number): number => Date.UTC(year, month - 1, day) / dayMs;
const iso = (day: number): string => new Date(day * dayMs).toISOString().slice(0, 10);
const parts = (day: number): [number, number, number] => iso(day).split('-').map(Number) as [number, number, number];
const monthOf = (day: number): number => parts(day)[0] * 12 + parts(day)[1] - 1;
const lastOfMonth = (month: number): number => dayOf(Math.floor(month / 12), (month % 12) + 2, 0);
const sameDates = new Map<number, number>();
/** The same date so many months on or back, or the last of a shorter month. */
function sameDate(day: number, months: number): number {
  const key = day * 1000 + months;
  const known = sameDates.get(key) ?? sameDateOf(day, months);
  sameDates.set(key, known);
  return known;
}
function sameDateOf(day: number, months: number): number {
  const month = monthOf(day) + months;
  return Math.min(dayOf(Math.floor(month / 12), (month % 12) + 1, parts(day)[2]), lastOfMonth(month));
}

interface Made {
  readonly day: number;
  readonly aircraft: string;
  readonly dayLandings: number;
  readonly dayStops: number;
  readonly nightLandings: number;
  readonly nightStops: number;
  readonly approaches: number;
  readonly holds: number;
  readonly tracking: number;
  readonly tenths: number;
  readonly commandTenths: number;
  readonly trainingTenths: number;
}
interface Craft {
  readonly name: string;
  readonly class: string;
  readonly tailwheel: boolean;
  readonly device: '' | 'FFS' | 'ATD';
}
const allCraft: readonly Craft[] = [
  { name: 'North', class: 'SEL', tailwheel: false, device: '' },
  { name: 'Tail', class: 'SEL', tailwheel: true, device: '' },
  { name: 'Twin', class: 'MEL', tailwheel: false, device: '' },
  { name: 'Motor', class: 'TMG', tailwheel: false, device: '' },
  { name: 'Dome', class: 'SEL', tailwheel: false, device: 'FFS' },
  { name: 'Box', class: 'SEL', tailwheel: false, device: 'ATD' },
];

interface Case {
  readonly asOf: number;
  readonly fleet: readonly Craft[];
  readonly flights: readonly Made[];
  readonly random: (below: number) => number;
}
type Row = readonly [item: string, counted: unknown, needed: unknown, verdict: string, through: string, left: unknown, rule: string];

function randomCase(seed: number): Case {
  const random = randomFrom(seed * 7919 + 17);
  for (let index = 0; index < 5; index += 1) random(2);
  const month = dayOf(2024, 1, 1) + random(1460);
  // Often a month's last or first day, or near the end of February.
  const asOf = [month, lastOfMonth(monthOf(month)), lastOfMonth(monthOf(month)) + 1, dayOf(2024, 2, 28) + random(3)][random(4)] ?? month;
  const fleet = allCraft.filter(({ name }) => name === 'North' || random(3) > 0);
  const reach = [100, 200, 800, 2000][random(4)] ?? 100;
  const flights = Array.from({ length: random(14) }, (): Made => {
    const [dayLandings, nightLandings, tenths] = [random(5), random(3), random(40)];
    return {
      day: asOf - random(reach) + random(10),
      aircraft: fleet[random(fleet.length)]?.name ?? 'North',
      dayLandings,
      dayStops: random(dayLandings + 1),
      nightLandings,
      nightStops: random(nightLandings + 1),
      approaches: random(5),
      holds: random(2),
      tracking: random(2),
      tenths,
      commandTenths: random(2) === 0 ? tenths : 0,
      trainingTenths: random(4) === 0 ? tenths : 0,
    };
  });
  return { asOf, fleet, flights, random };
}

const heads = [
  'date',
  'aircraft',
  'day landings',
  'day full stop',
  'night landings',
  'night full stop',
  'approaches',
  'holds',
  'tracking',
  'hours',
  'hours in command',
  'hours with instructor',
];
function listed(
  { asOf, fleet, flights }: Case,
  papers: readonly (readonly [string, number | string])[],
  rules: string,
  own?: readonly unknown[][],
): Row[] {
  const log = flights.map((one) => [
    ...[iso(one.day), one.aircraft, one.dayLandings, one.dayStops, one.nightLandings, one.nightStops, one.approaches, one.holds, one.tracking],
    ...[one.tenths / 10, one.commandTenths / 10, one.trainingTenths / 10],
  ]);
  const craft = fleet.map((one) => [one.name, 'airplane', one.class, one.tailwheel ? 'yes' : '', one.device]);
  const written = papers.map(([name, value]) => [name, typeof value === 'number' ? iso(value) : value, '']);
  const found = call(
    'PILOT_STATUS',
    [heads, ...log],
    [['aircraft', 'category', 'class', 'tailwheel', 'device'], ...craft],
    written.length === 0 ? [['', '', '']] : written,
    iso(asOf),
    rules,
    '',
    ...(own === undefined ? [] : [own]),
  ) as unknown[][];
  return found.map((row) => row.map(plain)) as unknown as Row[];
}

const craftOf = ({ fleet }: Case, name: string): Craft => fleet.find((one) => one.name === name) ?? { name, class: '', tailwheel: false, device: '' };
const done = (given: Case, fits: (made: Made, craft: Craft) => boolean): Made[] =>
  given.flights.filter((made) => made.day <= given.asOf && fits(made, craftOf(given, made.aircraft)));
const sum = (flights: readonly Made[], amount: (made: Made) => number): number => flights.reduce((all, made) => all + amount(made), 0);
const landings = (made: Made): number => made.dayLandings + made.nightLandings;

const described = ({ asOf, flights }: Case): string => `${iso(asOf)}: ${JSON.stringify(flights.map((one) => ({ ...one, day: iso(one.day) })))}`;
function mustBe(found: unknown, expected: unknown, what: string, given: Case): void {
  if (found !== expected) throw new Error(`${what} is ${String(found)}, expected ${String(expected)} on ${described(given)}`);
}

/** Good on the day asked, or not; good through the last day on which it is, and never after. */
function expectRow(given: Case, rows: readonly Row[], item: string, isGood: (day: number) => boolean, reach: number): void {
  const [, , , verdict = '', through] = rows.find(([name]) => name === item) ?? [];
  mustBe(['OK', 'CHECK'].includes(verdict), isGood(given.asOf), item, given);
  const lastGood = through === undefined || through === '' ? undefined : Date.parse(`${through}T00:00:00Z`) / dayMs;
  if (lastGood === undefined) {
    mustBe(
      given.flights.some(({ day }) => isGood(day)),
      false,
      `${item} at any time`,
      given,
    );
    return;
  }
  for (let day = lastGood; day <= Math.max(given.asOf, lastGood) + reach; day += reach > 200 && day > lastGood ? 13 : 1)
    mustBe(isGood(day), day === lastGood, `${item} on ${iso(day)}`, given);
}

const classesOf = ({ fleet }: Case): string[] => [...new Set(fleet.filter(({ device }) => device === '').map((one) => one.class))];
const inDays =
  (days: number, day: number) =>
  (made: Made): boolean =>
    made.day <= day && made.day > day - days;
const inMonths =
  (months: number, day: number) =>
  (made: Made): boolean =>
    made.day <= day && made.day > sameDate(day, -months);
const has = (name: string, rows: readonly Row[]): boolean => rows.some(([item]) => item === name);

describe('the United States', () => {
  // 61.57(a)(1), (a)(1)(ii), (b)(1): 3 in 90 days in the class, to a full stop in a tailwheel and at night; no devices.
  it('recent landings', () => {
    for (let seed = 0; seed < runs; seed += 1) {
      const given = randomCase(seed);
      const rows = listed(given, [], 'FAA');
      if (given.flights.length === 0) continue;
      for (const own of classesOf(given)) {
        const made = done(given, (_, craft) => craft.class === own && craft.device === '');
        expectRow(given, rows, `passengers, ${own}`, (day) => sum(made.filter(inDays(90, day)), landings) >= 3, 95);
        expectRow(
          given,
          rows,
          `passengers at night, ${own}`,
          (day) =>
            sum(made.filter(inDays(90, day)), (one) => one.nightStops) >= 3 && sum(made.filter(inDays(90, day)), (one) => one.nightLandings) >= 3,
          95,
        );
      }
      expect(has('passengers, tailwheel, SEL', rows)).toBe(given.fleet.some(({ tailwheel }) => tailwheel));
      const tail = done(given, (_, craft) => craft.tailwheel);
      if (given.fleet.some(({ tailwheel }) => tailwheel))
        expectRow(
          given,
          rows,
          'passengers, tailwheel, SEL',
          (day) => sum(tail.filter(inDays(90, day)), (one) => one.dayStops + one.nightStops) >= 3 && sum(tail.filter(inDays(90, day)), landings) >= 3,
          95,
        );
    }
  });

  // 61.57(c)(1) and (d): six approaches, holding, tracking in the six calendar months before the month; a lapse of more than six needs a check.
  it('instrument flight', () => {
    for (let seed = 0; seed < runs; seed += 1) {
      const given = randomCase(seed + 50_000);
      const checks = Array.from({ length: given.random(3) }, () => given.asOf - given.random(900));
      const rows = listed(
        given,
        checks.map((day) => ['instrument proficiency check', day] as const),
        'FAA',
      );
      if (given.flights.length === 0) continue;
      const made = done(given, () => true);
      const met = (from: number, to: number): boolean => {
        const within = made.filter(({ day }) => monthOf(day) >= from && monthOf(day) <= to);
        return sum(within, (one) => one.approaches) >= 6 && sum(within, (one) => one.holds) >= 1 && sum(within, (one) => one.tracking) >= 1;
      };
      const checked = (month: number): boolean => checks.some((day) => monthOf(day) >= month - 6 && monthOf(day) <= month);
      const month = monthOf(given.asOf);
      const good = new Map<number, boolean>();
      let lastGood: number | undefined;
      let metSince: number | undefined;
      for (let at = month - 80; at <= month + 8; at += 1) {
        const isMet = met(at - 6, at);
        metSince = isMet ? (metSince ?? at) : undefined;
        const isGood = checked(at) || (metSince !== undefined && (good.get(at - 1) === true || lastGood === undefined || metSince <= lastGood + 6));
        good.set(at, isGood);
        if (isGood) lastGood = at;
      }
      const [, , , verdict, through] = rows.find(([item]) => item === 'instrument flight, airplane') ?? [];
      const said = `${iso(given.asOf)} ${checks.map(iso).join(' ')} ${JSON.stringify(given.flights.map((one) => ({ ...one, day: iso(one.day) })))}`;
      expect(verdict === 'OK' || verdict === 'CHECK', said).toBe(good.get(month));
      if (verdict === 'OK') expect(met(month - 6, month - 1) || checked(month), said).toBe(true);
      expect(through, said).toBe(lastGood === undefined ? '' : iso(lastOfMonth(lastGood)));
    }
  });

  // 61.56(c): since the beginning of the 24th calendar month before the month; 61.23(d): third class, 60 months under 40 at the examination, else 24.
  it('reviews and medicals', () => {
    for (let seed = 0; seed < runs; seed += 1) {
      const given = randomCase(seed + 100_000);
      const [review, exam] = [given.asOf - given.random(1200), given.asOf - given.random(2400)];
      const birth = sameDate(exam, -12 * (38 + given.random(5))) - 2 + given.random(5);
      const rows = listed(
        given,
        [
          ['flight review', review],
          ['medical examination', exam],
          ['birth date', birth],
          ['medical class', '3'],
        ],
        'FAA',
      );
      const [year, monthDay] = [parts(exam)[0] - parts(birth)[0], (day: number) => iso(day).slice(5)];
      const age = year - (monthDay(exam) < monthDay(birth) ? 1 : 0);
      // A birthday on 29 February: on the 28th in other years, the stricter.
      const leap = monthDay(birth) === '02-29' && monthDay(exam) === '02-28' && parts(exam + 1)[1] === 3;
      const months = age + (leap ? 1 : 0) >= 40 ? 24 : 60;
      expect(rows.find(([item]) => item === 'flight review')?.slice(3, 5)).toEqual([
        expect.stringMatching(monthOf(review) + 24 >= monthOf(given.asOf) ? /OK|CHECK/ : /NO/),
        iso(lastOfMonth(monthOf(review) + 24)),
      ]);
      expect(rows.find(([item]) => item === 'medical, private')?.[4], `${iso(exam)} ${iso(birth)}`).toBe(iso(lastOfMonth(monthOf(exam) + months)));
    }
  });
});

/** What is asked of single-engine piston and motor glider classes before a rating ends, by the text: met, and of how many. */
function revalidation(given: Case, own: readonly string[], expiry: number, months: number, lastTwelve: boolean): boolean {
  const begins = sameDate(expiry, -months);
  const made = done(given, (one, craft) => own.includes(craft.class) && craft.device === '' && one.day > begins && one.day <= expiry);
  const late = made.filter(({ day }) => day > sameDate(expiry, -12));
  return (
    sum(made, (one) => one.tenths) >= 120 &&
    sum(made, (one) => one.commandTenths) >= 60 &&
    sum(made, landings) >= 12 &&
    sum(made, (one) => one.trainingTenths) >= 10 &&
    (!lastTwelve || sum(late, (one) => one.tenths) >= 60)
  );
}

function expectEuropean(given: Case, rules: 'EASA' | 'UK'): void {
  const expiry = given.asOf - 60 + given.random(900);
  const rating = given.asOf - 40 + given.random(80);
  const check = expiry - given.random(150);
  const isChecked = given.random(3) === 0;
  const papers: (readonly [string, number])[] = [
    ['class rating valid to', expiry],
    ...(given.random(2) === 0 ? ([['instrument rating valid to', rating]] as const) : []),
  ];
  const rows = listed(given, [...papers, ...(isChecked ? ([['class rating proficiency check', check]] as const) : [])], rules);
  if (given.flights.length === 0) return;
  for (const own of classesOf(given)) {
    // FCL.060(b)(1) and (b)(2): 3 in 90 days in the class or a full flight simulator of it; one at night, or an instrument rating.
    const made = done(given, (_, craft) => craft.class === own && craft.device !== 'ATD');
    expectRow(given, rows, `passengers, ${own}`, (day) => sum(made.filter(inDays(90, day)), landings) >= 3, 95);
    if (papers.length === 1)
      expectRow(given, rows, `passengers at night, ${own}`, (day) => sum(made.filter(inDays(90, day)), (one) => one.nightLandings) >= 1, 95);
    else {
      const atNight = sum(made.filter(inDays(90, given.asOf)), (one) => one.nightLandings) >= 1;
      const verdict = rows.find(([item]) => item === `passengers at night, ${own}`)?.[3] ?? '';
      expect(['OK', 'CHECK'].includes(verdict)).toBe(atNight || rating >= given.asOf);
    }
  }
  // FCL.740.A(b)(1) and (2): in one class, or in both together; since 1 October 2025 in the United Kingdom over the two years.
  const isNew = rules === 'UK' && given.asOf >= dayOf(2025, 10, 1);
  const months = isNew ? 24 : 12;
  const classes = classesOf(given).filter((own) => own !== 'MEL');
  const groups = classes.includes('SEL') && classes.includes('TMG') ? [['SEL', 'TMG']] : classes.map((own) => [own]);
  for (const own of groups) {
    const found = rows.find(([item]) => item.startsWith('class rating by experience') && own.every((name) => item.includes(name)));
    const byCheck = isChecked && check <= given.asOf && check > sameDate(expiry, -3);
    const begun = given.asOf > sameDate(expiry, -months);
    const met = revalidation(given, own, expiry, months, isNew) || byCheck;
    expect(found?.[3], `${iso(given.asOf)} ${iso(expiry)}`).toBe(given.asOf > expiry ? 'NO' : (begun && met) || byCheck ? 'OK' : 'CHECK');
  }
}

describe('the European Union', () => {
  it('recent landings, and ratings by experience', () => {
    for (let seed = 0; seed < runs; seed += 1) expectEuropean(randomCase(seed + 150_000), 'EASA');
  });

  // FCL.140.A(a): 12 h, 12 take-offs and landings, 1 h with an instructor in the last 2 years, in aeroplanes and motor gliders; or a check in them.
  it('the light aircraft licence', () => {
    for (let seed = 0; seed < runs; seed += 1) {
      const given = randomCase(seed + 200_000);
      const check = given.random(2) === 0 ? given.asOf - given.random(900) : undefined;
      const rows = listed(given, [['LAPL', 'yes'], ...(check === undefined ? [] : ([['LAPL proficiency check', check]] as const))], 'EASA');
      expect(has('class rating', rows)).toBe(false);
      if (given.flights.length === 0) continue;
      const made = done(given, (_, craft) => craft.device === '');
      const flown = (day: number): boolean => {
        const within = made.filter(inMonths(24, day));
        return sum(within, (one) => one.tenths) >= 120 && sum(within, landings) >= 12 && sum(within, (one) => one.trainingTenths) >= 10;
      };
      const verdict = rows.find(([item]) => item === 'light aircraft licence, airplane')?.[3] ?? '';
      expect(['OK', 'CHECK'].includes(verdict), iso(given.asOf)).toBe(
        flown(given.asOf) || (check !== undefined && check > sameDate(given.asOf, -24)),
      );
      if (check === undefined) expectRow(given, rows, 'light aircraft licence, airplane', flown, 760);
    }
  });
});

describe('the United Kingdom', () => {
  it('recent landings, and ratings by experience', () => {
    for (let seed = 0; seed < runs; seed += 1) expectEuropean(randomCase(seed + 250_000), 'UK');
  });
});

describe('Canada', () => {
  // 401.05(2)(b)(i): five take-offs and landings in the category and class or a simulator, by night where the flight is; 401.05(1)(a): five years.
  it('recent landings, and a flight in five years', () => {
    for (let seed = 0; seed < runs; seed += 1) {
      const given = randomCase(seed + 300_000);
      const rows = listed(given, [], 'Canada');
      if (given.flights.length === 0) continue;
      for (const own of classesOf(given)) {
        const made = done(given, (_, craft) => craft.class === own && craft.device !== 'ATD');
        expectRow(given, rows, `passengers, ${own}`, (day) => sum(made.filter(inMonths(6, day)), landings) >= 5, 190);
        expectRow(given, rows, `passengers at night, ${own}`, (day) => sum(made.filter(inMonths(6, day)), (one) => one.nightLandings) >= 5, 190);
      }
      const flown = done(given, (_, craft) => craft.device === '');
      expectRow(given, rows, 'five-year recency', (day) => flown.some(inMonths(60, day)), 1850);
    }
  });
});

describe('rules of one’s own', () => {
  it('count what they say, where and when they say', () => {
    for (let seed = 0; seed < runs; seed += 1) {
      const given = randomCase(seed + 350_000);
      const { random } = given;
      const what = ['landings', 'hours', 'flights', 'flights with instructor'][random(4)] ?? 'landings';
      const unit = ['days', 'months', 'calendar months', 'since'][random(4)] ?? 'days';
      const [needed, count, since] = [1 + random(8), 1 + random(unit === 'days' ? 400 : 14), given.asOf - random(700)];
      const place = ['', 'SEL', 'North', 'airplane'][random(4)] ?? '';
      const [atNight, tailwheel] = [what === 'landings' && random(2) === 0, random(4) === 0 && place !== 'North'];
      const own = [
        ['rule', 'what', 'at least', 'within', 'of', 'in', 'night', 'tailwheel', 'set by'],
        ['club rule', what, needed, unit === 'since' ? iso(since) : count, unit, place, atNight ? 'yes' : '', tailwheel ? 'yes' : '', 'club'],
      ];
      const rows = listed(given, [], 'FAA', own);
      if (given.flights.length === 0) continue;
      const item = place === '' ? 'club rule' : `club rule, ${place}`;
      if (tailwheel && !given.fleet.some((craft) => craft.tailwheel)) {
        expect(has(item, rows)).toBe(false);
        continue;
      }
      const made = done(
        given,
        (_, craft) =>
          craft.device === '' &&
          [craft.name, craft.class, 'airplane', ''].includes(place) &&
          (place === '' || place === 'airplane' || craft.name === place || craft.class === place) &&
          (!tailwheel || craft.tailwheel),
      );
      const within =
        (day: number) =>
        (one: Made): boolean => {
          if (one.day > day) return false;
          if (unit === 'days') return inDays(count, day)(one);
          if (unit === 'months') return inMonths(count, day)(one);
          return unit === 'since' ? one.day >= since : monthOf(one.day) >= monthOf(day) - count;
        };
      const amount = (one: Made): number =>
        what === 'hours'
          ? one.tenths / 10
          : what === 'flights'
            ? 1
            : what === 'landings'
              ? atNight
                ? one.nightLandings
                : landings(one)
              : one.trainingTenths > 0
                ? 1
                : 0;
      const isGood = (day: number): boolean => sum(made.filter(within(day)), amount) >= needed - 1e-6;
      const [, counted, , verdict, through] = rows.find(([name]) => name === item) ?? [];
      expect(Number(counted), `${item} ${what} ${unit} ${count}`).toBeCloseTo(sum(made.filter(within(given.asOf)), amount), 6);
      if (unit === 'since') expect([verdict, through]).toEqual([isGood(given.asOf) ? 'OK' : 'NO', '']);
      else expectRow(given, rows, item, isGood, unit === 'days' ? count + 2 : count * 31 + 33);
    }
  });
});
