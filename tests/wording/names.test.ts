// The names of inputs and steps: each that a problem can show has its Spanish, with the same figures, and none is kept that is no more.
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import type { Definition, Entries } from "../../src/core/index.js";
import { spaced } from "../../src/core/spaced.js";
import { jsonSchemaOf } from "../../src/schema/index.js";
import { spanishNames } from "../../src/wording/spanish/names.js";

const src = path.resolve(import.meta.dirname, "../../src");
const names = new Map(Object.entries(spanishNames));

/** What calculations and flat composed functions call their inputs and steps. */
function ofCatalogue(): readonly string[] {
  return catalogue.flatMap((one) => {
    const { definition, given: flat } = one as unknown as { readonly definition?: Definition; readonly given?: Entries };
    const given: Entries = flat ?? definition?.given ?? {};
    const steps = Object.entries(definition?.steps ?? {}).map(([name, step]) => step.says ?? spaced(name));
    return [...Object.values(given).map(({ says }) => says), ...steps];
  });
}

/** What inputs are called anywhere below, nested ones too, as their schemas tell: however the source makes them. */
function ofSchemas(): readonly string[] {
  const found: string[] = [];
  const visit = (part: unknown): void => {
    if (typeof part !== "object" || part === null) return;
    if ("title" in part && typeof part.title === "string") found.push(part.title);
    Object.values(part).forEach(visit);
  };
  // The title at the top is that of the function.
  for (const one of catalogue) Object.values(jsonSchemaOf(one)).forEach(visit);
  return found;
}

/** The names that stand in nested input, beside clock times and in the columns of sheets: as literals beside what makes them so. */
function ofSource(): readonly string[] {
  const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts") && !/^(pictures|wording|data|render)\/|^sheet\/pages\//.test(file.replaceAll(path.sep, "/")));
  const found: string[] = [];
  for (const file of files) {
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAssignment(node) && node.name.getText() === "says" && ts.isStringLiteralLike(node.initializer) && isName(node.parent)) found.push(node.initializer.text);
      if (ts.isCallExpression(node) && node.expression.getText() === "moneyField") found.push(...node.arguments.filter(ts.isStringLiteralLike).map(({ text }) => text));
      ts.forEachChild(node, visit);
    };
    visit(ts.createSourceFile(file, readFileSync(path.join(src, file), "utf8"), ts.ScriptTarget.Latest, true));
  }
  return found;
}

/** A row of an input, a place in it, or the second thing that `quantityField` is given. */
function isName(of: ts.ObjectLiteralExpression): boolean {
  const beside = of.properties.map((property) => property.name?.getText());
  const field = ts.isCallExpression(of.parent) && of.parent.expression.getText() === "quantityField";
  const row = beside.some((one) => one === "path" || one === "symbol" || one === "oneOf") || of.properties.some((one) => ts.isSpreadAssignment(one) && /^(?:refusal|common)\(/.test(one.expression.getText()));
  return field || (row && !beside.includes("value")) || (beside.includes("is") && beside.includes("names"));
}

const edges = ["sill", "jambs", "head"].map((edge) => `how far the barrier goes into the opening at the ${edge}`);
const shown = new Set([...ofCatalogue(), ...ofSchemas(), ...ofSource(), ...edges]);
const figures = (text: string): readonly string[] => (text.match(/\d(?:[\d.,/]*\d)?/g) ?? []).sort();

describe("names of inputs and steps", () => {
  it("are many, and all of them have their Spanish", () => {
    expect(shown.size).toBeGreaterThan(1000);
    expect([...shown].filter((one) => !names.has(one))).toEqual([]);
  });

  it("have none in Spanish that nothing is called by", () => {
    expect([...names.keys()].filter((one) => !shown.has(one))).toEqual([]);
  });

  it("stand in one list only", () => {
    const lists = readdirSync(path.join(src, "wording/spanish/names")).map((file) => readFileSync(path.join(src, "wording/spanish/names", file), "utf8"));
    const keys = lists.flatMap((text) => [...text.matchAll(/^ {2}(?:"((?:[^"\\]|\\.)*)"|(\w+)): /gm)].map(([, quoted, bare]) => quoted ?? bare));
    expect(keys.length).toBe(names.size);
  });

  it("keep their figures, and no English", () => {
    const odd = [...names].filter(([english, spanish]) => figures(english).join(" ") !== figures(spanish).join(" ") || /\b(the|of|with|from|and|its|which|by|for)\b/i.test(spanish) || spanish === english);
    expect(odd.map(([english, spanish]) => `${english} | ${spanish}`)).toEqual(["nominal | nominal"]);
  });
});
