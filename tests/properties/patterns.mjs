// Every regular expression that src writes, found in its syntax tree.
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

const src = path.resolve(import.meta.dirname, "../../src");

/** @typedef {{ file: string, line: number, text: string, source: string, flags: string }} Pattern */

/** @returns {{ patterns: Pattern[], made: string[] }} those written out, and the places that make one as they run */
export function patternsOfSource() {
  /** @type {Pattern[]} */
  const patterns = [];
  /** @type {string[]} */
  const made = [];
  for (const file of readdirSync(src, { recursive: true, encoding: "utf8" }).filter((one) => one.endsWith(".ts")).sort()) {
    const source = ts.createSourceFile(file, readFileSync(path.join(src, file), "utf8"), ts.ScriptTarget.Latest, true);
    /** @param {ts.Node} node */
    const visit = (node) => {
      if (ts.isRegularExpressionLiteral(node)) {
        const [, pattern = "", flags = ""] = /^\/(.*)\/([a-z]*)$/s.exec(node.text) ?? [];
        patterns.push({ file: file.replaceAll(path.sep, "/"), line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1, text: node.text, source: pattern, flags });
      }
      if ((ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText() === "RegExp") made.push(`${file.replaceAll(path.sep, "/")}: ${node.getText()}`);
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return { patterns, made };
}
