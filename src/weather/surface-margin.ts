import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { marginFhwa, marginUfc } from "../data/weather.js";
import { dewPoint } from "./dew-point.js";
import { frostPoint } from "./frost-point.js";
import { surfaceOverDewPoint } from "./surface-over-dew-point.js";

/** Whether a surface is far enough over the dew point to coat it. */
export interface SurfaceMargin {
  readonly decision: "go" | "wait";
  readonly dewPoint: Quantity<"temperature">;
  /** Where the dew point is below freezing: the frost point, which then holds. */
  readonly frostPoint?: Quantity<"temperature">;
  readonly over: Quantity<"temperatureDifference">;
  /** What is left over the margin; below nought where it is not met. */
  readonly marginLeft: Quantity<"temperatureDifference">;
}

/**
 * How far a surface is over the dew point, and whether that meets the margin of a rule: 5 degF or 3 degC, which are not the
 * same (3 degC is 5.4 degF).
 *
 * @example
 * ```ts
 * surfaceMargin({ surfaceTemperature: "63 degF", airTemperature: "70 degF", humidity: "65 %", rule: "5 degF" }).decision; // "go"
 * surfaceMargin({ surfaceTemperature: "63 degF", airTemperature: "70 degF", humidity: "65 %", rule: "3 degC" }).decision; // "wait"
 * ```
 */
export const surfaceMargin = /* @__PURE__ */ composed({
  id: "weather.surface-margin",
  title: "Margin of a surface over the dew point",
  given: {
    surfaceTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_s", says: "temperature of the surface itself", atLeast: "-4 degF", atMost: "200 degF" },
    airTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the air at the wall", atLeast: "-4 degF", atMost: "140 degF" },
    humidity: { is: "ratio", unit: "%", symbol: "h", says: "relative humidity of the air, over water", atLeast: "1 %", atMost: "100 %" },
    rule: { oneOf: ["5 degF", "3 degC"], says: "margin that the rule asks for" },
  },
  cautions: [
    "The margin must hold while the film dries, and the surface must be rising. Read again about every 4 h, and when the weather turns.",
    "A rule for paint asks for 45 to 90 degF of air and surface besides, and no fall below 40 degF before the film is dry; the data sheet comes first.",
  ],
  run: ({ surfaceTemperature, airTemperature, humidity, rule }, work): SurfaceMargin => {
    const dew = work.part(dewPoint, { airTemperature, humidity }).answers.dewPoint;
    const frost = compare(dew, quantity("temperature", "32 degF")) < 0 ? work.part(frostPoint, { dewPoint: dew }).answers.frostPoint : undefined;
    const { over, marginLeft } = work.part(surfaceOverDewPoint, { surfaceTemperature, condensesAt: frost ?? dew, leastMargin: rule }).answers;
    work.stand(rule === "5 degF" ? marginUfc : marginFhwa);
    // A dew point comes out of logarithms: a margin that is just met may lack something in its thirtieth place.
    const met = marginLeft.to().toDecimalPlaces(20).gte(0);
    return { decision: met ? "go" : "wait", dewPoint: dew, ...(frost === undefined ? {} : { frostPoint: frost }), over, marginLeft };
  },
});
