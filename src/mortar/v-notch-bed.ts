import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Mean bed that a trowel with V notches leaves, held at an angle: half of what square notches leave.
 *
 * @example
 * ```ts
 * vNotchBed({ depth: "3/16 in", width: "1/4 in", tooth: "0 in", angle: "90 deg" }).bed.toString(); // "0.09375 in"
 * ```
 */
export const vNotchBed = /* @__PURE__ */ calculation({
  id: "mortar.v-notch-bed",
  title: "Mean bed left by a V-notched trowel",
  given: {
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of the notch", above: 0 },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the notch at its mouth", above: 0 },
    tooth: { is: "length", unit: ["in", "mm"], symbol: "s", says: "flat of the tooth between two notches; nought where it is sharp", atLeast: 0 },
    angle: { is: "angle", unit: "deg", symbol: "a", says: "angle between trowel and wall", atLeast: "30 deg", atMost: "90 deg" },
  },
  steps: {
    ridge: { is: "area", unit: ["in2", "mm2"], symbol: "A_r", says: "section of one ridge, trowel square to the wall", formula: "depth * width / 2", basis: geometry },
    pitch: { is: "length", unit: ["in", "mm"], symbol: "p", says: "from ridge to ridge", formula: "width + tooth", basis: geometry },
    upright: { is: "length", unit: ["in", "mm"], symbol: "b_0", says: "mean bed, trowel square to the wall", formula: "ridge / pitch", basis: geometry },
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean bed, trowel at its angle", formula: "upright * sin(angle)", basis: geometry },
  },
  cautions: ["Ridges that are not pushed flat touch the unit only along their crests; lift one and look."],
});
