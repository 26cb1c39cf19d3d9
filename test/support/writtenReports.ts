// Random reports of the weather with what they mean, and every word a report can hold, both made without the reader's patterns.
import fc from 'fast-check';

export interface Meaning {
  from: number | undefined;
  isVariable: boolean;
  knots: number;
  gust: number | undefined;
  metres: number;
  orMore: boolean;
  weather: readonly string[];
  clouds: readonly (readonly [amount: string, feet: number, kind: string])[];
  temperature: number;
  dewPoint: number;
  hectopascals: number;
}

export interface Written {
  readonly words: readonly string[];
  readonly meaning: Partial<Meaning>;
}

const two = (value: number): string => String(value).padStart(2, '0');
const three = (value: number): string => String(value).padStart(3, '0');
const perUnit: Readonly<Record<string, number>> = { KT: 1, MPS: 3600 / 1852, KMH: 1000 / 1852 };

const directions = fc.integer({ min: 1, max: 36 }).map((tens) => tens * 10);

export const winds: fc.Arbitrary<Written> = fc
  .tuple(
    fc.option(directions, { nil: undefined }),
    fc.integer({ min: 1, max: 60 }),
    fc.option(fc.integer({ min: 1, max: 40 }), { nil: undefined }),
    fc.constantFrom('KT', 'MPS', 'KMH'),
  )
  .map(([from, speed, more, unit]) => ({
    words: [
      `${from === undefined ? 'VRB' : three(from)}${two(speed)}${more === undefined ? '' : `G${two(speed + more > 99 ? 99 : speed + more)}`}${unit}`,
    ],
    meaning: {
      from,
      isVariable: from === undefined,
      knots: speed * (perUnit[unit] ?? 0),
      gust: more === undefined ? undefined : Math.min(99, speed + more) * (perUnit[unit] ?? 0),
    },
  }));

const metres = [
  ...Array.from({ length: 16 }, (_, step) => step * 50),
  ...Array.from({ length: 42 }, (_, step) => 800 + step * 100),
  5000,
  6000,
  7000,
  8000,
  9000,
];
const miles: readonly (readonly [string, number, boolean])[] = [
  ['M1/4SM', 0, false],
  ['1/4SM', 0.25, false],
  ['1/2SM', 0.5, false],
  ['3/4SM', 0.75, false],
  ['7/8SM', 0.875, false],
  ['1SM', 1, false],
  ['1 1/8SM', 1.125, false],
  ['1 1/2SM', 1.5, false],
  ['2 1/4SM', 2.25, false],
  ['3SM', 3, false],
  ['5SM', 5, false],
  ['10SM', 10, false],
  ['P6SM', 6, true],
];
export const visibilities: fc.Arbitrary<Written> = fc.oneof(
  fc.constantFrom(...metres).map((value) => ({ words: [String(value).padStart(4, '0')], meaning: { metres: value, orMore: false } })),
  fc.constant({ words: ['9999'], meaning: { metres: 10_000, orMore: true } }),
  fc.constantFrom(...miles).map(([word, value, orMore]) => ({ words: [word], meaning: { metres: value * 1609.344, orMore } })),
);

const rain = ['DZ', 'RA', 'SN', 'SG', 'PL', 'GR', 'GS', 'UP'];
const showers = ['RA', 'SN', 'PL', 'GR', 'GS', 'UP'];
const lists = (codes: readonly string[], longest: number): string[][] =>
  longest === 0
    ? [[]]
    : [
        [],
        ...codes.flatMap((code) =>
          lists(
            codes.filter((other) => other !== code),
            longest - 1,
          ).map((rest) => [code, ...rest]),
        ),
      ];
const chains = (codes: readonly string[], longest: number): string[] =>
  lists(codes, longest)
    .map((list) => list.join(''))
    .filter((chain) => chain !== '');

/** Code table 4678, group by group. */
export const weatherCodes: readonly string[] = [
  ...['', '-', '+'].flatMap((sign) => [
    ...chains(rain, 3).map((chain) => sign + chain),
    ...chains(showers, 3).flatMap((chain) => [`${sign}SH${chain}`, `${sign}TS${chain}`]),
    ...['DZ', 'RA', 'UP'].flatMap((first) =>
      lists(
        rain.filter((code) => code !== first),
        2,
      ).map((rest) => `${sign}FZ${first}${rest.join('')}`),
    ),
    ...['SN', 'SA', 'DU'].map((code) => `${sign}BL${code}`),
  ]),
  ...[
    'TS',
    'IC',
    'BR',
    'FU',
    'HZ',
    'SA',
    'DU',
    'PO',
    'SQ',
    'VA',
    'PY',
    'FG',
    'MIFG',
    'BCFG',
    'PRFG',
    'FZFG',
    'DRSN',
    'DRSA',
    'DRDU',
    'BLPY',
    'FC',
    '+FC',
    'SS',
    '+SS',
    'DS',
    '+DS',
  ],
  ...['TS', 'SH', 'FG', 'FC', 'PO', 'VA', 'SS', 'DS', 'BLSN', 'BLSA', 'BLDU'].map((code) => `VC${code}`),
];
const usual = ['-RA', 'RA', '+TSRA', 'SHRA', '-SN', 'BR', 'FG', 'FZFG', '+SHRASN', 'VCTS', 'HZ', 'FZRA', '-DZ', 'TSGR', 'BCFG', 'BLSN', 'SQ', 'VA'];
export const weathers: fc.Arbitrary<Written> = fc
  .uniqueArray(fc.oneof(fc.constantFrom(...usual), fc.constantFrom(...weatherCodes)), { maxLength: 3 })
  .map((weather) => ({ words: weather, meaning: { weather } }));

export const skies: fc.Arbitrary<Written> = fc.oneof(
  fc
    .array(fc.tuple(fc.constantFrom('FEW', 'SCT', 'BKN', 'OVC', 'VV'), fc.integer({ min: 0, max: 250 }), fc.constantFrom('', '', '', 'CB', 'TCU')), {
      minLength: 1,
      maxLength: 4,
    })
    .map((layers) => layers.map(([amount, hundreds, kind]) => [amount, hundreds, amount === 'VV' ? '' : kind] as const))
    .map((layers) => ({
      words: layers.map(([amount, hundreds, kind]) => `${amount}${three(hundreds)}${kind}`),
      meaning: { clouds: layers.map(([amount, hundreds, kind]) => [amount, hundreds * 100, kind] as const) },
    })),
  fc.constantFrom('NSC', 'NCD', 'SKC', 'CLR').map((word) => ({ words: [word], meaning: { clouds: [] } })),
);

const celsius = (value: number): string => (value < 0 ? `M${two(-value)}` : two(value));
const temperatures: fc.Arbitrary<Written> = fc.tuple(fc.integer({ min: -40, max: 50 }), fc.integer({ min: 0, max: 25 })).map(([air, spread]) => ({
  words: [`${celsius(air)}/${celsius(air - spread)}`],
  meaning: { temperature: air, dewPoint: air - spread },
}));
const pressures: fc.Arbitrary<Written> = fc.oneof(
  fc.integer({ min: 930, max: 1060 }).map((value) => ({ words: [`Q${String(value).padStart(4, '0')}`], meaning: { hectopascals: value } })),
  fc
    .integer({ min: 2780, max: 3110 })
    .map((value) => ({ words: [`A${value}`], meaning: { hectopascals: (value * 0.0254 * 13595.1 * 9.80665) / 10_000 } })),
);

const together = (parts: readonly Written[]): Written => ({
  words: parts.flatMap(({ words }) => words),
  meaning: Object.assign({}, ...parts.map(({ meaning }) => meaning)) as Meaning,
});

/** The groups behind station and time. */
export const observations: fc.Arbitrary<Written> = fc.tuple(winds, visibilities, weathers, skies, temperatures, pressures).map(together);

/** A part of a forecast: a change may leave out what does not change. */
export const forecasts = fc.tuple(winds, visibilities, weathers, skies).map(together);
const nothing: Written = { words: [], meaning: {} };
export const partialForecasts = fc
  .tuple(
    fc.oneof(winds, fc.constant(nothing)),
    fc.oneof(visibilities, fc.constant(nothing)),
    fc.oneof(weathers, fc.constant({ words: ['NSW'], meaning: { weather: [] } })),
    fc.oneof(skies, fc.constant(nothing)),
  )
  .map(together);

/** Every word, of the groups above, that says something. */
export function isCode(word: string): boolean {
  const [, from, speed, gust] = /^(...)(\d{2,3})(?:G(\d{2,3}))?(?:KT|MPS|KMH)$/.exec(word) ?? [];
  if (from !== undefined && speed !== undefined) {
    const isFrom =
      from === 'VRB' ||
      from === '///' ||
      (from === '000' ? Number(speed) === 0 : Number.isInteger(Number(from)) && Number(from) > 0 && Number(from) <= 360);
    const plain = [speed, gust ?? '00'].every((value) => value.length === 2 || value.startsWith('1'));
    return isFrom && plain && (gust === undefined || Number(gust) > Number(speed));
  }
  return otherCodes.has(word);
}
const heights = [...Array.from({ length: 1000 }, (_, hundreds) => three(hundreds)), '///'];
const otherCodes: ReadonlySet<string> = new Set([
  ...weatherCodes,
  ...['FEW', 'SCT', 'BKN', 'OVC', '///'].flatMap((amount) =>
    heights.flatMap((height) => ['', 'CB', 'TCU', '///'].map((kind) => amount + height + kind)),
  ),
  ...heights.map((height) => `VV${height}`),
  'NSC',
  'NCD',
  'SKC',
  'CLR',
  'CAVOK',
  ...Array.from({ length: 10_000 }, (_, value) => value)
    .filter((value) => value === 9999 || value % (value < 800 ? 50 : 100) === 0)
    .flatMap((value) => ['', 'NDV', 'N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'].map((behind) => String(value).padStart(4, '0') + behind)),
  ...Array.from({ length: 100 }, (_, value) => value).flatMap((value) => ['', 'M', 'P'].map((bound) => `${bound}${value}SM`)),
  ...[2, 4, 8, 16].flatMap((below) =>
    Array.from({ length: below / 2 }, (_, half) => half * 2 + 1).flatMap((above) => ['', 'M', 'P'].map((bound) => `${bound}${above}/${below}SM`)),
  ),
]);
