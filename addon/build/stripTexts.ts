// An esbuild plugin: leaves out of the platform's bundle the texts of the declarations that no call needs (summaries,
// help, notes, examples, sources, units of results). The JSDoc above each function and the panel keep them; without this
// they would be in the bundle twice, and read anew at every call. What a sentence of an error needs stays: names, units, limits.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const forms = new Set(['mapping', 'folding', 'laying']);
const withDefault = new Set(['optional']);
/** Left out altogether: nothing that answers a call reads them. */
const described = new Set(['summary', 'notes', 'subject', 'examples', 'sources']);

const isPlus = (node: ts.Node): node is ts.BinaryExpression => ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken;

/** Text written out, however it is put together. */
const isText = (node: ts.Node): boolean =>
  ts.isStringLiteralLike(node) || ts.isTemplateExpression(node) || (isPlus(node) && (isText(node.left) || isText(node.right)));

/** Help is whole sentences; nothing else that a file in functions/ hands to a call while it loads is one. */
const isSentence = (node: ts.Node): boolean => isText(node) && /^.[A-Z0-9"$].*\..$/s.test(node.getText());

const nameOf = ({ name }: ts.ObjectLiteralElementLike): string => (name !== undefined && ts.isIdentifier(name) ? name.text : '');

/** A part of a list with the comma behind it. */
function withComma(node: ts.Node, source: string): Edit {
  const end = node.getEnd();
  return { start: node.getStart(), end: end + (/^\s*,/.exec(source.slice(end))?.[0].length ?? 0), text: '' };
}

/** Names imported from the readers, the modifiers and the forms of a declaration: their text arguments are help. */
function registryImports(file: ts.SourceFile): ReadonlySet<string> {
  const names = file.statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    const bindings = statement.importClause?.namedBindings;
    const ours = /^\.{1,2}\/(\w+\/)?(read\w+|modifiers|declaration)$/.test(statement.moduleSpecifier.text) && bindings !== undefined && ts.isNamedImports(bindings);
    return ours ? bindings.elements.map((element) => element.name.text) : [];
  });
  return new Set(names);
}

/** What a call of a reader, a modifier or a form of a declaration says to people only. */
function editsOfCall(call: ts.CallExpression, fromRegistry: boolean, source: string): Edit[] {
  const empty = (node: ts.Node): Edit => ({ start: node.getStart(), end: node.getEnd(), text: "''" });
  // What is taken for an argument left out is no help, and may be text.
  const kept = isNamed(call, withDefault) ? call.arguments[1] : undefined;
  const texts = call.arguments.filter((argument) => argument !== kept && (fromRegistry ? isText(argument) : isSentence(argument)));
  // Nothing asks for more arguments than it gets, so a text that comes last need not be there at all.
  const last = call.arguments[call.arguments.length - 1];
  return texts.map((text) => (text === last && fromRegistry ? withComma(text, source) : empty(text)));
}

const isNamed = (call: ts.CallExpression, names: ReadonlySet<string>): boolean => ts.isIdentifier(call.expression) && names.has(call.expression.text);

/** Texts in an object: of a declaration all that describes, of a reader its help, of what a reader makes its help and unit. */
function editsOfObject(object: ts.ObjectLiteralExpression, known: ReadonlySet<string>, source: string): Edit[] {
  const hasAll = (...names: readonly string[]): boolean => names.every((name) => object.properties.some((property) => nameOf(property) === name));
  // What two declarations have in common is written once, in an object of its own.
  const inForm = hasAll('summary', 'parameters') || (ts.isCallExpression(object.parent) && isNamed(object.parent, known) && isNamed(object.parent, forms));
  const isParameter = hasAll('shape', 'mustBe');
  const needless = (property: ts.ObjectLiteralElementLike): boolean => {
    const name = nameOf(property);
    if (inForm) return described.has(name);
    if (name === 'help') return ts.isShorthandPropertyAssignment(property) || (ts.isPropertyAssignment(property) && (isText(property.initializer) || isParameter));
    return isParameter && name === 'unit';
  };
  return object.properties.filter(needless).map((property) => withComma(property, source));
}

/** Source text of a file of functions/ or its registry without its texts. */
export function withoutTexts(name: string, source: string): string {
  const file = ts.createSourceFile(name, source, ts.ScriptTarget.Latest, true);
  const known = registryImports(file);
  const edits: Edit[] = [];
  const visit = (node: ts.Node, inFunction: boolean): void => {
    if (ts.isObjectLiteralExpression(node)) edits.push(...editsOfObject(node, known, source));
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const fromRegistry = isNamed(node, known);
      // Of a result only its name is asked for.
      if (fromRegistry && node.expression.text === 'result') edits.push({ start: node.getStart(), end: node.getEnd(), text: '0' });
      else if (fromRegistry || !inFunction) edits.push(...editsOfCall(node, fromRegistry, source));
    }
    ts.forEachChild(node, (child) => visit(child, inFunction || ts.isFunctionLike(node)));
  };
  visit(file, false);
  return applied(source, edits);
}

/** Edits inside an edited part are dropped with it. */
function applied(source: string, edits: readonly Edit[]): string {
  const outer = edits.filter((edit) => !edits.some((other) => other !== edit && other.start <= edit.start && other.end >= edit.end));
  return [...outer].sort((one, other) => other.start - one.start).reduce((text, { start, end, text: put }) => text.slice(0, start) + put + text.slice(end), source);
}

export function stripTexts(root: string): Plugin {
  const folder = join(root, 'functions');
  return {
    name: 'strip-texts',
    setup(build) {
      build.onLoad({ filter: /[\\/]functions[\\/]\w+[\\/]\w+\.ts$/ }, async ({ path }) =>
        path.startsWith(folder) && !/registry[\\/](?!read)/.test(path) ? { contents: withoutTexts(path, await readFile(path, 'utf8')), loader: 'ts' } : undefined,
      );
    },
  };
}
