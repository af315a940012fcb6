import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { coatingOrder } from "../../film/coating-order.js";
import { barrierArea } from "../../membrane/barrier-area.js";
import type { LayerOf } from "../job.js";
import { noughtOf } from "../measured.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";

/** Columns and soffits, as rectangles. */
function besidesWalls({ job, measures }: Taking): readonly { readonly shape: { readonly kind: "rectangle"; readonly width: Quantity<"length">; readonly height: Quantity<"length"> }; readonly count: Quantity<"count"> }[] {
  const columns = measures.parts.slice(job.elevations.length).flatMap(({ sheetFaces }) => sheetFaces);
  const soffits = job.elevations.flatMap(({ soffits: under = [] }) => under);
  return [
    ...columns.map(({ length, height, count }) => ({ shape: { kind: "rectangle" as const, width: length, height }, count })),
    ...soffits.map(({ length, depth, count }) => ({ shape: { kind: "rectangle" as const, width: length, height: depth }, count })),
  ];
}

/** Barrier on the walls, on columns and soffits, and into the openings. */
export function barrierLines(layer: LayerOf<"barrier">, path: Path, taking: Taking): readonly OrderLine[] {
  const { job, work } = taking;
  const { name, wetFilm, coats, deductFrom } = layer;
  const item = taking.item(name, path);
  const [allowance, pack] = [taking.allowance(item), taking.pack(item, "volume")];
  if (deductFrom === undefined) work.assume(`${name}: all openings are deducted`);
  work.assume(`${name}: taken over the faces as they were measured, and into the openings all round, thresholds too, as far as the face turns in`);
  const area = work.attempt(barrierArea, {
    walls: [...job.elevations.map(({ shape }) => ({ shape })), ...besidesWalls(taking)],
    openings: job.elevations.flatMap(({ openings }) => openings.map(({ shape, count, returnDepth }) => ({ shape, count, returnDepth }))),
    deductFrom: deductFrom ?? noughtOf(taking.measures.walls),
  }, path);
  if (allowance === undefined || pack === undefined || area === undefined) return [];
  const solution = work.attempt(coatingOrder, { area: area.answers.net, wetFilm, coats, packVolume: pack.volume, ...allowance }, path);
  if (solution === undefined) return [];
  const { net, toOrder, packs } = solution.answers;
  const [share, allowanceIs] = "waste" in allowance ? [allowance.waste, "waste" as const] : [allowance.lossShare, "lossShare" as const];
  return [orderLine({ item, layer: name, net, allowance: share, allowanceIs, toOrder, pack: pack.volume, packs, solution })];
}
