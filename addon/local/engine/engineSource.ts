// The text of the engine's package as it is loaded, in Node and in the page: with plain fields, and with formulas kept by their whole text.
import { accessorsIn, withPlainFields } from './plainFields';

/**
 * The engine keeps each formula that it has read by a number of 32 bits made of its text: two long formulas with one number would be taken
 * for one another, and making the number again for each formula at each calculation takes a tenth of an edit. Here it is kept by its text.
 */
function withWholeTexts(source: string): string {
  const kept =
    /_hash\(formulaString\) \{\s*if \(formulaString\.length <= 64\) return formulaString;\s*return [^;]*hashAlgorithm\)?\(formulaString\)\.toString\(\);/;
  if (!kept.test(source)) throw new Error('The engine keeps formulas in another way than it did.');
  return source.replace(kept, '_hash(formulaString) { return formulaString;');
}

/** `core`: the text of the package beside it, whose classes it extends. */
export const engineSource = (source: string, core: string): string => withWholeTexts(withPlainFields(source, accessorsIn([source, core])));
