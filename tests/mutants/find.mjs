// Finds the mutants of a file: rows of definitions first, then code.
import ts from "typescript";
import { codeChanges } from "./code.mjs";
import { formulaChanges } from "./formulas.mjs";
import { mutantOf, nearTo } from "./mutant.mjs";

/** @typedef {import("./mutant.mjs").Mutant} Mutant */
/** @typedef {import("./mutant.mjs").Change} Change */

const limits = ["above", "atLeast", "below", "atMost"];
/** @type {Readonly<Record<string, string>>} */
const otherLimit = { above: "atLeast", atLeast: "above", below: "atMost", atMost: "below" };
/** Words for people, and names that only label: a change there is no other answer. */
const prose = ["says", "title", "symbol", "id", "basis", "cautions", "is", "either", "differs", "quotedBy", "publisher", "edition", "locator", "wanted", "kind"];

/** Figures recalled and not seen in print: nothing is computed from them, and no test may gate on one. */
const recalled = ["usualRates"];

/** @param {string} file - from the top folder @param {string} text @returns {readonly Mutant[]} */
export function mutantsOf(file, text) {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TS);
  /** @type {Omit<Mutant, "id">[]} */
  const found = [];
  /** @param {ts.Node} node @param {string} within */
  const visit = (node, within) => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    // What an answer stands on names a source, and changes no answer.
    if (ts.isExpressionStatement(node) && node.expression.getText(source).startsWith("work.stand(")) return;
    const name = nameOf(node);
    if (name !== undefined && recalled.includes(name)) return;
    const inside = name === undefined ? within : within === "" ? name : `${within}.${name}`;
    const changes = ts.isPropertyAssignment(node) ? rowChanges(node, source) : undefined;
    for (const change of changes ?? codeChanges(node, source)) found.push(mutantOf(file, text, inside, change));
    if (changes === undefined) ts.forEachChild(node, (child) => { visit(child, inside); });
  };
  visit(source, "");
  return found.map((mutant, index) => ({ ...mutant, id: `${file}#${String(index)}` }));
}

/** @param {ts.Node} node @returns {string | undefined} */
function nameOf(node) {
  const named = ts.isVariableDeclaration(node) || ts.isFunctionDeclaration(node) || ts.isPropertyAssignment(node) || ts.isMethodDeclaration(node) || ts.isClassDeclaration(node);
  return named && node.name !== undefined && ts.isIdentifier(node.name) ? node.name.text : undefined;
}

/** The value of a property that a definition may have, or undefined where it is to be looked into as code. @param {ts.PropertyAssignment} node @param {ts.SourceFile} source @returns {readonly Change[] | undefined} */
function rowChanges(node, source) {
  const name = node.name.getText(source);
  const value = node.initializer;
  if (prose.includes(name) && (isText(value) || ts.isArrayLiteralExpression(value) && value.elements.every(isText) || ts.isIdentifier(value))) return [];
  const row = node.parent;
  /** @param {string} key */
  const beside = (key) => row.properties.find((one) => one.name?.getText(source) === key);
  /** @param {Change["kind"]} kind @param {ts.Node} at @param {string} instead @returns {Change} */
  const change = (kind, at, instead) => ({ kind, start: at.getStart(source), end: at.getEnd(), text: instead });
  /** @param {ts.Node} part @returns {Change} */
  const dropped = (part) => ({ kind: "limit", start: part.getFullStart() - 1, end: part.getEnd(), text: "" });
  if (name === "formula" && beside("is") !== undefined) {
    const texts = isText(value) ? [value] : ts.isObjectLiteralExpression(value) ? value.properties.flatMap((one) => (ts.isPropertyAssignment(one) && isText(one.initializer) ? [one.initializer] : [])) : [];
    const known = namesBefore(node, source);
    return texts.flatMap((one) => formulaChanges(one.text, known).map(({ start, end, text }) => ({ kind: "formula", start: one.getStart(source) + 1 + start, end: one.getStart(source) + 1 + end, text })));
  }
  const told = beside("says") !== undefined || beside("is") !== undefined;
  if (limits.includes(name) && told && isLiteral(value)) {
    const other = otherLimit[name];
    const without = row.properties.indexOf(node) === 0 ? [] : [dropped(node)];
    return [change("limit", node.name, other ?? ""), ...without, ...(value.getText(source) === "0" ? [] : valueChanges("limit", value, source))];
  }
  if ((name === "default" || name === "value") && told && isLiteral(value)) return valueChanges(name, value, source);
  if (name === "whole" && told) return [{ ...dropped(node), kind: "whole" }];
  if (name === "unit" && told) {
    const isStep = beside("formula") !== undefined;
    if (!isStep || !ts.isArrayLiteralExpression(value)) return [];
    return [change("unit", value, `[${value.elements.map((one) => one.getText(source)).reverse().join(", ")}]`)];
  }
  return undefined;
}

/** @param {Change["kind"]} kind @param {ts.Expression} value @param {ts.SourceFile} source @returns {readonly Change[]} */
function valueChanges(kind, value, source) {
  const written = isText(value) ? value.text : value.getText(source);
  return nearTo(written).map((near) => ({ kind, start: value.getStart(source), end: value.getEnd(), text: isText(value) ? JSON.stringify(near) : near }));
}

/** The names that a step may use, with their dimensions: what is given, constants, and the steps before it. @param {ts.Node} formula @param {ts.SourceFile} source */
function namesBefore(formula, source) {
  const step = formula.parent.parent;
  const steps = step.parent;
  const definition = steps.parent.parent;
  /** @type {Map<string, string>} */
  const known = new Map();
  if (!ts.isObjectLiteralExpression(definition)) return known;
  for (const part of definition.properties) {
    if (!ts.isPropertyAssignment(part) || !["given", "constants", "steps"].includes(part.name.getText(source)) || !ts.isObjectLiteralExpression(part.initializer)) continue;
    for (const row of part.initializer.properties) {
      if (row === step) break;
      if (!ts.isPropertyAssignment(row) || !ts.isObjectLiteralExpression(row.initializer)) continue;
      const is = row.initializer.properties.find((one) => one.name?.getText(source) === "is");
      if (is !== undefined && ts.isPropertyAssignment(is)) known.set(row.name.getText(source), is.initializer.getText(source));
    }
  }
  return known;
}

/** @param {ts.Node} node @returns {node is ts.StringLiteral | ts.NoSubstitutionTemplateLiteral} */
const isText = (node) => ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node);
/** @param {ts.Node} node */
const isLiteral = (node) => isText(node) || ts.isNumericLiteral(node) || (ts.isPrefixUnaryExpression(node) && ts.isNumericLiteral(node.operand));
