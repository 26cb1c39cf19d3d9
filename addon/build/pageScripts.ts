// Page scripts that come through Google's page service whole. It cuts comments from them by a reading of its own: in template
// literals for certain (enuchi/React-Google-Apps-Script, issues 157 and 170), by other reports in plain strings too. So no
// script of a page holds // or /*, nor a letter beyond ASCII, nor a backtick: each is written as an escape that means the same.
import ts from 'typescript';

/** A letter that may not stand there, with a backslash before it that says nothing; a slash, likewise; any other escape. */
const parts = /\\?([^\p{ASCII}]|`)|\\?(\/)|\\[^]/gu;

const letterCode = (letter: string): string =>
  letter === '`' ? '\\x60' : letter.replace(/[^]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** `isEscaped`: which slashes become an escape too, by what follows. */
const plainLiteral = (text: string, isEscaped: (after: string) => boolean): string =>
  text.replace(parts, (found: string, letter: string | undefined, slash: string | undefined, at: number) => {
    if (letter !== undefined) return letterCode(letter);
    return slash !== undefined && isEscaped(text.charAt(at + found.length)) ? '\\x2f' : found;
  });

const plainString = (text: string): string => plainLiteral(text, (after) => after === '/' || after === '*');

/** Every slash between its own two: what follows one there may be a quantifier, or the end. */
function plainPattern(text: string): string {
  const end = text.lastIndexOf('/');
  return `/${plainLiteral(text.slice(1, end), () => true)}${text.slice(end)}`;
}

/** The script with its strings and regular expressions so written; comments are left out by esbuild already. */
export function plainScript(code: string): string {
  const file = ts.createSourceFile('page.js', code, ts.ScriptTarget.ES2020, false, ts.ScriptKind.JS);
  let written = '';
  let done = 0;
  const visit = (node: ts.Node): void => {
    const write = ts.isStringLiteral(node) ? plainString : node.kind === ts.SyntaxKind.RegularExpressionLiteral ? plainPattern : undefined;
    if (write === undefined) return ts.forEachChild(node, visit);
    const start = node.getStart(file);
    written += code.slice(done, start) + write(code.slice(start, node.end));
    done = node.end;
  };
  visit(file);
  // A script ends at the first closing tag, wherever that stands.
  return (written + code.slice(done)).replace(/<\/(script)/gi, '<\\/$1').replace(/<!--/g, '<\\!--');
}

const scripts = /(<script\b[^>]*>)([\s\S]*?)<\/script>/gi;

/** The page, or an error that says what stands where: a page that the service would cut is never written. */
export function checkedPage(name: string, page: string): string {
  let number = 0;
  for (const { 1: tag = '', 2: script = '', index } of page.matchAll(scripts)) {
    number += 1;
    const found = /\/\/|\/\*|`|[^\p{ASCII}]/u.exec(script);
    if (found === null) continue;
    const line = page.slice(0, index + tag.length + found.index).split('\n').length;
    const around = script.slice(Math.max(0, found.index - 40), found.index + 40);
    throw new Error(`${name} is not written: script ${number} holds ${JSON.stringify(found[0])} in line ${line} of the page, where Google's page service may cut it: ...${around}...`);
  }
  return page;
}
