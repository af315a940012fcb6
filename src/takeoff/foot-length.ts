import type { Quantity } from "../core/quantity.js";
import type { Taking } from "./taking.js";

/** The foot of all walls, openings that reach it out, for the layer of a name; with what it takes for granted. */
export function footLength(name: string, { job, measures, work }: Taking): Quantity<"length"> {
  if (job.elevations.some(({ openings }) => openings.some(({ toBase }) => toBase === undefined))) {
    work.assume(`${name}: openings of which toBase is not said stand above the foot of the wall`);
  }
  if (job.elevations.some(({ shape }) => shape.kind === "gable" || shape.kind === "segment")) {
    work.assume(`${name}: a gable or a segment has a foot of its own; one that stands on a clad wall is drawn together with it, as a polygon`);
  }
  return measures.base;
}
