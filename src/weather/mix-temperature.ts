import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { mortarLimits } from "../data/weather.js";
import { freshMortarTemperature } from "./fresh-mortar-temperature.js";
import { waterForMortarTemperature } from "./water-for-mortar-temperature.js";

/** How warm a mix comes out, or how warm its water must be. */
export interface MixTemperature {
  readonly mortarTemperature: Quantity<"temperature">;
  readonly waterTemperature: Quantity<"temperature">;
  /** Whether the water is no hotter than the limit that was given. */
  readonly waterWithinLimit: boolean;
  readonly says: string;
}

/**
 * Temperature of fresh mortar from its parts, or that of the water which gives a temperature that is wanted. The limit for the
 * water is the job's: 120, 140 and 180 degF are all in print.
 *
 * @example
 * ```ts
 * const mix = mixTemperature({
 *   sandMass: "282 lb", sandTemperature: "35 degF", moistureMass: "14.1 lb", cementMass: "94 lb", cementTemperature: "40 degF",
 *   waterMass: "33 lb", mortarTemperature: "60 degF", waterLimit: "140 degF",
 * });
 * mix.waterTemperature.to("degF").toFixed(1); // "130.2"
 * mix.waterWithinLimit; // true
 * ```
 */
export const mixTemperature = /* @__PURE__ */ composed({
  id: "weather.mix-temperature",
  title: "Temperature of a mix and of its water",
  given: {
    sandMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_a", says: "dry sand", above: 0 },
    sandTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_a", says: "temperature of the sand, not frozen", atLeast: "32 degF", atMost: "212 degF" },
    moistureMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_f", says: "free moisture in the sand", atLeast: 0 },
    cementMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_c", says: "cement and lime", above: 0 },
    cementTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_c", says: "temperature of the cement", atLeast: "-20 degF", atMost: "180 degF" },
    waterMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_m", says: "mixing water", above: 0 },
    waterTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_m", says: "temperature of the mixing water", atLeast: "32 degF", atMost: "212 degF", either: "warmth" },
    mortarTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature wanted of the fresh mortar", atLeast: "32 degF", atMost: "120 degF", either: "warmth" },
    waterLimit: { is: "temperature", unit: ["degF", "degC"], symbol: "T_x", says: "hottest mixing water that the job allows", above: "32 degF", atMost: "212 degF" },
  },
  run: ({ waterTemperature: water, mortarTemperature: wanted, waterLimit, ...parts }, work): MixTemperature => {
    const told = (mortarTemperature: Quantity<"temperature">, waterTemperature: Quantity<"temperature">): MixTemperature => {
      const waterWithinLimit = compare(waterTemperature, waterLimit) <= 0;
      return { mortarTemperature, waterTemperature, waterWithinLimit, says: waterWithinLimit ? "the water is within its limit" : "the water would be hotter than its limit: heat the sand as well" };
    };
    work.stand(mortarLimits);
    if (wanted !== undefined) return told(wanted, work.part(waterForMortarTemperature, { ...parts, mortarTemperature: wanted }).answers.waterTemperature);
    if (water === undefined) throw new Error("neither water nor mortar has a temperature");
    const { mortarTemperature } = work.part(freshMortarTemperature, { ...parts, waterTemperature: water }).answers;
    if (compare(mortarTemperature, quantity("temperature", "120 degF")) > 0) work.caution("Mortar above 120 degF (48.9 degC) is too hot to use.");
    return told(mortarTemperature, water);
  },
});
