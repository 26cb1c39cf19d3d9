// The engine works out every part of a formula before IF and IFERROR choose one. Here the branch that is not taken is not worked out, as in
// other spreadsheets: the sheets ask whether all is well before they list what is not, and the list was half of the time of an edit. Where the
// condition is a list, or the value of IFERROR is one, all is worked out as the engine does.
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';

type Value = EngineNamespace.BaseValueObject;

/** A part of a formula, as the engine reads it. */
interface Node {
  readonly nodeType: number;
  getToken(): string;
  getChildren(): readonly Node[];
  getValue(): unknown;
  setValue(value: unknown): void;
  execute(): void;
}

/** What the engine's own class has, as far as it is used here. */
interface Interpreter {
  readonly _runtimeService: EngineNamespace.IFormulaRuntimeService;
  _execute(node: Node, refOffsetX?: number, refOffsetY?: number): number;
}

const functionNode = 4;

/** The one value of a part, or undefined where it has several, or is a reference that is still to be read. */
function singleOf(value: unknown): Value | undefined {
  const object = value as Value | EngineNamespace.BaseReferenceObject | null | undefined;
  if (!object || object.isReferenceObject()) return undefined;
  const given = object as Value;
  if (!given.isArray()) return given;
  const array = given as EngineNamespace.ArrayValueObject;
  return array.getRowCount() === 1 && array.getColumnCount() === 1 ? (array.get(0, 0) ?? undefined) : undefined;
}

/** Which of the parts after the first are wanted; undefined where the engine must have all. */
const wantedBy: ReadonlyMap<string, (first: unknown) => ((index: number) => boolean) | undefined> = new Map([
  [
    'IF',
    (first) => {
      const condition = singleOf(first);
      if (condition === undefined) return undefined;
      if (condition.isError()) return () => false;
      const taken = condition.getValue() ? 0 : 1;
      return (index) => index === taken;
    },
  ],
  [
    'IFERROR',
    (first) => {
      const value = singleOf(first);
      // What is one value in a list of one takes the extent of what would stand in its place.
      return value === undefined || value !== first || value.isError() ? undefined : () => false;
    },
  ],
]);

const patched = new WeakSet<object>();

export function patchBranches({ Interpreter: interpreter, NullValueObject }: EngineModule): void {
  const interpreters = interpreter.prototype as unknown as Interpreter;
  if (patched.has(interpreters)) return;
  patched.add(interpreters);
  const { _execute: executeAll } = interpreters;
  interpreters._execute = function executeWanted(this: Interpreter, node, refOffsetX = 0, refOffsetY = 0) {
    const wanted = node.nodeType === functionNode ? wantedBy.get(node.getToken().toUpperCase()) : undefined;
    const [first, ...rest] = node.getChildren();
    if (wanted === undefined || first === undefined || rest.length === 0) return executeAll.call(this, node, refOffsetX, refOffsetY);
    if (this._runtimeService.isStopExecution()) return 1;
    this._execute(first, refOffsetX, refOffsetY);
    const isWanted = wanted(first.getValue()) ?? (() => true);
    rest.forEach((part, index) => {
      if (isWanted(index)) this._execute(part, refOffsetX, refOffsetY);
      // A part without a value would be taken for one that is not there.
      else part.setValue(NullValueObject.create());
    });
    node.execute();
    return 0;
  };
}
