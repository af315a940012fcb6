import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { bloomPractice } from "../data/timing.js";

/** What to do about a white bloom. */
export interface Efflorescence {
  readonly action: "find the water" | "wait" | "brush dry, then a trial patch";
  /** What it is taken to be: salts that water dissolves, or lime that it does not. */
  readonly kind: "salts" | "lime" | "not told";
  /** How much longer the wall is to stay dry, where it is to wait. */
  readonly left?: Quantity<"time">;
  readonly why: string;
}

const kinds = { "in water": "salts", "not in water": "lime", "not tried": "not told" } as const;

const leaks = {
  "below one place": "a bloom below a sill, cap, flashing or crack shows where water gets in: find and close that first; washing brings more salt out",
  "comes back": "a bloom that comes back after it was brushed off is still fed by water: find where from; washing brings more salt out",
} as const;

/**
 * What to do about a white bloom on new work: look for the water behind it, wait until the wall has been dry long enough, or
 * begin to clean.
 *
 * @example
 * ```ts
 * const found = efflorescence({ pattern: "even over new work", dissolves: "in water", dryFor: "10 d", wait: "30 d" });
 * found.action; // "wait"
 * found.left?.toString(); // "20 d"
 * efflorescence({ pattern: "below one place", dissolves: "in water", dryFor: "10 d", wait: "30 d" }).action; // "find the water"
 * ```
 */
export const efflorescence = /* @__PURE__ */ composed({
  id: "timing.efflorescence",
  title: "Bloom on new work: wait, clean or look for the water",
  given: {
    pattern: { oneOf: ["even over new work", "below one place", "comes back"], says: "how the bloom lies, or that it has come back after it was brushed off" },
    dissolves: { oneOf: ["in water", "not in water", "not tried"], says: "whether a wet finger takes it away for good" },
    dryFor: { is: "time", unit: "d", symbol: "t", says: "how long the wall has been dry", atLeast: 0 },
    wait: { is: "time", unit: "d", symbol: "t_w", says: "how long it is to be dry before it is cleaned; commonly a month", above: 0 },
  },
  cautions: ["Told by looking, so no proof of what it is or where the water comes from. Cleaners go by their label and a trial patch; acid etches stone that holds lime."],
  run: ({ pattern, dissolves, dryFor, wait }, work): Efflorescence => {
    work.stand(bloomPractice);
    const kind = kinds[dissolves];
    if (pattern !== "even over new work") return { action: "find the water", kind, why: leaks[pattern] };
    if (compare(dryFor, wait) < 0) return { action: "wait", kind, left: subtract(wait, dryFor), why: "the building water of new work is still coming out, and a wash would bring more salt with it" };
    const then = kind === "lime" ? "lime stays where water does not take it: a cleaner for the stone, on a trial patch first" : "what brushing and clean water leave goes to a trial patch";
    return { action: "brush dry, then a trial patch", kind, why: `the wall has been dry long enough; ${then}` };
  },
});
