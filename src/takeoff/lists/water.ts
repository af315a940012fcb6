import type { Quantity } from "../../core/quantity.js";
import { sum } from "../../core/quantity-arithmetic.js";
import type { OrderLine } from "../order-line.js";

/** Clean water for mixing all bags of a job. */
export interface MixingWater {
  readonly least: Quantity<"volume">;
  readonly most: Quantity<"volume">;
}

/** All lines of mixing water together; what is washed with comes besides. */
export function waterOf(lines: readonly OrderLine[]): MixingWater | undefined {
  const water = lines.filter(({ solution }) => solution.id === "mortar.mixing-water");
  if (water.length === 0) return undefined;
  return { least: sum(water.map(({ net }) => net as Quantity<"volume">)), most: sum(water.map(({ toOrder }) => toOrder as Quantity<"volume">)) };
}
