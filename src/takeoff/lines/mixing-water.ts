import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { times } from "../../core/quantity-arithmetic.js";
import { mixingWater } from "../../mortar/mixing-water.js";
import type { ReadJob } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";

type Bag = { readonly [K in "bag" | "waterLow" | "waterHigh"]: NonNullable<ReadJob["packs"][string][K]> };

/** Mixing water for all bags of one mortar: the least, and the most there may be. */
export function waterLines(mortar: string, bags: Quantity<"count">, { bag, waterLow, waterHigh }: Bag, path: Path, taking: Taking): readonly OrderLine[] {
  const item = taking.item(`mixing water for ${mortar}`, path);
  const dryMass = times(bag, bags);
  const solution = taking.work.attempt(mixingWater, { dryMass, bagMass: bag, waterLow, waterHigh }, ["packs", mortar]);
  if (solution === undefined) return [];
  const { firstPour, most } = solution.answers;
  return [orderLine({ item, layer: mortar, net: firstPour, toOrder: most, solution })];
}
