// Whatever is given wrong to any function that takes flat input: all that a Spanish reader is told of it is Spanish.
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import type { Attempt, Entries, Problem } from "../../src/core/index.js";
import { problemText } from "../../src/core/index.js";
import { spanish } from "../../src/wording/index.js";
import { inputArbitrary } from "../properties/arbitrary-inputs.js";
import { englishWords, figures, prose } from "./spanish-text.js";

interface Flat {
  readonly id: string;
  readonly try: (input: unknown) => Attempt<unknown>;
}

const flat = catalogue.flatMap((run): readonly (readonly [string, Flat, Entries])[] => {
  const given = "definition" in run ? (run.definition as { readonly given: Entries }).given : "given" in run ? (run.given as Entries) : undefined;
  return given === undefined ? [] : [[run.id, run, given]];
});

/** Nothing, what is no input, every key with what cannot be, and inputs from all over the range that do not go together. */
function wrongInputs(entries: Entries): readonly unknown[] {
  const drawn = fc.sample(inputArbitrary(entries), { numRuns: 12, seed: 5 });
  const spoiled = Object.keys(entries).flatMap((name) => ["", "5", "many ft", "-3 ft", "1,250 ft2", "5 gal", "3 parsec", {}, [1]].map((value) => ({ ...drawn[0], [name]: value })));
  return [{}, null, 3, { colour: "red" }, ...spoiled, ...drawn, ...drawn.flatMap((one) => Object.keys(one).map((name) => ({ ...one, [name]: undefined })))];
}

const problemsOf = (tried: Attempt<unknown>): readonly Problem[] => (tried.ok ? [] : tried.problems);

/** Choices and keys stand as they are written, in every language: they are no prose. */
function readerMeets(one: Problem, choices: readonly string[]): string {
  const wants = one.wants.kind;
  const asWritten = wants === "choice" || wants === "key" || wants === "near" || wants === "exactlyOne" || wants === "object" ? { ...one, wants: { ...one.wants, of: ["x"], key: "x" } as never } : one;
  const text = prose(problemText({ ...asWritten, path: [], given: /^[\w.-]+$|^"|^[\d.e+-]/.test(one.given) ? "x" : one.given }, spanish));
  return choices.reduce((rest, choice) => rest.replaceAll(choice, "x"), text);
}

describe.each(flat)("%s", (_, run, entries) => {
  it("tells its problems in Spanish, with every figure that is in the English", () => {
    const problems = wrongInputs(entries).flatMap((input) => problemsOf(run.try(input)));
    const choices = Object.values(entries).flatMap((row) => ("oneOf" in row ? row.oneOf.map(String) : [])).filter((choice) => choice.includes(" "));
    const texts = new Map(problems.map((one) => [one.message, one]));
    expect(texts.size).toBeGreaterThan(5);
    for (const [message, one] of texts) {
      expect(readerMeets(one, choices)).not.toMatch(englishWords);
      expect(figures(problemText(one, spanish))).toEqual(figures(message));
      if (one.wants.kind === "words") expect([message, one.wants.name]).toEqual([message, expect.stringMatching(/^\w+\.\w+$/)]);
    }
  });
});

it("no refusal is put into words where it arises", () => {
  const src = path.resolve(import.meta.dirname, "../../src");
  const files = readdirSync(src, { recursive: true, encoding: "utf8" }).map((file) => file.replaceAll(path.sep, "/")).filter((file) => file.endsWith(".ts") && !file.startsWith("wording/"));
  const worded = files.flatMap((file) => {
    const code = readFileSync(path.join(src, file), "utf8");
    if (!code.includes("wanted:")) return [];
    const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
    const found: string[] = [];
    const texts = (node: ts.Node): readonly string[] => {
      if (ts.isStringLiteralLike(node)) return node.text === "" ? [] : [node.text];
      if (ts.isTemplateExpression(node)) return [node.getText()];
      if (ts.isConditionalExpression(node)) return [...texts(node.whenTrue), ...texts(node.whenFalse)];
      return [];
    };
    const visit = (node: ts.Node): void => {
      const beside = ts.isObjectLiteralExpression(node) ? node.properties.map((one) => one.name?.getText()) : [];
      if (ts.isObjectLiteralExpression(node) && beside.includes("wanted") && (beside.includes("code") || beside.includes("path"))) {
        for (const one of node.properties) if (ts.isPropertyAssignment(one) && one.name.getText() === "wanted") found.push(...texts(one.initializer));
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
    return found.map((text) => `${file}: ${text}`);
  });
  // What the code did not foresee is told as it was thrown.
  expect(worded).toEqual(["core/calculation.ts: `it could not be worked out (${reason})`"]);
});
