import type { Work } from "../core/composed.js";

/** Refuses a board under the head: the equations are for steel on steel. */
export function refuseBoard(work: Work, underHead: "steel" | "board"): void {
  if (underHead === "steel") return;
  work.problem({
    code: "refused",
    path: ["underHead"],
    given: "a board under the head",
    wanted: "the equations hold for steel on steel; what a board holds at a screw head is a test value, so ask its maker for it",
  });
}
