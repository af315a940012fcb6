import * as z from "zod/mini";
import type { Work } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";
import type { JointRange } from "./close-run.js";
import { say } from "./refusals.js";

/** The joints that may be taken, and the one that is wanted. */
export const jointRange = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    least: quantityField("length", { says: "narrowest joint that may be taken", atLeast: 0 }),
    wanted: quantityField("length", { says: "joint that is wanted", atLeast: 0 }),
    most: quantityField("length", { says: "widest joint that may be taken", atLeast: 0 }),
  }));

/** Notes where the wanted joint does not lie between the other two. */
export function checkJointRange({ least, wanted, most }: JointRange, at: string, work: Work): void {
  if (compare(wanted, least) < 0) work.problem({ code: "tooLow", path: [at, "wanted"], given: wanted.toString(), wanted: say("jointUnderNarrowest", { least }) });
  if (compare(wanted, most) > 0) work.problem({ code: "tooHigh", path: [at, "wanted"], given: wanted.toString(), wanted: say("jointOverWidest", { most }) });
}
