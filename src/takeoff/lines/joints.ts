import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { isNought } from "../../core/quantity-arithmetic.js";
import { pointingMortar } from "../../joints/pointing-mortar.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";
import { usualWidth } from "../usual-width.js";
import { waterLines } from "./mixing-water.js";

/** Joint mortar over the whole stone face, squeeze-out and tooling out, and the water for it. */
export function jointLines(layer: LayerOf<"joints">, bed: Quantity<"length">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const { name, squeezeOut, tooling } = layer;
  const units = taking.layer("units");
  if (units === undefined) {
    work.problem({ code: "missing", path: ["layers"], given: "", wanted: say("fillsJoints", { layer: name }) });
    return [];
  }
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "bag", "yield", "waterLow", "waterHigh")];
  if (waste === undefined || pack === undefined) return [];
  const { unitLength, unitHeight, unitThickness } = units;
  const [headJoint, bedJoint] = [usualWidth(units.headJoint, "headJoint", work), usualWidth(units.bedJoint, "bedJoint", work)];
  const tight = [["headJoint", headJoint], ["bedJoint", bedJoint]] as const;
  for (const [key, width] of tight) {
    if (isNought(width)) work.problem({ code: "tooLow", path: ["layers", taking.job.layers.indexOf(units), key], given: width.toString(), wanted: say("jointToFill", { layer: name }) });
  }
  if (tight.some(([, width]) => isNought(width))) return [];
  const solution = work.attempt(pointingMortar, {
    face: { pattern: "coursed", area: face, unitLength, unitHeight, headJoint, bedJoint },
    depth: { from: "unit and bed", unitThickness, bed, squeezeOut },
    tooling,
    waste,
    bagYield: pack.yield,
  }, path);
  if (solution === undefined) return [];
  const { net, toOrder, bags } = solution.answers;
  const line = orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.yield, packs: bags, solution });
  return [line, ...waterLines(name, bags, pack, path, taking)];
}
