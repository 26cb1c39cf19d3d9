// What is wrong with a leg, for its row: a table of the aircraft that does not reach is told by its column, since no argument of the call is at fault.
import type { CoreError, CoreErrorDetails } from '../../core/basics/errors';
import { quoted } from '../registry/cellValues';
import { rounded } from '../registry/sharedWords';
import { wordCore } from '../registry/wordCoreError';

export function wordLeg(error: CoreError): string {
  if (error.code !== 'table-outside') return wordCore(error);
  const { header, low, high, received, role } = error.detail as CoreErrorDetails['table-outside'];
  if (role === 'from') return wordCore(error);
  return `the aircraft's table has ${quoted(header)} from ${rounded(low)} to ${rounded(high)}; got ${rounded(received)}, and nothing is extrapolated`;
}
