import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, isNought, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { nested } from "../schema/nested.js";
import { baseMove } from "./base-move.js";
import { apart } from "./close-run.js";
import { type CourseLines, courseLines } from "./course-lines.js";
import { errorPerJoint } from "./error-per-joint.js";
import { halfUnit } from "./half-unit.js";
import { headsAndSillsInput, type ReadHeadsAndSills } from "./heads-and-sills-input.js";
import { type Level, levelsOf, rulesOf, type SpendingRules } from "./opening-levels.js";

type Length = Quantity<"length">;

/** A head or a sill beside the course lines. */
export interface OpeningLevel {
  readonly opening: string;
  readonly is: "sill" | "head";
  readonly height: Length;
  /** Courses from the base line to the nearest course line. */
  readonly line: number;
  readonly lineHeight: Length;
  /** How far the level lies over that line; below nought where it lies under it. */
  readonly error: Length;
  /** That error spread over the joints below it, ten at most or as many as there are; absent where there are none. */
  readonly perJoint?: Length;
  /** Where the error is best spent; `"on the line"` too where a level below has raised the line to it. */
  readonly best: "on the line" | "spread" | "cut";
  /** The joints to change, by the courses they belong to, and what each is changed by. */
  readonly spread?: { readonly fromCourse: number; readonly toCourse: number; readonly each: Length };
  /** From a head up, or from a sill down, to the next course line: what is left for cut units and a joint. */
  readonly cut?: { readonly height: Length; readonly toLine: number; readonly underLeastCut: boolean };
}

/** Heads and sills beside the course lines. */
export interface HeadsAndSills {
  /** From the lowest up. */
  readonly levels: readonly OpeningLevel[];
  /** How far up to move the base line for the least error, and the worst that is left. */
  readonly baseMove: { readonly move: Length; readonly worstLeft: Length };
}

/**
 * Where the heads and sills of openings fall among the courses, and where each error is best spent: in the joints between
 * it and the level below, where none of them changes by more than the eye sees, or in a cut course. Joints that one level
 * has settled are not touched again for a higher one.
 *
 * @example
 * ```ts
 * const window = headsAndSills({ unitHeights: ["7-5/8 in"], bedJoint: "3/8 in", openings: [{ name: "A", sill: "32 in", head: "80-1/4 in" }] });
 * window.levels[0].best; // "on the line"
 * window.levels[1].line; // 10
 * window.levels[1].best; // "spread"
 * window.levels[1].spread.fromCourse; // 5
 * window.levels[1].spread.each.toJSON(); // { value: "1/24", unit: "in" }
 * ```
 */
export const headsAndSills = /* @__PURE__ */ composed({
  id: "layout.heads-and-sills",
  title: "Heads and sills among the courses",
  reads: /* @__PURE__ */ nested(headsAndSillsInput),
  run: holdLevels,
});

function holdLevels(given: ReadHeadsAndSills, work: Work): HeadsAndSills {
  const { unitHeights, bedJoint } = given;
  const levels = levelsOf(given, work);
  const rules = rulesOf(given, work);
  const lines = courseLines(unitHeights, bedJoint);
  const held: OpeningLevel[] = [];
  let state: Spent = { raised: times(bedJoint, 0), settled: 0, line: 0 };
  for (const level of levels) {
    const found = hold(level, lines, state, rules, work);
    const { line, best, cut } = found;
    const raised = best === "spread" ? found.error : state.raised;
    state = { raised, settled: Math.max(state.settled, cut?.toLine ?? line), line };
    held.push(found);
  }
  const errors = held.map(({ error }) => error).sort(compare);
  const { move, worstLeft } = work.part(baseMove, { mostError: errors.at(-1) as Length, leastError: errors[0] as Length }).answers;
  if (held.some(({ cut }) => cut?.underLeastCut === true)) work.caution("A strip under the least cut runs over a head or under a sill: move the base line, change the joints over the whole height, or take units of another height there.");
  return { levels: held, baseMove: { move, worstLeft } };
}

/** What the levels below have settled. */
interface Spent {
  /** What the course lines are raised by. */
  readonly raised: Length;
  /** The highest line that may not move any more. */
  readonly settled: number;
  /** The line nearest to the level below. */
  readonly line: number;
}

function hold({ opening, is, height }: Level, lines: CourseLines, { raised, settled, line: from }: Spent, rules: SpendingRules, work: Work): OpeningLevel {
  const line = lines.nearest(subtract(height, raised), from);
  const lineHeight = lines.at(line);
  const error = subtract(height, lineHeight);
  const below = Math.min(rules.spreadOver, line);
  const own = { opening, is, height, line, lineHeight, error, ...(below === 0 ? {} : { perJoint: work.part(errorPerJoint, { error, joints: below }).answers.perJoint }) };
  const rest = subtract(error, raised);
  if (isNought(rest)) return { ...own, best: "on the line" };
  const joints = Math.min(rules.spreadOver, line - settled);
  if (joints > 0) {
    const { perJoint: each } = errorPerJoint({ error: rest, joints });
    const nought = times(each, 0);
    if (compare(apart(each, nought), rules.jointChange) <= 0 && compare(sum([rules.bedJoint, each]), nought) >= 0) {
      work.part(errorPerJoint, { error: rest, joints });
      return { ...own, best: "spread", spread: { fromCourse: line - joints + 1, toCourse: line, each } };
    }
  }
  return { ...own, best: "cut", cut: cutAt(height, is, lines, line, raised, rules) };
}

/** What is left between the level and the next course line, over a head or under a sill. */
function cutAt(height: Length, is: "sill" | "head", lines: CourseLines, line: number, raised: Length, { leastCut, bedJoint }: SpendingRules): NonNullable<OpeningLevel["cut"]> {
  const lineAt = (number: number): Length => sum([lines.at(number), raised]);
  const over = compare(height, lineAt(line)) > 0;
  const [lower, upper] = over ? [line, line + 1] : [line - 1, line];
  const left = is === "head" ? subtract(lineAt(upper), height) : subtract(height, lineAt(Math.max(0, lower)));
  const least = leastCut ?? halfUnit({ unit: lines.unitOver(Math.max(0, lower)), joint: bedJoint }).half;
  return { height: left, toLine: is === "head" ? upper : Math.max(0, lower), underLeastCut: compare(subtract(left, bedJoint), least) < 0 };
}
