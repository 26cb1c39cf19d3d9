// A patch of what the engine works out again in every round of every calculation, though it cannot have changed: which cells each formula of
// the workbook reads, which formulas hold a function like TODAY or OFFSET or one that waits, and that a text is not a number or a date. That was half
// of an edit's time.
import type { EngineModule } from './engineValues';

/** A part of a formula, as the engine reads it. */
interface Node {
  readonly nodeType: number;
  getChildren(): readonly Node[];
  isAddress(): boolean;
}

/** What the engine's own class has, as far as it is used here. */
interface Generator {
  readonly _currentConfigService: { isForceCalculate(): boolean; getDirtyNameMap(): Readonly<Record<string, unknown>> };
  readonly _runtimeService: { readonly currentUnitId: string; readonly currentSubUnitId: string };
  generate(...given: unknown[]): Promise<unknown>;
  _getRangeListByNode(of: { readonly node?: Node; readonly refOffsetX: number; readonly refOffsetY: number }): Promise<unknown>;
  _detectForcedRecalculationNodeRecursion(node: Node): boolean;
  _getAddressFunctionNodeList(node?: Node): readonly Node[];
}

/** The engine's numbers for parts whose cells hang on values: "@" before a range, "#" after one. */
const hangsOnValues: ReadonlySet<number> = new Set([11, 12]);

/** As many different texts as a busy workbook holds. */
const mostTexts = 20_000;

const patched = new WeakSet<object>();

/** A formula is read once, and its parts are kept until its text or a name in it means something else. */
function keptFor<Result>(work: (node: Node) => Result): (node: Node) => Result {
  const kept = new WeakMap<Node, Result>();
  return (node) => {
    let result = kept.get(node);
    if (result === undefined) kept.set(node, (result = work(node)));
    return result;
  };
}

const isFixed = keptFor(
  (node: Node): boolean => !node.isAddress() && !hangsOnValues.has(node.nodeType) && node.getChildren().every((part) => isFixed(part)),
);

function patchRanges(engine: EngineModule): void {
  const generators = engine.FormulaDependencyGenerator.prototype as unknown as Generator;
  const { generate, _getRangeListByNode: rangesOf } = generators;
  const known = new WeakMap<Generator, WeakMap<Node, Map<string, Promise<unknown>>>>();

  generators.generate = function forgetFirst(this: Generator, ...given): Promise<unknown> {
    const { _currentConfigService: config } = this;
    // Rows, names or sheets may have come, gone or moved.
    if (config.isForceCalculate() || Object.keys(config.getDirtyNameMap()).length > 0) known.delete(this);
    return generate.apply(this, given);
  };
  generators._getRangeListByNode = function asBefore(this: Generator, of): Promise<unknown> {
    const { node, refOffsetX, refOffsetY } = of;
    if (node === undefined || !isFixed(node)) return rangesOf.call(this, of);
    const ofNodes = known.get(this) ?? new WeakMap<Node, Map<string, Promise<unknown>>>();
    known.set(this, ofNodes);
    const bySheet = ofNodes.get(node) ?? new Map<string, Promise<unknown>>();
    ofNodes.set(node, bySheet);
    const { currentUnitId, currentSubUnitId } = this._runtimeService;
    const place = JSON.stringify([currentUnitId, currentSubUnitId, refOffsetX, refOffsetY]);
    const ranges = bySheet.get(place) ?? rangesOf.call(this, of);
    bySheet.set(place, ranges);
    return ranges;
  };
  const { _detectForcedRecalculationNodeRecursion: isForced, _getAddressFunctionNodeList: addressFunctions } = generators;
  generators._detectForcedRecalculationNodeRecursion = keptFor((node) => isForced.call(generators, node));
  const addressFunctionsOf = keptFor((node) => addressFunctions.call(generators, node));
  generators._getAddressFunctionNodeList = (node) => (node === undefined ? [] : addressFunctionsOf(node));
}

function patchWaiting({ Interpreter: { prototype: interpreters } }: EngineModule): void {
  const { checkAsyncNode: waits } = interpreters;
  const isWaiting = keptFor((node) => waits.call(interpreters, node as unknown as Parameters<typeof waits>[0]));
  interpreters.checkAsyncNode = (node) => Boolean(node) && isWaiting(node as unknown as Node);
}

function patchTexts(engine: EngineModule): void {
  const values = engine.ValueObjectFactory;
  const create = values.create.bind(values);
  const plain = new Set<unknown>();
  values.create = function createSooner(raw, ignoresPatterns = false) {
    const value = create(raw, ignoresPatterns || plain.has(raw));
    if (!ignoresPatterns && typeof raw === 'string' && value.isString() && plain.size < mostTexts) plain.add(raw);
    return value;
  };
}

export function patchRepeats(engine: EngineModule): void {
  const { ValueObjectFactory: values } = engine;
  if (patched.has(values)) return;
  patched.add(values);
  patchRanges(engine);
  patchWaiting(engine);
  patchTexts(engine);
}
