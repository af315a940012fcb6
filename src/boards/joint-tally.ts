import type { Fraction } from "../core/fraction.js";
import { nought } from "../shapes/exact-length.js";
import { type Box, cornersOf, keyOf } from "../shapes/face.js";
import type { StraightLine } from "./joint-lines.js";
import type { Studs } from "./studs.js";

/** What joints come to. */
export interface JointTally {
  readonly level: Fraction;
  readonly upright: Fraction;
  /** Upright joints that meet no stud. */
  readonly offStuds: Fraction;
  /** Ends of joints that meet another joint, where tape laps over tape. */
  readonly overlaps: number;
  /** Ends of joints at the corner of an opening. */
  readonly atCorners: number;
}

/** Adds up joints. */
export function jointTallyOf(joints: readonly StraightLine[], openings: readonly Box[], studs: Studs): JointTally {
  const total = (lines: readonly StraightLine[]): Fraction => lines.reduce((sum, { from, to }) => sum.add(to).sub(from), nought);
  const upright = joints.filter((joint) => joint.upright);
  const level = joints.filter((joint) => !joint.upright);
  const ends = joints.flatMap(({ upright: stands, at, from, to }) => [from, to].map((end) => (stands ? { stands, across: at, up: end } : { stands, across: end, up: at })));
  const [byPlace, byHeight] = [listed(upright), listed(level)];
  const meets = ({ stands, across, up }: (typeof ends)[number]): boolean => {
    const lines = stands ? byHeight.get(keyOf(up)) : byPlace.get(keyOf(across));
    const along = stands ? across : up;
    return lines?.some(({ from, to }) => from.compare(along) <= 0 && to.compare(along) >= 0) === true;
  };
  const corners = new Set(openings.flatMap(cornersOf).map(({ across, up }) => `${keyOf(across)} ${keyOf(up)}`));
  return {
    level: total(level),
    upright: total(upright),
    offStuds: total(upright.filter(({ at }) => !studs.standAt(at))),
    overlaps: ends.filter(meets).length,
    atCorners: ends.filter(({ across, up }) => corners.has(`${keyOf(across)} ${keyOf(up)}`)).length,
  };
}

/** Lines by where they lie. */
function listed(lines: readonly StraightLine[]): ReadonlyMap<string, readonly StraightLine[]> {
  const found = new Map<string, StraightLine[]>();
  for (const line of lines) {
    const there = found.get(keyOf(line.at));
    if (there === undefined) found.set(keyOf(line.at), [line]);
    else there.push(line);
  }
  return found;
}
