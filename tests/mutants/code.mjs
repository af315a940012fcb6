// Changes of code: conditions, comparisons, arithmetic, calls, numbers, statements.
import ts from "typescript";
import { nearTo } from "./mutant.mjs";

/** @typedef {import("./mutant.mjs").Change} Change */

const kinds = ts.SyntaxKind;
/** @type {ReadonlyMap<ts.SyntaxKind, readonly string[]>} */
const operators = new Map([
  [kinds.PlusToken, ["-"]], [kinds.MinusToken, ["+"]], [kinds.AsteriskToken, ["/"]], [kinds.SlashToken, ["*"]], [kinds.PercentToken, ["*"]],
  [kinds.PlusEqualsToken, ["-="]], [kinds.MinusEqualsToken, ["+="]],
  [kinds.LessThanToken, ["<=", ">="]], [kinds.LessThanEqualsToken, ["<", ">"]], [kinds.GreaterThanToken, [">=", "<="]], [kinds.GreaterThanEqualsToken, [">", "<"]],
  [kinds.EqualsEqualsEqualsToken, ["!=="]], [kinds.ExclamationEqualsEqualsToken, ["==="]],
  [kinds.AmpersandAmpersandToken, ["||"]], [kinds.BarBarToken, ["&&"]],
]);
/** @type {Readonly<Record<string, string>>} */
const methods = { ceil: "floor", floor: "ceil", round: "ceil", min: "max", max: "min", some: "every", every: "some", add: "sub", sub: "add", mul: "div", div: "mul", startsWith: "endsWith", endsWith: "startsWith", lt: "lte", lte: "lt", gt: "gte", gte: "gt" };
/** Methods that give back what they are called on, a little changed. */
const droppable = ["filter", "slice", "sort", "reverse", "trim", "abs", "neg", "toSorted", "toReversed"];
/** Functions of two arguments whose order counts. */
const ordered = ["compare", "subtract"];
const quantityText = /^-?\d[\d./-]*\s?(%|[a-zA-Z][\w/%]*)$/;

/** @param {ts.Node} node @param {ts.SourceFile} source @returns {readonly Change[]} */
export function codeChanges(node, source) {
  /** @param {ts.Node} at @param {string} text @returns {Change} */
  const put = (at, text) => ({ kind: "code", start: at.getStart(source), end: at.getEnd(), text });
  const text = (/** @type {ts.Node} */ one) => one.getText(source);

  if (ts.isBinaryExpression(node)) {
    if (node.operatorToken.kind === kinds.QuestionQuestionToken) return [put(node, text(node.left)), put(node, text(node.right))];
    const isText = [node.left, node.right].some((side) => ts.isStringLiteral(side) || ts.isTemplateExpression(side) || ts.isNoSubstitutionTemplateLiteral(side));
    if (isText && [kinds.PlusToken, kinds.PlusEqualsToken].includes(node.operatorToken.kind)) return [];
    return (operators.get(node.operatorToken.kind) ?? []).map((other) => put(node.operatorToken, other));
  }
  if (ts.isIfStatement(node)) return [put(node.expression, "true"), put(node.expression, "false")];
  // A name that is undefined is read as left out: to put it in all the same is no other answer.
  if (ts.isConditionalExpression(node) && text(node.condition).endsWith("=== undefined") && text(node.whenTrue) === "{}") return [put(node.condition, "true")];
  if (ts.isConditionalExpression(node)) return [put(node.condition, "true"), put(node.condition, "false")];
  if (ts.isWhileStatement(node)) return [put(node.expression, "false")];
  if (ts.isForStatement(node) && node.condition !== undefined) return [put(node.condition, "false")];
  if (ts.isPrefixUnaryExpression(node) && [kinds.ExclamationToken, kinds.MinusToken].includes(node.operator)) return [put(node, text(node.operand))];
  if (ts.isNumericLiteral(node) || ts.isBigIntLiteral(node)) {
    const written = text(node);
    if (!/^\d+(\.\d+)?n?$/.test(written)) return [];
    return nearTo(written).slice(0, 1).map((near) => put(node, near));
  }
  if (ts.isStringLiteral(node)) return quantityText.test(node.text) && isValue(node) ? nearTo(node.text).map((near) => put(node, JSON.stringify(near))) : [];
  if (node.kind === kinds.TrueKeyword && !ts.isLiteralTypeNode(node.parent)) return [put(node, "false")];
  if (node.kind === kinds.FalseKeyword && !ts.isLiteralTypeNode(node.parent)) return [put(node, "true")];
  if (ts.isArrayLiteralExpression(node)) return node.elements.length > 0 && isCode(node) ? [put(node, "[]")] : [];
  if (ts.isExpressionStatement(node)) return [put(node, "{}")];
  if (ts.isCallExpression(node)) return callChanges(node, source, put);
  return [];
}

/** @param {ts.CallExpression} node @param {ts.SourceFile} source @param {(at: ts.Node, text: string) => Change} put @returns {readonly Change[]} */
function callChanges(node, source, put) {
  const called = node.expression;
  const name = ts.isPropertyAccessExpression(called) ? called.name : ts.isIdentifier(called) ? called : undefined;
  if (name === undefined) return [];
  const other = Object.hasOwn(methods, name.text) ? methods[name.text] : undefined;
  // min and max of our own need not both be imported.
  if (other !== undefined && ts.isPropertyAccessExpression(called)) return [put(name, other)];
  if (ts.isPropertyAccessExpression(called) && droppable.includes(name.text) && called.questionDotToken === undefined) return [put(node, called.expression.getText(source))];
  const [first, second] = node.arguments;
  // Alike is alike either way round.
  const sameEitherWay = ts.isBinaryExpression(node.parent) && [kinds.EqualsEqualsEqualsToken, kinds.ExclamationEqualsEqualsToken].includes(node.parent.operatorToken.kind) && node.parent.right.getText(source) === "0";
  const twice = first?.getText(source) === second?.getText(source);
  if (!sameEitherWay && !twice && ordered.includes(name.text) && node.arguments.length === 2 && first !== undefined && second !== undefined) {
    return [{ ...put(first, `${second.getText(source)}, ${first.getText(source)}`), end: second.getEnd() }];
  }
  return [];
}

/** Not a key, a module's name or one of a set of words. @param {ts.Node} node */
const isValue = (node) => !ts.isPropertyAssignment(node.parent) || node.parent.initializer === node;

/** A list made by code: not a table of literals, whose rows are changed one by one. @param {ts.ArrayLiteralExpression} node */
const isCode = (node) => node.elements.some((one) => !ts.isStringLiteral(one) && !ts.isNumericLiteral(one) && !ts.isArrayLiteralExpression(one) && !ts.isObjectLiteralExpression(one));
