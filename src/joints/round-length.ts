import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Length of joint to fill before striking starts: what the toolers can strike while it is thumbprint hard.
 *
 * @example
 * ```ts
 * const round = roundLength({ toolingRate: "60 ft/h", toolers: 1, window: "45 min", totalLength: "1220 ft" });
 * round.length.toString(); // "45 ft"
 * round.rounds.toString(); // "28"
 * ```
 */
export const roundLength = /* @__PURE__ */ calculation({
  id: "joints.round-length",
  title: "Length of joint to a round",
  given: {
    toolingRate: { is: "speed", unit: ["ft/h", "m/h"], symbol: "R", says: "length of joint one tooler strikes in an hour", above: 0 },
    toolers: { is: "count", symbol: "n", says: "toolers who strike at once", atLeast: 1, whole: true },
    window: { is: "time", unit: "min", symbol: "T", says: "how long the joint stays thumbprint hard, at the temperature of the wall", above: 0 },
    totalLength: { is: "length", unit: ["ft", "m"], symbol: "l_t", says: "length of joint in all", above: 0 },
  },
  steps: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "joint to fill in a round, and no more", formula: "toolingRate * toolers * window", basis: arithmetic },
    rounds: { is: "count", symbol: "k", says: "rounds in all, the last one in part", formula: "ceil(totalLength / length)", basis: arithmetic },
  },
  cautions: ["Thumbprint hard is told by the thumb, not by the clock: a clear print and no paste on the skin."],
});
