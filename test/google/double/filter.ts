// A filter of the double: it hides rows.
import { Doubled } from './recorder';

export class FakeFilter extends Doubled {
  readonly service = 'Filter';
  readonly hidden: ReadonlySet<number>;

  constructor(hidden: readonly number[]) {
    super();
    this.hidden = new Set(hidden);
  }
}
