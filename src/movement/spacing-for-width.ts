import { calculation } from "../core/calculation.js";
import { brickSpacing, movementCaution } from "../data/movement.js";

/**
 * Spacing of joints of a given width, so that the sealant follows what moves between them.
 *
 * @example
 * ```ts
 * spacingForWidth({ width: "3/8 in", sealantCapability: "25 %", strain: 0.0005 }).spacing.toString(); // "15.625 ft"
 * ```
 */
export const spacingForWidth = /* @__PURE__ */ calculation({
  id: "movement.spacing-for-width",
  title: "Spacing of joints of a given width",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    sealantCapability: { is: "ratio", unit: "%", symbol: "X", says: "movement that the sealant follows, to the width of the joint, from its data sheet: 25 % for class 25", above: 0, atMost: 1 },
    strain: { is: "ratio", symbol: "e", says: "movement of the masonry to its length, by moisture and heat together", above: 0 },
  },
  steps: {
    spacing: { is: "length", unit: ["ft", "m"], symbol: "S", says: "greatest spacing by the movement alone", formula: "width * sealantCapability / strain", basis: brickSpacing },
  },
  cautions: [movementCaution, "Rules of the trade set a greatest spacing besides: see movement.masonry-spacing and movement.movement-spacing."],
});
