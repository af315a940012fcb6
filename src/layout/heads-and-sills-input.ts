import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";

/** What the heads and sills are held against. */
export const headsAndSillsInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    /** Course by course from the base line; they begin again at the end of the list. */
    unitHeights: telling("face heights of the units, course by course", z.array(quantityField("length", { says: "actual face height of the units of a course", above: 0 }))),
    bedJoint: quantityField("length", { says: "width of the level joints", atLeast: 0 }),
    openings: telling("openings whose heads and sills are to meet a joint", z.array(
      z.strictObject({
        name: z.optional(telling("name of the opening", z.string())),
        sill: z.optional(quantityField("length", { says: "height of the sill over the base line", above: 0 })),
        head: z.optional(quantityField("length", { says: "height of the head over the base line", above: 0 })),
      }),
    )),
    spreadOver: z.optional(quantityField("count", { says: "most joints that an error is spread over", atLeast: "1", atMost: 1000 })),
    jointChange: z.optional(quantityField("length", { says: "most that one joint is changed", above: 0 })),
    leastCut: z.optional(quantityField("length", { says: "least height of a cut course", above: 0 })),
  }));

/** What the heads and sills are held against, as it has been read. */
export type ReadHeadsAndSills = z.output<ReturnType<typeof headsAndSillsInput>>;
