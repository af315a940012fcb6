import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { clockField, zoneField } from "./clock-field.js";

/** The times of a batch, its first water by the clock, and the rule for its temperature. */
export const mixClockInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    mixing: quantityField("time", { says: "time of the first mixing", above: 0, atMost: "24 h" }),
    slakeLow: quantityField("time", { says: "least time to slake, from the bag", above: 0, atMost: "24 h" }),
    slakeHigh: quantityField("time", { says: "most time to slake, from the bag", above: 0, atMost: "24 h" }),
    remixing: quantityField("time", { says: "time of mixing again, without water", above: 0, atMost: "24 h" }),
    life: quantityField("time", { says: "life of the batch at the temperature of its data sheet, from the first water", above: 0, atMost: "48 h" }),
    firstWater: z.optional(clockField("first water on the powder")),
    zone: zoneField(),
    warmth: z.optional(
      telling("temperature of the mortar, and the rule for it", z.strictObject({
        temperature: quantityField("temperature", { says: "temperature of the mortar", atLeast: "40 degF", atMost: "120 degF" }),
        reference: quantityField("temperature", { says: "temperature the data sheet gives the life for", atLeast: "40 degF", atMost: "120 degF" }),
        rule: telling("rule by which warmth makes things go faster", z.enum(["doubling", "Arrhenius"])),
        activation: z.optional(quantityField("temperatureDifference", { says: "activation energy over the gas constant", atLeast: "1000 K", atMost: "10000 K" })),
      })),
    ),
  }));
