import type { Callable } from "../core/callable.js";
import type { Work } from "../core/composed.js";
import { InputError, type Path, problemAt } from "../core/problems.js";
import { refuseAll } from "../core/refuse-all.js";

/**
 * Runs a calculation for one of the many intervals of a record and keeps its answers alone: its solution for one interval
 * is shown, and a record of a year does not make a solution of nine thousand parts.
 */
export function unshown<Input, A>(of: Callable<Input, A>, input: Input, work: Work, at: Path): A {
  try {
    return of(input);
  } catch (error) {
    if (error instanceof InputError) refuseAll(error.problems.map((one) => problemAt(at, one)), work);
    throw error;
  }
}
