import { common } from "../../core/common-refusals.js";
import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { isNought, sum, times } from "../../core/quantity-arithmetic.js";
import { linearOrder } from "../../boards/linear-order.js";
import { refusal } from "../../core/refuse-all.js";
import { footLength } from "../foot-length.js";
import type { LayerOf } from "../job.js";
import { noughtOf } from "../measured.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { overrunLength } from "../overrun-length.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** Sills, caps, screeds, flashings and beads: pieces along edges, by length. */
export function trimLines(layer: LayerOf<"trim">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const { name, along, beyond, lap } = layer;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  if (along.length === 0) work.problem(refusal([...path, "along"], common("noneGiven", { of: "edge" }), say("nameEdges")));
  const ends = along.filter((edge) => edge === "sills" || edge === "heads");
  if (ends.length > 0 && beyond === undefined) work.problem({ code: "missing", path: [...path, "beyond"], given: "", wanted: say("beyondTheEnds") });
  if (ends.length === 0 && beyond !== undefined) work.problem({ code: "unknown", path: [...path, "beyond"], given: "", wanted: say("onlySillsAndHeads") });
  const net = sum([noughtOf(taking.measures.base), ...[...new Set(along)].map((edge) => lengthAlong(edge, name, beyond, path, taking))]);
  if (isNought(net) && along.length > 0 && !taking.shared) work.problem({ code: "refused", path: [...path, "along"], given: along.join(", "), wanted: say("jobHasNone") });
  if (waste === undefined || pack === undefined || isNought(net)) return [];
  const solution = work.attempt(linearOrder, { length: net, pieceLength: pack.length, lap, waste }, path);
  if (solution === undefined) return [];
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: toOrder, solution })];
}

function lengthAlong(edge: LayerOf<"trim">["along"][number], name: string, beyond: Quantity<"length"> | undefined, path: Path, taking: Taking): Quantity<"length"> {
  const { measures, work } = taking;
  const past = (openings: Quantity<"length">, count: Quantity<"count">): Quantity<"length"> =>
    isNought(openings) || beyond === undefined ? openings : (work.attempt(overrunLength, { length: openings, ends: times(count, 2), beyond }, path)?.answers.runs ?? openings);
  switch (edge) {
    case "base":
      return footLength(name, taking);
    case "sills":
      return past(measures.sills, measures.sillCount);
    case "jambs":
      return measures.jambs;
    case "heads":
      return past(measures.heads, measures.headCount);
    case "round openings":
      return measures.roundOpenings;
    case "caps":
      return measures.caps;
    case "outside corners":
      return sum([measures.cladCorners, measures.uncladCorners]);
    case "inside corners":
      return sum([measures.insideCorners, measures.uncladInsideCorners]);
    case "soffits":
      return measures.soffitLengths;
  }
}
