import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { problem } from "../core/problems.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";

/** How many alike: a whole number, 1 where it is left out. */
export const howMany = /* @__PURE__ */ atFirstUse(() =>
  z.pipe(
    z.optional(quantityField("count", { says: "how many alike", atLeast: "1", atMost: "100000" })),
    z.transform((count, context): number => {
      const given = count?.toString() ?? "1";
      if (/^\d+$/.test(given)) return Number(given);
      const wanted = common("writeWhole");
      context.issues.push({ code: "custom", input: given, message: wanted.words, params: { problem: problem({ code: "refused", path: [], says: "how many alike", given, wanted }) } });
      return z.NEVER;
    }),
  ));
