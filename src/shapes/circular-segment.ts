import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area, arc and perimeter of a circular segment: the curved top of a wall or an opening, up to a half circle.
 *
 * @example
 * ```ts
 * const arch = circularSegment({ width: "8 ft", rise: "2 ft" });
 * arch.radius.toString(); // "5 ft"
 * arch.arc.toString(); // "9.27295218 ft"
 * ```
 */
export const circularSegment = /* @__PURE__ */ calculation({
  id: "shapes.circular-segment",
  title: "Circular segment",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "width between the ends of the curve", above: 0 },
    rise: { is: "length", unit: ["ft", "m"], symbol: "f", says: "rise of the curve over its ends", above: 0 },
  },
  steps: {
    riseShare: { is: "ratio", symbol: "k", says: "rise for its width; a half circle has 0.5", formula: "rise / width", basis: geometry, atMost: 0.5 },
    radius: { is: "length", unit: ["ft", "m"], symbol: "r", formula: "(width ^ 2 / 4 + rise ^ 2) / (2 * rise)", basis: geometry },
    halfAngle: { is: "angle", unit: "deg", symbol: "a", says: "angle at the centre between the middle of the curve and its end", formula: "asin(width / (2 * radius))", basis: geometry },
    arc: { is: "length", unit: ["ft", "m"], symbol: "b", says: "length of the curve", formula: "2 * radius * halfAngle", basis: geometry },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "radius ^ 2 * halfAngle - width * (radius - rise) / 2", basis: geometry },
    perimeter: { is: "length", unit: ["ft", "m"], symbol: "p", formula: "width + arc", basis: geometry },
  },
});
