import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, isNought, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { returnStrip } from "../membrane/return-strip.js";
import type { OpeningMeasures } from "../shapes/measures.js";
import { openingMeasures } from "../shapes/opening-measures.js";
import { wallMeasures } from "../shapes/wall-measures.js";
import type { ReadJob } from "./job.js";
import { lengthOf, noughtOf, type Part, type ReturnEdges } from "./measured.js";
import { say } from "./refusals.js";
import { soffitFace } from "./soffit-face.js";

type Elevation = ReadJob["elevations"][number];
type Opening = Elevation["openings"][number];
type Corner = Elevation["outsideCorners"][number];

/** Measures one elevation; what does not fit is added to the problems. */
export function measureElevation(elevation: Elevation, path: Path, work: Work): Part {
  const { name, outsideCorners, insideCorners = [], soffits = [], caps = [] } = elevation;
  const wall = work.part(wallMeasures, elevation.shape, [...path, "shape"]).answers;
  const [noLength, noArea, none] = [noughtOf(wall.width), noughtOf(wall.area), quantity("count", 0)];
  const openings = elevation.openings.map((opening, index) => {
    const at = [...path, "openings", index];
    const one = work.part(openingMeasures, opening.shape, [...at, "shape"]).answers;
    if (compare(one.width, wall.width) > 0 || compare(one.height, wall.height) > 0) {
      const wanted = say("wallIs", { wall: name, width: wall.width, height: wall.height });
      work.problem(refusal([...at, "shape"], say("openingOf", { width: one.width, height: one.height }), wanted));
    }
    return measureOpening(opening, one, at, work);
  });
  const open = sum([noArea, ...openings.map(({ area }) => area)]);
  if (compare(open, wall.area) >= 0) {
    work.problem(refusal([...path, "openings"], say("openingsOf", { area: open }), say("wallHas", { wall: name, area: wall.area })));
  }
  const atFoot = sum([noLength, ...openings.map(({ atBase }) => atBase)]);
  if (compare(atFoot, wall.width) > 0) {
    work.problem(refusal([...path, "openings"], say("openingsAtFoot", { width: atFoot }), say("wallIsWide", { wall: name, width: wall.width })));
  }
  for (const [list, corners] of [["outsideCorners", outsideCorners], ["insideCorners", insideCorners]] as const) {
    for (const [index, { height }] of corners.entries()) {
      if (compare(height, wall.height) <= 0) continue;
      work.problem({ code: "refused", path: [...path, list, index, "height"], given: height.toString(), wanted: say("wallIsHigh", { wall: name, height: wall.height }) });
    }
  }
  const under = soffits.map(({ length, depth, count }, index) => {
    const { area, outline } = work.part(soffitFace, { length, depth }, [...path, "soffits", index]).answers;
    return { area: times(area, count), outline: times(outline, count), length, count };
  });
  const all = (key: "perimeter" | "edges" | "sill" | "jambs" | "head" | "round"): Quantity<"length"> => sum([noLength, ...openings.map((one) => one[key])]);
  const counted = (key: "sillCount" | "headCount"): Quantity<"count"> => sum([none, ...openings.map((one) => one[key])]);
  return {
    name,
    walls: wall.area,
    openings: open,
    soffits: sum([noArea, ...under.map(({ area }) => area)]),
    returns: sum([noArea, ...openings.map(({ returns }) => returns)]),
    outline: sum([wall.perimeter, all("perimeter"), ...under.map(({ outline }) => outline)]),
    base: subtract(wall.width, atFoot),
    cladCorners: heights(outsideCorners, "elevation", noLength),
    uncladCorners: heights(outsideCorners, "unclad", noLength),
    insideCorners: heights(insideCorners, "elevation", noLength),
    uncladInsideCorners: heights(insideCorners, "unclad", noLength),
    returnEdges: all("edges"),
    sills: all("sill"),
    jambs: all("jambs"),
    heads: all("head"),
    roundOpenings: all("round"),
    caps: lengthOf(caps, noLength),
    soffitLengths: lengthOf(under, noLength),
    sillCount: counted("sillCount"),
    headCount: counted("headCount"),
    cornerReturns: openings.flatMap(({ cornerReturn }) => cornerReturn ?? []),
    sheetFaces: [{ length: wall.width, height: wall.height, count: quantity("count", 1) }],
  };
}

function heights(corners: readonly Corner[], of: Corner["otherFace"], none: Quantity<"length">): Quantity<"length"> {
  return lengthOf(corners.filter(({ otherFace }) => otherFace === of).map(({ height, count }) => ({ length: height, count })), none);
}

interface MeasuredOpening {
  readonly area: Quantity<"area">;
  readonly perimeter: Quantity<"length">;
  readonly returns: Quantity<"area">;
  readonly edges: Quantity<"length">;
  readonly atBase: Quantity<"length">;
  readonly sill: Quantity<"length">;
  readonly jambs: Quantity<"length">;
  readonly head: Quantity<"length">;
  readonly round: Quantity<"length">;
  readonly sillCount: Quantity<"count">;
  readonly headCount: Quantity<"count">;
  readonly cornerReturn?: ReturnEdges;
}

/** One entry of openings, all of its number together. */
function measureOpening(opening: Opening, one: OpeningMeasures, path: Path, work: Work): MeasuredOpening {
  const { count, returnDepth, returnUnits, toBase } = opening;
  const turns = !isNought(returnDepth);
  const [noLength, none] = [noughtOf(one.width), quantity("count", 0)];
  // A door has no sill to turn the face over.
  const edges = toBase === true ? subtract(one.perimeter, one.sill) : one.perimeter;
  const area = work.part(returnStrip, { length: edges, depth: returnDepth }, path).answers.area;
  const jambs = times(one.jambs, count);
  const sill = toBase === true ? noLength : times(one.sill, count);
  return {
    area: times(one.area, count),
    perimeter: times(one.perimeter, count),
    returns: times(area, count),
    edges: turns ? times(edges, count) : noLength,
    atBase: toBase === true ? times(one.width, count) : noLength,
    sill,
    jambs,
    head: times(one.head, count),
    round: times(one.round, count),
    sillCount: isNought(sill) ? none : count,
    headCount: isNought(one.head) ? none : count,
    ...(turns && returnUnits === "corner" && !isNought(jambs) ? { cornerReturn: { edgeHeight: jambs, returnDepth, path } } : {}),
  };
}
