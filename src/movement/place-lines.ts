import { exact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";

/** Why a joint lies where it lies. */
export type JointReason = "inside corner" | "other material" | "outside corner" | "backing joint" | "floor line" | "jamb" | "head or sill" | "spacing";

/** A joint before it is measured: how far along it lies, and why there. */
export interface JointLine {
  readonly at: Fraction;
  readonly why: readonly JointReason[];
}

/** What lines are placed along. */
export interface Run {
  readonly length: Fraction;
  readonly most: Fraction;
  /** Lines that are there whatever the spacing. */
  readonly fixed: readonly JointLine[];
  /** Where a line is drawn to, if it costs no line more. */
  readonly preferred: readonly JointLine[];
  /** How near an outside corner at the beginning, or at the end, the first line lies. */
  readonly nearStart?: Fraction | undefined;
  readonly nearEnd?: Fraction | undefined;
}

/**
 * Places lines along a run: all fixed ones, one near each outside corner, and between these as few as the spacing allows,
 * evenly, each drawn to the nearest preferred place that costs no line more.
 */
export function placeLines(run: Run): readonly JointLine[] {
  const { length, nearStart, nearEnd } = run;
  let lines = merged(run.fixed);
  const add = (near: Fraction | undefined, from: Fraction, to: Fraction, at: Fraction): void => {
    if (near === undefined || near.compare(length) >= 0 || within(lines, from, to).length > 0) return;
    // The furthest of the preferred places that the corner allows.
    const [best] = [...within(run.preferred, from, to)].filter((line) => !isEnd(line, length)).sort((a, b) => a.at.sub(at).abs().compare(b.at.sub(at).abs()));
    lines = merged([...lines, best === undefined ? { at, why: ["outside corner"] } : { at: best.at, why: [...best.why, "outside corner"] }]);
  };
  const nought = length.sub(length);
  add(nearStart, nought, nearStart ?? nought, nearStart ?? nought);
  const last = length.sub(nearEnd ?? nought);
  add(nearEnd, last, length, last);
  const bounds = [nought, ...lines.map(({ at }) => at), length];
  return merged([...lines, ...bounds.slice(1).flatMap((to, index) => between(bounds[index] ?? nought, to, run))]);
}

/** The lines that the spacing asks for between two others. */
function between(from: Fraction, to: Fraction, { most, preferred }: Run): readonly JointLine[] {
  const found: JointLine[] = [];
  let here = from;
  for (let parts = to.sub(from).div(most).ceil(); parts.compare(exact(1n)) > 0; parts = parts.sub(exact(1n))) {
    const even = here.add(to.sub(here).div(parts));
    // Nearer than this the rest would need a line more; further, this part would be too long.
    const least = to.sub(most.mul(parts.sub(exact(1n))));
    const [best] = within(preferred, least, here.add(most)).filter(({ at }) => at.compare(here) > 0 && at.compare(to) < 0).sort((a, b) => a.at.sub(even).abs().compare(b.at.sub(even).abs()));
    const line: JointLine = best ?? { at: even, why: ["spacing"] };
    found.push(best === undefined ? line : { at: line.at, why: [...line.why, "spacing"] });
    here = line.at;
  }
  return found;
}

function within(lines: readonly JointLine[], from: Fraction, to: Fraction): readonly JointLine[] {
  return lines.filter(({ at }) => at.compare(from) >= 0 && at.compare(to) <= 0);
}

function isEnd({ at }: JointLine, length: Fraction): boolean {
  return at.equals(exact(0n)) || at.equals(length);
}

/** In order; what lies at one place is one line with all its reasons. */
function merged(lines: readonly JointLine[]): readonly JointLine[] {
  const sorted = [...lines].sort((a, b) => a.at.compare(b.at));
  return sorted.reduce<readonly JointLine[]>((done, line) => {
    const last = done.at(-1);
    if (last?.at.equals(line.at) !== true) return [...done, line];
    return [...done.slice(0, -1), { at: last.at, why: [...new Set([...last.why, ...line.why])] }];
  }, []);
}
