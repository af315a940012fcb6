import { exact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import type { Words } from "../core/wording.js";
import type { ReadWallShape } from "./wall-shape.js";
import { exactLength, nought } from "./exact-length.js";
import { areaWithin, boxRound, type Face, type Point, type Rake } from "./face.js";
import { say } from "./refusals.js";

/** The face of a wall on which boards or joints are laid out, its foot and left end at nought; why not, where it has a shape that is not laid out. */
export function faceOf(wall: ReadWallShape): Face | Words {
  const corners = cornersOf(wall);
  if (corners === undefined) return say("curvedTop");
  const turns = corners.map((corner, index) => turn(corner, after(corners, index, 1), after(corners, index, 2)));
  const onward = areaWithin(corners).compare(nought);
  if (onward === 0) return say("noArea");
  if (turns.some((one) => one.compare(nought) * onward < 0)) return say("innerCorner");
  const box = boxRound(corners);
  const moved = corners.map(({ across, up }) => ({ across: across.sub(box.left), up: up.sub(box.bottom) }));
  const anticlockwise = onward > 0 ? moved : moved.reverse();
  return { width: box.right.sub(box.left), height: box.top.sub(box.bottom), rakes: rakesOf(anticlockwise) };
}

function cornersOf(wall: ReadWallShape): readonly Point[] | undefined {
  const point = (across: Fraction, up: Fraction): Point => ({ across, up });
  switch (wall.kind) {
    case "rectangle": {
      const [width, height] = [exactLength(wall.width), exactLength(wall.height)];
      return [point(nought, nought), point(width, nought), point(width, height), point(nought, height)];
    }
    case "gable": {
      const [width, height] = [exactLength(wall.width), exactLength(wall.height)];
      return [point(nought, nought), point(width, nought), point(width.div(exact(2n)), height)];
    }
    case "trapezoid": {
      const [width, left, right] = [exactLength(wall.width), exactLength(wall.leftHeight), exactLength(wall.rightHeight)];
      return [point(nought, nought), point(width, nought), point(width, right), point(nought, left)];
    }
    case "segment":
      return undefined;
    case "polygon":
      return wall.points.map(({ x, y }) => point(exactLength(x), exactLength(y)));
  }
}

function after(corners: readonly Point[], index: number, by: number): Point {
  return corners[(index + by) % corners.length] as Point;
}

/** Above nought for a turn to the left at `b`. */
function turn(a: Point, b: Point, c: Point): Fraction {
  return b.across.sub(a.across).mul(c.up.sub(b.up)).sub(b.up.sub(a.up).mul(c.across.sub(b.across)));
}

/** The edges that are neither level nor upright, of corners that go round anticlockwise. */
function rakesOf(corners: readonly Point[]): readonly Rake[] {
  return corners.flatMap((from, index): Rake[] => {
    const to = after(corners, index, 1);
    const [a, b] = [to.up.sub(from.up), from.across.sub(to.across)];
    return a.equals(nought) || b.equals(nought) ? [] : [{ a, b, c: a.mul(from.across).add(b.mul(from.up)) }];
  });
}
