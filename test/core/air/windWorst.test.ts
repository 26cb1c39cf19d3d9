// The worst of a variable wind, against every tenth of a degree of its range.
import { describe, expect, it } from 'vitest';
import { windComponents } from '../../../core/air/wind';
import { windWorst } from '../../../core/air/windWorst';

/** The same numbers at every run. */
function* evenly(): Generator<number, never> {
  for (let state = 4711; ; state = (state * 1103515245 + 12345) % 2147483648) yield state / 2147483648;
}

describe('the worst of a variable wind', () => {
  it('is what trying every tenth of a degree finds, for 400 ranges', () => {
    const numbers = evenly();
    const direction = (): number => Math.round(numbers.next().value * 36) * 10;
    for (let round = 0; round < 400; round += 1) {
      const [runway, from, width, knots] = [direction(), direction(), Math.round(numbers.next().value * 36) * 10, 1 + numbers.next().value * 40];
      const toDegrees = width === 360 ? 360 : (from + width) % 360;
      const sector = { fromDegrees: width === 360 ? 0 : from, toDegrees };
      const got = windWorst(runway, undefined, sector, knots);
      const tried = Array.from({ length: width * 10 + 1 }, (_, tenth) => windComponents(runway, (sector.fromDegrees + tenth / 10) % 360, knots));
      const label = `runway ${runway}, ${sector.fromDegrees}V${sector.toDegrees}`;
      expect(got.headwindKnots, label).toBeCloseTo(Math.min(...tried.map(({ headwindKnots }) => headwindKnots)), 3);
      expect(Math.abs(got.crosswindKnots), label).toBeCloseTo(Math.max(...tried.map(({ crosswindKnots }) => Math.abs(crosswindKnots))), 3);
    }
  });

  it('of a steady wind is its components, and includes the mean of a range that leaves it out', () => {
    expect(windWorst(180, 220, undefined, 30)).toEqual(windComponents(180, 220, 30));
    expect(windWorst(180, 90, { fromDegrees: 170, toDegrees: 190 }, 30).crosswindKnots).toBe(-30);
  });
});
