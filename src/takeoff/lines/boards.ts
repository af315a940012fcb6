import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { isNought } from "../../core/quantity-arithmetic.js";
import { boardCount } from "../../boards/board-count.js";
import { linearOrder } from "../../boards/linear-order.js";
import { boardEdgesOnStuds } from "../../fasteners/board-edges-on-studs.js";
import { boardScrews } from "../../fasteners/board-screws.js";
import { screwOrder } from "../../fasteners/screw-order.js";
import { edgeBacking } from "../edge-backing.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";

/** Boards of one layer, their screws, and backing where an edge meets no stud. */
export function boardLines(layer: LayerOf<"boards">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const { name, acrossStuds, alongStuds, edgesBacked, screwSpacing, edgeDistance } = layer;
  const studs = taking.layer("studs");
  if (studs === undefined) {
    work.problem({ code: "missing", path: ["layers"], given: "", wanted: `${name} is screwed to studs; begin the layers with { "kind": "studs", "spacing": … }` });
    return [];
  }
  const item = taking.item(name, path);
  const waste = taking.waste(item);
  const onStuds = work.attempt(boardEdgesOnStuds, { acrossStuds, alongStuds, studSpacing: studs.spacing, edgesBacked }, path);
  const perBoard = work.attempt(boardScrews, { acrossStuds, alongStuds, studSpacing: studs.spacing, screwSpacing, ...(edgeDistance === undefined ? {} : { edgeDistance }) }, path);
  if (waste === undefined || onStuds === undefined || perBoard === undefined) return [];
  const boards = work.attempt(boardCount, { area: face, boardWidth: acrossStuds, boardHeight: alongStuds, waste }, path);
  if (boards === undefined) return [];
  const { net, placed, toOrder } = boards.answers;
  const line = orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, packs: toOrder, solution: boards });
  const { backing } = onStuds.answers;
  const screws = screwLines(layer, placed, perBoard.answers.screws, path, taking);
  return [line, ...screws, ...(isNought(backing) ? [] : backingLines(layer, placed, backing, path, taking))];
}

function screwLines({ name }: LayerOf<"boards">, boards: Quantity<"count">, screwsPerBoard: Quantity<"count">, path: Path, taking: Taking): readonly OrderLine[] {
  const item = taking.item(`${name} screws`, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "pieces")];
  if (waste === undefined || pack === undefined) return [];
  const solution = taking.work.attempt(screwOrder, { boards, screwsPerBoard, waste, packCount: pack.pieces }, path);
  if (solution === undefined) return [];
  const { net, toOrder, boxes } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.pieces, packs: boxes, solution })];
}

function backingLines({ name }: LayerOf<"boards">, boards: Quantity<"count">, backing: Quantity<"length">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const item = taking.item(`${name} edge backing`, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  const length = work.attempt(edgeBacking, { boards, backing }, path)?.answers.length;
  if (waste === undefined || pack === undefined || length === undefined) return [];
  const solution = work.attempt(linearOrder, { length, pieceLength: pack.length, lap: "0 in", waste }, path);
  if (solution === undefined) return [];
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net: length, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: toOrder, solution })];
}
