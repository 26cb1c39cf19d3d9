// What a snapshot needs of the engine at work, beside the saved workbook. The engine module comes in as an argument.
import type { Injector } from '@univerjs/core';
import type { EngineModule } from './engineValues';
import type { EngineParts } from './workbookSnapshot';

/** As things stand now; asked for anew for each snapshot. */
export function engineParts(injector: Injector, engine: EngineModule, workbookId: string): EngineParts {
  const lexer = injector.get(engine.LexerTreeBuilder);
  return {
    spilled: injector.get(engine.FormulaDataModel).getArrayFormulaCellData()[workbookId] ?? {},
    moveFormula: (formula, columns, rows) => lexer.moveFormulaRefOffset(formula, columns, rows),
  };
}
