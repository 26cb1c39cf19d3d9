// Random trips of the demo aircraft: the word of each item against a recomputation that shares no arithmetic with the project. Many through the
// functions, some through the whole workbook. RANDOM_TRIPS=1000 sets how many: so run on 29 November 2026, all 9,000 words were alike.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { aircraftWord, dataWord, fuelWord, loadingWords, metarOf, pilotWord, takeoffWord, weatherWord } from '../support/functionsOpinion';
import { openTrip, type OpenTrip } from '../support/openTrip';
import * as own from '../support/ownOpinion';
import { randomFrom } from '../support/seededRandom';
import { dataCard, inspection, metar, runway, seat, sheetName, taf, tank, trip, workingCell, type Typed } from '../support/tripCells';

type Pair = readonly [item: string, own: own.Opinion | undefined, theirs: string | undefined];

/** Where the second opinion is on a knife's edge it has none. */
const apart = (pairs: readonly Pair[]): string[] =>
  pairs.flatMap(([item, opinion, theirs]) => {
    const word = opinion === undefined ? 'UNKNOWN' : opinion.word;
    return word === theirs || opinion?.near === true ? [] : [`${item}: ${word}, not ${theirs ?? 'nothing'}`];
  });

describe('random trips through the functions', () => {
  const random = randomFrom(2611);
  it('have the words of a second opinion, item by item', () => {
    const counted = new Map<string, number>();
    for (let count = 0; count < Number(process.env.RANDOM_TRIPS ?? 200); count += 1) {
      const one = own.randomTrip(random);
      const loading = loadingWords(one);
      const pairs: readonly Pair[] = [
        ['take-off', own.loading.takeoff(one), loading.takeoff],
        ['landing', own.loading.landing(one), loading.landing],
        ['zero fuel', own.loading.zeroFuel(one), loading.zeroFuel],
        ['runway', own.takeoffRunway(one), takeoffWord(one)],
        ['fuel', own.fuel(one), fuelWord(one)],
        ['weather', own.weather(one), weatherWord(one)],
        ['data', own.data(one), dataWord(one)],
        ['annual', own.annual(one), aircraftWord(one)],
        ['landings', own.landings(one), pilotWord(one)],
      ];
      expect({ one, apart: apart(pairs) }).toEqual({ one, apart: [] });
      for (const [item, , word] of pairs) counted.set(`${item} ${word ?? ''}`, (counted.get(`${item} ${word ?? ''}`) ?? 0) + 1);
    }
    // Each item was both OK and NO, and not by chance once.
    const both = ['take-off', 'landing', 'zero fuel', 'runway', 'fuel', 'weather', 'data', 'annual', 'landings'].flatMap((item) => [
      `${item} OK`,
      `${item} NO`,
    ]);
    expect(both.filter((words) => (counted.get(words) ?? 0) < 10)).toEqual([]);
  }, 240_000);
});

const date = (dayNumber: number) => ({ date: new Date(dayNumber * 86_400_000).toISOString().slice(0, 10) });

/** The random trip typed into the workbook. */
function typedIn(one: own.RandomTrip): readonly Typed[] {
  const stations = ['empty aircraft, oil', 'front seats', 'rear seats', 'baggage'];
  const annual = new Date(Date.UTC(2026, 10 - one.annualMonthsAgo, 12)).toISOString().slice(0, 10);
  return [
    ...stations.flatMap((name, index) => seat(name, { weight: one.weights[index] ?? 0 })),
    ...tank('left wing', { onBoard: one.tanks[0] }),
    ...tank('right wing', { onBoard: one.tanks[1] }),
    ...trip({
      'minutesTyped.departure': one.minutes,
      'minutesTyped.alternate': one.alternateMinutes,
      contingency: one.contingencyPercent,
      holding: one.holdingMinutes,
      reserve: one.reserveMinutes,
      night: one.isNight ? 'yes' : 'no',
    }),
    ...runway('Marrowfield', '21', { takeoffAvailable: one.length, surface: one.surface, slope: one.slope }),
    ...metar('departure', metarOf(one)),
    ...taf('departure', ''),
    ...['panel, box 1', 'panel, box 2'].flatMap((box) => dataCard(box, 'navigation', { effective: date(own.effectiveDay(one)) })),
    ...inspection('annual inspection', { doneOn: { date: annual } }),
  ];
}

describe('random trips through the workbook', () => {
  let book: OpenTrip;
  beforeAll(async () => {
    book = await openTrip();
  }, 300_000);
  afterAll(() => book.dispose());

  const random = randomFrom(40);
  it.each(Array.from({ length: 40 }, (_, index) => [index + 1] as const))('trip %i of 40 has the words of a second opinion', async () => {
    const one = own.randomTrip(random);
    const { items, verdict } = await book.seenWith(typedIn(one));
    const variation = Number(book.workbook.value(sheetName('working'), workingCell('variation')));
    const wordOf = (item: string): string | undefined => items.get(item)?.word;
    // Reports are true, the runway is magnetic: Trip working rounds to whole degrees, the weather does not.
    const exact = { ...one, windFrom: one.windFrom - variation };
    const magnetic = { ...one, windFrom: Math.round(one.windFrom - variation) };
    const pairs: readonly Pair[] = [
      ['Loading, take-off', own.loading.takeoff(one), wordOf('Loading, take-off')],
      ['Loading, landing', own.loading.landing(one), wordOf('Loading, landing')],
      ['Loading, zero fuel', own.loading.zeroFuel(one), wordOf('Loading, zero fuel')],
      ['Take-off runway', own.takeoffRunway(magnetic), wordOf('Take-off runway')],
      ['Fuel', own.fuel(one), wordOf('Fuel')],
      ['Weather, departure', own.weather(exact), wordOf('Weather, departure')],
      ['Wind limits', own.windLimits(magnetic), wordOf('Wind limits')],
      ['Navigation data', own.data(one), wordOf('Navigation data')],
      ['Aircraft', own.annual(one), wordOf('Aircraft')],
    ];
    const parts = [...items.values()].map(({ word }) => word);
    const worst = ['NO', 'UNKNOWN', 'CHECK'].find((word) => parts.includes(word)) ?? 'OK';
    expect({ one, apart: apart(pairs), verdict }).toEqual({ one, apart: [], verdict: worst });
  });
});
