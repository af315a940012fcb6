// What can be and what cannot. A shape has a width and a height; a trapezoid may come to a point at one side; a corner
// lies anywhere.
import { describe } from "vitest";
import { archedOpening } from "../../src/shapes/arched-opening.js";
import { circle } from "../../src/shapes/circle.js";
import { circularSegment } from "../../src/shapes/circular-segment.js";
import { gable } from "../../src/shapes/gable.js";
import { polygonEdge } from "../../src/shapes/polygon-edge.js";
import { rectangle } from "../../src/shapes/rectangle.js";
import { trapezoid } from "../../src/shapes/trapezoid.js";
import { openingMeasures } from "../../src/shapes/opening-measures.js";
import { wallMeasures } from "../../src/shapes/wall-measures.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(archedOpening, { width: "above 0 ft", height: "from 0 ft", archArea: "above 0 ft2", arc: "above 0 ft" });
  itHoldsTheLimits(circle, { diameter: "above 0 ft" });
  itHoldsTheLimits(circularSegment, { width: "above 0 ft", rise: "above 0 ft" });
  itHoldsTheLimits(gable, { width: "above 0 ft", height: "above 0 ft" });
  itHoldsTheLimits(polygonEdge, { fromX: "any ft", fromY: "any ft", toX: "any ft", toY: "any ft" });
  itHoldsTheLimits(rectangle, { width: "above 0 ft", height: "above 0 ft" });
  itHoldsTheLimits(trapezoid, { width: "above 0 ft", leftHeight: "from 0 ft", rightHeight: "from 0 ft" });

  const size = "above 0 ft";
  itHoldsTheLimitsIn(openingMeasures, "a rectangle", { kind: "rectangle", width: "3 ft", height: "4 ft" }, { width: size, height: size });
  itHoldsTheLimitsIn(openingMeasures, "an arch", { kind: "arched", width: "3 ft", height: "4 ft", rise: "1 ft" }, { width: size, height: "from 0 ft", rise: size });
  itHoldsTheLimitsIn(openingMeasures, "a circle", { kind: "round", diameter: "3 ft" }, { diameter: size });
  itHoldsTheLimitsIn(wallMeasures, "a rectangle", { kind: "rectangle", width: "30 ft", height: "9 ft" }, { width: size, height: size });
  itHoldsTheLimitsIn(wallMeasures, "a gable", { kind: "gable", width: "30 ft", height: "9 ft" }, { width: size, height: size });
  itHoldsTheLimitsIn(wallMeasures, "a trapezoid", { kind: "trapezoid", width: "30 ft", leftHeight: "9 ft", rightHeight: "8 ft" }, { width: size, leftHeight: "from 0 ft", rightHeight: "from 0 ft" });
  itHoldsTheLimitsIn(wallMeasures, "a segment", { kind: "segment", width: "30 ft", rise: "9 ft" }, { width: size, rise: size });
});
