import * as z from "zod/mini";
import { problem } from "../core/problems.js";
import { refusal } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly } from "../schema/fields.js";
import { outlineFault } from "./outline-fault.js";
import { say } from "./refusals.js";

/** An outline has at most so many corners, so that the check for crossings stays quick. */
const mostCorners = 100;

/** The corners of a polygon in order, the last joined to the first; refused where they are no outline. */
export const polygonPoints = /* @__PURE__ */ atFirstUse(() =>
  readOnly(
    z.array(
      z.strictObject({
        x: quantityField("length", { says: "how far right the corner lies" }),
        y: quantityField("length", { says: "how high the corner lies" }),
      }),
    ),
  ).check((context) => {
    const { value } = context;
    const counted = value.length >= 3 && value.length <= mostCorners;
    const fault = counted ? outlineFault(value) : say("cornersFromTo", { least: 3, most: mostCorners });
    if (fault === undefined) return;
    const found = problem({ ...refusal([], counted ? "" : say("listOf", { count: value.length }), fault), says: "corners of the outline" });
    context.issues.push({ code: "custom", input: value, message: fault.words, params: { problem: found } });
  }));
