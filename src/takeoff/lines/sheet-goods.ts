import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { sum, times } from "../../core/quantity-arithmetic.js";
import { linearOrder } from "../../boards/linear-order.js";
import { sheetLaps } from "../../membrane/sheet-laps.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";
import { fastenerLines } from "./fasteners-by-area.js";

/** Sheets from a roll in level courses on every elevation; what is left of a roll goes on in the next course. */
export function sheetGoodsLines(layer: LayerOf<"sheet goods">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { measures, work } = taking;
  const { name, sheetWidth, sideLap, endLap, fastenersPerArea } = layer;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  const fasteners = fastenerLines(name, face, fastenersPerArea, path, taking);
  work.assume(`${name}: courses run the whole width and height of every elevation, openings in; a roll goes on from one course to the next`);
  if (waste === undefined || pack === undefined) return fasteners;
  const runs = measures.sheetFaces.map(({ length, height, count }) => {
    const laid = work.attempt(sheetLaps, { wallLength: length, wallHeight: height, sheetWidth, rollLength: pack.length, sideLap, endLap }, path);
    return laid && times(times(length, laid.answers.courses), count);
  });
  const known = runs.filter((run) => run !== undefined);
  if (known.length < runs.length) return fasteners;
  const net = sum(known);
  const solution = work.attempt(linearOrder, { length: net, pieceLength: pack.length, lap: endLap, waste }, path);
  if (solution === undefined) return fasteners;
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: toOrder, solution }), ...fasteners];
}
