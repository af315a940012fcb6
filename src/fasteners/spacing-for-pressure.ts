import { spaced } from "../core/spaced.js";
import { composed } from "../core/composed.js";
import { refusal } from "../core/refuse-all.js";
import { usualScrewSpacing } from "../data/fasteners.js";
import { say } from "./refusals.js";
import { spacingFromPressure } from "./spacing-from-pressure.js";

/**
 * Greatest spacing of screws along a stud under a wind pressure at allowable level, and what governs it. A pressure at
 * strength level is refused.
 *
 * @example
 * ```ts
 * const line = spacingForPressure({ pressure: "30 psf", level: "allowable", studSpacing: "16 in", allowablePullOut: "72 lbf", allowableBoardPullThrough: "26 lbf", allowableScrewTension: "190 lbf" });
 * line.spacing.toString(); // "7.5 in"
 * line.governs; // "board pull through"
 * ```
 */
export const spacingForPressure = /* @__PURE__ */ composed({
  id: "fasteners.spacing-for-pressure",
  title: "Screw spacing for a wind pressure",
  given: {
    pressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p", says: "wind pressure on the wall, without sign", above: 0 },
    level: { oneOf: ["allowable", "strength"], says: "level of that pressure; the loads of the screws are allowable ones" },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    allowablePullOut: { is: "force", unit: ["lbf", "N"], symbol: "P_o", says: "allowable pull-out of one screw from the stud", above: 0 },
    allowableBoardPullThrough: { is: "force", unit: ["lbf", "N"], symbol: "P_b", says: "allowable pull-through of the board at one screw: a test value divided by its safety factor", above: 0 },
    allowableScrewTension: { is: "force", unit: ["lbf", "N"], symbol: "P_t", says: "allowable tension of the screw itself", above: 0 },
    greatestSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_max", says: "greatest spacing by practice, the code or the board's instructions", above: 0, default: "8 in", basis: usualScrewSpacing },
  },
  run: ({ level, ...line }, work) => {
    if (level === "strength") work.problem(refusal(["level"], say("pressureAtStrength"), say("screwsAtAllowable")));
    const { answers, steps } = work.part(spacingFromPressure, line);
    const { exactSpacing, spacing, load, ...by } = answers;
    const governs = spaced(steps.find(({ name }) => name === "exactSpacing")?.governedBy ?? "");
    return { spacing, exactSpacing, governs, load, by };
  },
});
