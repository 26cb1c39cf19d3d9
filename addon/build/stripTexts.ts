// An esbuild plugin: leaves out of the platform's bundle the texts of the declarations that no call needs (summaries,
// help, notes, examples, sources). The JSDoc above each function and the panel keep them; without this they would be in
// the bundle twice, and read anew at every call. What a sentence of an error needs stays: names, units, limits.
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
/** Left out altogether: nothing that answers a call reads them. */
const described = new Set(['summary', 'notes', 'subject', 'examples', 'sources']);

const isPlus = (node: ts.Node): node is ts.BinaryExpression => ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken;

/** Text written out, however it is put together. */
const isText = (node: ts.Node): boolean =>
  ts.isStringLiteralLike(node) || ts.isTemplateExpression(node) || (isPlus(node) && (isText(node.left) || isText(node.right)));

/** Help is whole sentences; nothing else that a file in functions/ hands to a call while it loads is one. */
const isSentence = (node: ts.Node): boolean => isText(node) && /^.[A-Z0-9"$].*\..$/s.test(node.getText());

const propertiesOf = (node: ts.Node): readonly ts.ObjectLiteralElementLike[] => (ts.isObjectLiteralExpression(node) ? node.properties : []);

const nameOf = ({ name }: ts.ObjectLiteralElementLike): string => (name !== undefined && ts.isIdentifier(name) ? name.text : '');

/** A property with the comma behind it. */
function wholeProperty(property: ts.ObjectLiteralElementLike, source: string): Edit {
  const end = property.getEnd();
  return { start: property.getStart(), end: end + (/^\s*,/.exec(source.slice(end))?.[0].length ?? 0), text: '' };
}

/** Names imported from the readers, the modifiers and the forms of a declaration: their text arguments are help. */
function registryImports(file: ts.SourceFile): ReadonlySet<string> {
  const names = file.statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    const bindings = statement.importClause?.namedBindings;
    const ours = /^\.\/registry\/(read\w+|modifiers|declaration)$/.test(statement.moduleSpecifier.text) && bindings !== undefined && ts.isNamedImports(bindings);
    return ours ? bindings.elements.map((element) => element.name.text) : [];
  });
  return new Set(names);
}

/** Source text of a file in functions/ with its texts emptied. */
export function withoutTexts(name: string, source: string): string {
  const file = ts.createSourceFile(name, source, ts.ScriptTarget.Latest, true);
  const known = registryImports(file);
  const edits: Edit[] = [];
  const empty = (node: ts.Node): number => edits.push({ start: node.getStart(), end: node.getEnd(), text: "''" });
  const emptyArguments = (call: ts.CallExpression, fromRegistry: boolean): void => {
    for (const argument of call.arguments) {
      if (fromRegistry ? isText(argument) : isSentence(argument)) empty(argument);
      for (const property of propertiesOf(argument)) if (nameOf(property) === 'help' && ts.isPropertyAssignment(property) && isText(property.initializer)) empty(property.initializer);
    }
  };
  const visit = (node: ts.Node, inFunction: boolean): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const [first] = node.arguments;
      const fromRegistry = known.has(node.expression.text);
      if (fromRegistry && forms.has(node.expression.text) && first !== undefined) {
        for (const property of propertiesOf(first)) if (described.has(nameOf(property))) edits.push(wholeProperty(property, source));
      } else if (fromRegistry || !inFunction) {
        emptyArguments(node, fromRegistry);
      }
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
      build.onLoad({ filter: /[\\/]functions[\\/][^\\/]+\.ts$/ }, async ({ path }) =>
        path.startsWith(folder) ? { contents: withoutTexts(path, await readFile(path, 'utf8')), loader: 'ts' } : undefined,
      );
    },
  };
}
