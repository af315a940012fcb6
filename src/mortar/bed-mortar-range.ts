import { composed } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { bedRangePractice } from "../data/mortar.js";
import { bedMortar } from "./bed-mortar.js";
import { say } from "./refusals.js";

/** Setting mortar by one bed of the range. */
export interface BedMortarBy {
  /** Mortar in the wall. */
  readonly net: Quantity<"volume">;
  readonly toOrder: Quantity<"volume">;
  readonly bags: Quantity<"count">;
}

/** Setting mortar by the thinnest, the typical and the thickest bed. */
export interface BedMortarRange {
  readonly low: BedMortarBy;
  readonly typical: BedMortarBy;
  readonly high: BedMortarBy;
}

/**
 * Setting mortar as a range of bags: by the thinnest bed that the job will see on average, by the typical one, and by the
 * thickest, with the hollows of the wall in it.
 *
 * @example
 * ```ts
 * const range = bedMortarRange({
 *   area: "480 ft2", lowBed: "1/4 in", typicalBed: "3/8 in", highBed: "1/2 in", backButter: "1/8 in", butteredShare: "100 %", waste: "10 %", bagYield: "0.5 ft3",
 * });
 * range.low.bags.toString(); // "33"
 * range.typical.bags.toString(); // "44"
 * range.high.bags.toString(); // "55"
 * ```
 */
export const bedMortarRange = /* @__PURE__ */ composed({
  id: "mortar.bed-mortar-range",
  title: "Range of setting mortar for a face",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "whole stone face with what corner units cover, openings out", above: 0 },
    lowBed: { is: "length", unit: ["in", "mm"], symbol: "b_l", says: "mean bed where the wall is flattest and the backs are true", above: 0 },
    typicalBed: { is: "length", unit: ["in", "mm"], symbol: "b_t", says: "mean bed as a rule", above: 0 },
    highBed: { is: "length", unit: ["in", "mm"], symbol: "b_h", says: "mean bed with the hollows that the straightedge found", above: 0 },
    backButter: { is: "length", unit: ["in", "mm"], symbol: "b_b", says: "mean thickness of the coat on the backs of the units", atLeast: 0 },
    butteredShare: { is: "ratio", unit: "%", symbol: "f_b", says: "share of the face that is back-buttered: 100 % for the whole, 1 less the joint share for the backs alone", atLeast: 0, atMost: 1 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "mortar dropped, stiffened or left in the pail, on top of the net", atLeast: 0, below: 1 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
  },
  run: ({ lowBed, typicalBed, highBed, ...common }, work): BedMortarRange => {
    refuseAll([...notBelow("typicalBed", typicalBed, "low", lowBed), ...notBelow("highBed", highBed, "typical", typicalBed)], work);
    work.stand(bedRangePractice);
    const by = (bed: Quantity<"length">): BedMortarBy => {
      const { net, toOrder, bags } = work.part(bedMortar, { ...common, bed }).answers;
      return { net, toOrder, bags };
    };
    return { low: by(lowBed), typical: by(typicalBed), high: by(highBed) };
  },
});

function notBelow(name: string, bed: Quantity<"length">, than: "low" | "typical", least: Quantity<"length">): readonly Trouble[] {
  return compare(bed, least) < 0 ? [refusal([name], bed.toString(), say("bedUnderLower", { than, least }))] : [];
}
