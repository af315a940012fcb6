import type { Quantity } from "../core/quantity.js";
import { compare, isNought, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { backingFace } from "./backing-face.js";
import { faceGrowth } from "./face-growth.js";
import { faceLoss } from "./face-loss.js";
import type { LayerOf } from "./job.js";
import { noughtOf, type Part } from "./measured.js";
import { say } from "./refusals.js";
import { returnCornerCover } from "./return-corner-cover.js";
import { stoneFace } from "./stone-face.js";
import type { Taking } from "./taking.js";
import { wallCornerCover } from "./wall-corner-cover.js";

/** The faces of a job, or of one of its elevations: that of the stone with its corners, and that of the backing. */
export interface FaceMeasures {
  /** Whole stone face, corner cover in. */
  readonly face: Quantity<"area">;
  /** The stone face that is left for flat units. */
  readonly flats: Quantity<"area">;
  /** What corner units cover. */
  readonly cornerCover: Quantity<"area">;
  /** Edges that are set with corner units. */
  readonly cornerEdges: Quantity<"length">;
  /** Face of the backing, openings out, soffits in. */
  readonly backing: Quantity<"area">;
}

/** The stone, and the bed it stands on, before the backing. */
export interface Stone {
  readonly units: LayerOf<"units">;
  readonly bed: Quantity<"length">;
}

/** Corners counted for the faces that meet there: two faces at each for a whole job, its own alone for an elevation. */
export interface Meeting {
  readonly outside: Quantity<"length">;
  readonly inside: Quantity<"length">;
}

/** The faces that meet at the corners of a whole job. */
export function meetingOfJob({ cladCorners, insideCorners }: Omit<Part, "name">): Meeting {
  return { outside: times(cladCorners, 2), inside: times(insideCorners, 2) };
}

/** Works out the faces from what was measured; where no stone is set, the faces are those measured. */
export function measureFaces(measures: Omit<Part, "name">, meeting: Meeting, stone: Stone | undefined, { job, work }: Taking): FaceMeasures {
  const { walls, openings, soffits, returns, uncladCorners, returnEdges } = measures;
  const noArea = noughtOf(walls);
  // Where the face round a corner is not clad, one face meets there; at a return two do.
  const edgeFaces = sum([meeting.outside, uncladCorners, times(returnEdges, 2)]);
  const before = stone === undefined ? undefined : { unitThickness: stone.units.unitThickness, bed: stone.bed };
  const growth = before === undefined ? noArea : work.part(faceGrowth, { edgeFaces, ...before }).answers.growth;
  const loss = before === undefined || isNought(meeting.inside) ? noArea : work.part(faceLoss, { insideFaces: meeting.inside, ...before }).answers.loss;
  const [onBacking, onStone] = job.measuredTo === "backing" ? [{ growth: noArea, loss: noArea }, { growth, loss }] : [{ growth, loss }, { growth: noArea, loss: noArea }];
  const backing = work.part(backingFace, { walls, openings, soffits, ...onBacking }).answers.face;
  const { cover, turned, edges } = cornersOf(measures, meeting, stone, { job, work });
  const { face } = work.part(stoneFace, { walls, openings, soffits, returns, turned, ...onStone }).answers;
  return { face, flats: subtract(face, cover), cornerCover: cover, cornerEdges: edges, backing };
}

interface Corners {
  readonly cover: Quantity<"area">;
  readonly turned: Quantity<"area">;
  readonly edges: Quantity<"length">;
}

function cornersOf(measures: Omit<Part, "name">, meeting: Meeting, stone: Stone | undefined, { job, work }: Pick<Taking, "job" | "work">): Corners {
  const { walls, cladCorners, uncladCorners, cornerReturns } = measures;
  const noArea = noughtOf(walls);
  if (stone === undefined) return { cover: noArea, turned: noArea, edges: noughtOf(cladCorners) };
  const edges = sum([cladCorners, uncladCorners, ...cornerReturns.map(({ edgeHeight }) => edgeHeight)]);
  const path = ["layers", job.layers.indexOf(stone.units), "corners"];
  if (stone.units.corners === undefined) {
    if (!isNought(edges)) work.problem({ code: "missing", path, given: "", wanted: say("cornersWantUnits", { edges }) });
    return { cover: noArea, turned: noArea, edges };
  }
  const { longLeg, shortLeg } = stone.units.corners;
  const at = (edgeHeight: Quantity<"length">): { readonly bothFaces: Quantity<"area">; readonly eachFace: Quantity<"area"> } => work.part(wallCornerCover, { edgeHeight, longLeg, shortLeg }, path).answers;
  // Legs turn about, so that each of the faces that meet at a corner has half of the cover; of an elevation there is one.
  const clad = compare(meeting.outside, times(cladCorners, 2)) === 0 ? at(cladCorners).bothFaces : at(meeting.outside).eachFace;
  const unclad = at(uncladCorners);
  const inReturns = cornerReturns.map(({ edgeHeight, returnDepth, path: inJob }) => work.part(returnCornerCover, { edgeHeight, returnDepth, longLeg, shortLeg }, inJob).answers.cover);
  return { cover: sum([clad, unclad.bothFaces, ...inReturns]), turned: unclad.eachFace, edges };
}
