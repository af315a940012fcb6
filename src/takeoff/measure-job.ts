import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, isNought, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { returnStrip } from "../membrane/return-strip.js";
import { openingMeasures } from "../shapes/opening-measures.js";
import { wallMeasures } from "../shapes/wall-measures.js";
import type { ReadJob } from "./job.js";

type Elevation = ReadJob["elevations"][number];
type Opening = Elevation["openings"][number];

/** Edges of returns that are set with corner units, all of one depth. */
export interface ReturnEdges {
  readonly edgeHeight: Quantity<"length">;
  readonly returnDepth: Quantity<"length">;
  readonly path: Path;
}

/** What is measured on a job before any layer is looked at. */
export interface JobMeasures {
  readonly walls: Quantity<"area">;
  readonly openings: Quantity<"area">;
  /** Returns of the face into the openings. */
  readonly returns: Quantity<"area">;
  /** Round all walls and round all openings. */
  readonly outline: Quantity<"length">;
  /** Length of the foot of the walls, openings that reach it out. */
  readonly base: Quantity<"length">;
  /** Heights of outside corners between two elevations of the job. */
  readonly cladCorners: Quantity<"length">;
  /** Heights of outside corners round which nothing is clad. */
  readonly uncladCorners: Quantity<"length">;
  /** Edges at which the face turns into openings. */
  readonly returnEdges: Quantity<"length">;
  /** Of those, the ones set with corner units. */
  readonly cornerReturns: readonly ReturnEdges[];
}

const noLength = /* @__PURE__ */ (() => quantity("length", "0 ft"))();
const noArea = /* @__PURE__ */ (() => quantity("area", "0 ft2"))();

/** Measures all elevations of a job; what does not fit is added to the problems. */
export function measureJob(job: ReadJob, work: Work): JobMeasures {
  if (job.elevations.length === 0) work.refuse({ code: "refused", path: ["elevations"], given: "no elevation is given", wanted: "give one or more" });
  const measured = job.elevations.map((elevation, index) => measureElevation(elevation, ["elevations", index], work));
  const openings = measured.flatMap((one) => one.openings);
  const corners = job.elevations.flatMap(({ outsideCorners }) => outsideCorners);
  const heights = (of: "elevation" | "unclad"): Quantity<"length"> =>
    sum([noLength, ...corners.filter(({ otherFace }) => otherFace === of).map(({ height, count }) => times(height, count))]);
  return {
    walls: sum(measured.map(({ wall }) => wall.area)),
    openings: sum([noArea, ...openings.map(({ area }) => area)]),
    returns: sum([noArea, ...openings.map(({ returns }) => returns)]),
    outline: sum([...measured.map(({ wall }) => wall.perimeter), ...openings.map(({ perimeter }) => perimeter)]),
    base: subtract(sum(measured.map(({ wall }) => wall.width)), sum([noLength, ...openings.map(({ atBase }) => atBase)])),
    cladCorners: heights("elevation"),
    uncladCorners: heights("unclad"),
    returnEdges: sum([noLength, ...openings.map(({ edges }) => edges)]),
    cornerReturns: openings.flatMap(({ cornerReturn }) => cornerReturn ?? []),
  };
}

interface MeasuredOpening {
  readonly area: Quantity<"area">;
  readonly perimeter: Quantity<"length">;
  readonly returns: Quantity<"area">;
  readonly edges: Quantity<"length">;
  readonly atBase: Quantity<"length">;
  readonly cornerReturn?: ReturnEdges;
}

interface MeasuredElevation {
  readonly wall: { readonly area: Quantity<"area">; readonly perimeter: Quantity<"length">; readonly width: Quantity<"length"> };
  readonly openings: readonly MeasuredOpening[];
}

function measureElevation(elevation: Elevation, path: Path, work: Work): MeasuredElevation {
  const wall = work.part(wallMeasures, elevation.shape, [...path, "shape"]).answers;
  const openings = elevation.openings.map((opening, index) => {
    const at = [...path, "openings", index];
    const one = work.part(openingMeasures, opening.shape, [...at, "shape"]).answers;
    if (compare(one.width, wall.width) > 0 || compare(one.height, wall.height) > 0) {
      const wanted = `${elevation.name} is ${wall.width.toString()} wide and ${wall.height.toString()} high`;
      work.problem({ code: "refused", path: [...at, "shape"], given: `an opening ${one.width.toString()} wide and ${one.height.toString()} high`, wanted });
    }
    return measureOpening(opening, one, at, work);
  });
  const open = sum([noArea, ...openings.map(({ area }) => area)]);
  if (compare(open, wall.area) >= 0) {
    work.problem({ code: "refused", path: [...path, "openings"], given: `openings of ${open.toString()}`, wanted: `${elevation.name} has ${wall.area.toString()}` });
  }
  for (const [index, { height }] of elevation.outsideCorners.entries()) {
    if (compare(height, wall.height) <= 0) continue;
    work.problem({ code: "refused", path: [...path, "outsideCorners", index, "height"], given: height.toString(), wanted: `${elevation.name} is ${wall.height.toString()} high` });
  }
  return { wall, openings };
}

/** One entry of openings, all of its number together. */
function measureOpening(opening: Opening, one: ReturnType<typeof openingMeasures>, path: Path, work: Work): MeasuredOpening {
  const { count, returnDepth, returnUnits, toBase } = opening;
  const turns = !isNought(returnDepth);
  // A door has no sill to turn the face over.
  const edges = toBase === true ? subtract(one.perimeter, one.sill) : one.perimeter;
  const area = work.part(returnStrip, { length: edges, depth: returnDepth }, path).answers.area;
  const jambs = times(one.jambs, count);
  return {
    area: times(one.area, count),
    perimeter: times(one.perimeter, count),
    returns: times(area, count),
    edges: turns ? times(edges, count) : noLength,
    atBase: toBase === true ? times(one.width, count) : noLength,
    ...(turns && returnUnits === "corner" && !isNought(jambs) ? { cornerReturn: { edgeHeight: jambs, returnDepth, path } } : {}),
  };
}
