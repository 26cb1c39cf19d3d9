// A patch of how the engine notes which formula reads which cells. As it comes, it notes every formula once more at each calculation and
// drops the notes of a whole sheet when rows of it are put in or taken out, those of other sheets' formulas with them, while formulas that
// are gone stay in the notes of the sheets they read. So the notes grow with every edit, searching them takes longer, and "Dependency tree
// not found" is written for each formula that is gone. The engine works all that anew anyway before it notes it: here it begins each time
// from a clean page, as it does itself when everything is calculated.
import type { EngineModule } from './engineValues';

/** What the engine's own class has, as far as it is used here. */
interface Generator {
  readonly _dependencyManagerService: { closeKdTree(): void; reset(): void };
  _generateTreeList(...given: unknown[]): Promise<unknown>;
}

const patched = new WeakSet<object>();

export function patchDependencies(engine: EngineModule): void {
  const generators = engine.FormulaDependencyGenerator.prototype as unknown as Generator;
  if (patched.has(generators)) return;
  patched.add(generators);
  const { _generateTreeList: generate } = generators;
  generators._generateTreeList = function fromACleanPage(this: Generator, ...given): Promise<unknown> {
    // A calculation that was stopped may have left its index open.
    this._dependencyManagerService.closeKdTree();
    this._dependencyManagerService.reset();
    return generate.apply(this, given);
  };
}
