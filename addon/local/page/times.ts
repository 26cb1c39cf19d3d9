// Marks on the browser's own time line: when the grid was first drawn, and when each calculation ended.
import { LifecycleStages } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';

export function markTimes(api: FUniver): void {
  api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
    if (stage === LifecycleStages.Rendered) performance.mark('grid drawn');
  });
  api.getFormula().calculationEnd(() => performance.mark('calculated'));
}
