// Turns the declarations of the registry into functions of the grid's engine, the same in Node and in the browser.
// The engine module comes in as an argument: Node must load it with require, the page bundles it.
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { FunctionDeclaration } from '../../../functions/registry/declaration';
import { evaluate } from '../../../functions/registry/evaluate';
import { formats } from '../../../sheets-templates/look';
import { serialFromIso } from '../../workbook/serialDates';
import { argumentOf, resultOf, type EngineModule } from './engineValues';
import { localDateHost } from './localDateHost';
import type { CellPlace, CellErrors } from './cellErrors';

type FunctionClass = new (name: string) => EngineNamespace.BaseFunction;
export type EngineFunction = [FunctionClass, string];

/** What a call that throws shows in its cell; IFERROR catches it. */
const errorOfThrow = '#ERROR!' as EngineNamespace.ErrorType.ERROR;

const placeOf = ({ unitId, subUnitId, row, column }: EngineNamespace.BaseFunction): CellPlace => ({
  workbook: unitId ?? '',
  sheet: subUnitId ?? '',
  row,
  column,
});

function functionClass(engine: EngineModule, declaration: FunctionDeclaration, book: CellErrors): FunctionClass {
  return class extends engine.BaseFunction {
    // The registry words a wrong count of arguments itself, so the engine must not refuse the call first.
    override minParams = 0;
    override maxParams = 255;

    override calculate(...given: EngineNamespace.BaseValueObject[]): EngineNamespace.BaseValueObject {
      try {
        const answer = resultOf(engine, evaluate(declaration, given.map(argumentOf), localDateHost));
        book.succeeded(placeOf(this), declaration.name);
        return answer;
      } catch (thrown) {
        book.failed(placeOf(this), declaration.name, thrown instanceof Error ? thrown.message : String(thrown));
        return engine.ErrorValueObject.create(errorOfThrow);
      }
    }
  };
}

/** Google Sheets needs ARRAYFORMULA where this engine spills by itself, so here it hands its argument through. */
function arrayFormulaClass(engine: EngineModule): FunctionClass {
  return class extends engine.BaseFunction {
    override minParams = 1;
    override maxParams = 1;

    override calculate(only: EngineNamespace.BaseValueObject): EngineNamespace.BaseValueObject {
      return only;
    }
  };
}

/** The engine's own TODAY is the day in Greenwich, which is another one for hours of every day elsewhere. */
function todayClass(engine: EngineModule, today: () => string): FunctionClass {
  return class extends engine.BaseFunction {
    override minParams = 0;
    override maxParams = 0;

    override calculate(): EngineNamespace.BaseValueObject {
      return engine.NumberValueObject.create(serialFromIso(today()), formats.date);
    }
  };
}

/** Everything the engine must know beyond its built-in functions. `today` in ISO form, asked at every calculation. */
export function engineFunctions(
  engine: EngineModule,
  registry: readonly FunctionDeclaration[],
  book: CellErrors,
  today: () => string,
): EngineFunction[] {
  const declared = registry.map((declaration): EngineFunction => [functionClass(engine, declaration, book), declaration.name]);
  return [...declared, [arrayFormulaClass(engine), 'ARRAYFORMULA'], [todayClass(engine, today), 'TODAY']];
}
