import type { Fraction } from "../core/fraction.js";
import { exactLength, type Shown } from "../shapes/exact-length.js";
import { max, min } from "../shapes/face.js";
import type { BoardJoint } from "./placed-board.js";

type Length = BoardJoint["length"];

/** A stretch of a joint that lies near one of the layer behind and runs the same way. */
export interface CloseJoint {
  /** The layer of the joint, counted from 1 at the studs. */
  readonly layer: number;
  readonly runs: "level" | "upright";
  readonly left: Length;
  readonly bottom: Length;
  readonly length: Length;
  /** How far it lies from the joint behind; nought where it lies right over it. */
  readonly offset: Length;
}

interface Stretch {
  readonly at: Fraction;
  readonly from: Fraction;
  readonly to: Fraction;
}

/** The stretches of a layer's joints that lie nearer than the least offset to a joint of the layer behind. */
export function closeJointsOf(layer: number, joints: readonly BoardJoint[], behind: readonly BoardJoint[], least: Fraction, show: Shown): readonly CloseJoint[] {
  return (["level", "upright"] as const).flatMap((runs) => {
    const others = stretchesOf(behind, runs).sort((a, b) => a.at.compare(b.at));
    return stretchesOf(joints, runs).flatMap((own) => nearby(own, others, least).map(({ at, from, to }): CloseJoint => {
      const [left, bottom] = runs === "upright" ? [own.at, from] : [from, own.at];
      return { layer, runs, left: show.length(left), bottom: show.length(bottom), length: show.length(to.sub(from)), offset: show.length(own.at.sub(at).abs()) };
    }));
  });
}

function stretchesOf(joints: readonly BoardJoint[], runs: BoardJoint["runs"]): Stretch[] {
  return joints.filter((joint) => joint.runs === runs).map(({ left, bottom, length }) => {
    const [at, from] = runs === "upright" ? [exactLength(left), exactLength(bottom)] : [exactLength(bottom), exactLength(left)];
    return { at, from, to: from.add(exactLength(length)) };
  });
}

/** The shared parts of a stretch and of those beside it; the others in order. */
function nearby(own: Stretch, others: readonly Stretch[], least: Fraction): readonly Stretch[] {
  const found: Stretch[] = [];
  for (const { at, from, to } of others) {
    const offset = at.sub(own.at);
    if (offset.compare(least) >= 0) break;
    if (offset.abs().compare(least) >= 0) continue;
    const [start, end] = [max(from, own.from), min(to, own.to)];
    if (start.compare(end) < 0) found.push({ at, from: start, to: end });
  }
  return found;
}
