import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { ageFactorAt } from "./age-factors.js";
import { liftByLedger } from "./lift-by-ledger.js";
import { timeByAgeFactor } from "./time-by-age-factor.js";

/** How high a lift may be, and how long it must set before the next. */
export interface LiftHeight {
  readonly height: Quantity<"length">;
  readonly governedBy: "ledger" | "bed";
  /** Height by the ledger alone. */
  readonly byLedger: Quantity<"length">;
  /** Wait before the next lift, at the temperature of the wall. */
  readonly wait: Quantity<"time">;
  readonly rule: "doubling" | "Arrhenius";
}

/**
 * How high courses may go before those below have set: by the load the ledger carries and, where it was tried, by the height
 * the bed holds without sagging; and how long to wait before the next lift at the temperature of the wall.
 *
 * @example
 * ```ts
 * const lift = liftHeight({
 *   wetWeight: "15 lb/ft2", ledgerCapacity: "60 lbf/ft", timeAtReference: "16 h", reference: "70 degF", temperature: "52 degF", rule: "doubling",
 * });
 * lift.height.toString(); // "4 ft"
 * lift.wait.to("h").toFixed(3); // "32.000"
 * ```
 */
export const liftHeight = /* @__PURE__ */ composed({
  id: "timing.lift-height",
  title: "Height of a lift and the wait before the next",
  given: {
    wetWeight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "w", says: "installed wet weight of the veneer: units, bed and joints", above: 0 },
    ledgerCapacity: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "q", says: "load that a length of the ledger carries, by whoever answers for it", above: 0 },
    bedHolds: { is: "length", unit: ["ft", "m"], symbol: "h_b", says: "height the bed was seen to hold without sagging, tried at the wall", above: 0, optional: true },
    timeAtReference: { is: "time", unit: "h", symbol: "t_r", says: "wait before the next lift at the reference temperature", above: 0 },
    reference: { is: "temperature", unit: ["degF", "degC"], symbol: "T_r", says: "temperature that wait is known for", atLeast: "40 degF", atMost: "120 degF" },
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the wall", atLeast: "40 degF", atMost: "120 degF" },
    rule: { oneOf: ["doubling", "Arrhenius"], says: "rule by which warmth shortens the wait" },
    activation: { is: "temperatureDifference", unit: "K", symbol: "Q", says: "activation energy over the gas constant, in kelvins; for Arrhenius alone", atLeast: "1000 K", atMost: "10000 K", optional: true },
  },
  cautions: [
    "What the ledger and its screws carry is for a licensed design professional to say; it is asked for here and not computed.",
    "Test before the clock: no unit of the courses below moves under the hand.",
  ],
  run: ({ wetWeight, ledgerCapacity, bedHolds, timeAtReference, temperature, ...by }, work): LiftHeight => {
    const { height: byLedger } = work.part(liftByLedger, { wetWeight, ledgerCapacity }).answers;
    const byBed = bedHolds !== undefined && compare(bedHolds, byLedger) < 0;
    if (bedHolds === undefined) work.assume("the bed holds as high as the ledger carries, since no height was tried at the wall");
    const { time: wait } = work.part(timeByAgeFactor, { timeAtReference, ageFactor: ageFactorAt(by, temperature, work) }).answers;
    return { height: byBed ? bedHolds : byLedger, governedBy: byBed ? "bed" : "ledger", byLedger, wait, rule: by.rule };
  },
});
