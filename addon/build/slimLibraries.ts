// An esbuild plugin: leaves out of the platform's bundle what libraries carry and nothing here can reach. A library that is
// CommonJS is bundled whole, however little of it is used. What is left out is named below, statement by statement; a
// package with other statements than these stops the build.
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

interface Slimming {
  /** The module, as the end of its path inside its package. */
  readonly module: string;
  /** The files that are bundled in its place, in this order; itself where left out. */
  readonly files?: readonly string[];
  /** Put behind the files. */
  readonly ending?: string;
  /** How the statements begin that are left out, and how many there are of each. */
  readonly statements: Readonly<Record<string, number>>;
  /** Text that stands there once, and what is put in its place. */
  readonly replacements?: readonly (readonly [found: string, put: string])[];
}

export const slimmings: readonly Slimming[] = [
  {
    // core/navigation/geodesy.ts asks for Inverse and Direct on WGS84 with the standard results: no areas, no polygons, no lines of its
    // own, no scales along a line, and none of what flatter ellipsoids need. The package's main file is these sources in
    // one, made smaller; they are smaller still without what is named here.
    module: 'geographiclib-geodesic/geographiclib-geodesic.min.js',
    files: ['src/Math.js', 'src/Geodesic.js', 'src/GeodesicLine.js'],
    ending: '\nmodule.exports = geodesic;\n',
    statements: {
      'a.Accumulator': 6,
      'c.version': 2,
      'C4_coeff =': 1,
      'g.Geodesic.prototype.C4': 2,
      'this.C4coeff()': 1,
      'this._C4x =': 1,
      'this._c2 =': 2,
      'if (outmask & g.AREA)': 3,
      'if (this.caps & g.CAP_C4)': 1,
      'if (this.caps & g.CAP_C2)': 1,
      'if (outmask & (g.REDUCEDLENGTH | g.GEODESICSCALE)) {\n      B22 =': 1,
      'if (Math.abs(this.f) > 0.01)': 1,
      'g.Geodesic.prototype.ArcDirect': 2,
      'g.Geodesic.prototype.Line =': 1,
      'g.Geodesic.prototype.DirectLine': 1,
      'g.Geodesic.prototype.GenDirectLine': 1,
      'g.Geodesic.prototype.InverseLine': 1,
      'g.Geodesic.prototype.Polygon': 1,
      'l.GeodesicLine.prototype.Position': 1,
      'l.GeodesicLine.prototype.ArcPosition': 1,
      'l.GeodesicLine.prototype.GenSetDistance': 1,
      'l.GeodesicLine.prototype.Set': 2,
    },
  },
  { module: 'geomagnetism/lib/magnetic_elements.js', statements: { 'MagneticElements.prototype.': 3, 'MagneticElements.fromSecularVariationVector': 1 } },
  {
    // The model is of degree 12; the other way of summing is for degrees above 16.
    module: 'geomagnetism/lib/legendre.js',
    statements: { 'function PcupHigh': 1 },
    replacements: [['result = PcupHigh(sin_phi, n_max);', 'throw new Error("degree above 16");']],
  },
  { module: 'geomagnetism/lib/coords/spherical.js', statements: { 'var CartesianCoord': 1, 'SphericalCoord.prototype.toCartesian': 1, 'SphericalCoord.prototype.toGeodetic': 1 } },
];

function statementsIn(file: ts.SourceFile, beginning: string): ts.Node[] {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    const whole = ts.isStatement(node) && !ts.isBlock(node) && node.getText().startsWith(beginning);
    if (whole) found.push(node);
    else ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** The sources without what `slimming` names; throws where they are not the sources it was written for. */
export function slimmed(source: string, { module, statements, replacements = [] }: Slimming): string {
  const file = ts.createSourceFile(module, source, ts.ScriptTarget.Latest, true, ts.ScriptKind.JS);
  const cuts = Object.entries(statements).flatMap(([beginning, times]) => {
    const found = statementsIn(file, beginning);
    if (found.length !== times) throw new Error(`${module} no longer has ${times} statements that begin with ${beginning}`);
    return found.map((node) => ({ start: node.getStart(), end: node.getEnd() }));
  });
  const shorter = cuts.sort((one, other) => other.start - one.start).reduce((text, { start, end }) => `${text.slice(0, start)};${text.slice(end)}`, source);
  return replacements.reduce((text, [found, put]) => {
    if (text.split(found).length !== 2) throw new Error(`${module} no longer has the line ${found}`);
    return text.replace(found, () => put);
  }, shorter);
}

export const slimLibraries: Plugin = {
  name: 'slim-libraries',
  setup(build) {
    build.onLoad({ filter: /[\\/]node_modules[\\/]/ }, async ({ path }) => {
      const slimming = slimmings.find(({ module }) => path.replace(/\\/g, '/').endsWith(`/node_modules/${module}`));
      if (slimming === undefined) return undefined;
      const files = slimming.files?.map((file) => join(dirname(path), file)) ?? [path];
      const sources = await Promise.all(files.map((file) => readFile(file, 'utf8')));
      return { contents: slimmed(sources.join('\n') + (slimming.ending ?? ''), slimming), loader: 'js' };
    });
  },
};
