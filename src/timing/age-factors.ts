import type { Callable } from "../core/callable.js";
import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { ageFactorByArrhenius } from "./age-factor-by-arrhenius.js";
import { ageFactorByDoubling } from "./age-factor-by-doubling.js";
import { say } from "./refusals.js";
import { unshown } from "./unshown.js";

/** A rule by which warmth makes things go faster, with what it needs. */
export interface AgeRule {
  readonly rule: "doubling" | "Arrhenius";
  readonly activation?: Quantity<"temperatureDifference"> | undefined;
  readonly reference: Quantity<"temperature">;
}

/** How a calculation is run: as a part that is shown, or unshown. */
type Run = <Input, A>(of: Callable<Input, A>, input: Input) => A;

function factorBy({ rule, activation, reference }: AgeRule, temperature: Quantity<"temperature">, work: Work, run: Run): Quantity<"ratio"> {
  if (rule === "Arrhenius") {
    const q = activation ?? work.refuse({ code: "missing", path: ["activation"], given: "", wanted: say("arrheniusNeedsIt") });
    return run(ageFactorByArrhenius, { temperature, reference, activation: q }).ageFactor;
  }
  if (activation !== undefined) work.refuse({ code: "refused", path: ["activation"], given: activation.toString(), wanted: say("doublingTakesNone") });
  return run(ageFactorByDoubling, { temperature, reference }).ageFactor;
}

/** The age factor at a temperature, as a part that is shown. */
export function ageFactorAt(rule: AgeRule, temperature: Quantity<"temperature">, work: Work, at: Path = []): Quantity<"ratio"> {
  return factorBy(rule, temperature, work, (of, input) => work.part(of, input, at).answers);
}

/** Age factor at a temperature that stands somewhere in a record; nought below freezing. */
export type AgeFactors = (temperature: Quantity<"temperature">, at: Path) => Quantity<"ratio">;

/**
 * The age factors over a record. Each temperature is worked out once and the first is shown; below freezing nothing counts,
 * and what is hotter than the rule reaches is refused.
 */
export function ageFactorsBy(rule: AgeRule, work: Work): AgeFactors {
  const known = new Map<string, Quantity<"ratio">>();
  const freezing = quantity("temperature", "32 degF");
  const nought = quantity("ratio", 0);
  return (temperature, at) => {
    if (compare(temperature, freezing) < 0) return nought;
    const key = temperature.to("K").toString();
    const found = known.get(key) ?? (known.size === 0 ? ageFactorAt(rule, temperature, work, at) : factorBy(rule, temperature, work, (of, input) => unshown(of, input, work, at)));
    known.set(key, found);
    return found;
  };
}
