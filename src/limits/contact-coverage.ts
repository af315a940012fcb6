import * as z from "zod/mini";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { contactTable, voidTable } from "../data/limits.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { rectangle } from "../shapes/rectangle.js";
import { contactShare } from "./contact-share.js";
import { judge, type Judged } from "./judge.js";

const contactInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    unit: telling("back of the unit", z.discriminatedUnion("by", [
      z.strictObject({
        by: z.literal("sides"),
        length: quantityField("length", { says: "length of the back of the unit", above: 0 }),
        height: quantityField("length", { says: "height of the back of the unit", above: 0 }),
      }),
      z.strictObject({ by: z.literal("area"), area: quantityField("area", { says: "area of the back of the unit", above: 0 }) }),
    ])),
    /** Each void by itself; none where the list is empty. */
    voids: telling("voids in the contact", z.array(quantityField("area", { says: "area of one void", above: 0 }))),
    use: telling("where the unit is used", z.enum(["inside, dry", "gauged panel on a wall", "gauged panel on a floor", "outside or wet", "natural stone"])),
    voidRule: telling("rule for the largest void", z.enum(["ANSI A108.19", "ANSI A108.5", "none"])),
  }));

/** What the back of a lifted unit tells: two answers, of which one may fail where the other passes. */
export interface ContactCoverage {
  readonly share: Judged;
  /** The largest void; absent where there is none. */
  readonly largestVoid?: Judged;
}

/**
 * Contact of mortar with the back of a unit that was lifted: the share against the least for its use, and the largest single
 * void against the most of a rule. These are two answers.
 *
 * @example
 * ```ts
 * const unit = contactCoverage({ unit: { by: "sides", length: "24 in", height: "12 in" }, voids: ["3.1 in2", "1.6 in2", "2.4 in2"], use: "outside or wet", voidRule: "ANSI A108.19" });
 * unit.share.verdict; // "within"
 * unit.largestVoid?.says; // "largest void: 3.1 in2 is over 2 in2"
 * ```
 */
export const contactCoverage = /* @__PURE__ */ composed({
  id: "limits.contact-coverage",
  title: "Contact of mortar with the back of a unit",
  reads: /* @__PURE__ */ nested(contactInput),
  cautions: [
    "Lift a unit while its mortar is fresh, and look at its corners and edges too: they are to be fully supported, which no share tells.",
    "What the specification asks for comes before any rule here. One unit tells of one unit: lift more where one is short.",
  ],
  run: ({ unit, voids, use, voidRule }, work): ContactCoverage => {
    const unitArea = areaOf(unit, work);
    const voidArea = sum([subtract(unitArea, unitArea), ...voids]);
    const { share } = work.part(contactShare, { unitArea, voidArea }, ["voids"]).answers;
    const shareJudged = judge("share of the back in contact", share, contactTable[use], work);
    const largest = [...voids].sort(compare).at(-1);
    if (largest === undefined) return { share: shareJudged };
    if (voidRule !== "none") return { share: shareJudged, largestVoid: judge("largest void", largest, voidTable[voidRule], work) };
    const says = `largest void: ${largest.toString()}, not judged`;
    return { share: shareJudged, largestVoid: { of: "largest void", measured: largest, verdict: "not on file", says } };
  },
});

function areaOf(unit: z.output<ReturnType<typeof contactInput>>["unit"], work: Work): Quantity<"area"> {
  return unit.by === "area" ? unit.area : work.part(rectangle, { width: unit.length, height: unit.height }, ["unit"]).answers.area;
}
