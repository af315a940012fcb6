import { exact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { exactLength } from "../shapes/exact-length.js";
import { max, min } from "../shapes/face.js";
import type { PlacedBoard } from "./placed-board.js";

/** Lines and screws of a layer that meet those of the layer behind. */
export interface SharedScrews {
  /** Lines that lie over a line of the layer behind. */
  readonly lines: number;
  /** Screws too near to one of the layer behind. */
  readonly screws: number;
}

/** A line of screws in exact lengths. */
interface Line {
  readonly across: Fraction;
  readonly bottom: Fraction;
  readonly top: Fraction;
  readonly spacing: Fraction;
  readonly screws: number;
}

/** What the screws of a layer share with those behind; too near is nearer than the least distance, or right over one where none is given. */
export function sharedScrewsOf(boards: readonly PlacedBoard[], behind: readonly PlacedBoard[], least: Fraction | undefined): SharedScrews {
  const others = linesOf(behind).sort((a, b) => a.across.compare(b.across));
  const near = (apart: Fraction): boolean => (least === undefined ? apart.compare(exact(0n)) === 0 : apart.compare(least.mul(least)) < 0);
  return linesOf(boards).reduce<SharedScrews>(({ lines, screws }, line) => {
    const beside = besideOf(line, others, least);
    const over = beside.some(({ across, bottom, top }) => across.equals(line.across) && max(bottom, line.bottom).compare(min(top, line.top)) < 0);
    const tooNear = beside.length === 0 ? 0 : heightsOf(line).filter((up) => beside.some((other) => near(apartFrom(other, line.across, up)))).length;
    return { lines: lines + (over ? 1 : 0), screws: screws + tooNear };
  }, { lines: 0, screws: 0 });
}

function linesOf(boards: readonly PlacedBoard[]): Line[] {
  return boards.flatMap(({ screwLines = [] }) => screwLines.map(({ across, bottom, spacing, screws }): Line => {
    const [from, step] = [exactLength(bottom), exactLength(spacing)];
    return { across: exactLength(across), bottom: from, top: from.add(step.mul(exact(BigInt(screws - 1)))), spacing: step, screws };
  }));
}

/** The lines that may have a screw near to one of a line; the others in order. */
function besideOf({ across }: Line, others: readonly Line[], least: Fraction | undefined): readonly Line[] {
  const reach = least ?? exact(0n);
  const beside: Line[] = [];
  for (const other of others) {
    const offset = other.across.sub(across);
    if (offset.compare(reach) > 0) break;
    if (offset.abs().compare(reach) <= 0) beside.push(other);
  }
  return beside;
}

function heightsOf({ bottom, spacing, screws }: Line): readonly Fraction[] {
  return Array.from({ length: screws }, (_, index) => bottom.add(spacing.mul(exact(BigInt(index)))));
}

/** The square of the distance from a screw to the nearest one of a line. */
function apartFrom(line: Line, across: Fraction, up: Fraction): Fraction {
  const most = exact(BigInt(line.screws - 1));
  const place = max(exact(0n), min(most, up.sub(line.bottom).div(line.spacing).round()));
  const [aside, along] = [line.across.sub(across), line.bottom.add(line.spacing.mul(place)).sub(up)];
  return aside.mul(aside).add(along.mul(along));
}
