import type { Work } from "./composed.js";
import type { Trouble } from "./problems.js";

/** A reason for refusing, in words. */
export function refusal(path: Trouble["path"], given: string, wanted: string): Trouble {
  return { code: "refused", path, given, wanted };
}

/** Ends the run with all of them, where there are any. */
export function refuseAll(troubles: readonly Trouble[], work: Work): void {
  const last = troubles.at(-1);
  if (last === undefined) return;
  troubles.slice(0, -1).forEach(work.problem);
  work.refuse(last);
}
