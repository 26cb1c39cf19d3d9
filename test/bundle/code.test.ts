// The text of Code.js: what is at its top level, what stands above each function, and what Apps Script cannot read.
import { beforeAll, describe, expect, it } from 'vitest';
import { hostFunctions } from '../../addon/build/hostFunctions';
import { parameterName } from '../../addon/build/wrappers';
import { registry } from '../../functions/registry/index.generated';
import { bareContext, type BareContext } from './bareContext';
import { builtCode } from './built';

let code = '';
let licences = '';
let bare: BareContext;

beforeAll(async () => {
  ({ code, licences } = await builtCode());
  bare = bareContext(code);
});

/** Code without comments and strings, so that words in them are not taken for syntax. */
const syntaxOnly = (text: string): string => text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'/g, '""');

describe('the top level', () => {
  it("holds the functions of the registry and the host's few, and no other", () => {
    expect([...bare.functions].sort()).toEqual([...registry.map(({ name }) => name), ...hostFunctions.map(({ name }) => name)].sort());
  });

  it('holds one global besides', () => expect(code.match(/^(?:var|let|const|class) \w+/gm)).toEqual(['var Rampwright']));

  it('is read by the parser of ES2019 scripts: no modules, private names or static fields', () => {
    const syntax = syntaxOnly(code);
    expect(syntax).not.toMatch(/^\s*(import|export)\b/m);
    expect(syntax).not.toMatch(/[{;,\s.]#[A-Za-z_]\w*/);
    expect(syntax).not.toMatch(/\bstatic\s+[\w$]+\s*[=;]/);
    expect(syntax).not.toMatch(/\?\?|\?\.(?!\d)/);
  });

  it('holds Latin-1 letters only, so that V8 keeps it in one byte a letter', () =>
    expect([...code].filter((letter) => letter > '\u00ff')).toEqual([]));

  it('says what it contains, and where the licences are', () => {
    const contained = [...licences.matchAll(/^Contains (.+):$/gm)].map(([, words]) => words);
    expect(contained).toHaveLength(4);
    expect(code).toMatch(
      new RegExp(
        `^/\\*\\* @OnlyCurrentDoc \\*/\n// Rampwright \\d+\\.\\d+\\.\\d+\\. Contains ${contained.join(', ').replace(/[().]/g, '\\$&')}; their licences are in licences\\.html\\.\n`,
      ),
    );
  });
});

describe.each(registry.map((declaration) => ({ name: declaration.name, declaration })))('$name', ({ declaration }) => {
  const source = (): { readonly comment: string; readonly parameters: string[] } => {
    const found = new RegExp(`(/\\*\\*(?:(?!\\*/)[\\s\\S])*\\*/)\\nfunction ${declaration.name}\\(([^)]*)\\)`).exec(code);
    return { comment: found?.[1] ?? '', parameters: (found?.[2] ?? '').split(',') };
  };

  it('has its JSDoc just above: what it is for, its results with their units, marked as a custom function', () => {
    const { comment } = source();
    expect(comment).toMatch(/\n \* @customfunction\n \*\/$/);
    expect(comment).toContain(declaration.summary.replace(/\s+/g, ' '));
    // A name such as wind_kt says its unit itself.
    for (const [name, { unit }] of Object.entries(declaration.results))
      expect(comment).toContain(
        unit === '' || unit === name || /_(kt|ft|nm|m|c|deg|hpa|z|true|minutes|days)$/.test(name) ? name : `${name} (${unit})`,
      );
  });

  it('has the real parameter names, each with its help, unit, limits and whether it may be left out', () => {
    const { comment, parameters } = source();
    const wanted = Object.entries(declaration.parameters);
    expect(parameters).toEqual(wanted.map(([name]) => parameterName(name)));
    expect((bare.run(declaration.name) as { length: number }).length).toBe(wanted.length);
    for (const [name, { unit, help, optional, mustBe }] of wanted) {
      const line = new RegExp(`^ \\* @param \\{\\w+\\} ${parameterName(name)} (.*)$`, 'm').exec(comment)?.[1] ?? '';
      // Long help is cut behind a part of a sentence, limits before an example of them.
      const words = help.replace(/\s+/g, ' ');
      expect(line).toContain(words.slice(0, Math.max(20, words.search(/[;:.]( |$)/))).replace(/\.$/, ''));
      const [must = ''] = mustBe.split(', such as ');
      for (const number of must.match(/\d[\d.,]*/g) ?? []) expect(line).toContain(number);
      if (/^(one of|yes or no)/.test(must) || /^[^\d]*[A-Z]{2}[^\d]*$/.test(must)) expect(line).toContain(`(${must}`);
      if (!['', 'table', 'rows', 'date'].includes(unit)) for (const one of unit.split(' or ')) expect(line).toContain(one);
      expect(/ Optional; /.test(line)).toBe(optional !== undefined);
    }
  });
});
