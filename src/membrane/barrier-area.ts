import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { nested } from "../schema/nested.js";
import { openingMeasures } from "../shapes/opening-measures.js";
import { wallMeasures } from "../shapes/wall-measures.js";
import { barrierInput } from "./barrier-input.js";
import { netBarrier } from "./net-barrier.js";
import { openingReturns } from "./opening-returns.js";
import { say } from "./refusals.js";
import { returnStrip } from "./return-strip.js";

/**
 * Area of a barrier on walls: gross, the openings from a stated size up deducted, and what is turned into openings, over
 * parapets, under sills and round corners. An opening exactly of the stated size is deducted; its returns count whether it
 * is deducted or not.
 *
 * @example
 * ```ts
 * const barrier = barrierArea({
 *   walls: [{ shape: { kind: "rectangle", width: "40 ft", height: "9 ft" } }, { shape: { kind: "gable", width: "24 ft", height: "5 ft" } }],
 *   openings: [{ shape: { kind: "rectangle", width: "3 ft", height: "4 ft" }, count: 4, returnDepth: "6 in" }],
 *   deductFrom: "0 ft2",
 *   edges: [{ edge: "corner", length: "9 ft", depth: "1 ft" }],
 * });
 * barrier.gross.toString(); // "420 ft2"
 * barrier.deducted.toString(); // "48 ft2"
 * barrier.returns.toString(); // "37 ft2"
 * barrier.net.toString(); // "409 ft2"
 * ```
 */
export const barrierArea = /* @__PURE__ */ composed({
  id: "membrane.barrier-area",
  title: "Area of a barrier",
  reads: /* @__PURE__ */ nested(barrierInput),
  run: ({ walls, openings, deductFrom, edges = [] }, work) => {
    if (walls.length === 0) work.refuse(refusal(["walls"], common("noneGiven", { of: "wall" }), common("giveOneOrMore")));
    const wallParts = walls.map(({ shape, count }, index) => {
      const { area, width } = work.part(wallMeasures, shape, ["walls", index, "shape"]).answers;
      return { area: times(area, count), width };
    });
    const gross = sum(wallParts.map(({ area }) => area));
    const nought = subtract(gross, gross);
    const widest = wallParts.map(({ width }) => width).reduce((most, width) => (compare(width, most) > 0 ? width : most));

    const openingParts = openings.map((opening, index) => {
      const path = ["openings", index];
      const measures = work.part(openingMeasures, opening.shape, [...path, "shape"]).answers;
      const { area, width } = measures;
      if (compare(width, widest) > 0) work.problem(refusal([...path, "shape"], say("openingWide", { width }), say("noWallSoWide", { widest })));
      return { area: times(area, opening.count), deducted: compare(area, deductFrom) >= 0, returns: times(openingReturns(opening, measures, path, work), opening.count) };
    });
    const openingArea = sum([nought, ...openingParts.map(({ area }) => area)]);
    if (compare(openingArea, gross) > 0) {
      work.refuse(refusal(["openings"], say("openingsOf", { area: openingArea }), say("wallsHave", { area: gross })));
    }
    const kept = openingParts.filter(({ deducted }) => !deducted);
    if (kept.length > 0) work.caution(`Openings under ${deductFrom.toString()} are not deducted, and their returns are counted all the same.`);

    const given = {
      gross,
      deducted: sum([nought, ...openingParts.filter(({ deducted }) => deducted).map(({ area }) => area)]),
      openingReturns: sum([nought, ...openingParts.map(({ returns }) => returns)]),
      edgeReturns: edgeReturns(edges, nought, work),
    };
    return { ...given, ...work.part(netBarrier, given).answers };
  },
});

/** A parapet, a sill or a corner past which the barrier goes. */
interface Edge {
  readonly length: Quantity<"length">;
  readonly depth: Quantity<"length">;
  readonly count: Quantity<"count">;
}

function edgeReturns(edges: readonly Edge[], nought: Quantity<"area">, work: Work): Quantity<"area"> {
  if (edges.length === 0) work.assume("nothing is counted over parapets, under sills or round corners, since no edges are given");
  return sum([nought, ...edges.map(({ length, depth, count }, index) => times(work.part(returnStrip, { length, depth }, ["edges", index]).answers.area, count))]);
}
