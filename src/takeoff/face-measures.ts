import type { Quantity } from "../core/quantity.js";
import { isNought, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { backingFace } from "./backing-face.js";
import { faceGrowth } from "./face-growth.js";
import type { LayerOf } from "./job.js";
import { returnCornerCover } from "./return-corner-cover.js";
import { stoneFace } from "./stone-face.js";
import type { Taking } from "./taking.js";
import { wallCornerCover } from "./wall-corner-cover.js";

/** The faces of a job: that of the stone with its corners, and that of the backing. */
export interface FaceMeasures {
  /** Whole stone face, corner cover in. */
  readonly face: Quantity<"area">;
  /** Face of the backing, openings out. */
  readonly backing: Quantity<"area">;
  /** What corner units cover. */
  readonly cornerCover: Quantity<"area">;
  /** Edges that are set with corner units. */
  readonly cornerEdges: Quantity<"length">;
}

/** The stone, and the bed it stands on, before the backing. */
export interface Stone {
  readonly units: LayerOf<"units">;
  readonly bed: Quantity<"length">;
}

/** Works out the faces from what was measured; where no stone is set, the faces are those measured. */
export function measureFaces({ job, measures, work }: Taking, stone: Stone | undefined): FaceMeasures {
  const { walls, openings, returns, cladCorners, uncladCorners, returnEdges } = measures;
  const noArea = subtract(walls, walls);
  // Two clad faces meet at a corner between elevations and at a return; one where the other face is not clad.
  const edgeFaces = sum([times(cladCorners, 2), uncladCorners, times(returnEdges, 2)]);
  const growth = stone === undefined ? noArea : work.part(faceGrowth, { edgeFaces, unitThickness: stone.units.unitThickness, bed: stone.bed }).answers.growth;
  const fromBacking = job.measuredTo === "backing";
  const backing = work.part(backingFace, { walls, openings, growth: fromBacking ? noArea : growth }).answers.face;
  const { cover, turned, edges } = stone === undefined ? { cover: noArea, turned: noArea, edges: subtract(cladCorners, cladCorners) } : cornersOf(stone, { job, measures, work });
  const { face } = work.part(stoneFace, { walls, openings, returns, turned, growth: fromBacking ? growth : noArea }).answers;
  return { face, backing, cornerCover: cover, cornerEdges: edges };
}

interface Corners {
  readonly cover: Quantity<"area">;
  readonly turned: Quantity<"area">;
  readonly edges: Quantity<"length">;
}

function cornersOf({ units }: Stone, { job, measures, work }: Pick<Taking, "job" | "measures" | "work">): Corners {
  const noArea = quantity("area", "0 ft2");
  const { cladCorners, uncladCorners, cornerReturns } = measures;
  const edges = sum([cladCorners, uncladCorners, ...cornerReturns.map(({ edgeHeight }) => edgeHeight)]);
  const path = ["layers", job.layers.indexOf(units), "corners"];
  if (units.corners === undefined) {
    if (!isNought(edges)) work.problem({ code: "missing", path, given: "", wanted: `outside corners of ${edges.toString()} want corner units: give a name, longLeg and shortLeg` });
    return { cover: noArea, turned: noArea, edges };
  }
  const { longLeg, shortLeg } = units.corners;
  const clad = work.part(wallCornerCover, { edgeHeight: cladCorners, longLeg, shortLeg }, path).answers;
  const unclad = work.part(wallCornerCover, { edgeHeight: uncladCorners, longLeg, shortLeg }, path).answers;
  const inReturns = cornerReturns.map(({ edgeHeight, returnDepth, path: at }) => work.part(returnCornerCover, { edgeHeight, returnDepth, longLeg, shortLeg }, at).answers.cover);
  return { cover: sum([clad.bothFaces, unclad.bothFaces, ...inReturns]), turned: unclad.eachFace, edges };
}
