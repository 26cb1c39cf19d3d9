// Finding functions by words, over the real catalogue.
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../addon/build/catalogue';
import { searchFunctions } from '../../addon/panel/search';

const found = (wanted: string): string[] => searchFunctions(catalogue.functions, wanted).map(({ name }) => name);

describe('searchFunctions', () => {
  it('gives everything for nothing', () => expect(found('  ')).toHaveLength(catalogue.functions.length));
  it('puts the function of that name first, however it is typed', () => {
    for (const typed of ['HOLD_ENTRY', 'hold entry', 'Hold-Entry ']) expect(found(typed)[0]).toBe('HOLD_ENTRY');
  });
  it('finds by what it answers, and by its arguments', () => {
    expect(found('crosswind')).toContain('WIND_COMPONENTS');
    expect(found('dew point')).toContain('DENSITY_ALTITUDE');
  });
  it('wants every word', () => {
    expect(found('hold zebra')).toEqual([]);
    expect(found('altitude density')[0]).toBe('DENSITY_ALTITUDE');
  });
});

describe('the catalogue', () => {
  it('is plain data with a unit or a help for everything', () => {
    expect(JSON.parse(JSON.stringify(catalogue))).toEqual(catalogue);
    for (const { name, parameters, examples, source } of catalogue.functions) {
      expect(examples.length, name).toBeGreaterThan(0);
      expect(source, name).not.toBe('');
      for (const { help, optional } of parameters) expect(/Optional; if left out,/.test(help), `${name}: ${help}`).toBe(optional);
    }
  });
});
