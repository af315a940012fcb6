import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { isNought } from "../../core/quantity-arithmetic.js";
import { quantity } from "../../core/read-quantity.js";
import { spacerCount } from "../../joints/spacer-count.js";
import { cornerUnits } from "../../layout/corner-units.js";
import { unitsForFace } from "../../layout/units-for-face.js";
import { cornerPacks } from "../corner-packs.js";
import { courseHeight } from "../course-height.js";
import type { FaceMeasures, Stone } from "../face-measures.js";
import { measureFacesByPart } from "../faces-by-part.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";
import { unitsByElevation } from "../units-by-elevation.js";
import { unitsPlaced } from "../units-placed.js";
import { usualWidth } from "../usual-width.js";

/** A line, and the units it sets, before rounding. */
interface Set {
  readonly lines: readonly OrderLine[];
  readonly net: Quantity<"count">;
}

/** Flat units, corner units and spacers. Only the flats lose what the corner units cover. */
export function unitLines(stone: Stone, face: FaceMeasures, path: Path, taking: Taking): readonly OrderLine[] {
  const layer = stone.units;
  const flats = flatUnits(stone, face, path, taking);
  const corners = cornerUnitLines(layer, face, path, taking);
  if (flats === undefined || corners === undefined) return [];
  return [...flats.lines, ...corners.lines, ...spacerLines(layer, flats.net, corners.net, path, taking)];
}

function flatUnits(stone: Stone, { face, cornerCover }: FaceMeasures, path: Path, taking: Taking): Set | undefined {
  const { work } = taking;
  const { name, unitLength, unitHeight, headJoint, bedJoint } = stone.units;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "pieces")];
  const byElevation = lotsByElevation(stone, path, taking);
  if (waste === undefined || pack === undefined || byElevation === undefined) return undefined;
  const unit = { unitLength, unitHeight, headJoint: usualWidth(headJoint, "headJoint", work), bedJoint: usualWidth(bedJoint, "bedJoint", work), waste, packCount: pack.pieces };
  const parts = byElevation ? measureFacesByPart(stone, taking) : [];
  if (parts === undefined) return undefined;
  const solution = byElevation
    ? work.attempt(unitsByElevation, { elevations: parts.map((part) => ({ name: part.name, area: part.face, cornerCover: part.cornerCover })), ...unit }, path)
    : work.attempt(unitsForFace, { area: face, cornerCover, ...unit }, path);
  if (solution === undefined) return undefined;
  const { net, toOrder, packs } = solution.answers;
  return { net, lines: [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.pieces, packs, solution })] };
}

/** Whether packs are rounded up for each elevation; with several of them that has to be told. */
function lotsByElevation({ units }: Stone, path: Path, { measures, work }: Taking): boolean | undefined {
  if (units.lots !== undefined) return units.lots === "by elevation";
  if (measures.parts.length === 1) return false;
  work.problem({ code: "missing", path: [...path, "lots"], given: "", wanted: say("lotsWanted") });
  return undefined;
}

function cornerUnitLines(layer: LayerOf<"units">, { cornerEdges }: FaceMeasures, path: Path, taking: Taking): Set | undefined {
  const { work } = taking;
  const { name, unitHeight, bedJoint, corners } = layer;
  if (isNought(cornerEdges) || corners === undefined) return { net: quantity("count", 0), lines: [] };
  const item = taking.item(corners.name, [...path, "corners"]);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "pieces")];
  const course = work.attempt(courseHeight, { unitHeight, bedJoint: usualWidth(bedJoint, "bedJoint", work) }, path);
  if (waste === undefined || pack === undefined || course === undefined) return undefined;
  const { longLeg, shortLeg } = corners;
  const counted = { edgeHeight: cornerEdges, longLeg, shortLeg, courseHeight: course.answers.courseHeight, waste };
  const solution = work.attempt(cornerUnits, counted, path);
  if (solution === undefined) return undefined;
  const { net, toOrder, withWaste } = solution.answers;
  const { packs } = work.part(cornerPacks, { withWaste, packCount: pack.pieces }, path).answers;
  return { net, lines: [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.pieces, packs, solution })] };
}

function spacerLines({ name, spacers }: LayerOf<"units">, flats: Quantity<"count">, corners: Quantity<"count">, path: Path, taking: Taking): readonly OrderLine[] {
  if (spacers === undefined) return [];
  const { work } = taking;
  const item = taking.item(spacers.name, [...path, "spacers"]);
  const placed = work.attempt(unitsPlaced, { flats, corners }, path);
  const solution = placed && work.attempt(spacerCount, { units: placed.answers.placed, spacersPerUnit: spacers.perUnit, reuseShare: spacers.reuseShare }, path);
  if (solution === undefined) return [];
  const { net, spacers: toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net, toOrder, solution })];
}
