import { exactLength, nought, type Shown, shownLike } from "../shapes/exact-length.js";
import { type Box, boxRound, cornersWithin, type Face, heightOf, max, widthOf } from "../shapes/face.js";
import { faceOf } from "../shapes/wall-face.js";
import { composed, type Work } from "../core/composed.js";
import type { Fraction } from "../core/fraction.js";
import type { Quantity } from "../core/quantity.js";
import { jointsThrough, movementCaution } from "../data/movement.js";
import { nested } from "../schema/nested.js";
import { jointLength, type MetOpening, runsThrough, type Way } from "./joint-lengths.js";
import { movementInput, type ReadMovement } from "./layout-input.js";
import { movementOpenings, refuseOutside } from "./movement-openings.js";
import { type JointLine, type JointReason, placeLines } from "./place-lines.js";
import { say } from "./refusals.js";

/** One movement joint. */
export interface MovementJoint {
  /** From the left end of the wall, or over its foot. */
  readonly at: Quantity<"length">;
  /** All that puts it there. */
  readonly why: readonly JointReason[];
  /** Its length on the wall, openings out. */
  readonly length: Quantity<"length">;
  /** Whether it runs over or under an opening and not along its edge. */
  readonly throughOpening: boolean;
}

/** A part of the wall between joints: the box round it. */
export interface MovementPanel {
  readonly left: Quantity<"length">;
  readonly bottom: Quantity<"length">;
  readonly width: Quantity<"length">;
  readonly height: Quantity<"length">;
  readonly longestSide: Quantity<"length">;
}

/** Where the movement joints of an elevation are. */
export interface MovementLayout {
  readonly upright: readonly MovementJoint[];
  readonly level: readonly MovementJoint[];
  /** All joints together. */
  readonly jointLength: Quantity<"length">;
  readonly panels: readonly MovementPanel[];
  readonly longestPanel: MovementPanel;
}

/**
 * Movement joints of an elevation: at inside corners and other materials, near outside corners, at floor lines, always at the
 * joints of the backing, and between these as few as the greatest spacing allows, drawn to jambs, heads and sills where that
 * costs no joint more. Joints at the foot and the top of the wall and round openings are not among them.
 *
 * @example
 * ```ts
 * const layout = movementLayout({
 *   wall: { kind: "rectangle", width: "30 ft", height: "18 ft" },
 *   leftEnd: { at: "inside corner" },
 *   rightEnd: { at: "outside corner", firstJointWithin: "6 ft" },
 *   openings: [{ shape: { kind: "rectangle", width: "4 ft", height: "5 ft" }, left: "9 ft", bottom: "3 ft" }],
 *   floorLines: ["9 ft"],
 *   backingJoints: { upright: ["20 ft"], level: [] },
 *   mostAcross: "12 ft",
 *   mostUp: "12 ft",
 * });
 * layout.upright.map(({ at }) => at.toString()); // ["0 ft", "9 ft", "20 ft", "24 ft"]
 * layout.upright[1].why; // ["jamb", "spacing"]
 * layout.longestPanel.longestSide.toString(); // "11 ft"
 * ```
 */
export const movementLayout = /* @__PURE__ */ composed({
  id: "movement.movement-layout",
  title: "Layout of movement joints",
  reads: /* @__PURE__ */ nested(movementInput),
  cautions: [movementCaution, "Cracks start at the corners of openings: look whether a joint or a break in the bond is wanted at each."],
  run: (given, work): MovementLayout => {
    work.stand(jointsThrough);
    const face = faceOf(given.wall);
    if ("kind" in face) return work.refuse({ code: "refused", path: ["wall"], given: "", wanted: say("shapeNotLaidOut") });
    refuseOutside(given, face, work);
    const openings = movementOpenings(given.openings, face, work);
    const [across, up] = [uprightLines(given, face, openings, work), levelLines(given, face, openings)];
    const shown = shownLike(given.mostAcross);
    const measured = (way: Way, lines: readonly JointLine[]): readonly Measured[] => lines.map((line) => measure(way, line, face, openings)).filter(({ length }) => !length.equals(nought));
    const [upright, level] = [measured("upright", across), measured("level", up)];
    if ([...upright, ...level].some(({ through }) => through)) work.caution("A joint runs over or under an opening and not along its edge: see that it meets the frame where it can be sealed.");
    const panels = panelsOf(face, across, up).map((box) => panel(box, shown));
    return {
      upright: upright.map((one) => joint(one, shown)),
      level: level.map((one) => joint(one, shown)),
      jointLength: shown.run([...upright, ...level].reduce((total, { length }) => total.add(length), nought)),
      panels: panels.map(({ told }) => told),
      longestPanel: panels.reduce((longest, one) => (one.side.compare(longest.side) > 0 ? one : longest)).told,
    };
  },
});

function uprightLines(given: ReadMovement, { width }: Face, openings: readonly MetOpening[], work: Work): readonly JointLine[] {
  const { leftEnd, rightEnd, backingJoints, mostAcross } = given;
  const near = (end: ReadMovement["leftEnd"]): Fraction | undefined => (end.at === "outside corner" ? exactLength(end.firstJointWithin) : undefined);
  const atEnd = (end: ReadMovement["leftEnd"], at: Fraction): readonly JointLine[] => (end.at === "outside corner" ? [] : [{ at, why: [end.at] }]);
  const [nearStart, nearEnd] = [near(leftEnd), near(rightEnd)];
  if ([nearStart, nearEnd].some((one) => one !== undefined && one.compare(width) >= 0)) {
    work.caution("The wall is no longer than the distance allowed from its outside corner to the first joint: lay out the next face with it, for its joint may lie there.");
  }
  const fixed = [...atEnd(leftEnd, nought), ...backingJoints.upright.map((at): JointLine => ({ at: exactLength(at), why: ["backing joint"] })), ...atEnd(rightEnd, width)];
  const preferred = openings.flatMap(({ box: { left, right } }) => [left, right].map((at): JointLine => ({ at, why: ["jamb"] })));
  return placeLines({ length: width, most: exactLength(mostAcross), fixed, preferred, nearStart, nearEnd });
}

function levelLines({ floorLines, backingJoints, mostUp }: ReadMovement, { height }: Face, openings: readonly MetOpening[]): readonly JointLine[] {
  const line = (why: JointReason) => (at: Quantity<"length">): JointLine => ({ at: exactLength(at), why: [why] });
  const fixed = [...floorLines.map(line("floor line")), ...backingJoints.level.map(line("backing joint"))];
  const preferred = openings.flatMap(({ box: { bottom, top } }) => [bottom, top].map((at): JointLine => ({ at, why: ["head or sill"] })));
  return placeLines({ length: height, most: exactLength(mostUp), fixed, preferred });
}

interface Measured extends JointLine {
  readonly length: Fraction;
  readonly through: boolean;
}

function measure(way: Way, line: JointLine, face: Face, openings: readonly MetOpening[]): Measured {
  return { ...line, length: jointLength(way, line.at, face, openings), through: runsThrough(way, line.at, openings) };
}

function joint({ at, why, length, through }: Measured, shown: Shown): MovementJoint {
  return { at: shown.run(at), why, length: shown.run(length), throughOpening: through };
}

/** The box round each part of the wall between joints, from the left and from the foot up. */
function panelsOf(face: Face, across: readonly JointLine[], up: readonly JointLine[]): readonly Box[] {
  const ends = (length: Fraction, lines: readonly JointLine[]): readonly Fraction[] => {
    const inner = lines.map(({ at }) => at).filter((at) => at.compare(nought) > 0 && at.compare(length) < 0);
    return [nought, ...inner, length];
  };
  const [columns, rows] = [ends(face.width, across), ends(face.height, up)];
  return columns.slice(1).flatMap((right, column) =>
    rows.slice(1).flatMap((top, row) => {
      const corners = cornersWithin({ left: columns[column] ?? nought, bottom: rows[row] ?? nought, right, top }, face.rakes);
      return corners.length === 0 ? [] : [boxRound(corners)];
    }),
  );
}

function panel(box: Box, shown: Shown): { readonly told: MovementPanel; readonly side: Fraction } {
  const [width, height] = [widthOf(box), heightOf(box)];
  const side = max(width, height);
  return { side, told: { left: shown.run(box.left), bottom: shown.run(box.bottom), width: shown.run(width), height: shown.run(height), longestSide: shown.run(side) } };
}
