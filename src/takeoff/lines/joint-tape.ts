import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { sum } from "../../core/quantity-arithmetic.js";
import { boardJointEstimate } from "../../boards/board-joint-estimate.js";
import { boardJointTape } from "../../boards/board-joint-tape.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** Tape over the joints of a layer of boards and round the outside corners. */
export function jointTapeLines(layer: LayerOf<"joint tape">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { job, measures, work } = taking;
  const { name, over, overlaps, overlap } = layer;
  const boards = job.layers.find((one): one is LayerOf<"boards"> => one.kind === "boards" && one.name === over);
  if (boards === undefined) {
    const names = job.layers.flatMap((one) => (one.kind === "boards" ? [one.name] : []));
    work.problem({ code: "notAChoice", path: [...path, "over"], given: `"${over}"`, wanted: say("nameALayerOfBoards", { of: names }) });
    return [];
  }
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  const estimate = {
    area: face,
    boardWidth: boards.acrossStuds,
    boardHeight: boards.alongStuds,
    outline: measures.outline,
    outsideCorners: sum([measures.cladCorners, measures.uncladCorners]),
  };
  const joints = work.attempt(boardJointEstimate, estimate, path);
  if (waste === undefined || pack === undefined || joints === undefined) return [];
  const { jointLength } = joints.answers;
  const solution = work.attempt(boardJointTape, { jointLength, overlaps, rollLength: pack.length, waste, ...(overlap === undefined ? {} : { overlap }) }, path);
  if (solution === undefined) return [];
  const { net, withWaste, rolls } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: rolls, solution })];
}
