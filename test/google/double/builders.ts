// Builders of the double: text styles, validations, conditional formats and charts, made in memory before use.
import type { FakeRange } from './range';
import { Doubled } from './recorder';

abstract class Builder extends Doubled {
  override readonly kind = 'builder';
}

export class FakeTextStyle extends Builder {
  readonly service = 'TextStyle';
  readonly facts: Readonly<Record<string, unknown>>;

  constructor(facts: Readonly<Record<string, unknown>>) {
    super();
    this.facts = facts;
  }

  getFontSize = (): number | null => (this.facts.size as number | undefined) ?? null;
}

const color = (value: string): string => {
  // The platform passes over a colour it does not know, in silence.
  if (!/^#[0-9a-f]{6}$/i.test(value)) throw new Error(`"${value}" is not a colour`);
  return value;
};

export class FakeTextStyleBuilder extends Builder {
  readonly service = 'TextStyleBuilder';
  private readonly facts: Record<string, unknown> = {};

  private set(name: string, value: unknown): this {
    this.facts[name] = value;
    return this;
  }

  setFontFamily(family: string): this {
    return this.set('family', family);
  }

  setFontSize(size: number): this {
    return this.set('size', size);
  }

  setForegroundColor(value: string): this {
    return this.set('color', color(value));
  }

  setBold(bold: boolean): this {
    return this.set('bold', bold);
  }

  setItalic(italic: boolean): this {
    return this.set('italic', italic);
  }

  build(): FakeTextStyle {
    return new FakeTextStyle({ ...this.facts });
  }
}

export interface ValidationFacts {
  criteria: string;
  values: unknown[];
  help: string;
  allowInvalid: boolean;
}

export class FakeDataValidation extends Builder {
  readonly service = 'DataValidation';
  readonly facts: Readonly<ValidationFacts>;

  constructor(facts: Readonly<ValidationFacts>) {
    super();
    this.facts = facts;
  }

  getHelpText = (): string => this.facts.help;
}

export class FakeDataValidationBuilder extends Builder {
  readonly service = 'DataValidationBuilder';
  private readonly facts: ValidationFacts = { criteria: '', values: [], help: '', allowInvalid: true };

  private require(criteria: string, ...values: unknown[]): this {
    this.facts.criteria = criteria;
    this.facts.values = values;
    return this;
  }

  setAllowInvalid(allow: boolean): this {
    this.facts.allowInvalid = allow;
    return this;
  }

  setHelpText(text: string): this {
    this.facts.help = text;
    return this;
  }

  requireValueInList(values: string[], dropdown: boolean): this {
    return this.require('list', ...values, dropdown);
  }

  requireValueInRange(range: FakeRange, dropdown: boolean): this {
    return this.require('range', range, dropdown);
  }

  requireNumberBetween(low: number, high: number): this {
    if (!(low <= high)) throw new Error('the first number must not be greater than the second');
    return this.require('number', low, high);
  }

  requireDate(): this {
    return this.require('date');
  }

  build(): FakeDataValidation {
    if (this.facts.criteria === '') throw new Error('a validation needs a criterion');
    return new FakeDataValidation({ ...this.facts });
  }
}

export interface FormatRuleFacts {
  text: string;
  background: string;
  ranges: readonly FakeRange[];
}

export class FakeConditionalFormatRule extends Builder {
  readonly service = 'ConditionalFormatRule';
  readonly facts: Readonly<FormatRuleFacts>;

  constructor(facts: Readonly<FormatRuleFacts>) {
    super();
    this.facts = facts;
  }

  getRanges = (): FakeRange[] => [...this.facts.ranges];
}

export class FakeConditionalFormatRuleBuilder extends Builder {
  readonly service = 'ConditionalFormatRuleBuilder';
  private readonly facts: FormatRuleFacts = { text: '', background: '', ranges: [] };

  whenTextEqualTo(text: string): this {
    this.facts.text = text;
    return this;
  }

  setBackground(value: string | null): this {
    this.facts.background = color(value ?? '');
    return this;
  }

  setRanges(ranges: FakeRange[]): this {
    this.facts.ranges = ranges;
    return this;
  }

  build(): FakeConditionalFormatRule {
    if (this.facts.text === '' || this.facts.ranges.length === 0) throw new Error('a conditional format needs a condition and ranges');
    return new FakeConditionalFormatRule({ ...this.facts });
  }
}
