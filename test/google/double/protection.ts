// Protections of the double: of a whole sheet with free ranges, or of one range.
import type { FakeRange } from './range';
import { Doubled } from './recorder';

export class FakeProtection extends Doubled {
  readonly service = 'Protection';
  warningOnly = false;
  free: readonly FakeRange[] = [];
  /** The range protected; undefined for a whole sheet. */
  readonly range: FakeRange | undefined;

  constructor(range?: FakeRange) {
    super();
    this.range = range;
  }

  setWarningOnly(warningOnly: boolean): this {
    this.warningOnly = warningOnly;
    return this;
  }

  setUnprotectedRanges(ranges: FakeRange[]): this {
    if (this.range !== undefined) throw new Error('only a protected sheet has ranges that are free');
    this.free = ranges;
    return this;
  }
}
