import { common } from "../core/common-refusals.js";
import { quantity } from "../core/read-quantity.js";
import type { BondPiece } from "../layout/bond-course.js";
import { say } from "./refusals.js";
import { refuse } from "./results.js";
import type { Area, Sheet } from "./sheet.js";
import { element, line } from "./svg.js";
import type { CoursedPanel } from "./coursed-wall.js";

/** More units than these cannot be told apart on a sheet. */
const most = 20_000;

/** A unit in its place on the sheet. */
export interface PlacedUnit {
  readonly area: Area;
  readonly is: BondPiece["is"];
  readonly cutCourse: boolean;
  /** Whether an opening takes none of it, some, or all. */
  readonly meets: "none" | "partly" | "hidden";
}

/** Every unit of the panels: the first course of the bond lies in every odd course, the other in every even one. */
export function placedUnits(id: string, panels: readonly CoursedPanel[], sheet: Sheet, face: Area, holes: readonly Area[]): readonly PlacedUnit[] {
  const total = panels.reduce((sum, { coursing, bond: { courses: [odd, even] } }) => sum + Math.ceil(coursing.storyRod.length / 2) * odd.pieces.length + Math.floor(coursing.storyRod.length / 2) * even.pieces.length, 0);
  if (total > most) refuse(id, ["panels"], common("counted", { count: total, of: "units" }), say("tooManyUnits", { most }));
  return panels.flatMap(({ left, bottom, coursing, bond }, index) => {
    const [x, y] = [sheet.x(quantity("length", left)), sheet.y(quantity("length", bottom))];
    const runs = bond.courses.map(({ pieces }) => pieces.map((piece) => ({ is: piece.is, left: x + sheet.scaled(piece.left), width: sheet.scaled(piece.length) })));
    const units = coursing.storyRod.flatMap(({ course, foot, unitHeight, cut }) => {
      const base = y - sheet.scaled(foot.height);
      return (runs[(course - 1) % 2] ?? []).map(({ is, left: from, width }): PlacedUnit => {
        const area = { left: from, right: from + width, bottom: base, top: base - sheet.scaled(unitHeight) };
        return { area, is, cutCourse: cut, meets: meeting(area, holes) };
      });
    });
    const outside = units.find(({ area }) => area.left < face.left - near || area.right > face.right + near || area.top < face.top - near || area.bottom > face.bottom + near);
    if (outside !== undefined) refuse(id, ["panels", index], "", say("panelBeyondWall"));
    return units;
  });
}

const near = 0.01;

function meeting(area: Area, holes: readonly Area[]): PlacedUnit["meets"] {
  if (holes.some(({ left, right, top, bottom }) => left <= area.left + near && right >= area.right - near && top <= area.top + near && bottom >= area.bottom - near)) return "hidden";
  return holes.some(({ left, right, top, bottom }) => left < area.right - near && right > area.left + near && top < area.bottom - near && bottom > area.top + near) ? "partly" : "none";
}

/** A unit in outline, with a diagonal where it is cut and a dot where it turns a corner. */
export function unitShape({ area: { left, top, right, bottom }, is, cutCourse, meets }: PlacedUnit): string {
  const box = element("rect", { x: left, y: top, width: right - left, height: bottom - top });
  const cut = is === "cut" || cutCourse || meets === "partly" ? line([left, bottom], [right, top], { "stroke-width": 0.6 }) : "";
  const dot = is === "corner leg" ? element("circle", { cx: (left + right) / 2, cy: (top + bottom) / 2, r: Math.min(3, (bottom - top) / 4), fill: "black", stroke: "none" }) : "";
  return box + cut + dot;
}
