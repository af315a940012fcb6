import { exactArithmetic as arithmetic } from "../core/amount.js";
import type { Solution } from "../core/solution.js";
import type { Slip } from "./mistake.js";
import { calls } from "./mistakes-of-rounding.js";

/** The greater taken where the smaller governs, or the other way round; the logarithm of the other base. */
export function changesOfFunctions({ steps }: Solution): readonly Slip[] {
  const has = (...functions: readonly string[]): boolean => steps.some(({ formula }) => calls(formula, functions));
  const governs: Slip = { kind: "wrongOneGoverns", says: "the greater taken for the smaller, or the smaller for the greater", change: { arithmetic: { ...arithmetic, min: arithmetic.max, max: arithmetic.min } } };
  const logarithm: Slip = { kind: "logarithmOfOtherBase", says: "ln taken for log10, or log10 for ln", change: { arithmetic: { ...arithmetic, ln: arithmetic.log10, log10: arithmetic.ln } } };
  return [...(has("min", "max") ? [governs] : []), ...(has("ln", "log10") ? [logarithm] : [])];
}
