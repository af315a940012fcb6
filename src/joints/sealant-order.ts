import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { usualSealantDepth } from "../data/joints.js";

/**
 * Tubes of sealant for movement and perimeter joints: half as deep as wide, within the usual least and greatest depth.
 *
 * @example
 * ```ts
 * const sealant = sealantOrder({ length: "120 ft", width: "3/8 in", waste: "10 %", tube: "10 fl oz" });
 * sealant.depth.toString(); // "0.25 in"
 * sealant.tubes.toString(); // "9"
 * ```
 */
export const sealantOrder = /* @__PURE__ */ calculation({
  id: "joints.sealant-order",
  title: "Sealant to order",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of joint to be sealed", above: 0 },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "f", says: "sealant left in tubes and tooled off, on top of the net", atLeast: 0, below: 1 },
    tube: { is: "volume", unit: ["floz", "mL"], symbol: "V_t", says: "sealant in a tube", above: 0 },
  },
  constants: {
    leastDepth: { is: "length", unit: ["in", "mm"], symbol: "d_1", value: "1/4 in", says: "least depth of sealant", basis: usualSealantDepth },
    mostDepth: { is: "length", unit: ["in", "mm"], symbol: "d_2", value: "1/2 in", says: "greatest depth of sealant", basis: usualSealantDepth },
  },
  steps: {
    half: { is: "length", unit: ["in", "mm"], symbol: "d_h", says: "half the width", formula: "width / 2", basis: usualSealantDepth },
    noDeeper: { is: "length", unit: ["in", "mm"], symbol: "d_m", says: "half the width, but no deeper than usual", formula: "min(half, mostDepth)", basis: usualSealantDepth },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of sealant over the backer rod", formula: "max(leastDepth, noDeeper)", basis: usualSealantDepth },
    net: { is: "volume", unit: ["floz", "mL"], symbol: "V", says: "sealant in the joint, taken as full at its edges", formula: "length * width * depth", basis: geometry },
    toOrder: { is: "volume", unit: ["floz", "mL"], symbol: "V_o", says: "sealant with waste", formula: "net * (1 + waste)", basis: arithmetic },
    tubes: { is: "count", symbol: "n", says: "whole tubes to order", formula: "ceil(toOrder / tube)", basis: arithmetic },
  },
  cautions: ["The sealant's data sheet sets its own least width and depth. A sealed joint is never pointed first: mortar in it stops the movement."],
});
