// Runs examples: blocks of code whose lines `expression; // literal` say what comes out.
import { createRequire } from "node:module";
import path from "node:path";
import { runInThisContext } from "node:vm";
import { Decimal } from "decimal.js";
import ts from "typescript";
import { isQuantity } from "../../src/core/quantity.js";
import type { Module } from "./modules.js";

export interface Example {
  /** The file, with the line at which the block begins. */
  readonly place: string;
  readonly code: string;
}

/** One line that says what comes out, as found. */
export interface Outcome {
  readonly line: string;
  readonly found: unknown;
  readonly told: unknown;
}

const fence = /^([ \t]*)```(?:ts|js|typescript|javascript|mjs)[ \t]*\n([\s\S]*?)\n[ \t]*```/gm;

const lineOf = (text: string, at: number): number => text.slice(0, at).split("\n").length;

/** The blocks of a Markdown text. */
export function markdownExamples(file: string, text: string): readonly Example[] {
  return [...text.matchAll(fence)].map((match) => ({ place: `${file}:${String(lineOf(text, match.index))}`, code: match[2] ?? "" }));
}

/** The blocks after `@example` in the doc comments of a source text. */
export function commentExamples(file: string, text: string): readonly Example[] {
  const comments = [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)];
  return comments.flatMap(({ 0: comment, index }) => {
    const plain = comment.replace(/^[ \t]*\*(?: |$)/gm, "").replace(/\n[ \t]*\*\/$/, "\n");
    const tags = plain.split(/^@(?=\w)/m).filter((tag) => tag.startsWith("example"));
    return tags.flatMap((tag) => markdownExamples(file, tag)).map(({ code }) => ({ place: `${file}:${String(lineOf(text, index))}`, code }));
  });
}

/** What `console.log(what)` prints; any other expression itself. */
function printedIn(expression: ts.Expression): ts.Expression {
  if (!ts.isCallExpression(expression) || expression.expression.getText() !== "console.log") return expression;
  return expression.arguments[0] ?? expression;
}

/** Each statement that is an expression with a comment at its end becomes a check. */
function withChecks(code: string): string {
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.ES2022, true);
  const written = source.statements.map((statement) => {
    const text = statement.getFullText(source);
    const rest = code.slice(statement.end);
    const [, told] = /^[ \t]*\/\/[ \t]*(.*)/.exec(rest) ?? [];
    if (told === undefined || !ts.isExpressionStatement(statement)) return text;
    const expression = printedIn(statement.expression).getText(source);
    return `\n$check(${JSON.stringify(`${expression.replaceAll(/\s+/g, " ")}; // ${told}`)}, await (${expression}), () => (${told}));`;
  });
  return written.join("");
}

/**
 * Runs an example.
 *
 * @param scope - what it may use without importing it
 * @param packages - what stands behind the names of our own package
 * @returns what came out, line by line
 */
export async function runExample({ code }: Example, scope: Module, packages: Readonly<Record<string, Module>>): Promise<readonly Outcome[]> {
  // A module of its own: what is imported or declared in the example hides what is in scope.
  const module = ts.transpileModule(`${withChecks(code)}\nexport {};`, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022, esModuleInterop: true, verbatimModuleSyntax: false },
  });
  const outcomes: Outcome[] = [];
  const check = (line: string, found: unknown, told: () => unknown): void => void outcomes.push({ line, found, told: told() });
  const own = createRequire(path.resolve(import.meta.dirname, "examples.ts"));
  const load = (name: string): unknown => {
    if (!/^settingbed(\/|$)/.test(name)) return own(name);
    const found = packages[name];
    if (found === undefined) throw new Error(`${name} is no entry of the package`);
    return found;
  };
  const names = Object.keys(scope);
  const body = `(async ({ ${names.join(", ")} }, $check, require, exports, console) => { {\n${module.outputText}\n} })`;
  const run = runInThisContext(body) as (...all: unknown[]) => Promise<void>;
  await run(scope, check, load, {}, { log: () => undefined });
  return outcomes;
}

/** What was found, as it is compared with what is told: a quantity or a decimal beside a text by what it writes of itself. */
export function plain(found: unknown, told: unknown): unknown {
  if (typeof told === "string" && (isQuantity(found) || Decimal.isDecimal(found))) return found.toString();
  return found === undefined ? undefined : (JSON.parse(JSON.stringify(found)) as unknown);
}
