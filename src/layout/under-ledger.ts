import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, times } from "../core/quantity-arithmetic.js";
import { cutInRun } from "./cut-in-run.js";
import { stoneBelow } from "./stone-below.js";

/** Stone under the ledger. */
export interface StoneUnder {
  readonly courses: Quantity<"count">;
  /** What is left below them for a cut unit and its joint. */
  readonly rest: Quantity<"length">;
}

/** Stone under the ledger at both ends of the ground. */
export interface UnderLedger {
  readonly atHighest: StoneUnder;
  readonly atLowest: StoneUnder;
  /** Where a whole unit at the highest ground would leave too small a cut: two units cut alike instead. */
  readonly twoAlike?: Quantity<"length">;
}

/** What lies under the ledger, and what its least may be. */
type Under = Readonly<Record<"below" | "groundFall" | "unitHeight" | "bedJoint" | "leastBelow", Quantity<"length">>>;

/** What is set under the ledger when it is gone, where the foot follows the ground. */
export function underLedger({ below, groundFall, unitHeight, bedJoint, leastBelow }: Under, work: Work): UnderLedger {
  const none = times(bedJoint, 0);
  const under = (fall: Quantity<"length">): StoneUnder => {
    const { courses, rest } = work.part(stoneBelow, { below, groundFall: fall, unitHeight, bedJoint }).answers;
    return { courses, rest };
  };
  const [atHighest, atLowest] = [under(none), under(groundFall)];
  work.caution("Where the foot follows the ground, the lowest course runs out in a wedge wherever the slope crosses a course line: step the foot there, so that no piece is under the least cut.");
  if (compare(atHighest.rest, none) === 0 || compare(atHighest.rest, leastBelow) >= 0) return { atHighest, atLowest };
  const { cut: twoAlike } = work.part(cutInRun, { run: below, wholeTotal: none, joints: 2, joint: bedJoint, cuts: 2 }).answers;
  work.caution(`At the highest ground a whole course under the ledger leaves ${atHighest.rest.toString()} for a cut unit and its joint, which is under the least cut: cut two alike, ${twoAlike.toString()} each, or move the course line.`);
  return { atHighest, atLowest, twoAlike };
}
