// The parts of the build: lazy modules, stripped texts, names of parameters, packed sheets, the manifest, the page.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { lazyModules } from '../../addon/build/lazyModules';
import { withoutRemarks } from '../../addon/build/slimMetar';
import { withoutTexts } from '../../addon/build/stripTexts';
import { parameterName, wrapperSource } from '../../addon/build/wrappers';
import { packedElement, packTemplates, templatesInPage, unpackTemplates } from '../../addon/workbook/packedTemplates';
import { registry } from '../../functions/registry/index.generated';
import { sheetTemplates } from '../../sheets-templates';
import { bareContext } from './bareContext';
import { builtFiles, plainCode, root } from './built';

describe('lazy modules', () => {
  const bundled = async (source: string): Promise<string> => {
    const { outputFiles } = await build({
      stdin: { contents: source, resolveDir: join(root, 'test/bundle'), loader: 'ts' },
      absWorkingDir: root, bundle: true, format: 'iife', globalName: 'Tried', write: false,
      plugins: [lazyModules(root)],
    });
    return outputFiles[0]?.text ?? '';
  };

  it('start at the first use, whichever way they are imported', async () => {
    for (const [line, use] of [["import geodesic from 'geographiclib-geodesic';", 'geodesic.Geodesic'], ["import { Geodesic } from 'geographiclib-geodesic';", 'Geodesic'], ["import * as all from 'geographiclib-geodesic';", 'all.Geodesic']]) {
      const code = await bundled(`${line} export const use = () => ${use}.WGS84.Inverse(0, 0, 0, 1).s12;`);
      const { run } = bareContext(watched(code));
      expect(run('started')).toEqual([]);
      // One degree of the equator of WGS84: 6378137 m x pi / 180.
      expect(run('Tried.use()')).toBeCloseTo((6378137 * Math.PI) / 180, 6);
      expect(run('started')).toEqual(['geographiclib-geodesic']);
    }
  });

  it('are bundled only as far as they are used', async () => {
    const code = await plainCode();
    // The parser of forecasts is in the same package as that of reports, and nothing here calls it.
    if (code.includes('metar-taf-parser')) expect(code).not.toContain('parseTAFAsForecast');
  });

  it('leave out the parser of remarks, which nothing here reaches', async () => {
    const code = await plainCode();
    expect(code).not.toContain('class RemarkParser');
    expect(code).not.toContain('Pressure.Tendency');
    expect(() => withoutRemarks('another version')).toThrow('no longer has the line');
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

/** Notes in `started` each package of node_modules as its code begins. */
function watched(code: string): string {
  return `var started = [];\n${code.replace(/"(?:[^"\n]*\/)?node_modules\/([^/"]+)\/[^"\n]*"\(exports\d*, module\d*\) \{/g, '$& started.push("$1");')}`;
}

describe('stripped texts', () => {
  const source = `
import { mapping, result } from './registry/declaration';
import { optional } from './registry/modifiers';
import { direction, number } from './registry/readNumber';
const height = (help: string) => number({ unit: 'feet', minimum: 0, maximum: 9, help });
export const F = mapping({
  name: 'F', subject, summary: 'Says.', notes: \`A \${1} note.\`, sources: ['a'],
  parameters: { a: optional(number({ unit: 'knots', help: 'Help ' + 'more.', minimum: 0, maximum: 1 }), 5, 'it is 5'), b: direction('Where.'), c: height('How high.') },
  results: { notes: result('feet', 'High.') },
  examples: [{ arguments: [1], gives: 1, source: 'x' }],
  compute: ({ a }) => ({ notes: word('Kept sentence.'), summary: 'Kept.' }),
});`;
  const stripped = withoutTexts('x.ts', source);

  it('leave no help behind', () => expect(stripped).not.toMatch(/Says|note\.|Help|more|it is 5|Where|How high|High\.|source: 'x'/));
  it('leave nothing of what describes the function, its comma neither', () => expect(stripped).toMatch(/mapping\(\{\s*name: 'F',\s*parameters: [^]*\},\s*compute:/));
  it('leave what a call needs', () => {
    for (const kept of ["name: 'F'", "unit: 'knots'", "unit: 'feet'", "word('Kept sentence.')", "summary: 'Kept.'", 'optional(number({', ', 5, ']) expect(stripped).toContain(kept);
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

  it('has three files', () => expect(Object.keys(files).sort()).toEqual(['Code.js', 'appsscript.json', 'panel.html']));

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
    expect(page).not.toMatch(/@import|url\(/);
    expect(page).not.toMatch(/\bfetch\(|XMLHttpRequest|WebSocket|sendBeacon|EventSource/);
    expect(page.match(/<script/g)).toHaveLength(2);
  });

  it('is pushed from there', () => {
    const example = JSON.parse(readFileSync(join(root, '.clasp.json.example'), 'utf8')) as { rootDir: string };
    expect(example.rootDir).toBe('dist/google');
  });
});
