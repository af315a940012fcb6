import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { quantityField } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { coursedFace } from "./coursed-face.js";
import { mixedFaceFields } from "./face-fields.js";
import { faceShare } from "./face-share.js";
import { say } from "./refusals.js";

const reads = /* @__PURE__ */ nested(() =>
  z.strictObject({ ...mixedFaceFields(), depth: quantityField("length", { says: "depth of joint to be filled", above: 0 }) }));

/**
 * Joint mortar for a face of mixed sizes, each with its share of the face; the shares make up the whole.
 *
 * @example
 * ```ts
 * const large = { unitLength: "15-5/8 in", unitHeight: "7-5/8 in", share: "60 %" };
 * const small = { unitLength: "7-5/8 in", unitHeight: "3-5/8 in", share: "40 %" };
 * const face = mixedFace({ area: "200 ft2", sizes: [large, small], headJoint: "3/8 in", bedJoint: "3/8 in", depth: "3/4 in" });
 * face.volume.to("ft3").toFixed(2); // "1.20"
 * ```
 */
export const mixedFace = /* @__PURE__ */ composed({
  id: "joints.mixed-face",
  title: "Joint mortar for a face of mixed sizes",
  reads,
  run: ({ area, sizes, headJoint, bedJoint, depth }, work) => {
    const all = sum([quantity("ratio", "0 %"), ...sizes.map(({ share }) => share)]);
    if (compare(all, quantity("ratio", 1)) !== 0) {
      work.refuse(refusal(["sizes"], say("sharesMake", { share: all }), say("sharesMustMakeAll")));
    }
    const parts = sizes.map(({ unitLength, unitHeight, share }, index) => {
      const at = ["sizes", index];
      const { part } = work.part(faceShare, { area, share }, at).answers;
      return work.part(coursedFace, { area: part, unitLength, unitHeight, headJoint, bedJoint, depth }, at).answers;
    });
    return {
      volume: sum(parts.map(({ volume }) => volume)),
      bedVolume: sum(parts.map(({ bedVolume }) => bedVolume)),
      headVolume: sum(parts.map(({ headVolume }) => headVolume)),
    };
  },
});
