import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Mean bed that a trowel with U notches leaves, held at an angle: the bottom of the notch is a half circle as wide as
 * the notch.
 *
 * @example
 * ```ts
 * const { ridge } = uNotchBed({ depth: "1 in", width: "1/2 in", tooth: "1/2 in", angle: "90 deg" });
 * ridge.to("in2").toFixed(4); // "0.4732"
 * ```
 */
export const uNotchBed = /* @__PURE__ */ calculation({
  id: "mortar.u-notch-bed",
  title: "Mean bed left by a U-notched trowel",
  given: {
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of the notch", above: 0 },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the notch", above: 0 },
    tooth: { is: "length", unit: ["in", "mm"], symbol: "s", says: "width of the tooth between two notches", above: 0 },
    angle: { is: "angle", unit: "deg", symbol: "a", says: "angle between trowel and wall", atLeast: "30 deg", atMost: "90 deg" },
  },
  steps: {
    straight: { is: "length", unit: ["in", "mm"], symbol: "d_s", says: "straight part of the notch above its half-round bottom", formula: "depth - width / 2", basis: geometry, atLeast: 0 },
    ridge: { is: "area", unit: ["in2", "mm2"], symbol: "A_r", says: "section of one ridge, trowel square to the wall", formula: "width * straight + pi * width ^ 2 / 8", basis: geometry },
    pitch: { is: "length", unit: ["in", "mm"], symbol: "p", says: "from ridge to ridge", formula: "width + tooth", basis: geometry },
    upright: { is: "length", unit: ["in", "mm"], symbol: "b_0", says: "mean bed, trowel square to the wall", formula: "ridge / pitch", basis: geometry },
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean bed, trowel at its angle", formula: "upright * sin(angle)", basis: geometry },
  },
  cautions: ["Ridges that are not pushed flat touch the unit only along their crests; lift one and look."],
});
