import * as z from "zod/mini";
import { problem } from "../core/problems.js";
import { quantityField } from "../schema/fields.js";
import { outlineFault } from "./outline-fault.js";

/** An outline has at most so many corners, so that the check for crossings stays quick. */
const mostCorners = 100;

/** The corners of a polygon in order, the last joined to the first; refused where they are no outline. */
export const polygonPoints = /* @__PURE__ */ (() =>
  z
    .array(
      z.strictObject({
        x: quantityField("length", { says: "how far right the corner lies" }),
        y: quantityField("length", { says: "how high the corner lies" }),
      }),
    )
    .check((context) => {
      const { value } = context;
      const few = value.length < 3 ? "has fewer than 3" : value.length > mostCorners ? `has more than ${String(mostCorners)}` : undefined;
      const fault = few === undefined ? outlineFault(value) : undefined;
      if (few === undefined && fault === undefined) return;
      const wanted = fault ?? `write a list of 3 to ${String(mostCorners)} corners`;
      const found = problem({ code: fault === undefined ? "wrongKind" : "refused", path: [], says: "corners of the outline", given: few === undefined ? "" : `a list of ${String(value.length)}`, wanted });
      context.issues.push({ code: "custom", input: value, message: wanted, params: { problem: found } });
    }))();
