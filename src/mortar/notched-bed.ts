import { composed } from "../core/composed.js";
import { squareNotchBed } from "./square-notch-bed.js";
import { uNotchBed } from "./u-notch-bed.js";
import { vNotchBed } from "./v-notch-bed.js";

const beds = { square: squareNotchBed, u: uNotchBed, v: vNotchBed };

/**
 * Mean bed that a notched trowel leaves, by the shape of its notch.
 *
 * @example
 * ```ts
 * notchedBed({ notch: "square", depth: "1/2 in", width: "1/2 in", tooth: "1/2 in", angle: "90 deg" }).bed.toString(); // "0.25 in"
 * notchedBed({ notch: "v", depth: "1/2 in", width: "1/2 in", tooth: "1/2 in", angle: "90 deg" }).bed.toString(); // "0.125 in"
 * ```
 */
export const notchedBed = /* @__PURE__ */ composed({
  id: "mortar.notched-bed",
  title: "Mean bed left by a notched trowel",
  given: {
    notch: { oneOf: ["square", "u", "v"], says: "shape of the notch" },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of the notch", above: 0 },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the notch at its mouth", above: 0 },
    tooth: { is: "length", unit: ["in", "mm"], symbol: "s", says: "width of the tooth between two notches", atLeast: 0 },
    angle: { is: "angle", unit: "deg", symbol: "a", says: "angle between trowel and wall", atLeast: "30 deg", atMost: "90 deg" },
  },
  run: ({ notch, ...trowel }, work) => ({ notch, bed: work.part(beds[notch], trowel).answers.bed }),
});
