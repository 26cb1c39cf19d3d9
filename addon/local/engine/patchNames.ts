// Mends of how the engine reads names. As it comes, a formula read once keeps the cells that its names stood for then: it notes only the
// names within a name, so it is not read again when a name moves, and after a sheet is renamed it would read cells that are not there.
// And it takes no name of a sheet with one of eight characters: such a name is changed before it is given (sheetNaming.ts).
import type { EngineModule } from './engineValues';

interface NamesFound {
  readonly hasDefinedName: boolean;
  readonly definedNames: string[];
}

interface SequencePart {
  readonly nodeType: number;
  readonly token: string;
}

/** What the engine's reader of formulas has of its own, as far as it is used here. */
interface Reader {
  getSequenceNode(sequence: unknown): readonly (string | SequencePart)[];
  _handleDefinedName(sequence: unknown, given: unknown): NamesFound;
}

/** A name as it stands in a formula: 'Sheet'!name or name. */
const bare = (token: string): string => token.slice(token.lastIndexOf('!') + 1).trim();

const patched = new WeakSet<object>();

/** Must be called once for each loaded engine, before it reads a formula. */
export function patchNames(engine: EngineModule): void {
  const reader = engine.LexerTreeBuilder.prototype as unknown as Reader;
  if (patched.has(reader)) return;
  patched.add(reader);
  const { _handleDefinedName: handle } = reader;

  reader._handleDefinedName = function handleDefinedName(this: Reader, sequence: unknown, given: unknown): NamesFound {
    const found = handle.call(this, sequence, given);
    if (!found.hasDefinedName) return found;
    const words = this.getSequenceNode(sequence).flatMap((part) => (typeof part === 'string' ? [] : [bare(part.token)]));
    return { ...found, definedNames: [...new Set([...found.definedNames, ...words])] };
  };
}
