import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum, times } from "../core/quantity-arithmetic.js";
import { usualLeastCut, usualLedger } from "../data/layout.js";
import { loadOfWeight } from "../limits/load-of-weight.js";
import { ageFactorAt } from "../timing/age-factors.js";
import { timeByAgeFactor } from "../timing/time-by-age-factor.js";
import { halfUnit } from "./half-unit.js";
import { ledgerHeight } from "./ledger-height.js";
import { ledgerScrews } from "./ledger-screws.js";
import { say } from "./refusals.js";
import { underLedger, type UnderLedger } from "./under-ledger.js";

/** The ledger: where it is, what it carries, and when it may go. */
export interface LedgerLine extends Partial<UnderLedger> {
  /** Top of the ledger over the highest ground along the wall. */
  readonly height: Quantity<"length">;
  /** Whole courses from the ledger to the course line. */
  readonly courses: Quantity<"count">;
  /** From the ground to the foot of the stone at the lowest ground. */
  readonly clearAtLowest: Quantity<"length">;
  readonly lineLoad: Quantity<"lineLoad">;
  /** Spacing at which one screw would do, wherever it bit. */
  readonly spacingByLoad: Quantity<"length">;
  readonly screwsPerStud: Quantity<"count">;
  readonly loadPerScrew: Quantity<"force">;
  readonly screws: Quantity<"count">;
  /** Holes through the barrier, to be mended before the stone below is set. */
  readonly holes: Quantity<"count">;
  /** What a length of the ledger carries with these screws; the height of a lift is worked out from it. */
  readonly ledgerCapacity: Quantity<"lineLoad">;
  /** Wait after the last of the courses on it, where its time was given. */
  readonly mayGoAfter?: Quantity<"time">;
}

/**
 * The line of the ledger that carries the lowest whole course: its height, from a course line that the courses must meet;
 * what is cut and set under it; its screws for the courses that have not set; the holes it leaves; and when it may go.
 * Heights are over the highest ground along the wall. What one screw carries is asked for and not computed.
 *
 * @example
 * ```ts
 * const ledger = ledgerLine({
 *   courseLine: "40 in", unitHeight: "7-5/8 in", bedJoint: "3/8 in", clearance: "4 in", groundFall: "6 in", foot: "along the ground",
 *   ledgerLength: "24 ft", studSpacing: "16 in", wetWeight: "20 lb/ft2", uncuredHeight: "4 ft", allowableLoadPerScrew: "60 lbf",
 * });
 * ledger.height.toString(); // "8 in"
 * ledger.atHighest.rest.toString(); // "4 in"
 * ledger.atLowest.courses.toString(); // "1"
 * ledger.holes.toString(); // "38"
 * ```
 */
export const ledgerLine = /* @__PURE__ */ composed({
  id: "layout.ledger-line",
  title: "Line and screws of the ledger",
  given: {
    courseLine: { is: "length", unit: ["in", "mm"], symbol: "H_c", says: "course line that the courses must meet, over the highest ground along the wall", above: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0 },
    clearance: { is: "length", unit: ["in", "mm"], symbol: "g", says: "clearance of the stone over the ground, by the code or the specification", atLeast: 0 },
    groundFall: { is: "length", unit: ["in", "mm"], symbol: "f", says: "fall of the ground along the wall, from its highest point to its lowest", atLeast: 0 },
    foot: { oneOf: ["level", "along the ground"], says: "whether the stone ends level at the ledger, or is set below it down to the clearance" },
    leastCut: { is: "length", unit: ["in", "mm"], symbol: "c", says: "least height of a cut unit", above: 0, optional: true },
    ledgerLength: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length of the ledger", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    wetWeight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "w", says: "installed wet weight of the veneer: units, bed and joints", above: 0 },
    uncuredHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of courses on the ledger that have not set", above: 0 },
    allowableLoadPerScrew: { is: "force", unit: ["lbf", "N"], symbol: "P", says: "load that one screw of the ledger carries, by whoever answers for it", above: 0 },
    timeAtReference: { is: "time", unit: "h", symbol: "t_r", says: "wait before the ledger goes at the reference temperature, by the data sheet or the specification", above: 0, optional: true },
    reference: { is: "temperature", unit: ["degF", "degC"], symbol: "T_r", says: "temperature that wait is known for", atLeast: "40 degF", atMost: "120 degF", optional: true },
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the wall", atLeast: "40 degF", atMost: "120 degF", optional: true },
    rule: { oneOf: ["doubling", "Arrhenius"], says: "rule by which warmth shortens the wait", optional: true },
    activation: { is: "temperatureDifference", unit: "K", symbol: "Q", says: "activation energy over the gas constant, in kelvins; for Arrhenius alone", atLeast: "1000 K", atMost: "10000 K", optional: true },
  },
  cautions: ["Mend every hole through the barrier before the stone below the ledger is set.", "Test before the clock: the ledger goes when no unit of the lowest courses moves under the hand. Nobody stands below while it is taken off."],
  run: (given, work): LedgerLine => {
    const { courseLine, unitHeight, bedJoint, clearance, groundFall, foot, ledgerLength, studSpacing, wetWeight, uncuredHeight, allowableLoadPerScrew } = given;
    if (foot === "level" && given.leastCut !== undefined) work.problem({ code: "refused", path: ["leastCut"], given: given.leastCut.toString(), wanted: say("levelFootCutsNothing") });
    work.assume(usualLedger.says);
    work.stand(usualLedger);
    const wait = waitBy(given, work);
    const leastCut = foot === "level" ? undefined : (given.leastCut ?? leastCutOf(unitHeight, bedJoint, work));
    const leastBelow = leastCut === undefined ? times(bedJoint, 0) : sum([leastCut, bedJoint]);
    const { height, courses, below } = work.part(ledgerHeight, { courseLine, unitHeight, bedJoint, clearance, leastBelow }).answers;
    const { load: wetLoad } = work.part(loadOfWeight, { weight: wetWeight }).answers;
    const screwed = work.part(ledgerScrews, { wetLoad, uncuredHeight, ledgerLength, studSpacing, allowableLoadPerScrew });
    const { lineLoad, spacingByLoad, screwsPerStud, loadPerScrew, screws, ledgerCapacity } = screwed.answers;
    if (compare(uncuredHeight, unitHeight) < 0) work.caution("The height that has not set is less than one course.");
    return {
      height,
      courses,
      ...(leastCut === undefined ? { clearAtLowest: sum([height, groundFall]) } : { ...underLedger({ below, groundFall, unitHeight, bedJoint, leastBelow }, work), clearAtLowest: clearance }),
      lineLoad,
      spacingByLoad,
      screwsPerStud,
      loadPerScrew,
      screws,
      holes: screws,
      ledgerCapacity,
      ...(wait === undefined ? {} : { mayGoAfter: wait }),
    };
  },
});

interface Waiting {
  readonly timeAtReference?: Quantity<"time">;
  readonly reference?: Quantity<"temperature">;
  readonly temperature?: Quantity<"temperature">;
  readonly rule?: "doubling" | "Arrhenius";
  readonly activation?: Quantity<"temperatureDifference">;
}

/** The wait before the ledger goes; nothing where none of what it needs was given. */
function waitBy({ timeAtReference, reference, temperature, rule, activation }: Waiting, work: Work): Quantity<"time"> | undefined {
  const needed = { timeAtReference, reference, temperature, rule };
  const missing = Object.entries(needed).filter(([, value]) => value === undefined).map(([name]) => name);
  if (timeAtReference !== undefined && reference !== undefined && temperature !== undefined && rule !== undefined) {
    const ageFactor = ageFactorAt({ rule, reference, activation }, temperature, work);
    return work.part(timeByAgeFactor, { timeAtReference, ageFactor }).answers.time;
  }
  if (missing.length === 4 && activation === undefined) {
    work.caution("When the ledger may go is not told, since no time was given: ask the data sheet of the mortar and the specification.");
    return undefined;
  }
  for (const name of missing) work.problem({ code: "missing", path: [name], given: "", wanted: say("waitNeedsAll") });
  return undefined;
}

function leastCutOf(unit: Quantity<"length">, joint: Quantity<"length">, work: Work): Quantity<"length"> {
  work.assume(`leastCut: ${usualLeastCut.says}`);
  work.stand(usualLeastCut);
  return work.part(halfUnit, { unit, joint }).answers.half;
}
