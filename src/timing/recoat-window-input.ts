import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { clockField, zoneField } from "./clock-field.js";
import { recordInput } from "./record-input.js";

const row = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    upTo: quantityField("temperature", { says: "highest surface temperature of the row" }),
    soonest: quantityField("time", { says: "soonest next coat", atLeast: 0, atMost: "366 d" }),
    latest: quantityField("time", { says: "latest next coat", above: 0, atMost: "366 d" }),
  }));

/** The coat before, how hot its surface was, and the recoat table of the data sheet. */
export const recoatWindowInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    firstPatch: clockField("first patch of the coat before"),
    lastPatch: clockField("last patch of the coat before"),
    zone: zoneField(),
    hottestSurface: z.optional(quantityField("temperature", { says: "highest surface temperature that lasted an hour since the coat before" })),
    surface: z.optional(telling("record of the temperature of the surface", recordInput())),
    from: quantityField("temperature", { says: "lowest surface temperature of the first row" }),
    rows: readOnly(telling("rows of the recoat table", z.array(row()))),
  }));

/** One row of a recoat table. */
export type RecoatRow = z.output<ReturnType<typeof row>>;
