// Random formula trees, and how mathjs writes a formula.
import fc from "fast-check";
import type { Formula, FunctionName } from "../../src/core/formula.js";

const digits = fc.oneof(fc.nat({ max: 999 }).map(String), fc.tuple(fc.nat({ max: 99 }), fc.integer({ min: 1, max: 999 })).map(([whole, part]) => `${String(whole)}.${String(part)}`));

const positive = digits.filter((text) => Number(text) > 0);

/** The text of any exponent that the grammar takes: `"2"`, `"-0.5"`, `"2 / 9.5"`. */
export const anyExponent: fc.Arbitrary<string> = fc
  .tuple(fc.boolean(), positive, fc.option(positive, { nil: undefined }))
  .map(([negative, above, below]) => `${negative ? "-" : ""}${above}${below === undefined ? "" : ` / ${below}`}`);

/** Whole exponents from -3 to 3, but 0. */
export const wholeExponent: fc.Arbitrary<string> = fc.constantFrom("-3", "-2", "-1", "1", "2", "3");

const several: readonly FunctionName[] = ["min", "max"];

/** Trees over some names, with some functions and exponents. */
export function trees(names: readonly string[], functions: readonly FunctionName[], exponents: fc.Arbitrary<string>, withPi = true): fc.Arbitrary<Formula> {
  const leaves: fc.Arbitrary<Formula>[] = [digits.map((text) => ({ kind: "number", digits: text })), fc.constantFrom(...names).map((name) => ({ kind: "name", name }))];
  if (withPi) leaves.push(fc.constant({ kind: "pi" }));
  const { tree } = fc.letrec<{ tree: Formula }>((tie) => {
    const of = tie("tree");
    const calls = functions.map((name): fc.Arbitrary<Formula> =>
      fc.array(of, several.includes(name) ? { minLength: 2, maxLength: 4 } : { minLength: 1, maxLength: 1 }).map((parts) => ({ kind: "call", function: name, of: parts })),
    );
    return {
      tree: fc.oneof(
        { depthSize: "small", withCrossShrink: true },
        fc.oneof(...leaves),
        of.map((inner): Formula => ({ kind: "negate", of: inner })),
        fc.record({ operator: fc.constantFrom("+" as const, "-" as const), left: of, right: of }).map((parts): Formula => ({ kind: "sum", ...parts })),
        fc.record({ operator: fc.constantFrom("*" as const, "/" as const), left: of, right: of }).map((parts): Formula => ({ kind: "product", ...parts })),
        fc.record({ base: of, exponent: exponents }).map((parts): Formula => ({ kind: "power", ...parts })),
        ...(calls.length === 0 ? [] : [fc.oneof(...calls)]),
      ),
    };
  });
  return tree;
}

/** A formula's text as mathjs reads it: its `log` is the natural one. */
export function mathjsText(text: string): string {
  return text.replace(/\bln\(/g, "log(");
}
