// What is printed is read back: every formula of every calculation gives its own tree again, in LaTeX through KaTeX and in
// MathML through an XML parser; random trees too. The reader goes by what is seen, so brackets left out are found.
import fc from "fast-check";
import katex from "katex";
import { describe, expect, it } from "vitest";
import { choicesOf, formulasFor } from "../../src/core/prepared.js";
import { type Formula, formulaText, functionNames } from "../../src/core/formula.js";
import { boxLatex } from "../../src/render/formula-latex.js";
import { boxMathml } from "../../src/render/formula-mathml.js";
import { type Box, formulaBox, type Leaf } from "../../src/render/boxes.js";
import { anyExponent, trees } from "../support/formulas.js";
import { allCalculations } from "../support/modules.js";
import { type Names, type ReadFormula, readMathml, readXml } from "../support/read-mathml.js";

/** What KaTeX makes of a formula; it throws for what it cannot typeset. */
function byKatex(box: Box): string {
  return katex.renderToString(boxLatex(box), { output: "mathml", throwOnError: true, strict: "error", trust: false, displayMode: true }).replace(/^<span[^>]*>|<\/span>$/g, "");
}

const targets: readonly (readonly [string, (box: Box) => string])[] = [
  ["MathML", (box) => `<math>${boxMathml(box)}</math>`],
  ["LaTeX", byKatex],
];

function readBack(write: (box: Box) => string, formula: Formula, leaf: Leaf, names: Names): ReadFormula {
  return readMathml(readXml(write(formulaBox(formula, leaf))), names);
}

/** Names as they are printed in words. */
const words = (names: readonly string[]): Names => new Map(names.map((name) => [name.replaceAll(/[A-Z]|\d+/g, (part) => ` ${part.toLowerCase()}`), name]));

const calculations = await allCalculations();

describe.each(targets)("%s", (_, write) => {
  it("gives every formula of every calculation again, in names and in symbols", () => {
    let count = 0;
    for (const { definition } of calculations) {
      const rows = Object.entries({ ...definition.given, ...definition.constants, ...definition.steps });
      const symbols = new Map(rows.map(([name, { symbol }]) => [symbol, name] as const));
      const symbolOf = new Map(rows.map(([name, { symbol }]) => [name, symbol] as const));
      for (const chosen of choicesOf(definition)) {
        for (const { formula } of formulasFor(definition, chosen)) {
          expect(readBack(write, formula, (name) => name, words(rows.map(([name]) => name))).formula).toEqual(formula);
          expect(readBack(write, formula, (name) => ({ symbol: symbolOf.get(name) ?? name }), symbols).formula).toEqual(formula);
          count += 1;
        }
      }
    }
    expect(count).toBeGreaterThan(300);
  });

  it("gives random trees again", () => {
    const names = ["area", "unitLength", "c_1"];
    const leaf: Leaf = (name) => (name === "c_1" ? { symbol: "c_1" } : name);
    const known = new Map([["area", "area"], ["unit length", "unitLength"], ["c_1", "c_1"]]);
    fc.assert(fc.property(trees(names, functionNames, anyExponent), (formula) => {
      expect(readBack(write, formula, leaf, known).formula).toEqual(formula);
    }), { numRuns: 400, seed: 20 });
  });

  it("gives random trees again with figures put in, negative ones too", () => {
    const figures = new Map([["a", { number: "-5", unit: "degF", exact: true }], ["b", { number: "0.0625", unit: "ft2", exact: true }], ["c", { number: "12.5", unit: "", exact: true }], ["d", { number: "3", unit: "lb/ft3", exact: true }]]);
    const put = (name: string): Formula => {
      const { number } = figures.get(name) ?? { number: "" };
      return number.startsWith("-") ? { kind: "negate", of: { kind: "number", digits: number.slice(1) } } : { kind: "number", digits: number };
    };
    fc.assert(fc.property(trees([...figures.keys()], functionNames, anyExponent), (formula) => {
      const read = readBack(write, formula, (name) => figures.get(name) ?? name, new Map());
      expect(read.formula).toEqual(withNumbers(formula, put));
      expect(read.units).toEqual(unitsIn(formula, (name) => figures.get(name)?.unit ?? ""));
    }), { numRuns: 400, seed: 21 });
  });
});

it("shows that a bracket left out would be found", () => {
  const bare = "<math><msup><mrow><mi>a</mi><mo>+</mo><mi>b</mi></mrow><mn>2</mn></msup></math>";
  expect(() => readMathml(readXml(bare), new Map([["a", "a"], ["b", "b"]]))).toThrow("without brackets");
  const hidden = readMathml(readXml("<math><mi>a</mi><mo>×</mo><mrow><mi>a</mi><mo>+</mo><mi>b</mi></mrow></math>"), new Map([["a", "a"], ["b", "b"]]));
  expect(formulaText(hidden.formula)).toBe("a * a + b");
});

function withNumbers(formula: Formula, put: (name: string) => Formula): Formula {
  switch (formula.kind) {
    case "name":
      return put(formula.name);
    case "negate":
      return { ...formula, of: withNumbers(formula.of, put) };
    case "power":
      return { ...formula, base: withNumbers(formula.base, put) };
    case "call":
      return { ...formula, of: formula.of.map((part) => withNumbers(part, put)) };
    case "sum":
    case "product":
      return { ...formula, left: withNumbers(formula.left, put), right: withNumbers(formula.right, put) };
    default:
      return formula;
  }
}

/** The units of the numbers of a formula, in the order in which they stand. */
function unitsIn(formula: Formula, unitOf: (name: string) => string): readonly string[] {
  switch (formula.kind) {
    case "name":
      return [unitOf(formula.name)];
    case "number":
      return [""];
    case "pi":
      return [];
    case "negate":
      return unitsIn(formula.of, unitOf);
    case "power":
      return unitsIn(formula.base, unitOf);
    case "call":
      return formula.of.flatMap((part) => unitsIn(part, unitOf));
    default:
      return [...unitsIn(formula.left, unitOf), ...unitsIn(formula.right, unitOf)];
  }
}
