// What every function makes of the cells it is given, and of the words it answers with: read once, in the registry.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../support/call';

const long = 'w'.repeat(5000);
const table = [
  ['weight', 'altitude', 'temperature', 'over 50 ft'],
  [900, 0, 0, 300],
  [900, 0, 30, 360],
];

describe('text of a person', () => {
  it.each([
    ['AFM_READ', [table, long, 900, 0, 15]],
    ['TAKEOFF_MAX_WEIGHT', [table, long, 1000, 0, 15]],
    ['TAKEOFF_BRIEF', [table, long, 900, 270, 1000, 0, 1013.25, 15, 270, 9]],
    ['LANDING_BRIEF', [table, long, 900, 270, 1000, 0, 1013.25, 15, 270, 9]],
  ] as const)('is named in a sentence of %s by its first 60 signs', (name, given) => {
    const said = sentenceOf(name, ...given);
    expect(said).toContain(`got "${'w'.repeat(60)}..."`);
    expect(said.length).toBeLessThan(250);
  });

  it('breaks no line, neither in a sentence nor in a cell', () => {
    const broken = [
      ['weight', 'over\n50 ft'],
      [900, ''],
    ];
    expect(sentenceOf('AFM_READ', broken, 'over 50 ft', 900)).toBe(
      'AFM_READ: table must hold a number in column "over 50 ft"; got a blank at weight 900 (row 2 of table).',
    );
    expect(call('READINESS', [['front\r\nseat']], [['NO']])).toEqual([['NO', 'front seat NO']]);
  });

  it('keeps its own blanks', () => expect(call('READINESS', [['A  B']], [['NO']])).toEqual([['NO', 'A  B NO']]));
});

describe('numbers', () => {
  it.each(['1.000', '1,000', '12.345', '-2.500'])('are refused where %s can be a thousand or a part', (text) => {
    const [thousands, part] = [text.replace(/[.,]/, ''), Number(text.replace(',', '.'))];
    expect(sentenceOf('FUEL_ENDURANCE', text, 10)).toMatch(
      new RegExp(`; got "${text.replace('.', '\\.')}", which can be read as ${Number(thousands).toLocaleString('en')} and as ${part}\\.$`),
    );
  });

  it.each([
    ['1.00', 60],
    ['1,00', 60],
    ['0.125', 7.5],
    ['0,125', 7.5],
    ['1.0000', 60],
    ['1000', 60_000],
  ])('are read where %s can be but one', (text, minutes) => expect(answer('FUEL_ENDURANCE', text, 1)['minutes']).toBe(minutes));

  it('that nobody measured are nothing, or are refused', () => {
    expect(sentenceOf('FUEL_ENDURANCE', 20, 1e-320)).toMatch(/^FUEL_ENDURANCE: flow_per_hour must be more than 0 .+; got 1e-320\.$/);
    expect(sentenceOf('HOLD_UNTIL', 1435, 1455, 4, 20, 1e-320, 14)).toMatch(/^HOLD_UNTIL: fuel_flow_per_hour must be more than 0 /);
    expect(answer('HOLD_UNTIL', 1435, 1455, 4, 20, 1e-9, 14).leave_by_z).toBe('more than 9 days ahead');
    expect(sentenceOf('TAKEOFF_MARGIN', 1000, 5e-324)).toMatch(/; got 5e-324\.$/);
    expect(
      sentenceOf(
        'AFM_READ',
        [
          ['weight', 'roll'],
          [900, 1e300],
        ],
        'roll',
        900,
      ),
    ).toMatch(/got 1e\+300 under "roll" in the row that begins 900 \(row 2, column 2 of table\)\.$/);
  });

  it('have no sign where they are 0', () => {
    expect(Object.is(call('FUEL_ENDURANCE', -0, 10), 0)).toBe(true);
    expect(Object.is((call('WIND_COMPONENTS', 90, 270, 0) as number[][])[0]?.[0], 0)).toBe(true);
  });
});

describe('what is no value of a cell', () => {
  it.each([[{}], [{ image: 'card' }], [Object.create(null)], [() => 1], [Symbol('s')]])('is refused like an error (%#)', (thing: unknown) => {
    expect(sentenceOf('CYCLE_DATE', thing)).toBe('CYCLE_DATE: id must be four digits, year and cycle, such as "2601"; got "#VALUE!".');
  });
  it('spoils its own row only', () => {
    const answers = call('CYCLE_DATE', [['2601'], [{}], ['2602']]) as unknown[][];
    expect([answers[0]?.[0] instanceof Date, answers[2]?.[0] instanceof Date]).toEqual([true, true]);
    expect(answers[1]?.[0]).toMatch(/^CYCLE_DATE: .+ \(row 2\)\.$/);
  });
});
