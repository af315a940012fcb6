import type { Work } from "../core/composed.js";
import { refusal } from "../core/refuse-all.js";
import { say } from "./refusals.js";

/** Refuses a board under the head: the equations are for steel on steel. */
export function refuseBoard(work: Work, underHead: "steel" | "board"): void {
  if (underHead === "steel") return;
  work.problem(refusal(["underHead"], say("boardUnderHead"), say("steelOnSteel")));
}
