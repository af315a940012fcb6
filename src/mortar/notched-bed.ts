import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { thinBed } from "../data/mortar.js";
import { squareNotchBed } from "./square-notch-bed.js";
import { uNotchBed } from "./u-notch-bed.js";
import { vNotchBed } from "./v-notch-bed.js";

const beds = { square: squareNotchBed, u: uNotchBed, v: vNotchBed };

/**
 * Mean bed that a notched trowel leaves, by the shape of its notch, with a caution where it is thinner than a bond coat
 * should be.
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
  run: ({ notch, ...trowel }, work) => {
    const { bed } = work.part(beds[notch], trowel).answers;
    const thin = compare(bed, quantity("length", "3/32 in")) < 0;
    if (thin) {
      work.stand(thinBed);
      work.caution("The bed is thinner than 3/32 in: take a deeper notch, hold the trowel steeper, or butter the backs.");
    }
    return { notch, bed, thin };
  },
});
