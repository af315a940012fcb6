import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { fastenersByArea } from "../fasteners-by-area.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";

/** Fasteners of a layer by its area; none where it has none. */
export function fastenerLines(layer: string, area: Quantity<"area">, fastenersPerArea: Quantity<"countPerArea"> | undefined, path: Path, taking: Taking): readonly OrderLine[] {
  if (fastenersPerArea === undefined) return [];
  const item = taking.item(`${layer} fasteners`, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "pieces")];
  if (waste === undefined || pack === undefined) return [];
  const solution = taking.work.attempt(fastenersByArea, { area, fastenersPerArea, waste, packCount: pack.pieces }, path);
  if (solution === undefined) return [];
  const { net, toOrder, packs } = solution.answers;
  return [orderLine({ item, layer, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.pieces, packs, solution })];
}
