import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { subtract, sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import type { OpeningMeasures } from "../shapes/measures.js";
import type { ReadBarrierOpening } from "./barrier-input.js";
import { say } from "./refusals.js";
import { returnStrip } from "./return-strip.js";

/** Barrier turned into one opening: to one depth all round, or to a depth of its own at sill, jambs and head. */
export function openingReturns(opening: ReadBarrierOpening, measures: OpeningMeasures, path: Path, work: Work): Quantity<"area"> {
  const { shape, returnDepth, returnDepths } = opening;
  const strip = (length: Quantity<"length">, depth: Quantity<"length">): Quantity<"area"> => work.part(returnStrip, { length, depth }, path).answers.area;
  if (returnDepth !== undefined && returnDepths === undefined) return strip(measures.perimeter, returnDepth);
  if (returnDepth !== undefined || returnDepths === undefined) {
    const given = returnDepth === undefined ? "" : "returnDepth and returnDepths";
    work.problem({ code: "either", path, given, wanted: { kind: "exactlyOne", of: ["returnDepth", "returnDepths"] } });
    return subtract(measures.area, measures.area);
  }
  if (shape.kind === "round") {
    work.problem(refusal([...path, "returnDepths"], say("roundHasNoParts"), say("oneDepthAllRound")));
    return subtract(measures.area, measures.area);
  }
  return sum([strip(measures.sill, returnDepths.sill), strip(measures.jambs, returnDepths.jambs), strip(measures.head, returnDepths.head)]);
}
