import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import type { WallMeasures } from "./measures.js";
import type { Point } from "./outline-fault.js";
import { polygonEdge } from "./polygon-edge.js";

/** The measures of a polygon whose points have been found to be an outline. */
export function polygonMeasures(points: readonly Point[], work: Work): WallMeasures {
  const edges = points.map((from, index) => {
    const to = points[(index + 1) % points.length] as Point;
    const { length, areaUnder } = work.part(polygonEdge, { fromX: from.x, fromY: from.y, toX: to.x, toY: to.y }).answers;
    return { edge: { name: `edge ${String(index + 1)}`, from, to, length }, areaUnder };
  });
  const area = sum(edges.map(({ areaUnder }) => areaUnder));
  return {
    // Taken clockwise, the corners give the negative of the area.
    area: compare(area, subtract(area, area)) < 0 ? subtract(subtract(area, area), area) : area,
    perimeter: sum(edges.map(({ edge }) => edge.length)),
    width: reach(points.map(({ x }) => x)),
    height: reach(points.map(({ y }) => y)),
    edges: edges.map(({ edge }) => edge),
  };
}

/** From the least to the most. */
function reach(values: readonly Quantity<"length">[]): Quantity<"length"> {
  const sorted = [...values].sort(compare);
  return subtract(sorted.at(-1) as Quantity<"length">, sorted[0] as Quantity<"length">);
}
