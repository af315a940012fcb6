import { InputError, type Problem, problem } from "./problems.js";
import type { Attempt, Solution } from "./solution.js";
import type { StandardSchema } from "./standard-schema.js";

/** What can be called: a calculation or a composed function, both alike. */
export interface Callable<Input, A> extends StandardSchema<Input> {
  // No doc comment: an editor would show it in place of the function's own. The answers alone; throws an InputError with every problem.
  (input: Input): A;
  readonly id: string;
  readonly title: string;
  /** The answers with every step, what was assumed, what to beware of, and what it stands on. */
  readonly solve: (input: Input) => Solution<A>;
  /** Takes anything, and never throws for bad input. */
  readonly try: (input: unknown) => Attempt<A>;
}

/** A calculation or a composed function, whatever it is given and answers. */
export interface AnyCallable {
  (input: never): unknown;
  readonly id: string;
  readonly title: string;
  /** See {@link Callable}. */
  readonly solve: (input: never) => Solution;
  /** See {@link Callable}. */
  readonly try: (input: unknown) => Attempt<unknown>;
}

/** Dresses a way of answering and a way of solving as a {@link Callable}. */
export function callable<A>(
  { id, title }: { readonly id: string; readonly title: string },
  answer: (input: unknown) => A,
  solve: (input: unknown) => Solution<A>,
  besides: object = {},
): Callable<unknown, A> {
  const attempt = (input: unknown): Attempt<A> => {
    try {
      return Object.freeze({ ok: true, solution: solve(input) });
    } catch (error) {
      return Object.freeze({ ok: false, problems: problemsOf(error) });
    }
  };
  const validate = (input: unknown): { value: unknown } | { issues: readonly Problem[] } => {
    const tried = attempt(input);
    return tried.ok ? { value: input } : { issues: tried.problems };
  };
  const standard = Object.freeze({ version: 1, vendor: "settingbed", validate });
  return Object.freeze(Object.assign((input: unknown) => answer(input), { id, title, solve, try: attempt, "~standard": standard }, besides));
}

/** The problems of an error of bad input; any other error, such as that of a hostile getter, becomes one. */
function problemsOf(error: unknown): readonly Problem[] {
  let reason = "no reason given";
  try {
    if (error instanceof InputError) return error.problems;
    if (error instanceof Error) reason = error.message.slice(0, 200);
  } catch {
    // Even to ask what was thrown can throw.
  }
  return Object.freeze([problem({ code: "refused", path: [], given: "", wanted: { kind: "unforeseen", reason } })]);
}
