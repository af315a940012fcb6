import { sum } from "../core/quantity-arithmetic.js";
import { type FaceMeasures, measureFaces, type Meeting, type Stone } from "./face-measures.js";
import type { ReadJob } from "./job.js";
import { lengthOf, noughtOf, type Part } from "./measured.js";
import { say } from "./refusals.js";
import type { Taking } from "./taking.js";

type Elevation = ReadJob["elevations"][number];

/** The faces of one elevation, or of the columns of one kind. */
export interface FacesOfPart extends FaceMeasures {
  readonly name: string;
}

/**
 * The faces of each elevation by itself; every corner between two elevations has to say which the other one is, since half
 * of its cover lies there. Nothing where a corner does not: that is a problem.
 */
export function measureFacesByPart(stone: Stone, taking: Taking): readonly FacesOfPart[] | undefined {
  const { job: { elevations }, measures, work } = taking;
  const untold = elevations.flatMap(({ outsideCorners, insideCorners = [] }, index) =>
    [["outsideCorners", outsideCorners] as const, ["insideCorners", insideCorners] as const].flatMap(([list, corners]) =>
      corners.flatMap((corner, at) => (corner.otherFace === "elevation" && corner.with === undefined ? [["elevations", index, list, at, "with"]] : [])),
    ),
  );
  for (const path of untold) work.problem({ code: "missing", path, given: "", wanted: say("nameOtherElevation") });
  if (untold.length > 0) return undefined;
  return measures.parts.map((part) => ({ name: part.name, ...measureFaces(part, meetingOfPart(part, elevations), stone, taking) }));
}

/** An elevation's own corners with others, and those that others list with it; a column has both faces of its corners. */
function meetingOfPart(part: Part, elevations: readonly Elevation[]): Meeting {
  const own = elevations.find(({ name }) => name === part.name);
  if (own === undefined) return { outside: sum([part.cladCorners, part.cladCorners]), inside: part.insideCorners };
  const listed = (key: "outsideCorners" | "insideCorners"): Meeting["outside"] =>
    lengthOf(elevations.flatMap((one) => (one[key] ?? []).filter((corner) => corner.with === part.name).map(({ height, count }) => ({ length: height, count }))), noughtOf(part.base));
  return { outside: sum([part.cladCorners, listed("outsideCorners")]), inside: sum([part.insideCorners, listed("insideCorners")]) };
}
