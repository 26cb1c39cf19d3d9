// What of a module can be reached from one of its exports. esbuild drops functions and classes that nobody uses, but keeps
// every top-level statement that sets a name (`regex = new WeakMap()`, the function that fills an enumeration).
import ts from 'typescript';

type Named = readonly [sets: readonly string[], statement: ts.Statement];

/** Names that an expression sets: `a = x`, `a = x, b = y`, `(function (A) { ... })(A || (A = {}))`; undefined for any other. */
function namesSet(expression: ts.Expression): readonly string[] | undefined {
  if (ts.isBinaryExpression(expression)) {
    const { left, right, operatorToken } = expression;
    if (operatorToken.kind === ts.SyntaxKind.EqualsToken && ts.isIdentifier(left)) return [left.text];
    if (operatorToken.kind !== ts.SyntaxKind.CommaToken) return undefined;
    const [one, other] = [namesSet(left), namesSet(right)];
    return one === undefined || other === undefined ? undefined : [...one, ...other];
  }
  const [given] = ts.isCallExpression(expression) ? expression.arguments : [];
  return given !== undefined && ts.isBinaryExpression(given) && ts.isIdentifier(given.left) ? [given.left.text] : undefined;
}

function namesOf(statement: ts.Statement): readonly string[] | undefined {
  if ((ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) && statement.name !== undefined) return [statement.name.text];
  if (ts.isExpressionStatement(statement)) return namesSet(statement.expression);
  if (!ts.isVariableStatement(statement)) return undefined;
  const names = statement.declarationList.declarations.map(({ name }) => name);
  return names.every(ts.isIdentifier) ? names.map(({ text }) => text) : undefined;
}

/** Names that a statement may read: not those of properties, nor the name that a class expression has for itself. */
function identifiersIn(statement: ts.Node): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) found.add(node.text);
    else if (ts.isPropertyAccessExpression(node)) visit(node.expression);
    else ts.forEachChild(node, (child) => { if (!ts.isClassExpression(node) || child !== node.name) visit(child); });
  };
  visit(statement);
  return found;
}

/**
 * The source with only what `wanted` needs. A statement stays when a name that it sets is needed; one whose effect cannot
 * be told stops the build. A list of `var a, b, c` stays whole, and needs nothing where it gives no values.
 */
export function reachableFrom(wanted: string, source: string): string {
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.Latest, true, ts.ScriptKind.JS);
  const statements = file.statements.filter((statement) => !ts.isExportDeclaration(statement) && !ts.isEmptyStatement(statement));
  const named = statements.map((statement): Named => {
    const sets = namesOf(statement);
    if (sets === undefined) throw new Error(`a statement whose effect cannot be told: ${statement.getText().slice(0, 80)}`);
    return [sets, statement];
  });
  const needed = new Set([wanted]);
  const kept = new Set<ts.Statement>();
  for (let before = -1; before < kept.size; ) {
    before = kept.size;
    for (const [sets, statement] of named) {
      if (kept.has(statement) || !sets.some((name) => needed.has(name))) continue;
      kept.add(statement);
      if (!ts.isVariableStatement(statement) || sets.length === 1) identifiersIn(statement).forEach((name) => needed.add(name));
    }
  }
  return `${statements.filter((statement) => kept.has(statement)).map((statement) => statement.getText()).join('\n')}\nexport { ${wanted} };\n`;
}
