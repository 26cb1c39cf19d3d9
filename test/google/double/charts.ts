// Chart builders of the double, as strict as the live ones: what only a scatter chart has does not exist on the builder
// of no kind that the general setters give back.
import type { FakeRange } from './range';
import { Doubled } from './recorder';

export interface ChartFacts {
  type: string;
  title: string;
  xTitle: string;
  yTitle: string;
  headers: number;
  ranges: FakeRange[];
  position: readonly number[];
  colors: readonly string[];
  options: Record<string, unknown>;
}

export class FakeChart extends Doubled {
  readonly service = 'EmbeddedChart';
  override readonly kind = 'builder';
  readonly facts: Readonly<ChartFacts>;

  constructor(facts: Readonly<ChartFacts>) {
    super();
    this.facts = facts;
  }

  getRanges = (): FakeRange[] => [...this.facts.ranges];
}

export class FakeChartBuilder extends Doubled {
  readonly service: string = 'EmbeddedChartBuilder';
  override readonly kind = 'builder';
  protected readonly facts: ChartFacts;

  constructor(facts: ChartFacts = { type: '', title: '', xTitle: '', yTitle: '', headers: 0, ranges: [], position: [], colors: [], options: {} }) {
    super();
    this.facts = facts;
  }

  asScatterChart(): FakeScatterChartBuilder {
    return new FakeScatterChartBuilder({ ...this.facts, type: 'scatter' });
  }

  addRange(range: FakeRange): FakeChartBuilder {
    if (range.getNumColumns() !== 1) throw new Error('the double takes one-column ranges, which is what works live');
    return new FakeChartBuilder({ ...this.facts, ranges: [...this.facts.ranges, range] });
  }

  setNumHeaders(headers: number): FakeChartBuilder {
    return new FakeChartBuilder({ ...this.facts, headers });
  }

  setOption(option: string, value: unknown): FakeChartBuilder {
    return new FakeChartBuilder({ ...this.facts, options: { ...this.facts.options, [option]: value } });
  }

  setPosition(row: number, column: number, offsetX: number, offsetY: number): FakeChartBuilder {
    if (row < 1 || column < 1) throw new Error('a chart stands on a cell');
    return new FakeChartBuilder({ ...this.facts, position: [row, column, offsetX, offsetY] });
  }

  build(): FakeChart {
    if (this.facts.type === '' || this.facts.ranges.length === 0 || this.facts.position.length === 0)
      throw new Error('a chart needs a kind, ranges and a place');
    const heights = new Set(this.facts.ranges.map((range) => range.getNumRows()));
    if (heights.size > 1) throw new Error('the ranges of a chart must be of one height');
    return new FakeChart(this.facts);
  }
}

export class FakeScatterChartBuilder extends FakeChartBuilder {
  override readonly service = 'EmbeddedScatterChartBuilder';

  private with(facts: Partial<ChartFacts>): FakeScatterChartBuilder {
    return new FakeScatterChartBuilder({ ...this.facts, ...facts });
  }

  setTitle(title: string): FakeScatterChartBuilder {
    return this.with({ title });
  }

  setXAxisTitle(xTitle: string): FakeScatterChartBuilder {
    return this.with({ xTitle });
  }

  setYAxisTitle(yTitle: string): FakeScatterChartBuilder {
    return this.with({ yTitle });
  }

  setColors(colors: string[]): FakeScatterChartBuilder {
    return this.with({ colors });
  }
}
