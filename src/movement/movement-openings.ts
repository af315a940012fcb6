import { exactLength } from "../shapes/exact-length.js";
import type { Face } from "../shapes/face.js";
import type { Work } from "../core/composed.js";
import { exact } from "../core/amount.js";
import type { Trouble } from "../core/problems.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { openingMeasures } from "../shapes/opening-measures.js";
import type { MetOpening } from "./joint-lengths.js";
import type { ReadMovement } from "./layout-input.js";
import { say } from "./refusals.js";

/** Most joints one way, so that the panels stay few enough to be told. */
const mostJoints = 200n;

/** The openings as joints meet them; one that lies outside the wall ends the run. */
export function movementOpenings(openings: ReadMovement["openings"], face: Face, work: Work): readonly MetOpening[] {
  const met = openings.map(({ shape, left, bottom }, index): MetOpening => {
    const measures = work.part(openingMeasures, shape, ["openings", index, "shape"]).answers;
    const [x, y] = [exactLength(left), exactLength(bottom)];
    const box = { left: x, bottom: y, right: x.add(exactLength(measures.width)), top: y.add(exactLength(measures.height)) };
    if (shape.kind === "round") return { box, clear: undefined };
    return { box, clear: { ...box, top: y.add(exactLength(shape.height)) } };
  });
  const outside = met.flatMap(({ box }, index) => (box.right.compare(face.width) > 0 || box.top.compare(face.height) > 0 ? [index] : []));
  refuseAll(outside.map((index) => refusal(["openings", index], "", say("openingBeyondWall"))), work);
  return met;
}

/** Ends the run where a line lies outside the wall, or where there would be too many. */
export function refuseOutside({ wall, floorLines, backingJoints, mostAcross, mostUp }: ReadMovement, { width, height }: Face, work: Work): void {
  const troubles: Trouble[] = [];
  backingJoints.upright.forEach((at, index) => {
    if (exactLength(at).compare(width) > 0) troubles.push(refusal(["backingJoints", "upright", index], at.toString(), say("shapeNotSoWide", { kind: wall.kind })));
  });
  const levels = [...floorLines.map((at, index) => ({ at, path: ["floorLines", index] })), ...backingJoints.level.map((at, index) => ({ at, path: ["backingJoints", "level", index] }))];
  for (const { at, path } of levels) {
    const exactly = exactLength(at);
    if (exactly.compare(exact(0n)) > 0 && exactly.compare(height) < 0) continue;
    troubles.push(refusal(path, at.toString(), say("levelJointWithin")));
  }
  for (const [name, most, length] of [["mostAcross", mostAcross, width], ["mostUp", mostUp, height]] as const) {
    if (length.div(exactLength(most)).compare(exact(mostJoints)) > 0) troubles.push(refusal([name], most.toString(), say("tooManyJoints", { most: Number(mostJoints) })));
  }
  refuseAll(troubles, work);
}
