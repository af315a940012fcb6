import type { Path } from "../../core/problems.js";
import { coatingOrder } from "../../film/coating-order.js";
import { barrierArea } from "../../membrane/barrier-area.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";

/** Barrier on the walls and into the openings. */
export function barrierLines(layer: LayerOf<"barrier">, path: Path, taking: Taking): readonly OrderLine[] {
  const { job, work } = taking;
  const { name, wetFilm, coats, deductFrom } = layer;
  const item = taking.item(name, path);
  const [allowance, pack] = [taking.allowance(item), taking.pack(item, "volume")];
  if (deductFrom === undefined) work.assume(`${name}: all openings are deducted`);
  work.assume(`${name}: taken over the faces as they were measured, and into the openings as far as the face turns in`);
  const area = work.attempt(barrierArea, {
    walls: job.elevations.map(({ shape }) => ({ shape })),
    openings: job.elevations.flatMap(({ openings }) => openings.map(({ shape, count, returnDepth }) => ({ shape, count, returnDepth }))),
    deductFrom: deductFrom ?? "0 ft2",
  }, path);
  if (allowance === undefined || pack === undefined || area === undefined) return [];
  const solution = work.attempt(coatingOrder, { area: area.answers.net, wetFilm, coats, packVolume: pack.volume, ...allowance }, path);
  if (solution === undefined) return [];
  const { net, toOrder, packs } = solution.answers;
  const [share, allowanceIs] = "waste" in allowance ? [allowance.waste, "waste" as const] : [allowance.lossShare, "lossShare" as const];
  return [orderLine({ item, layer: name, net, allowance: share, allowanceIs, toOrder, pack: pack.volume, packs, solution })];
}
