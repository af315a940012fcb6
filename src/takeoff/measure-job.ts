import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import { nearest, type Path } from "../core/problems.js";
import { times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { columnFaces } from "./column-faces.js";
import type { ReadJob } from "./job.js";
import { measureElevation } from "./measure-elevation.js";
import { noughtOf, type Part, together } from "./measured.js";
import { say } from "./refusals.js";

/** What is measured on a job, together and by elevation; columns of one kind are a part of their own. */
export interface JobMeasures extends Omit<Part, "name"> {
  readonly parts: readonly Part[];
}

/** Measures all elevations and columns of a job; what does not fit is added to the problems. */
export function measureJob({ elevations, columns = [] }: Pick<ReadJob, "elevations" | "columns">, work: Work): JobMeasures {
  if (elevations.length + columns.length === 0) work.refuse(refusal(["elevations"], common("noneGiven", { of: "elevation" }), say("giveOneOrColumns")));
  const parts = [
    ...elevations.map((elevation, index) => measureElevation(elevation, ["elevations", index], work)),
    ...columns.map((column, index) => measureColumn(column, ["columns", index], work)),
  ];
  refuseDoubles([...elevations.map(({ name }, index) => ({ name, path: ["elevations", index] })), ...columns.map(({ name }, index) => ({ name, path: ["columns", index] }))], work);
  refuseStrayCorners(elevations, work);
  return { ...together(parts), parts };
}

function measureColumn({ name, width, depth, height, count }: NonNullable<ReadJob["columns"]>[number], path: Path, work: Work): Part {
  const { area, foot, corners, outline } = work.part(columnFaces, { width, depth, height }, path).answers;
  const [noLength, noArea, none] = [noughtOf(foot), noughtOf(area), quantity("count", 0)];
  return {
    name,
    walls: times(area, count),
    openings: noArea,
    soffits: noArea,
    returns: noArea,
    outline: times(outline, count),
    base: times(foot, count),
    cladCorners: times(corners, count),
    uncladCorners: noLength,
    insideCorners: noLength,
    uncladInsideCorners: noLength,
    returnEdges: noLength,
    sills: noLength,
    jambs: noLength,
    heads: noLength,
    roundOpenings: noLength,
    caps: noLength,
    soffitLengths: noLength,
    sillCount: none,
    headCount: none,
    cornerReturns: [],
    sheetFaces: [{ length: foot, height, count }],
  };
}

/** Two walls of one name could not be told apart in what follows. */
function refuseDoubles(named: readonly { readonly name: string; readonly path: Path }[], work: Work): void {
  for (const [index, { name, path }] of named.entries()) {
    if (named.findIndex((one) => one.name === name) === index) continue;
    work.problem({ code: "refused", path: [...path, "name"], given: `"${name}"`, wanted: common("takenName", { of: "an elevation" }) });
  }
}

/** A corner belongs to two walls of the job, or to one where nothing is clad round it. */
function refuseStrayCorners(elevations: ReadJob["elevations"], work: Work): void {
  const names = elevations.map(({ name }) => name);
  for (const [index, { name, outsideCorners, insideCorners = [] }] of elevations.entries()) {
    for (const [list, corners] of [["outsideCorners", outsideCorners], ["insideCorners", insideCorners]] as const) {
      for (const [at, { otherFace, with: other }] of corners.entries()) {
        if (other === undefined) continue;
        const path = ["elevations", index, list, at, "with"];
        const near = nearest(other, names.filter((one) => one !== name));
        if (otherFace === "unclad") work.problem({ code: "refused", path, given: `"${other}"`, wanted: say("faceNotClad") });
        else if (other === name) work.problem({ code: "refused", path, given: `"${other}"`, wanted: say("betweenTwo") });
        else if (!names.includes(other)) work.problem({ code: "notAChoice", path, given: `"${other}"`, wanted: near === undefined ? say("noSuchWall", { of: names }) : { kind: "near", key: near } });
      }
    }
  }
}
