import type { Work } from "./composed.js";
import type { ProblemCode, Trouble } from "./problems.js";
import type { Wanted, Words } from "./wording.js";

/** A reason for refusing, in words; what was given is a text, or words with values. */
export function refusal(path: Trouble["path"], given: string | Words, wanted: Wanted, code: ProblemCode = "refused"): Trouble {
  return typeof given === "string" ? { code, path, given, wanted } : { code, path, given: given.words, gives: given, wanted };
}

/** Ends the run with all of them, where there are any. */
export function refuseAll(troubles: readonly Trouble[], work: Work): void {
  const last = troubles.at(-1);
  if (last === undefined) return;
  troubles.slice(0, -1).forEach(work.problem);
  work.refuse(last);
}
