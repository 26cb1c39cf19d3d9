// The rows that sheets read from briefs are among those that the functions lay out.
import { describe, expect, it } from 'vitest';
import { holdItems, loadingPoints, runwayItems } from '../../functions/facts';
import { registry } from '../../functions/registry/index.generated';

/** First cells of the rows in the examples of a function, which run as tests. */
function laidOut(name: string): unknown[] {
  const { examples = [] } = registry.find((one) => one.name === name) ?? {};
  return examples.flatMap(({ gives }) => (typeof gives === 'object' ? gives.map(([item]) => item) : []));
}

describe('rows that sheets read', () => {
  it.each([
    ['HOLD_BRIEF', holdItems],
    ['TAKEOFF_BRIEF', runwayItems],
    ['LANDING_BRIEF', runwayItems.slice(-1)],
    ['CLIMB_BRIEF', runwayItems.slice(-1)],
    ['LOADING_BRIEF', loadingPoints],
  ] as const)('are laid out by %s', (name, items) => expect(laidOut(name)).toEqual(expect.arrayContaining([...items])));
});
