// Arms of stations as manuals give them: arms, or moments to be divided by the weight.
import { ArgumentError } from '../registry/argumentError';
import { blankMeansUndefined, column, optional } from '../registry/modifiers';
import { limitInWords, number } from '../registry/readNumber';
import { NamedArgumentError } from '../registry/wordError';
import { longestArm } from './readEnvelope';

const largestMoment = 1e12;

export const armOrBlank = column(
  blankMeansUndefined(
    number({
      unit: '',
      minimum: -longestArm,
      maximum: longestArm,
      help: 'Arm of each station from the datum, aft positive; blank where its moment is given.',
    }),
  ),
);

export const stationMoments = optional(
  column(number({ unit: '', minimum: -largestMoment, maximum: largestMoment, help: 'Moment of a station, for those without an arm.' })),
  undefined,
  'every station has an arm',
);

/** An arm and a moment beside each other must be one and the same but for the rounding of what is printed. */
const agreement = 0.005;

/** `rows`: the place in its range of each row that is not blank. */
export function armsOf(
  weights: readonly number[],
  arms: readonly (number | undefined)[],
  moments: readonly (number | undefined)[],
  divisor: number,
  rows: readonly number[],
): number[] {
  return weights.map((weight, index) => {
    const [arm, moment] = [arms[index], moments[index]];
    const bad = (name: string, must: string, got: string) => new NamedArgumentError(name, new ArgumentError(must, got, rows[index]));
    if (moment === undefined) {
      if (arm === undefined)
        throw bad('arms', `${limitInWords(-longestArm)} to ${limitInWords(longestArm)}, or a moment given in its place`, 'a blank');
      return arm;
    }
    const whole = moment * divisor;
    if (arm !== undefined) {
      if (Math.abs(whole - weight * arm) > agreement * Math.max(Math.abs(whole), divisor))
        throw bad(
          'moments',
          `left out beside an arm, or weight x arm, ${limitInWords(Number(((weight * arm) / divisor).toPrecision(6)))}`,
          String(moment),
        );
      return arm;
    }
    if (weight === 0 && moment !== 0) throw bad('moments', '0 where the weight is 0', String(moment));
    return weight === 0 ? 0 : whole / weight;
  });
}
