// Scripts of the panel's page: written so that the platform's page service has nothing to cut, and meaning the same.
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedPage, plainScript } from '../../addon/build/pageScripts';
import { panelBuild } from '../../addon/build/panelPage';
import { packedElement, packTemplates, templatesInPage } from '../../addon/workbook/packedTemplates';
import { sheetTemplates } from '../../sheets-templates';
import { cutPage, pageCutters } from '../google/double/pageCutter';
import { Double } from '../google/double/services';
import { builtFiles, root } from './built';

const pageOf = (script: string): string => `<p>\n<script>${script}</script>`;
const answerOf = (script: string): unknown => runInNewContext(script);

describe('a script written plainly', () => {
  it.each([
    ['an address', `'https://a.invalid/b'.length + "https://c"`],
    ['slashes in a row', `'///' + "a//*b/**/"`],
    ['escaped slashes', String.raw`'\//' + '<\/p>' + "\/*" + "\\//"`],
    ['letters beyond ASCII', `'7 µ, 3°, − ≤ 😀'.length + 'é'`],
    ['backticks in strings', '\'`\' + "\\`"'],
    ['an ending tag and a comment of the page', `'</scr' + 'ipt>' + "<!-- x"`],
    ['an address in a regular expression', String.raw`/^https?:\/\/x\/\//.test('https://x//')`],
    ['a slash that a quantifier follows', String.raw`/^a\/*b$/.test('a///b') && /[/*]/.exec('x*')[0]`],
    ['a class of slashes', String.raw`'a/\\*'.replace(/[\\//*]/g, '.')`],
    ['letters in a regular expression', `/[µ°]😀?/u.exec('3 °😀')[0] + /\\µ/.exec('µ')[0]`],
    ['a backtick in a regular expression', 'String(/[`"]+/.exec("a`"))'],
    ['quotes in a regular expression, then an address', `/["']/.test("'") && 'http://x'`],
    ['a key', `({ 'a//b': 1 })['a//b']`],
  ])('means the same, and leaves nothing to cut: %s', (_, script) => {
    const plain = plainScript(script);
    expect(answerOf(plain)).toEqual(answerOf(script));
    expect(() => checkedPage('p.html', pageOf(plain))).not.toThrow();
    for (const cutter of pageCutters) expect(cutPage(pageOf(plain), cutter)).toBe(pageOf(plain));
  });

  it('means the same whatever a string holds', () => {
    const letters = fc.constantFrom(...'/*\\\'"`<>!-scriptµ😀\n\u2028 '.split(''), '//', '/*', '</script', '\\/');
    fc.assert(
      fc.property(fc.string({ unit: letters, maxLength: 12 }), (text) => {
        const plain = plainScript(`x = ${JSON.stringify(text)}`);
        expect(answerOf(plain)).toBe(text);
        expect(checkedPage('p.html', pageOf(plain))).toBe(pageOf(plain));
      }),
    );
  });
});

describe('a page that would be cut', () => {
  it.each([
    ['1 // a', '"//"'],
    ['1 /* a */', '"/*"'],
    ['`a`', '"`"'],
    ['µ = 1', '"µ"'],
  ])('is refused, with the place: %s', (script, found) =>
    expect(() => checkedPage('p.html', `<p>\n<script>1</script>\n<script type="x">\n${script}</script>`)).toThrow(
      `p.html is not written: script 2 holds ${found} in line 4 of the page, where Google's page service may cut it: ...`,
    ),
  );

  it('is not one whose comments stand outside scripts', () => expect(checkedPage('p.html', '<!-- // --><script>1</script>')).toContain('//'));
});

describe("the panel's page", () => {
  it('comes through the page service whole, whichever way that cuts', async () => {
    const panel = (await builtFiles())['panel.html'];
    for (const cutter of pageCutters) {
      const { html } = new Double('Etc/UTC', { panel });
      html.cutter = cutter;
      expect(html.createHtmlOutputFromFile('panel').getContent() === panel, cutter).toBe(true);
    }
  });

  it('would lose much as esbuild writes it', async () => {
    const { outputFiles } = await build(panelBuild(root, 'addon/google/client/main.ts'));
    const page = pageOf(outputFiles[0]?.text ?? '');
    for (const cutter of pageCutters) expect(page.length - cutPage(page, cutter).length, cutter).toBeGreaterThan(50_000);
    expect(() => checkedPage('panel.html', page)).toThrow('panel.html is not written: script 1 holds "//" in line 2 of the page');
  });

  it('holds the sheets without anything to cut, and gives them back letter for letter', () => {
    const [first] = sheetTemplates;
    if (first === undefined) throw new Error('no sheet');
    const odd = [{ ...first, cells: [{ row: 1, column: 1, style: 'text', value: 'https://x /* ` µ 😀 </script> \\//' } as const] }];
    const page = checkedPage('p.html', packedElement(packTemplates(odd)));
    for (const cutter of pageCutters) expect(templatesInPage(cutPage(page, cutter))).toEqual(odd);
  });
});
