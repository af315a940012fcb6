import type { Fraction } from "../core/fraction.js";
import { nought } from "../shapes/exact-length.js";
import { type Box, type Face, keyOf } from "../shapes/face.js";

/** What a stud stands for: one of the spacing, one at the side of an opening, one at an end of the wall. */
export type StudAt = "spacing" | "opening" | "end";

/** A stud on its centre line. */
export interface StudLine {
  readonly at: Fraction;
  readonly stands: StudAt;
}

/** The studs of a wall. */
export interface Studs {
  readonly lines: readonly StudLine[];
  /** Whether a stud stands at a distance from the left. */
  readonly standAt: (at: Fraction) => boolean;
}

const rank = { end: 0, spacing: 1, opening: 2 } as const;

/** The studs of a wall from the left: those of the spacing, and where there is none, at its ends and beside openings. */
export function studsOf(face: Face, openings: readonly Box[], spacing: Fraction, start: Fraction): Studs {
  const lines: StudLine[] = [{ at: nought, stands: "end" }, { at: face.width, stands: "end" }];
  for (let at = start; at.compare(face.width) < 0; at = at.add(spacing)) lines.push({ at, stands: "spacing" });
  for (const { left, right } of openings) lines.push({ at: left, stands: "opening" }, { at: right, stands: "opening" });
  const ordered = lines.sort((a, b) => a.at.compare(b.at) || rank[a.stands] - rank[b.stands]);
  const places = new Set(ordered.map(({ at }) => keyOf(at)));
  return {
    lines: ordered.filter(({ at }, index) => index === 0 || ordered[index - 1]?.at.equals(at) !== true),
    standAt: (at) => places.has(keyOf(at)),
  };
}
