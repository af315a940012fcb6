import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { batchLog, type PlaceRead } from "./batch-log-input.js";
import { type BatchRow, batchRows } from "./batch-rows.js";
import { say } from "./refusals.js";

/** The batches a unit was set and pointed with. */
export interface BatchesAt {
  readonly batches: readonly BatchRow[];
}

const unit = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    elevation: telling("elevation the unit is on", z.string()),
    across: quantityField("length", { says: "middle of the unit, from the left end of the elevation", atLeast: 0 }),
    up: quantityField("length", { says: "middle of the unit, from the base line", atLeast: 0 }),
  }));

const input = /* @__PURE__ */ atFirstUse(() => z.strictObject({ ...batchLog(), unit: telling("unit that is looked for", unit()) }));

/**
 * Which batches a unit came from, by its place on an elevation: lot, water, hour, and the readings of the wall meanwhile. On
 * the line where two batches meet it may be of either, and both are told.
 *
 * @example
 * ```ts
 * const found = batchesAt({
 *   unit: { elevation: "E3", across: "7 ft", up: "2.5 ft" }, zone: "America/Chicago",
 *   batches: [{
 *     batch: "14", material: "setting mortar", lot: "7731", dryMass: "50 lb", water: "5.3 qt", firstWater: "2026-10-05T09:40", wallTemperature: "51 degF",
 *     places: [{ elevation: "E3", left: "0 ft", right: "18 ft", bottom: "2 ft", top: "3 ft" }],
 *   }],
 * });
 * found.batches[0].lot; // "7731"
 * found.batches[0].firstWater; // "2026-10-05T09:40-05:00[America/Chicago]"
 * ```
 */
export const batchesAt = /* @__PURE__ */ composed({
  id: "planning.batches-at",
  title: "Batches a unit came from",
  reads: /* @__PURE__ */ nested(input),
  run: ({ unit: { elevation, across, up }, ...log }, work): BatchesAt => {
    const rows = batchRows(log, work);
    const covers = (place: PlaceRead): boolean =>
      place.elevation === elevation && compare(place.left, across) <= 0 && compare(across, place.right) <= 0 && compare(place.bottom, up) <= 0 && compare(up, place.top) <= 0;
    const batches = rows.filter(({ places }) => places.some(covers));
    if (batches.length === 0) {
      const known = [...new Set(rows.flatMap(({ places }) => places.map((place) => place.elevation)))];
      work.refuse(refusal(["unit"], say("placeOfUnit", { elevation, across, up }), say("noBatchThere", { elevations: known }), "noAnswer"));
    }
    return { batches };
  },
});
