// Reader of a runway's surface, as people write it.
import { surfaces, type Surface } from '../../core/runway/corrections';
import { choice, plainWords } from '../registry/readText';

/** Other spellings of a surface; the first of each is the one that the sheets offer. */
const surfaceWords: Readonly<Record<string, Surface>> = {
  'paved, dry': 'paved_dry',
  'dry paved': 'paved_dry',
  paved: 'paved_dry',
  'paved, wet': 'paved_wet',
  'wet paved': 'paved_wet',
  'grass, dry': 'grass_dry',
  'dry grass': 'grass_dry',
  'grass, wet': 'grass_wet',
  'wet grass': 'grass_wet',
  'grass, very short and wet': 'grass_wet_very_short',
  'soft ground or snow': 'soft',
  'soft ground': 'soft',
  snow: 'soft',
};

/** As the sheets offer them. */
export const surfaceChoices = Object.entries(surfaceWords).flatMap(([words, name], index, all) =>
  all.findIndex(([, other]) => other === name) === index ? [words] : [],
);

/** The surface of which this is a spelling. */
export const surfaceNamed = (name: string): Surface | undefined =>
  surfaceWords[plainWords(name)] ?? surfaces.find((word) => plainWords(word) === plainWords(name));

export const surface = choice<Surface>({
  words: surfaces,
  also: surfaceWords,
  help: 'Surface and state. Manuals print distances for paved, dry. Grass is to 20 cm on firm soil. Nothing is published for slush, standing water or ice.',
});
