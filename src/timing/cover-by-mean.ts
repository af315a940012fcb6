import { basisText } from "../core/basis.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { coverRules } from "../data/cover.js";

/** A rule on file for the cover of completed masonry. */
export type CoverRule = keyof typeof coverRules;

/** What a rule asks by the mean of the day. */
export interface Cover {
  /** `none asked` at 40 degF or more; `not on file` where the rule as it was read says nothing. */
  readonly band: string;
  readonly method: string;
  /** For how long; absent where nothing is asked or nothing is on file. */
  readonly lasts?: Quantity<"time">;
  readonly clause: string;
}

/** What a rule asks by a mean of the day; bands go from their lower end up to, not with, their upper end. */
export function coverByMean(rule: CoverRule, mean: Quantity<"temperature">): Cover {
  const { basis, bands } = coverRules[rule];
  const clause = basisText(basis);
  const found = bands.find(({ from, below }) => compare(mean, quantity("temperature", from)) >= 0 && compare(mean, quantity("temperature", below)) < 0);
  if (found !== undefined) return { band: `${found.from} to ${found.below}`, method: found.method, lasts: quantity("time", found.lasts), clause };
  if (compare(mean, quantity("temperature", "40 degF")) >= 0) return { band: "40 degF or more", method: "none asked for the cold", clause };
  return { band: "not on file", method: "what this rule asks at such a mean is not on file here; read the rule itself", clause };
}
