import type { Fraction } from "../core/fraction.js";
import type { Course, Pattern } from "./courses.js";
import { nought } from "../shapes/exact-length.js";
import { type Box, type Face, inOrder, max, min, type Rake } from "../shapes/face.js";

/** A straight line on a wall, upright or level, at a distance from the left or at a height. */
export interface StraightLine {
  readonly upright: boolean;
  readonly at: Fraction;
  readonly from: Fraction;
  readonly to: Fraction;
}

/** The joints between boards: the long ones between courses, and those at the ends of boards. */
export function jointLinesOf(face: Face, courses: readonly Course[], openings: readonly Box[], { flat }: Pattern): readonly StraightLine[] {
  const [side, run] = flat ? [face.height, face.width] : [face.width, face.height];
  const lines = courses.flatMap(({ from, to, ends }): StraightLine[] => [
    { upright: !flat, at: from, from: nought, to: run },
    ...ends.filter((at) => within(at, run)).map((at) => ({ upright: flat, at, from: max(from, nought), to: min(to, side) })),
  ]);
  return lines.filter(({ upright, at }) => within(at, upright ? face.width : face.height)).flatMap((line) => clearOf(openings, cutToRakes(line, face.rakes)));
}

const within = (at: Fraction, end: Fraction): boolean => at.compare(nought) > 0 && at.compare(end) < 0;

/** The part of a line that lies within the raking edges; its end may lie before its start where there is none. */
export function cutToRakes(line: StraightLine, rakes: readonly Rake[]): StraightLine {
  return rakes.reduce(({ upright, at, from, to }, { a, b, c }) => {
    const [across, along] = upright ? [a, b] : [b, a];
    const end = c.sub(across.mul(at)).div(along);
    return along.compare(nought) > 0 ? { upright, at, from, to: min(to, end) } : { upright, at, from: max(from, end), to };
  }, line);
}

/** The parts of a line with board on both sides: not through an opening, and not along its edge. */
function clearOf(openings: readonly Box[], { upright, at, from, to }: StraightLine): readonly StraightLine[] {
  const across = openings.map(({ left, bottom, right, top }) => (upright ? { near: left, far: right, start: bottom, end: top } : { near: bottom, far: top, start: left, end: right }));
  const reached = across.filter(({ near, far }) => near.compare(at) <= 0 && far.compare(at) >= 0);
  const stops = inOrder([from, to, ...reached.flatMap(({ start, end }) => [start, end])]).filter((stop) => stop.compare(from) >= 0 && stop.compare(to) <= 0);
  return joined(stops.slice(1).flatMap((stop, index): StraightLine[] => {
    const start = stops[index] ?? stop;
    const open = reached.some((one) => one.start.compare(start) <= 0 && one.end.compare(stop) >= 0);
    return open ? [] : [{ upright, at, from: start, to: stop }];
  }));
}

/** Lines one after the other on the same line, as one where they touch. */
export function joined(lines: readonly StraightLine[]): readonly StraightLine[] {
  const ordered = [...lines].sort((a, b) => a.from.compare(b.from));
  return ordered.reduce<readonly StraightLine[]>((done, line) => {
    const last = done.at(-1);
    return last !== undefined && last.to.compare(line.from) >= 0 ? [...done.slice(0, -1), { ...last, to: max(last.to, line.to) }] : [...done, line];
  }, []);
}
