import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { subtract, sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { unitsForFace } from "../layout/units-for-face.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { nameField, quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { length } from "./job-elevation.js";

const elevationsInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    elevations: telling("elevations, each rounded up by itself", z.array(
      z.strictObject({
        name: telling("name of the elevation", nameField()),
        area: quantityField("area", { says: "stone face of the elevation, openings out", above: 0 }),
        cornerCover: quantityField("area", { says: "what corner units cover of this face", atLeast: 0 }),
      }),
    )),
    unitLength: length("actual face length of one unit"),
    unitHeight: length("actual face height of one unit"),
    headJoint: quantityField("length", { says: "width of the upright joints", atLeast: 0 }),
    bedJoint: quantityField("length", { says: "width of the level joints", atLeast: 0 }),
    waste: quantityField("ratio", { says: "units broken, cut off and sorted out, on top of the net", atLeast: 0, below: 1 }),
    packCount: quantityField("count", { says: "flat units in a pack", atLeast: "1", whole: true }),
  }));

/** The packs of one elevation. */
export interface ElevationLot {
  readonly name: string;
  readonly net: Quantity<"count">;
  readonly packs: Quantity<"count">;
}

/**
 * Flat units where each elevation is set from packs of its own lot: packs are rounded up for each elevation and then
 * added, so that no lot changes within one.
 *
 * @example
 * ```ts
 * const lots = unitsByElevation({
 *   elevations: [{ name: "south", area: "121 ft2", cornerCover: "0 ft2" }, { name: "west", area: "101 ft2", cornerCover: "0 ft2" }],
 *   unitLength: "11-5/8 in", unitHeight: "3-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in", waste: "0 %", packCount: 30,
 * });
 * lots.packs.toString(); // "24"
 * lots.lots[0].packs.toString(); // "13"
 * lots.more.toString(); // "1"
 * ```
 */
export const unitsByElevation = /* @__PURE__ */ composed({
  id: "takeoff.units-by-elevation",
  title: "Flat units by elevation",
  reads: /* @__PURE__ */ nested(elevationsInput),
  cautions: ["Have each elevation delivered from one lot and never change the lot within a panel: shades differ."],
  run: ({ elevations, ...unit }, work) => {
    if (elevations.length === 0) work.refuse(refusal(["elevations"], common("noneGiven", { of: "elevation" }), common("giveOneOrMore")));
    const counted = elevations.map(({ name, area, cornerCover }, index) => ({ name, ...work.part(unitsForFace, { area, cornerCover, ...unit }, ["elevations", index]).answers }));
    const packs = sum(counted.map((one) => one.packs));
    const pooled = work.part(unitsForFace, { area: sum(elevations.map(({ area }) => area)), cornerCover: sum(elevations.map(({ cornerCover }) => cornerCover)), ...unit }).answers.packs;
    return {
      net: sum(counted.map(({ net }) => net)),
      toOrder: sum(counted.map(({ toOrder }) => toOrder)),
      packs,
      // What one round-up over all of them would order, and what it costs to keep each to its own packs.
      pooled,
      more: subtract(packs, pooled),
      lots: counted.map((one): ElevationLot => ({ name: one.name, net: one.net, packs: one.packs })),
    };
  },
});
