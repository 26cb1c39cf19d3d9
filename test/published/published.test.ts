// Every transcribed row of test/published, to half its last printed digit.
import { describe, expect, it } from 'vitest';
import { answer } from '../support/call';
import { knownDeviations, publishedFiles } from '../support/publishedRows';
import type { FunctionName } from '../../functions/registry/names.generated';

const deviations = knownDeviations();

function matches(got: unknown, printed: string, tolerance: number): boolean {
  if (typeof got !== 'number') return got === printed.replace(/^"(.*)"$/, '$1');
  // One part in 10^9 of slack, so that a value exactly half a digit away is not lost to binary rounding.
  return Math.abs(got - Number(printed)) <= tolerance * (1 + 1e-9);
}

describe.each(publishedFiles())('$file', ({ file, declaredRows, rows }) => {
  it('holds as many rows as it says', () => expect(rows.length, file).toBe(declaredRows));

  it('gives a reason for each tolerance looser than half a digit', () => {
    expect(rows.filter(({ looser, reason }) => looser && reason === '').map(({ id }) => id)).toEqual([]);
  });

  it('names a source and a status for each row', () => {
    expect(rows.filter(({ source, status }) => source === '' || status === '').map(({ id }) => id)).toEqual([]);
  });

  it.each(rows)('$id $functionName $result = $printed', (row) => {
    const got = answer(row.functionName as FunctionName, ...row.arguments)[row.result];
    const met = matches(got, row.printed, row.tolerance);
    const expected = !deviations.has(row.id);
    expect(met, `${row.id}: got ${String(got)}, printed ${row.printed}, tolerance ${row.tolerance}, ${row.source}`).toBe(expected);
  });
});
