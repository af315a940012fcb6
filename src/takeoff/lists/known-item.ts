import { nearest, type Path } from "../../core/problems.js";
import type { OrderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** Names a problem where an item that something is said of is not in the list. */
export function refuseUnknownItem(item: string, path: Path, { items, shared, work }: Taking): void {
  const known = items();
  if (shared || known.includes(item)) return;
  const near = nearest(item, known);
  work.problem({ code: "unknown", path, given: "", wanted: near === undefined ? say("listHas", { of: known }) : { kind: "near", key: near } });
}

/** How many packs of a line are bought; pieces where it has no packs, nothing where it is not counted. */
export function boughtOf({ packs, toOrder }: OrderLine): OrderLine["packs"] {
  if (packs !== undefined) return packs;
  return toOrder.dimension === "count" ? (toOrder as NonNullable<OrderLine["packs"]>) : undefined;
}

/** Under which name packs, prices and weights of a line are given: spare stock is bought as its item is. */
export function soldAs({ item, spareOf }: OrderLine): string {
  return spareOf ?? item;
}
