import type { Quantity } from "../../core/quantity.js";
import { quantity } from "../../core/read-quantity.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import { spareUnits } from "../spare-units.js";
import type { Taking } from "../taking.js";
import { refuseUnknownItem } from "./known-item.js";

/** Spare stock as lines of their own, after all others. */
export function spareLines(lines: readonly OrderLine[], taking: Taking): readonly OrderLine[] {
  const { job, work } = taking;
  return Object.entries(job.spare ?? {}).flatMap(([item, spareShare]) => {
    const path = ["spare", item];
    refuseUnknownItem(item, path, taking);
    const line = lines.find((one) => one.item === item);
    if (line === undefined) return [];
    const { net, pack } = line;
    if (net.dimension !== "count") {
      work.problem({ code: "refused", path, given: "", wanted: say("spareOfPieces", { item, dimension: net.dimension }) });
      return [];
    }
    const packCount = pack === undefined ? quantity("count", 1) : (pack as Quantity<"count">);
    const solution = work.attempt(spareUnits, { pieces: net as Quantity<"count">, spareShare, packCount }, path);
    if (solution === undefined) return [];
    const { spare, toOrder, packs } = solution.answers;
    return [orderLine({ item: taking.item(`${item} spare`, path), spareOf: item, layer: line.layer, net: spare, toOrder, ...(pack === undefined ? {} : { pack }), packs, solution })];
  });
}
