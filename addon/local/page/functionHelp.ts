// What the grid shows while somebody types one of our functions, from the registry.
import { BooleanNumber } from '@univerjs/core';
import { FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';
import type { FunctionDeclaration } from '../../../functions/registry/declaration';
import { exampleFormula, parameterHelp } from '../../build/reference';

function helpOf(declaration: FunctionDeclaration): IFunctionInfo {
  const { name, summary, notes, parameters, examples } = declaration;
  const [example] = examples;
  const shown = example === undefined ? '' : ` Example: ${exampleFormula(name, example)}`;
  return {
    functionName: name,
    functionType: FunctionType.User,
    abstract: summary,
    description: `${summary} ${notes}${shown}`,
    functionParameter: Object.entries(parameters).map(([parameter, described], index) => ({
      name: parameter,
      detail: parameterHelp(described),
      example: String(example?.arguments[index] ?? ''),
      // The engine's word: 1 is required, 0 may be left out.
      require: described.optional === undefined ? BooleanNumber.TRUE : BooleanNumber.FALSE,
      repeat: BooleanNumber.FALSE,
    })),
  };
}

export const functionHelp = (registry: readonly FunctionDeclaration[]): IFunctionInfo[] => registry.map(helpOf);
