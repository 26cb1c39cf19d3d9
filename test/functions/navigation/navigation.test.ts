// The sheet functions of airspeed, wind, climb, descent and course: blanks, defaults, columns, and whole error sentences.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

describe('TRUE_AIRSPEED', () => {
  it('says at what calibrated airspeed Mach 1 is reached', () => {
    expect(sentenceOf('TRUE_AIRSPEED', 400, 50000, -56.5)).toMatch(
      /^TRUE_AIRSPEED: calibrated_kt must be 0 to \d+\.\d+ knots, below the speed of sound at this pressure altitude; got 400\.$/,
    );
    expect(sentenceOf('TRUE_AIRSPEED', 'fast', 5000, 5)).toBe('TRUE_AIRSPEED: calibrated_kt must be 0 to 700 knots; got "fast".');
  });
});

describe('DENSITY_ALTITUDE', () => {
  it('does not go beyond the standard atmosphere', () => {
    expect(sentenceOf('DENSITY_ALTITUDE', 64000, 10)).toMatch(
      /^DENSITY_ALTITUDE: temperature_c must be -?\d+\.\d+ to -\d+\.\d+ degrees Celsius at this pressure altitude, so that the density altitude stays within the standard atmosphere; got 10\.$/,
    );
  });
});

describe('WIND_COMPONENTS', () => {
  it('leaves the gust columns blank without a gust, and fills them with one', () => {
    expect(call('WIND_COMPONENTS', 90, 90, 20)).toEqual([[20, 0, '', '']]);
    expect(call('WIND_COMPONENTS', 90, 90, 20, '')).toEqual([[20, 0, '', '']]);
    expect(call('WIND_COMPONENTS', 90, 180, 20, 30)).toEqual([[0, 20, 0, 30]]);
    expect(call('WIND_COMPONENTS', 90, 90, 0, 0)).toEqual([[0, 0, 0, 0]]);
  });

  it('refuses a gust below the wind, and a wind without a direction', () => {
    expect(sentenceOf('WIND_COMPONENTS', 90, 180, 20, 15)).toBe('WIND_COMPONENTS: gust_kt must be 20 to 300 knots, no less than the wind; got 15.');
    expect(sentenceOf('WIND_COMPONENTS', 90, 'VRB', 4)).toBe('WIND_COMPONENTS: wind_from_deg must be 0 to 360 degrees; got "VRB".');
  });

  it('maps a column of runways, spoiling only the bad row', () => {
    expect(call('WIND_COMPONENTS', [[180], ['x'], [''], [360]], 180, 10)).toEqual([
      [10, 0, '', ''],
      ['WIND_COMPONENTS: direction_deg must be 0 to 360 degrees; got "x" (row 2).', '', '', ''],
      ['', '', '', ''],
      [-10, 0, '', ''],
    ]);
  });
});

describe('WIND_TRIANGLE', () => {
  it('says what a wind too strong is made of', () => {
    expect(sentenceOf('WIND_TRIANGLE', 360, 40, 360, 50)).toBe(
      'WIND_TRIANGLE: wind_kt must leave some headway along the course at a true airspeed of 40 knots; got 50, which is 50 ahead and 0 across.',
    );
    expect(sentenceOf('WIND_TRIANGLE', 360, 40, 90, 50)).toBe(
      'WIND_TRIANGLE: wind_kt must leave some headway along the course at a true airspeed of 40 knots; got 50, which is 0 ahead and 50 across.',
    );
  });
});

describe('the descent functions', () => {
  it('take 3 degrees and the fix itself where they are left out', () => {
    expect(call('DESCENT_START', 9000, 7000)).toBe(call('DESCENT_START', 9000, 7000, 3, 0));
    expect(call('DESCENT_START', 9000, 7000, '', 8)).toBe(call('DESCENT_START', 9000, 7000, 3, 8));
    expect(call('DESCENT_START_AT_RATE', 9000, 7000, 500, 120)).toEqual([[8, 4]]);
  });

  it('answer before_fix_nm at equal altitudes, and refuse to climb', () => {
    expect(call('DESCENT_START', 7000, 7000, 3, 8)).toBe(8);
    for (const [name, ...rest] of [['DESCENT_START'], ['DESCENT_START_AT_RATE', 500, 120], ['DESCENT_RATE_NEEDED', 10, 120]] as const) {
      expect(sentenceOf(name, 7000, 9000, ...rest)).toBe(`${name}: to_ft must be -5,000 to 7,000 feet, no higher than from_ft; got 9,000.`);
    }
  });

  it('want a rate without a sign, and some groundspeed', () => {
    expect(sentenceOf('DESCENT_START_AT_RATE', 9000, 7000, -500, 120)).toBe(
      'DESCENT_START_AT_RATE: rate_fpm must be more than 0 and at most 10,000 feet per minute; got -500.',
    );
    expect(sentenceOf('DESCENT_RATE_NEEDED', 9000, 7000, 10, 0)).toBe(
      'DESCENT_RATE_NEEDED: groundspeed_kt must be more than 0 and at most 1,000 knots; got 0.',
    );
    expect(sentenceOf('DESCENT_RATE_NEEDED', 9000, 7000, 0, 120)).toBe(
      'DESCENT_RATE_NEEDED: distance_nm must be more than 0 and at most 1,000 nautical miles; got 0.',
    );
  });
});

describe('the climb functions', () => {
  it('let a sinking aircraft have a negative gradient', () => expect(answer('CLIMB_GRADIENT', -120, 90)['gradient_ft_per_nm']).toBeCloseTo(-80, 9));
});

describe('COLD_TEMPERATURE_CORRECTION', () => {
  it('keeps to the range of its source', () => {
    expect(sentenceOf('COLD_TEMPERATURE_CORRECTION', 5001, 0, -20)).toBe(
      'COLD_TEMPERATURE_CORRECTION: height_above_source_ft must be 0 to 5,000 feet; got 5001.',
    );
    expect(sentenceOf('COLD_TEMPERATURE_CORRECTION', 1000, 10001, -20)).toBe(
      'COLD_TEMPERATURE_CORRECTION: source_elevation_ft must be -1,500 to 10,000 feet; got 10001.',
    );
    expect(sentenceOf('COLD_TEMPERATURE_CORRECTION', 1000, 0, -51)).toBe(
      'COLD_TEMPERATURE_CORRECTION: temperature_c must be -50 to 60 degrees Celsius; got -51.',
    );
  });
});

describe('COURSE_LEG', () => {
  const samePoint =
    'COURSE_LEG: latitude_2 and longitude_2 must be another point than the first, since a course to the same point has no direction; got the same point.';

  it('gives 0 miles and a sentence for the course of the same position twice', () => {
    expect(call('COURSE_LEG', 12.5, -30, 12.5, -30)).toEqual([[0, samePoint, '']]);
    expect(call('COURSE_LEG', 90, 0, 90, 77)).toEqual([[0, samePoint, '']]);
  });

  it('maps the legs of a route, given as columns', () => {
    expect(call('COURSE_LEG', [[0], [0]], [[0], [10]], [[0], [0]], [[0], [9]])).toEqual([
      [0, samePoint, ''],
      [expect.closeTo(60.1077, 4), 270, 270],
    ]);
  });

  it('names a latitude beyond the pole', () =>
    expect(sentenceOf('COURSE_LEG', 90.5, 0, 0, 0)).toBe('COURSE_LEG: latitude_1 must be -90 to 90 degrees; got 90.5.'));
});

describe('COURSE_POINT', () => {
  it('leads back from where COURSE_LEG led', () => {
    const { distance_nm, initial_true_course } = answer('COURSE_LEG', 31.41, -41.205, 28, -20);
    const { latitude, longitude } = answer('COURSE_POINT', 31.41, -41.205, initial_true_course, distance_nm);
    expect(latitude).toBeCloseTo(28, 9);
    expect(longitude).toBeCloseTo(-20, 9);
  });
});

describe('POSITION_READ', () => {
  const mustBe = 'POSITION_READ: text must be a latitude and a longitude, such as 3124N04112W, N31 24 36 W041 12 18 or 31.41, -41.205; got';

  it('says why a text is not read', () => {
    expect(sentenceOf('POSITION_READ', '31 41')).toBe(
      `${mustBe} "31 41", which can be read in more than one way without the letters N or S and E or W.`,
    );
    expect(sentenceOf('POSITION_READ', 31.41)).toBe(`${mustBe} "31.41", which does not fall into one latitude and one longitude.`);
    expect(sentenceOf('POSITION_READ', '3124N4112W')).toBe(`${mustBe} "3124N4112W", whose longitude is not written in a way that can be read.`);
    expect(sentenceOf('POSITION_READ', true)).toBe(`${mustBe} TRUE.`);
  });

  it('maps a column of waypoints', () => {
    expect(call('POSITION_READ', [['3124.6N04112.3W'], [''], ['nowhere']])).toEqual([
      [expect.closeTo(31.41, 12), expect.closeTo(-41.205, 12)],
      ['', ''],
      [`${mustBe} "nowhere", whose letters are not one N or S and one E or W, both before or both behind their figures (row 3).`, ''],
    ]);
  });
});
