import * as z from "zod/mini";
import { problem } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { isWhole } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { quantityField } from "../schema/fields.js";

/** How many alike: a whole number, 1 where it is left out. */
export const howMany = /* @__PURE__ */ (() =>
  z.pipe(
    z.optional(quantityField("count", { says: "how many alike", atLeast: "1", atMost: "100000" })),
    z.transform((count, context): Quantity<"count"> => {
      const given = count ?? quantity("count", 1);
      if (isWhole(given)) return given;
      const found = { says: "how many alike", given: given.toString(), wanted: "write a whole number" };
      context.issues.push({ code: "custom", input: found.given, message: found.wanted, params: { problem: problem({ code: "refused", path: [], ...found }) } });
      return z.NEVER;
    }),
  ))();
