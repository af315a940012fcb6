import type { AnyCallable } from "../core/callable.js";
import { InputError, problem } from "../core/problems.js";
import { drawFrom } from "./draw.js";
import type { Exercise } from "./drawn-exercise.js";
import { exercise, type ExerciseOptions, hasFormulas } from "./exercise.js";
import { say } from "./refusals.js";

/** How a set of exercises is drawn. */
export interface ExercisesOptions extends Pick<ExerciseOptions, "seed" | "level" | "units" | "digits"> {
  /** How many; one from each calculation unless told otherwise. */
  readonly count?: number;
}

/**
 * Draws a mixed set of exercises: from each calculation of the list as often as from any other, in an order of its own.
 *
 * @param list - calculations; `hasFormulas` picks them from the catalogue
 * @throws InputError if an option cannot be read
 * @throws TypeError if the list is empty, or holds something that is no calculation
 * @example
 * ```ts
 * exercises([bagYield, coursedFace], { seed: 1, count: 4 }).length; // 4
 * ```
 */
export function exercises(list: readonly AnyCallable[], { seed, count = list.length, ...options }: ExercisesOptions): readonly Exercise[] {
  if (list.length === 0) throw new TypeError("there is no calculation to draw an exercise from");
  const none = list.find((one) => !hasFormulas(one));
  if (none !== undefined) throw new TypeError(`an exercise is drawn from a calculation made of formulas; ${none.id} is none: leave it out with hasFormulas`);
  if (!Number.isInteger(count) || count < 1 || count > 1000) throw new InputError("exercises", [problem({ code: "refused", path: ["count"], given: String(count), wanted: say("giveWholeFromTo", { least: 1, most: 1000 }) })]);
  const draw = drawFrom(seed, "exercises");
  const order: AnyCallable[] = [];
  while (order.length < count) order.push(...shuffled(list, draw.whole));
  return order.slice(0, count).map((one) => exercise(one, { ...options, seed: draw.whole(1, 999999999) }));
}

function shuffled<T>(list: readonly T[], whole: (least: number, most: number) => number): readonly T[] {
  return list.map((one) => ({ one, at: whole(0, 2 ** 31 - 1) })).sort((a, b) => a.at - b.at).map(({ one }) => one);
}
