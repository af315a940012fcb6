import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { subtract, sum, times } from "../core/quantity-arithmetic.js";
import { nested } from "../schema/nested.js";
import { archedOpening } from "./arched-opening.js";
import { circle } from "./circle.js";
import { circularSegment } from "./circular-segment.js";
import type { OpeningMeasures } from "./measures.js";
import { openingShapeInput, type ReadOpeningShape } from "./opening-shape.js";
import { rectangle } from "./rectangle.js";

/**
 * Area, perimeter and sides of an opening.
 *
 * @example
 * ```ts
 * const window = openingMeasures({ kind: "rectangle", width: "3 ft", height: "4.5 ft" });
 * window.area.toString(); // "13.5 ft2"
 * window.jambs.toString(); // "9 ft"
 * ```
 */
export const openingMeasures = /* @__PURE__ */ composed({
  id: "shapes.opening-measures",
  title: "Measures of an opening",
  reads: /* @__PURE__ */ nested(openingShapeInput),
  run: (shape, work) => measuresOf(shape, work),
});

function measuresOf(shape: ReadOpeningShape, work: Work): OpeningMeasures {
  switch (shape.kind) {
    case "rectangle": {
      const { width, height } = shape;
      const { area, perimeter } = work.part(rectangle, { width, height }).answers;
      return { area, perimeter, width, height, sill: width, jambs: times(height, 2), head: width, round: none(width) };
    }
    case "arched": {
      const { width, height, rise } = shape;
      const arch = work.part(circularSegment, { width, rise }).answers;
      const { area, jambs, perimeter } = work.part(archedOpening, { width, height, archArea: arch.area, arc: arch.arc }).answers;
      return { area, perimeter, width, height: sum([height, rise]), sill: width, jambs, head: arch.arc, round: none(width) };
    }
    case "round": {
      const { diameter } = shape;
      const { area, perimeter } = work.part(circle, { diameter }).answers;
      const nought = none(diameter);
      return { area, perimeter, width: diameter, height: diameter, sill: nought, jambs: nought, head: nought, round: perimeter };
    }
  }
}

function none(length: Quantity<"length">): Quantity<"length"> {
  return subtract(length, length);
}
