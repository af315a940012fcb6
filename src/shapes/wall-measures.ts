import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { isNought, subtract } from "../core/quantity-arithmetic.js";
import { nested } from "../schema/nested.js";
import { circularSegment } from "./circular-segment.js";
import { gable } from "./gable.js";
import type { WallEdge, WallMeasures } from "./measures.js";
import { polygonMeasures } from "./polygon-measures.js";
import { rectangle } from "./rectangle.js";
import { trapezoid } from "./trapezoid.js";
import { type ReadWallShape, wallShapeInput } from "./wall-shape.js";

/**
 * Area, perimeter, greatest width and height, and edges of a wall or a part of one.
 *
 * @example
 * ```ts
 * const front = wallMeasures({ kind: "gable", width: "24 ft", height: "5 ft" });
 * front.area.toString(); // "60 ft2"
 * front.perimeter.toString(); // "50 ft"
 * front.edges[1].name; // "right rake"
 * ```
 */
export const wallMeasures = /* @__PURE__ */ composed({
  id: "shapes.wall-measures",
  title: "Measures of a wall",
  reads: /* @__PURE__ */ nested(wallShapeInput),
  run: (shape, work) => measuresOf(shape, work),
});

function measuresOf(shape: ReadWallShape, work: Work): WallMeasures {
  switch (shape.kind) {
    case "rectangle": {
      const { width, height } = shape;
      const { area, perimeter } = work.part(rectangle, { width, height }).answers;
      return { area, perimeter, width, height, edges: uprightEdges(width, height, height, width) };
    }
    case "trapezoid": {
      const { width, leftHeight, rightHeight } = shape;
      const { area, perimeter, top, height } = work.part(trapezoid, { width, leftHeight, rightHeight }).answers;
      return { area, perimeter, width, height, edges: uprightEdges(width, leftHeight, rightHeight, top) };
    }
    case "gable": {
      const { width, height } = shape;
      const { area, perimeter, rake, halfWidth } = work.part(gable, { width, height }).answers;
      const nought = subtract(width, width);
      const [left, right, peak] = [{ x: nought, y: nought }, { x: width, y: nought }, { x: halfWidth, y: height }];
      const edges = [
        { name: "base", from: left, to: right, length: width },
        { name: "right rake", from: right, to: peak, length: rake },
        { name: "left rake", from: peak, to: left, length: rake },
      ];
      return { area, perimeter, width, height, edges };
    }
    case "segment": {
      const { width, rise } = shape;
      const { area, perimeter, arc } = work.part(circularSegment, { width, rise }).answers;
      const nought = subtract(width, width);
      const [left, right] = [{ x: nought, y: nought }, { x: width, y: nought }];
      const edges = [{ name: "base", from: left, to: right, length: width }, { name: "top", from: right, to: left, length: arc, rise }];
      return { area, perimeter, width, height: rise, edges };
    }
    case "polygon":
      return polygonMeasures(shape.points, work);
  }
}

/** The edges of a wall with upright sides; a side without height is none. */
function uprightEdges(width: Quantity<"length">, leftHeight: Quantity<"length">, rightHeight: Quantity<"length">, top: Quantity<"length">): readonly WallEdge[] {
  const nought = subtract(width, width);
  const [left, right, rightTop, leftTop] = [{ x: nought, y: nought }, { x: width, y: nought }, { x: width, y: rightHeight }, { x: nought, y: leftHeight }];
  const edges = [
    { name: "base", from: left, to: right, length: width },
    { name: "right", from: right, to: rightTop, length: rightHeight },
    { name: "top", from: rightTop, to: leftTop, length: top },
    { name: "left", from: leftTop, to: left, length: leftHeight },
  ];
  return edges.filter(({ length }) => !isNought(length));
}
