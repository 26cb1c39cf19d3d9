// The parts of the build: lazy modules, stripped texts, names of parameters, packed sheets, the manifest, the page.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { googleCode } from '../../addon/build/googleBundle';
import { lazyModules } from '../../addon/build/lazyModules';
import { slimmed, slimmings } from '../../addon/build/slimLibraries';
import { withoutTexts } from '../../addon/build/stripTexts';
import { parameterName, wrapperSource } from '../../addon/build/wrappers';
import { packedElement, packTemplates, templatesInPage, unpackTemplates } from '../../addon/workbook/packedTemplates';
import { registry } from '../../functions/registry/index.generated';
import { sheetTemplates } from '../../sheets-templates';
import { bareContext } from './bareContext';
import { builtCode, builtFiles, plainCode, root } from './built';

describe('lazy modules', () => {
  const bundled = async (source: string): Promise<string> => {
    const { outputFiles } = await build({
      stdin: { contents: source, resolveDir: join(root, 'test/bundle'), loader: 'ts' },
      absWorkingDir: root,
      bundle: true,
      format: 'iife',
      globalName: 'Tried',
      write: false,
      plugins: [lazyModules(root)],
    });
    return outputFiles[0]?.text ?? '';
  };

  it('start at the first use, whichever way they are imported', async () => {
    for (const [line, use] of [
      ["import geodesic from 'geographiclib-geodesic';", 'geodesic.Geodesic'],
      ["import { Geodesic } from 'geographiclib-geodesic';", 'Geodesic'],
      ["import * as all from 'geographiclib-geodesic';", 'all.Geodesic'],
    ]) {
      const code = await bundled(`${line} export const use = () => ${use}.WGS84.Inverse(0, 0, 0, 1).s12;`);
      const { run } = bareContext(watched(code));
      expect(run('started')).toEqual([]);
      // One degree of the equator of WGS84: 6378137 m x pi / 180.
      expect(run('Tried.use()')).toBeCloseTo((6378137 * Math.PI) / 180, 6);
      expect(run('started')).toEqual(['geographiclib-geodesic']);
    }
  });

  it('in the bundle: no call starts geodesy but those that measure the earth', async () => {
    const code = watched(await plainCode());
    const bare = bareContext(code);
    bare.call('PRESSURE_ALTITUDE', 5883, 30.1);
    expect(bare.run('started')).toEqual([]);
    bare.call('COURSE_LEG', 0, 0, 0, 1);
    expect(bare.run('started')).toEqual(['geographiclib-geodesic']);
  });
});

describe('a call', () => {
  it('starts the files of its own subject and what they need, and nothing else', async () => {
    const code = (await plainCode()).replace(/"([^"\n:]+)"\((?:exports\d*(?:, module\d*)?)?\) \{/g, '$& started.push("$1");');
    const bare = bareContext(`var started = [];\n${code}`);
    bare.call('PRESSURE_ALTITUDE', 5883, 30.1);
    const started = bare.run('started') as string[];
    expect([...started].filter((file) => file.startsWith('functions/') && !file.startsWith('functions/registry/'))).toEqual([
      'functions/air/atmosphere.ts',
    ]);
    expect(started.join(' ')).not.toMatch(/node_modules|rules|metar|magnet|geodesy|wordCoreError|commands|insertSheets|sheets-templates|workbook/);
    expect(started.length).toBeLessThan(30);
    // What is wrong pays for its words.
    expect(() => bare.call('ISA_TEMPERATURE', 'high')).toThrow('pressure_altitude_ft must be');
    expect(() =>
      bare.call(
        'TAKEOFF_MAX_WEIGHT',
        [
          ['weight', 'd'],
          [1, 2],
        ],
        'x',
        5,
        0,
      ),
    ).toThrow(/^TAKEOFF_MAX_WEIGHT: /);
    expect((bare.run('started') as string[]).join(' ')).toContain('functions/registry/wordCoreError.ts');
  });
});

/** Notes in `started` each package of node_modules as its code begins. */
function watched(code: string): string {
  return `var started = [];\n${code.replace(/"(?!lazy-module:)(?:[^"\n]*\/)?node_modules\/([^/"]+)\/[^"\n]*"\(exports\d*, module\d*\) \{/g, '$& started.push("$1");')}`;
}

describe('names of quantities', () => {
  const ends = '[a-z]\\w*(?:Feet|Knots|Degrees|Miles|Celsius|Hectopascals|Minutes|Minute|Hour|Radians|Metres|Percent|Kelvin|Seconds)';
  const asProperties = (code: string): Set<string> => new Set([...code.matchAll(new RegExp(`\\.(${ends})\\b`, 'g'))].map(([, name = '']) => name));

  it('are shortened, but for those that a text may read and those of the language', async () => {
    const [{ code: plain }, { code }] = [await googleCode({ root, minify: false }), await builtCode()];
    const named = new Set([...plain.matchAll(new RegExp(`(["'\`])(${ends})\\1`, 'g'))].map(([, , name = '']) => name));
    const before = asProperties(plain.replace(/^\s*(?:\*|\/\/).*$/gm, ''));
    const kept = [...before].filter((name) => named.has(name) || /^[gs]et/.test(name));
    expect(kept).toEqual(expect.arrayContaining(['crosswindKnots', 'getUTCMinutes']));
    expect([...asProperties(code)].sort()).toEqual(kept.sort());
    expect(before.size).toBeGreaterThan(kept.length + 50);
  });
});

describe('slimmed libraries', () => {
  it('stop the build where a package is another version', () => {
    for (const slimming of slimmings) expect(() => slimmed('another.version();', slimming), slimming.module).toThrow(/no longer has/);
  });

  it('lose whole statements, each as often as was counted', () => {
    const slimming = { module: 'x.js', statements: { 'a.b =': 1, 'if (c)': 2 } };
    expect(slimmed('a.b = function () { return { c: 1 }; };\nf(function () { if (c) { a.d(); } if (c) g(); });\na.bc = 1;', slimming)).toBe(
      ';\nf(function () { ; ; });\na.bc = 1;',
    );
    expect(() => slimmed('a.b = 1; a.b = 2; if (c) d(); if (c) e();', slimming)).toThrow('x.js no longer has 1 statements that begin with a.b =');
  });

  it('hold no reader of reports but our own', async () => expect(await plainCode()).not.toContain('metar-taf-parser'));

  it('hold no polygons, areas or other lines of geodesy, and no field of other degrees', async () => {
    const code = await plainCode();
    for (const gone of [
      'PolygonArea = function',
      'C4_coeff = [',
      'Accumulator.prototype',
      'InverseLine',
      'PcupHigh',
      'fromSecularVariationVector',
      'CartesianCoord',
    ])
      expect(code, gone).not.toContain(gone);
    for (const kept of ['GeodesicLine.prototype.GenPosition', 'Geodesic.prototype.InverseInt', 'PcupLow', 'fromGeoMagneticVector'])
      expect(code, kept).toContain(kept);
  });
});

describe('stripped texts', () => {
  const source = `
import { mapping, result } from './registry/declaration';
import { optional } from './registry/modifiers';
import { direction, number } from './registry/readNumber';
const height = (help: string) => number({ unit: 'feet', minimum: 0, maximum: 9, help });
export const F = mapping({
  name: 'F', subject, summary: 'Says.', notes: \`A \${1} note.\`, sources: ['a'],
  parameters: { a: optional(number({ unit: 'knots', help: 'Help ' + 'more.', minimum: 0, maximum: 1 }), 5, 'it is 5'), b: direction('Where.'), c: height('How high.'), d: optional(number({ unit: 'miles' }), 'by default', 'if left out') },
  results: { notes: result('fathoms', 'High.') },
  examples: [{ arguments: [1], gives: 1, source: 'x' }],
  compute: ({ a }) => ({ notes: word('Kept sentence.'), summary: 'Kept.' }),
});`;
  const stripped = withoutTexts('x.ts', source);

  it('leave no help behind, and of a result its name only', () => {
    expect(stripped).not.toMatch(/Says|note\.|Help|more|it is 5|Where|How high|High\.|fathoms|source: 'x'|help [,}]|help: '/);
    expect(stripped).toContain('results: { notes: 0 }');
  });
  it('leave nothing of what describes the function, its comma neither', () =>
    expect(stripped).toMatch(/mapping\(\{\s*name: 'F',\s*parameters: [^]*\},\s*compute:/));
  it('leave of what a reader makes the words of its errors', () => {
    const reader = withoutTexts(
      'readX.ts',
      "export const row = labelled({ label: 'tank', help: 'Rows.' });\nexport function x(help: string) { return { shape: 'cell', unit: 'knots', mustBe: 'x', help, optional: undefined, read }; }\nexport const y = { unit: 'feet' };",
    );
    expect(reader).toContain("labelled({ label: 'tank',  })");
    expect(reader).toContain("{ shape: 'cell',  mustBe: 'x',  optional: undefined, read }");
    expect(reader).toContain("{ unit: 'feet' }");
  });
  it('leave a text that is taken for an argument left out, and not what says so', () => {
    expect(stripped).toContain("optional(number({ unit: 'miles' }), 'by default', )");
  });
  it('leave what a call needs', () => {
    for (const kept of ["name: 'F'", "unit: 'knots'", "unit: 'feet'", "word('Kept sentence.')", "summary: 'Kept.'", 'optional(number({', ', 5, '])
      expect(stripped).toContain(kept);
  });
});

describe('wrappers', () => {
  it('rename what JavaScript keeps for itself', () => {
    expect(parameterName('class')).toBe('class_');
    expect(parameterName('weight')).toBe('weight');
  });
  it('end no comment early', () => {
    const [first] = registry;
    if (first === undefined) throw new Error('no function');
    expect(wrapperSource([{ ...first, summary: 'A */ B\nC.' }], 'X')).toContain(' * A * / B C. Gives');
  });
});

describe('packed sheets', () => {
  it('come out as they went in', () => {
    expect(unpackTemplates(JSON.parse(JSON.stringify(packTemplates(sheetTemplates))) as never)).toEqual(JSON.parse(JSON.stringify(sheetTemplates)));
    expect(templatesInPage(`<p>${packedElement(packTemplates(sheetTemplates))}</p>`)).toEqual(JSON.parse(JSON.stringify(sheetTemplates)));
  });
  it('are missed by name', () => expect(() => templatesInPage('<html></html>')).toThrow('missing'));
});

describe('dist/google', () => {
  let files: Awaited<ReturnType<typeof builtFiles>>;
  beforeAll(async () => {
    files = await builtFiles();
  });

  it('has four files', () => expect(Object.keys(files).sort()).toEqual(['Code.js', 'appsscript.json', 'licences.html', 'panel.html']));

  it('keeps the licences of what Code.js contains in a page that no call reads', () => {
    const page = files['licences.html'];
    expect(page).toMatch(/geographiclib-geodesic 2\.2\.0 \(MIT\):[\s\S]*Charles Karney[\s\S]*Permission is hereby granted/);
    expect(page).toMatch(/geomagnetism 0\.2\.0 \(Apache-2\.0\):[\s\S]*Grant of Copyright License/);
    expect(page.match(/<(?!\/?(?:title|pre|!DOCTYPE))/g)).toBeNull();
  });

  it('asks for the open document and its panel only, on V8, at a fixed zone', () => {
    expect(JSON.parse(files['appsscript.json'])).toEqual({
      timeZone: 'Etc/UTC',
      runtimeVersion: 'V8',
      exceptionLogging: 'NONE',
      dependencies: {},
      oauthScopes: ['https://www.googleapis.com/auth/spreadsheets.currentonly', 'https://www.googleapis.com/auth/script.container.ui'],
    });
  });

  it('has a panel that needs no network: one script, one style, nothing fetched', () => {
    const page = files['panel.html'];
    expect(page).not.toMatch(/<(?:script|link|img|iframe)[^>]+(?:src|href)=/i);
    // In the style only: a library of the script has a method of that name.
    expect(/<style>[\s\S]*<\/style>/.exec(page)?.[0]).toMatch(/^<style>(?![\s\S]*(?:@import|url\())/);
    expect(page).not.toMatch(/\bfetch\(|XMLHttpRequest|WebSocket|sendBeacon|EventSource/);
    expect(page.match(/<script/g)).toHaveLength(2);
  });

  it('has no template literal in its page, for Google drops what follows // in one', () => {
    expect(files['panel.html']).not.toContain('`');
    // Backticks in plain strings are spelled otherwise, and stay.
    expect(files['panel.html']).toContain(String.raw`\x60`);
  });

  it('is pushed from there, over the manifest that a fresh script has: clasp leaves everything where it must ask', () => {
    const example = JSON.parse(readFileSync(join(root, '.clasp.json.example'), 'utf8')) as { rootDir: string };
    expect(example.rootDir).toBe('dist/google');
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: { push: string } };
    expect(scripts.push).toMatch(/ clasp push --force$/);
  });
});
