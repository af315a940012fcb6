import { unitSystem } from "../core/units.js";
import { quantity, type Readable } from "../core/read-quantity.js";
import { openingShape } from "./board-shapes.js";
import { courseMarks, courseMarksRoom } from "./course-marks.js";
import { jointLabels, jointLines, jointList, lettered, refuseOtherJoints } from "./joint-shapes.js";
import { counted, group, picture, type PictureOptions, underTitle } from "./picture.js";
import { answersOf, boxOnWall, having, listOf, lookAt, maybe, measured, oneOf, plain, written } from "./results.js";
import { areaOf, dimensionText, sheetFor } from "./sheet.js";
import { outline } from "./svg.js";
import type { CoursedWall } from "./coursed-wall.js";
import { type PlacedUnit, placedUnits, unitShape } from "./unit-shapes.js";

const id = "pictures.wall-elevation";

/**
 * Draws the elevation of a wall of units as SVG: every unit in its course, cut ones with a diagonal, openings crossed,
 * movement joints as a double line with the reasons for each, course heights and dimensions.
 *
 * @param wall - the size of the wall, its panels with their courses and bond, and its movement joints
 * @param options - a title
 * @returns the text of an SVG document, with a title and a description for those who do not see it
 * @example
 * ```ts
 * const joint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" };
 * const pier = wallElevation({
 *   width: "95-5/8 in",
 *   height: "40 in",
 *   panels: [{
 *     left: "0 in",
 *     bottom: "0 in",
 *     coursing: coursing({ height: "40 in", unitHeights: ["3-5/8 in"], bedJoint: joint, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" }),
 *     bond: bondPattern({ length: "95-5/8 in", unitLength: "11-5/8 in", headJoint: joint, left: { kind: "plain" }, right: { kind: "plain" }, offset: "50 %" }),
 *   }],
 * });
 * pier.includes("75 whole and 10 cut"); // true
 * ```
 */
export function wallElevation(wall: CoursedWall, options: PictureOptions = {}): string {
  lookAt(id, wall, drawnWall);
  const { title = "Courses and joints of a wall" } = options;
  const length = (given: Readable<"length">) => quantity("length", given);
  const openings = (wall.openings ?? []).map(({ left, bottom, width, height }) => ({ left: length(left), bottom: length(bottom), width: length(width), height: length(height) }));
  const nought = quantity("length", "0 in");
  const whole = { left: nought, bottom: nought, width: length(wall.width), height: length(wall.height) };
  const joints = lettered(wall.movement);
  const inner = { across: joints.filter(({ runs }) => runs === "upright").map(({ at }) => at), up: joints.filter(({ runs }) => runs === "level").map(({ at }) => at) };
  const { sheet, dimensions, right, bottom } = sheetFor({ wall: whole, openings }, underTitle + 18, inner);
  const face = areaOf(whole, sheet);
  const holes = openings.map((opening) => areaOf(opening, sheet));
  const units = placedUnits(id, wall.panels, sheet, face, holes);
  refuseOtherJoints(id, joints, { wall: whole, openings, movement: wall.movement });
  const marks = courseMarks(wall.panels, sheet, face.right + 44);
  return picture(
    { title, says: described(whole, openings.length, units, wall, joints), width: right + 28 + courseMarksRoom, bottom, legend: legendOf(units, openings.length, joints, unitSystem(whole.width.unit) === "si", wall.panels.length) },
    group("units", units.filter(({ meets }) => meets !== "hidden").map(unitShape), { "stroke-width": 0.7 }),
    group("openings", openings.map((opening) => openingShape(opening, sheet))),
    group("wall", [outline([[face.left, face.bottom], [face.right, face.bottom], [face.right, face.top], [face.left, face.top]], { "stroke-width": 1.6, fill: "none" })]),
    group("movement joints", joints.flatMap((joint) => jointLines(joint, sheet, face, holes))),
    group("joint letters", jointLabels(joints, sheet, face)),
    group("courses", marks),
    group("dimensions", dimensions),
  );
}

const drawnWall = /* @__PURE__ */ (() => {
  const length = measured("length");
  const course = having({ pieces: listOf(having({ is: oneOf("corner leg", "whole", "cut"), left: length, length }), 1) });
  const mark = having({ height: length, reads: plain("string") });
  const joints = listOf(having({ at: length, length, why: listOf(plain("string"), 1), throughOpening: plain("boolean") }));
  const panel = having({
    left: written("length"),
    bottom: written("length"),
    coursing: answersOf("coursing", { bedJoint: length, storyRod: listOf(having({ course: plain("number"), unitHeight: length, cut: plain("boolean"), foot: mark, top: mark }), 1) }),
    bond: answersOf("bondPattern", { courses: listOf(course, 2) }),
  });
  const box = { left: written("length"), bottom: written("length"), width: written("length"), height: written("length") };
  return having({
    width: written("length"),
    height: written("length"),
    panels: listOf(panel, 1),
    openings: maybe(listOf(having(box))),
    movement: maybe(answersOf("movementLayout", { upright: joints, level: joints, panels: listOf(boxOnWall(), 1) })),
  });
})();

function described({ width, height }: { readonly width: Parameters<typeof dimensionText>[0]; readonly height: Parameters<typeof dimensionText>[0] }, openings: number, units: readonly PlacedUnit[], wall: CoursedWall, joints: ReturnType<typeof lettered>): string {
  const count = (of: (unit: PlacedUnit) => boolean): number => units.filter((unit) => unit.meets !== "hidden" && of(unit)).length;
  const corners = count(({ is }) => is === "corner leg");
  const met = count(({ meets }) => meets === "partly");
  const beds = wall.panels.map(({ coursing }, index) => `${wall.panels.length === 1 ? "The wall" : `Panel ${String(index + 1)}`} has ${counted(coursing.storyRod.length, "course")} with bed joints of ${dimensionText(coursing.bedJoint)}.`);
  return [
    `A wall ${dimensionText(width)} wide and ${dimensionText(height)} high with ${counted(openings, "opening")}.`,
    ...beds,
    `It shows ${counted(count(() => true), "unit")}: ${String(count(({ is, cutCourse }) => is === "whole" && !cutCourse))} whole and ${String(count(({ is, cutCourse }) => is === "cut" || (cutCourse && is === "whole")))} cut to close a course${corners === 0 ? "" : `, ${String(corners)} legs of corner units`}.`,
    ...(met === 0 ? [] : [`${String(met)} of them meet an opening and are cut there.`]),
    joints.length === 0 ? "No movement joints are drawn." : `Movement joints: ${jointList(joints)}.`,
  ].join(" ");
}

function legendOf(units: readonly PlacedUnit[], openings: number, joints: ReturnType<typeof lettered>, metric: boolean, panels: number): readonly string[] {
  const seen = units.filter(({ meets }) => meets !== "hidden");
  return [
    "Box: a unit.",
    ...(seen.some(({ is, cutCourse, meets }) => is === "cut" || cutCourse || meets === "partly") ? ["One diagonal: a cut unit."] : []),
    ...(seen.some(({ is }) => is === "corner leg") ? ["Dot: the leg of a corner unit."] : []),
    ...(openings > 0 ? ["Crossed: an opening."] : []),
    `At the right: a course and the mark of its top${metric ? "" : ", as the tape reads it"}, ${panels > 1 ? "from the foot of its panel" : "from the foot of the rod"}.`,
    ...(joints.length > 0 ? [`Double line: a movement joint. ${jointList(joints)}.`] : []),
  ];
}
