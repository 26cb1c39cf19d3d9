// Small faults for a file of source: a comparison changed, a sign, a constant, a condition turned round, a limit left out. Each is one edit.
import ts from 'typescript';

export interface Fault {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Line from 1, and what the edit does there. */
  readonly told: string;
}

const { SyntaxKind: Kind } = ts;

const operators: ReadonlyMap<ts.SyntaxKind, readonly string[]> = new Map([
  [Kind.LessThanToken, ['<=', '>']],
  [Kind.LessThanEqualsToken, ['<', '>']],
  [Kind.GreaterThanToken, ['>=', '<']],
  [Kind.GreaterThanEqualsToken, ['>', '<']],
  [Kind.EqualsEqualsEqualsToken, ['!==']],
  [Kind.ExclamationEqualsEqualsToken, ['===']],
  [Kind.PlusToken, ['-']],
  [Kind.MinusToken, ['+']],
  [Kind.AsteriskToken, ['/']],
  [Kind.SlashToken, ['*']],
  [Kind.PercentToken, ['*']],
  [Kind.AmpersandAmpersandToken, ['||']],
  [Kind.BarBarToken, ['&&']],
]);

const swapped: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  sin: 'cos',
  cos: 'sin',
  some: 'every',
  every: 'some',
};

/** Texts that a fault may put in the place of a node. */
function replacements(node: ts.Node): readonly (readonly [ts.Node, string])[] {
  if (ts.isBinaryExpression(node)) {
    const texts = ts.isStringLiteralLike(node.left) || ts.isTemplateExpression(node.left) ? [] : (operators.get(node.operatorToken.kind) ?? []);
    return texts.map((text) => [node.operatorToken, text] as const);
  }
  if (ts.isNumericLiteral(node))
    return [
      [node, String(Number(node.text.replace(/_/g, '')) === 0 ? 1 : Number(node.text.replace(/_/g, '')) * 1.01)],
      [node, `(${node.text} + 1)`],
    ];
  if (ts.isConditionalExpression(node)) return [[node.condition, `!(${node.condition.getText()})`]];
  if (ts.isIfStatement(node)) return [[node.expression, 'false']];
  if (ts.isPropertyAccessExpression(node) && swapped[node.name.text] !== undefined) return [[node.name, swapped[node.name.text] ?? '']];
  if (ts.isPrefixUnaryExpression(node) && node.operator === Kind.MinusToken) return [[node, node.operand.getText()]];
  return [];
}

/** No fault in what is never run: types, words, imports. */
const isIdle = (node: ts.Node): boolean =>
  ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node);

export function faultsIn(source: string): Fault[] {
  const file = ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true);
  const faults: Fault[] = [];
  const visit = (node: ts.Node): void => {
    if (isIdle(node)) return;
    for (const [place, text] of replacements(node)) {
      const line = file.getLineAndCharacterOfPosition(place.getStart()).line + 1;
      const whole = source.split('\n')[line - 1]?.trim() ?? '';
      faults.push({ start: place.getStart(), end: place.getEnd(), text, told: `line ${line}: ${place.getText()} -> ${text}   in   ${whole}` });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return faults;
}
