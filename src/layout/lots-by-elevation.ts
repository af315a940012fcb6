import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { subtract, sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { usualLots } from "../data/layout.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { lotsForArea } from "./lots-for-area.js";
import { say } from "./refusals.js";

const lotsInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    elevations: telling("elevations, each ordered by itself", z.array(z.strictObject({ name: telling("name of the elevation", z.string()), area: quantityField("area", { says: "stone face to be covered, openings out", above: 0 }) }))),
    lotCover: quantityField("area", { says: "face that one lot covers: a box, a crate or a pallet", above: 0 }),
    waste: quantityField("ratio", { says: "units broken, cut off and sorted out, on top of the net", atLeast: 0, below: 1 }),
  }));

/** The lots of one elevation. */
export interface ElevationLots {
  readonly name: string;
  /** Before rounding. */
  readonly net: Quantity<"count">;
  readonly lots: Quantity<"count">;
}

/** Lots by elevation. */
export interface LotsByElevation {
  readonly elevations: readonly ElevationLots[];
  /** All elevations, each rounded up by itself. */
  readonly lots: Quantity<"count">;
  /** What one round-up over all of them would order. */
  readonly pooled: Quantity<"count">;
  /** What it costs to keep each elevation to its own lots. */
  readonly more: Quantity<"count">;
}

/**
 * Lots, rounded up elevation by elevation before they are added, so that no elevation is pieced out of what is left of
 * another.
 *
 * @example
 * ```ts
 * const lots = lotsByElevation({ elevations: [{ name: "south", area: "1180 ft2" }, { name: "east", area: "500 ft2" }, { name: "west", area: "385 ft2" }], lotCover: "40 ft2", waste: "5 %" });
 * lots.lots; // "56"
 * lots.pooled; // "55"
 * ```
 */
export const lotsByElevation = /* @__PURE__ */ composed({
  id: "layout.lots-by-elevation",
  title: "Lots by elevation",
  cautions: ["Order all lots of an elevation from one making and write their numbers down; draw from three or four of them at a time.", "Change the lot at a corner or a movement joint, never inside a panel."],
  reads: /* @__PURE__ */ nested(lotsInput),
  run: ({ elevations, lotCover, waste }, work): LotsByElevation => {
    elevations.forEach(({ name }, index) => {
      if (elevations.findIndex((one) => one.name === name) < index) work.problem({ code: "refused", path: ["elevations", index, "name"], given: `"${name}"`, wanted: say("anotherElevation") });
    });
    if (elevations.length === 0) work.refuse(refusal(["elevations"], common("noneGiven", { of: "elevation" }), common("giveOneOrMore")));
    work.stand(usualLots);
    const rows = elevations.map(({ name, area }, index): ElevationLots => {
      const { net, lots } = work.part(lotsForArea, { area, waste, lotCover }, ["elevations", index]).answers;
      return { name, net, lots };
    });
    const lots = sum(rows.map((row) => row.lots));
    const { lots: pooled } = work.part(lotsForArea, { area: sum(elevations.map(({ area }) => area)), waste, lotCover }).answers;
    return { elevations: rows, lots, pooled, more: subtract(lots, pooled) };
  },
});
