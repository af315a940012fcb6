import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { dewPoint } from "./dew-point.js";
import { saturationPressure } from "./saturation-pressure.js";
import { vapourByWetBulb } from "./vapour-by-wet-bulb.js";

/** What a psychrometer tells of the air. */
export interface WetBulbHumidity {
  readonly humidity: Quantity<"ratio">;
  readonly vapourPressure: Quantity<"pressure">;
  readonly dewPoint: Quantity<"temperature">;
}

/**
 * Humidity and dew point from the dry and the wet bulb of a psychrometer and the pressure of the air.
 *
 * @example
 * ```ts
 * wetBulbHumidity({ dryBulb: "68 degF", wetBulb: "62 degF", barometer: "29.92 inHg" }).humidity.to("%").toFixed(0); // "71"
 * ```
 */
export const wetBulbHumidity = /* @__PURE__ */ composed({
  id: "weather.wet-bulb-humidity",
  title: "Humidity and dew point from a psychrometer",
  given: {
    dryBulb: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the dry bulb", atLeast: "32 degF", atMost: "140 degF" },
    wetBulb: { is: "temperature", unit: ["degF", "degC"], symbol: "T_w", says: "temperature of the wet bulb, in moving air", atLeast: "32 degF", atMost: "140 degF" },
    barometer: { is: "pressure", unit: ["inHg", "kPa"], symbol: "p", says: "pressure of the air here, not reduced to the sea", atLeast: "15 inHg", atMost: "33 inHg" },
  },
  run: ({ dryBulb, wetBulb, barometer }, work): WetBulbHumidity => {
    const drySaturation = work.part(saturationPressure, { temperature: dryBulb }, ["dryBulb"]).answers.saturation;
    const wetSaturation = work.part(saturationPressure, { temperature: wetBulb }, ["wetBulb"]).answers.saturation;
    const { humidity, vapourPressure } = work.part(vapourByWetBulb, { dryBulb, wetBulb, barometer, drySaturation, wetSaturation }).answers;
    if (compare(humidity, quantity("ratio", "15 %")) < 0) work.caution("In air so dry a small error of the wet bulb moves the dew point by many degrees; read the humidity another way.");
    return { humidity, vapourPressure, dewPoint: work.part(dewPoint, { airTemperature: dryBulb, humidity }).answers.dewPoint };
  },
});
