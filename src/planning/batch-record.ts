import * as z from "zod/mini";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { equalWater } from "../data/planning.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { nested } from "../schema/nested.js";
import { batchLog } from "./batch-log-input.js";
import { type BatchRow, batchRows } from "./batch-rows.js";
import { grouped } from "./grouped.js";
import { waterSpread } from "./water-spread.js";

/** What came of one lot. */
export interface LotUse {
  readonly material: string;
  readonly lot: string;
  readonly batches: readonly string[];
  readonly dryMass: Quantity<"mass">;
  /** Area of its places; absent where none was written down. */
  readonly area?: Quantity<"area">;
}

/** Whether the batches of one material had the same water. */
export interface WaterOfMaterial {
  readonly material: string;
  readonly driest: Quantity<"ratio">;
  readonly wettest: Quantity<"ratio">;
  readonly spread: Quantity<"ratio">;
  /** Whether the spread is no more than 2 %. */
  readonly even: boolean;
}

/** A log of batches with what follows from it. */
export interface BatchRecord {
  readonly batches: readonly BatchRow[];
  readonly lots: readonly LotUse[];
  readonly water: readonly WaterOfMaterial[];
  /** Batches of one material that are written down for the same place. */
  readonly overlaps: readonly { readonly elevation: string; readonly batches: readonly [string, string] }[];
}

const input = /* @__PURE__ */ atFirstUse(() => z.strictObject(batchLog()));

/**
 * A log of batches with what follows from it: water to dry mix of each, what came of which lot, whether batches of one
 * material had the same water, and the readings of the wall meanwhile. The entries are plain texts that any store can keep.
 *
 * @example
 * ```ts
 * const log = batchRecord({
 *   zone: "America/Chicago",
 *   batches: [{
 *     batch: "14", material: "setting mortar", lot: "7731", dryMass: "50 lb", water: "5.3 qt", firstWater: "2026-10-05T09:40", wallTemperature: "51 degF",
 *     places: [{ elevation: "E3", left: "0 ft", right: "18 ft", bottom: "2 ft", top: "3 ft" }],
 *   }],
 * });
 * log.batches[0].waterRatio.to().toFixed(3); // "0.221"
 * log.lots[0].area.toString(); // "18 ft2"
 * ```
 */
export const batchRecord = /* @__PURE__ */ composed({
  id: "planning.batch-record",
  title: "Record of batches",
  reads: /* @__PURE__ */ nested(input),
  cautions: ["Write it down while the batch is mixed; what is filled in at night is no record."],
  run: (log, work): BatchRecord => {
    const batches = batchRows(log, work);
    const overlaps = batches.flatMap((one, index) => batches.slice(index + 1).flatMap((other) => shared(one, other).map((elevation) => ({ elevation, batches: [one.batch, other.batch] as const }))));
    if (overlaps.length > 0) work.caution("Batches of one material are written down for the same place: a unit there may be of either.");
    return { batches, lots: lotsOf(batches), water: waterOf(batches, work), overlaps };
  },
});

function lotsOf(batches: readonly BatchRow[]): readonly LotUse[] {
  const groups = grouped(batches, ({ material, lot }) => JSON.stringify([material, lot]));
  return [...groups.values()].flatMap((rows): LotUse[] => {
    const [first] = rows;
    const areas = rows.flatMap(({ area }) => area ?? []);
    return first === undefined ? [] : [{ material: first.material, lot: first.lot, batches: rows.map(({ batch }) => batch), dryMass: sum(rows.map(({ dryMass }) => dryMass)), ...(areas.length === 0 ? {} : { area: sum(areas) }) }];
  });
}

function waterOf(batches: readonly BatchRow[], work: Work): readonly WaterOfMaterial[] {
  const most = quantity("ratio", "2 %");
  work.stand(equalWater);
  return [...grouped(batches, ({ material }) => material)].map(([material, rows]): WaterOfMaterial => {
    const ratios = rows.map((row) => row.waterRatio);
    const driest = ratios.reduce((a, b) => (compare(b, a) < 0 ? b : a));
    const wettest = ratios.reduce((a, b) => (compare(b, a) > 0 ? b : a));
    const { spread } = work.part(waterSpread, { driest, wettest }).answers;
    const even = compare(spread, most) <= 0;
    if (!even) work.caution(`The batches of ${material} differ in their water by more than 2 %: joints of one colour may dry in several shades.`);
    return { material, driest, wettest, spread, even };
  });
}

/** The elevations on which two batches of one material share a place; edges that only meet are none. */
function shared(one: BatchRow, other: BatchRow): readonly string[] {
  if (one.material !== other.material) return [];
  const both = one.places.filter((a) => other.places.some((b) => a.elevation === b.elevation && compare(a.left, b.right) < 0 && compare(b.left, a.right) < 0 && compare(a.bottom, b.top) < 0 && compare(b.bottom, a.top) < 0));
  return [...new Set(both.map(({ elevation }) => elevation))];
}
