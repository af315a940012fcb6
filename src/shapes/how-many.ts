import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { problem } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { isWhole } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";

/** How many alike: a whole number, 1 where it is left out. */
export const howMany = /* @__PURE__ */ atFirstUse(() =>
  z.pipe(
    z.optional(quantityField("count", { says: "how many alike", atLeast: "1", atMost: "100000" })),
    z.transform((count, context): Quantity<"count"> => {
      const found = count ?? quantity("count", 1);
      if (isWhole(found)) return found;
      const [given, wanted] = [found.toString(), common("writeWhole")];
      context.issues.push({ code: "custom", input: given, message: wanted.words, params: { problem: problem({ code: "refused", path: [], says: "how many alike", given, wanted }) } });
      return z.NEVER;
    }),
  ));
