import * as z from "zod/mini";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { coursedFace } from "./coursed-face.js";
import { depthToPoint, type JointFace, jointFace, tooling } from "./face-fields.js";
import { jointByLength } from "./joint-by-length.js";
import { mixedFace } from "./mixed-face.js";
import { pointingDepth } from "./pointing-depth.js";
import { pointingFills } from "./pointing-fills.js";
import { pointingOrder } from "./pointing-order.js";
import { tooledJoint } from "./tooled-joint.js";
import { toolingLoss } from "./tooling-loss.js";

const reads = /* @__PURE__ */ nested(() =>
  z.strictObject({
    face: telling("face whose joints are filled", jointFace()),
    depth: telling("depth to which the joints are filled", depthToPoint()),
    tooling: telling("how the joints are tooled", tooling()),
    waste: quantityField("ratio", { says: "mortar dropped, struck off, stiffened or left in the bag, on top of the net", atLeast: 0, below: 1 }),
    bagYield: quantityField("volume", { says: "mortar that one bag gives", above: 0 }),
    pointingBag: z.optional(quantityField("volume", { says: "mortar in one fill of the pointing bag", above: 0 })),
  }));

/** Joints of one width, and the mortar that fills them. */
interface Filled {
  readonly width: Quantity<"length">;
  readonly volume: Quantity<"volume">;
}

/** The joints of a face by their width, filled to the depth; level and upright ones together where they are alike. */
function filledJoints(face: JointFace, depth: Quantity<"length">, work: Work): readonly Filled[] {
  if (face.pattern === "irregular") {
    const { length, width } = face;
    return [{ width, volume: work.part(jointByLength, { length, width, depth }, ["face"]).answers.volume }];
  }
  const { area, headJoint, bedJoint } = face;
  const { volume, bedVolume, headVolume } =
    face.pattern === "mixed"
      ? work.part(mixedFace, { area, sizes: face.sizes, headJoint, bedJoint, depth }, ["face"]).answers
      : work.part(coursedFace, { area, unitLength: face.unitLength, unitHeight: face.unitHeight, headJoint, bedJoint, depth }, ["face"]).answers;
  if (compare(bedJoint, headJoint) === 0) return [{ width: bedJoint, volume }];
  return [{ width: bedJoint, volume: bedVolume }, { width: headJoint, volume: headVolume }];
}

/**
 * Joint mortar for a face: the joints filled to their depth, less what tooling takes out, with waste, in bags. The depth
 * is measured in the open joints, or is unit and bed less what was pressed out of the bed.
 *
 * @example
 * ```ts
 * const order = pointingMortar({
 *   face: { pattern: "coursed", area: "512 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in" },
 *   depth: { from: "unit and bed", unitThickness: "1-1/4 in", bed: "1/2 in", squeezeOut: "1 in" },
 *   tooling: { profile: "raked", profileDepth: "3/16 in" },
 *   waste: "20 %",
 *   bagYield: "0.5 ft3",
 * });
 * order.net.to("ft3").toFixed(3); // "2.930"
 * order.bags.toString(); // "8"
 * ```
 */
export const pointingMortar = /* @__PURE__ */ composed({
  id: "joints.pointing-mortar",
  title: "Joint mortar for a face",
  reads,
  run: ({ face, depth: way, tooling: tool, waste, bagYield, pointingBag }, work) => {
    const depth =
      way.from === "open joints"
        ? way.depth
        : work.part(pointingDepth, { unitThickness: way.unitThickness, bed: way.bed, squeezeOut: way.squeezeOut }, ["depth"]).answers.depth;
    const filled = filledJoints(face, depth, work);
    const tooled = filled.map(({ width, volume }) => {
      const toolingShare = work.part(toolingLoss, { ...tool, width, depth }, ["tooling"]).answers.share;
      return work.part(tooledJoint, { volume, toolingShare }).answers.tooled;
    });
    const net = sum(tooled);
    const { toOrder, bags } = work.part(pointingOrder, { net, waste, bagYield }).answers;
    const fills = pointingBag === undefined ? {} : { fills: work.part(pointingFills, { volume: toOrder, pointingBag }).answers.fills };
    return { depth, filled: sum(filled.map(({ volume }) => volume)), net, toOrder, bags, ...fills };
  },
});
