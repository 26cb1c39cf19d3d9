// Reads an envelope as its manual prints it: arm, moment (also over 100 or 1,000) or per cent of chord against weight.
import { armAtPercentOfChord, envelopeFromMoments, envelopeFromPoints, type Envelope } from '../../core/loading/balance';
import { ArgumentError } from '../registry/argumentError';
import type { Parameter } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { numberRows } from '../registry/readTable';
import { choice } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';

export const longestArm = 1_000_000;

const momentWords = ['moment', 'moment/100', 'moment/1000'] as const;
type MomentWord = (typeof momentWords)[number];
const divisors: Readonly<Record<MomentWord, number>> = { moment: 1, 'moment/100': 100, 'moment/1000': 1000 };

const envelopeWords = ['arm', ...momentWords, '% MAC'] as const;
type EnvelopeWord = (typeof envelopeWords)[number];

const momentSpellings = {
  'moment / 100': 'moment/100',
  'moment / 1000': 'moment/1000',
  'moment/1,000': 'moment/1000',
  'moment / 1,000': 'moment/1000',
} as const;

/** What moments are divided by before they are printed. */
export const momentsIn = optional(
  choice<MomentWord>({ words: momentWords, also: momentSpellings, help: 'What the moments are printed as.' }),
  'moment' as MomentWord,
  'moments are weight x arm',
);
export const momentDivisor = (word: MomentWord): number => divisors[word];

/** The corners as typed, made an envelope once for each way of reading them. */
export interface TypedEnvelope {
  readonly points: readonly (readonly number[])[];
  readonly made: Map<string, Envelope>;
}

/** Corners that may be out of order, for whoever says so in an answer. */
export function corners(help: string): Parameter<TypedEnvelope> & { readonly shape: 'table' } {
  const points = numberRows({ columns: ['arm', 'weight'], help });
  return { ...points, optional: undefined, read: (raw, dates) => ({ points: points.read(raw, dates), made: new Map() }) };
}

/** Whether the outline is one plain area does not hang on what its first column is, so it is looked at once for the whole call. */
export function envelopeTable(help: string): Parameter<TypedEnvelope> & { readonly shape: 'table' } {
  const typed = corners(help);
  const read: typeof typed.read = (raw, dates) => {
    const envelope = typed.read(raw, dates);
    envelopeOf(envelope, { envelope_in: 'arm', leading_edge: undefined, chord: undefined });
    return envelope;
  };
  return { ...typed, read };
}

export const envelopeHelp =
  'Two columns, arm and weight: the corners of the limits in order round them; instead of the arm what envelope_in says. The first corner may be repeated at the end.';

/** Behind the other arguments of whatever judges an envelope. */
export const envelopeParameters = {
  envelope_in: optional(
    choice<EnvelopeWord>({
      words: envelopeWords,
      also: { ...momentSpellings, arms: 'arm', 'percent mac': '% MAC', 'per cent mac': '% MAC', mac: '% MAC' },
      help: 'What the first column of the envelope is. A moment envelope is judged along its own straight lines of moment, which are curves of arms.',
    }),
    'arm' as EnvelopeWord,
    'arms',
  ),
  leading_edge: optional(
    number({ unit: '', minimum: -longestArm, maximum: longestArm, help: 'Arm of the leading edge of the mean aerodynamic chord, for % MAC.' }),
    undefined,
    'nothing is in % MAC',
  ),
  chord: optional(
    number({ unit: '', minimum: 0, maximum: longestArm, aboveMinimum: true, help: 'Length of the mean aerodynamic chord, for % MAC.' }),
    undefined,
    'nothing is in % MAC',
  ),
};

export interface EnvelopeWays {
  readonly envelope_in: EnvelopeWord;
  readonly leading_edge: number | undefined;
  readonly chord: number | undefined;
}

function make(points: TypedEnvelope['points'], { envelope_in: word, leading_edge: edge, chord }: EnvelopeWays): Envelope {
  if (word === 'arm') return envelopeFromPoints(points.map(([arm = 0, weight = 0]) => ({ arm, weight })));
  if (word !== '% MAC') return envelopeFromMoments(points.map(([moment = 0, weight = 0]) => ({ moment: moment * divisors[word], weight })));
  const given = (name: string, value: number | undefined): number => {
    if (value !== undefined) return value;
    throw new NamedArgumentError(name, new ArgumentError('given, since the envelope is in % MAC', 'a blank'));
  };
  const [edgeArm, length] = [given('leading_edge', edge), given('chord', chord)];
  return envelopeFromPoints(points.map(([percent = 0, weight = 0]) => ({ arm: armAtPercentOfChord(percent, edgeArm, length), weight })));
}

export function envelopeOf({ points, made }: TypedEnvelope, ways: EnvelopeWays): Envelope {
  const key = `${ways.envelope_in} ${ways.leading_edge ?? ''} ${ways.chord ?? ''}`;
  const envelope = made.get(key) ?? make(points, ways);
  made.set(key, envelope);
  return envelope;
}
