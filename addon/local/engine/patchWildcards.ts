// The engine takes ? and * in a text for wildcards wherever it compares: ="DEMO-7"="DEMO-?" was TRUE, and XLOOKUP found another name than the one it
// was given. Spreadsheets know wildcards only where a criterion is given (COUNTIF, SUMIF, MATCH, VLOOKUP) and in XLOOKUP where its match mode is 2.
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';

type Value = EngineNamespace.BaseValueObject;
interface Compared {
  getValue(): string;
  _compareString(own: string, other: string, operator: string): boolean;
  _checkWildcard(other: string, operator: string): Value;
}
interface Calculating {
  calculate(...given: (Value | undefined)[]): Value;
}

const wildcardMode = 2;
/** Where the match mode of XLOOKUP stands among its arguments. */
const modeAt = 4;

export function patchWildcards({ BooleanValueObject, StringValueObject, functionLookup, functionMeta }: EngineModule): void {
  let isPlain = false;
  const texts = StringValueObject.prototype as unknown as Compared;
  const { _checkWildcard: compareByWildcards } = texts;
  texts._checkWildcard = function compareAsTyped(this: Compared, other, operator) {
    if (!isPlain) return compareByWildcards.call(this, other, operator);
    return BooleanValueObject.create(this._compareString(this.getValue().toLocaleLowerCase(), other, operator));
  };

  const prototypeOf = (functions: readonly (readonly unknown[])[], name: string): Calculating => {
    const found = functions.find(([, one]) => one === name)?.[0] as { readonly prototype: Calculating } | undefined;
    if (found === undefined) throw new Error(`The engine has no ${name}.`);
    return found.prototype;
  };
  const withoutWildcards = (of: Calculating, applies: (given: readonly (Value | undefined)[]) => boolean): void => {
    const { calculate } = of;
    of.calculate = function calculatePlainly(this: Calculating, ...given) {
      const before = isPlain;
      isPlain = applies(given);
      try {
        return calculate.apply(this, given);
      } finally {
        isPlain = before;
      }
    };
  };
  withoutWildcards(prototypeOf(functionMeta, 'COMPARE'), () => true);
  withoutWildcards(prototypeOf(functionLookup, 'XLOOKUP'), (given) => Number(given[modeAt]?.getValue()) !== wildcardMode);
}
