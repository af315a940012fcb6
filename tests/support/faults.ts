import type { Attempt } from "../../src/core/solution.js";

/** What was wrong with an attempt, each as `tooLow depth`; nothing where it went well. */
export function faults(tried: Attempt<unknown>): readonly string[] {
  return tried.ok ? [] : tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
}
