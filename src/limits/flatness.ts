import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { flatnessTable, largeEdge, limitCaution } from "../data/limits.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { judge, type Judged } from "./judge.js";

const flatnessInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    rule: telling("rule the face is held against", z.enum(["ANSI A108.02", "BIA Technical Note 28C", "IBC 2018, second plaster coat"])),
    longestEdge: quantityField("length", { says: "longest edge of the units", above: 0 }),
    readings: telling("readings with the straightedge", z.array(
      z.strictObject({
        where: z.optional(telling("where it was read", z.string())),
        straightedge: quantityField("length", { says: "length of the straightedge", above: 0 }),
        gap: quantityField("length", { says: "greatest gap under the straightedge", atLeast: 0 }),
      }),
    )),
  }));

/** Readings of a straightedge held against one rule. */
export interface Flatness {
  /** The row of the rule that goes by the longest edge of the units. */
  readonly row: string;
  readonly readings: readonly Judged[];
  /** What is over, in words. */
  readonly over: readonly string[];
  /** What the rule on file does not tell, in words. */
  readonly notOnFile: readonly string[];
}

/**
 * Flatness of a wall by straightedge, by a named rule. ANSI A108.02 goes by the longest edge of the units: from 15 in on,
 * 1/8 in in 10 ft and 1/16 in in 2 ft. A straightedge of another length than the rule's is not on file.
 *
 * @example
 * ```ts
 * const wall = flatness({
 *   rule: "ANSI A108.02",
 *   longestEdge: "24 in",
 *   readings: [{ where: "bay 3", straightedge: "10 ft", gap: "3/16 in" }, { where: "bay 4", straightedge: "2 ft", gap: "1/16 in" }],
 * });
 * wall.over; // ["bay 3, in 10 ft: 0.1875 in is over 0.125 in"]
 * ```
 */
export const flatness = /* @__PURE__ */ composed({
  id: "limits.flatness",
  title: "Flatness by straightedge",
  reads: /* @__PURE__ */ nested(flatnessInput),
  cautions: [limitCaution, "Setting mortar is no levelling coat: flatten what is over before the units go on, and write down who owns it."],
  run: ({ rule, longestEdge, readings: given }, work): Flatness => {
    if (given.length === 0) work.refuse(refusal(["readings"], common("noneGiven", { of: "reading" }), common("giveOneOrMore")));
    const row = rowOf(rule, longestEdge);
    const readings = given.map(({ where, straightedge, gap }, index) => judged(row, where ?? `reading ${String(index + 1)}`, straightedge, gap, work));
    const says = (wanted: Judged["verdict"]): readonly string[] => readings.filter(({ verdict }) => verdict === wanted).map((one) => one.says);
    return { row, readings, over: says("over"), notOnFile: says("not on file") };
  },
});

type Row = keyof typeof flatnessTable;

function rowOf(rule: z.output<ReturnType<typeof flatnessInput>>["rule"], longestEdge: Quantity<"length">): Row {
  if (rule !== "ANSI A108.02") return rule;
  return compare(longestEdge, quantity("length", largeEdge)) >= 0 ? "ANSI A108.02, large units" : "ANSI A108.02, small units";
}

function judged(row: Row, where: string, straightedge: Quantity<"length">, gap: Quantity<"length">, work: Work): Judged {
  const { basis, gaps } = flatnessTable[row];
  const most = gaps.find((one) => compare(straightedge, quantity("length", one.straightedge)) === 0)?.gap;
  return judge(`${where}, in ${straightedge.toString()}`, gap, { most, basis }, work);
}
