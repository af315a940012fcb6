import type { Work } from "../../core/composed.js";
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
import { noughtOf } from "../measured.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** Boards of one layer, their screws, and backing where an edge meets no stud. */
export function boardLines(layer: LayerOf<"boards">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const { name, acrossStuds, alongStuds, edgesBacked, screwSpacing, edgeDistance } = layer;
  const studs = taking.layer("studs");
  if (studs === undefined) {
    work.problem({ code: "missing", path: ["layers"], given: "", wanted: say("screwedToStuds", { layer: name }) });
    return [];
  }
  const onStuds = work.attempt(boardEdgesOnStuds, { acrossStuds, alongStuds, studSpacing: studs.spacing, edgesBacked }, path);
  const backing = onStuds?.answers.backing;
  // All items are asked for before any is worked out, so that all that is missing comes back at once.
  const item = taking.item(name, path);
  const waste = taking.waste(item);
  const screws = asked(`${name} screws`, "pieces", path, taking);
  const backed = backing === undefined || isNought(backing) ? undefined : asked(`${name} edge backing`, "length", path, taking);
  const perBoard = work.attempt(boardScrews, { acrossStuds, alongStuds, studSpacing: studs.spacing, screwSpacing, ...(edgeDistance === undefined ? {} : { edgeDistance }) }, path);
  const boards = waste && work.attempt(boardCount, { area: face, boardWidth: acrossStuds, boardHeight: alongStuds, waste }, path);
  if (waste === undefined || boards === undefined || backing === undefined || perBoard === undefined) return [];
  const { net, placed, toOrder } = boards.answers;
  return [
    orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, packs: toOrder, solution: boards }),
    ...(screws === undefined ? [] : screwLines(screws, name, placed, perBoard.answers.screws, path, work)),
    ...(backed === undefined ? [] : backingLines(backed, name, placed, backing, path, work)),
  ];
}

/** An item with its waste and its pack. */
interface Asked<Dimension extends "count" | "length"> {
  readonly item: string;
  readonly waste: Quantity<"ratio">;
  readonly pack: Quantity<Dimension>;
}

function asked(name: string, key: "pieces", path: Path, taking: Taking): Asked<"count"> | undefined;
function asked(name: string, key: "length", path: Path, taking: Taking): Asked<"length"> | undefined;
function asked(name: string, key: "pieces" | "length", path: Path, taking: Taking): Asked<"count" | "length"> | undefined {
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, key)];
  return waste === undefined || pack === undefined ? undefined : { item, waste, pack: pack[key] };
}

function screwLines({ item, waste, pack }: Asked<"count">, layer: string, boards: Quantity<"count">, screwsPerBoard: Quantity<"count">, path: Path, work: Work): readonly OrderLine[] {
  const solution = work.attempt(screwOrder, { boards, screwsPerBoard, waste, packCount: pack }, path);
  if (solution === undefined) return [];
  const { net, toOrder, boxes } = solution.answers;
  return [orderLine({ item, layer, net, allowance: waste, allowanceIs: "waste", toOrder, pack, packs: boxes, solution })];
}

function backingLines({ item, waste, pack }: Asked<"length">, layer: string, boards: Quantity<"count">, backing: Quantity<"length">, path: Path, work: Work): readonly OrderLine[] {
  const length = work.attempt(edgeBacking, { boards, backing }, path)?.answers.length;
  if (length === undefined) return [];
  const solution = work.attempt(linearOrder, { length, pieceLength: pack, lap: noughtOf(pack), waste }, path);
  if (solution === undefined) return [];
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer, net: length, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack, packs: toOrder, solution })];
}
