import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { evaporationLimits, evaporationSpread } from "../data/weather.js";
import { evaporationMenzel } from "./evaporation-menzel.js";
import { evaporationUnoSi } from "./evaporation-uno-si.js";
import { evaporationUnoUs } from "./evaporation-uno-us.js";
import { saturationPressure } from "./saturation-pressure.js";

/** How fast a wet face dries, as a figure to screen by. */
export interface Evaporation {
  readonly form: "Menzel" | "Uno SI" | "Uno US";
  /** To two figures: no more is known. */
  readonly rate: Quantity<"evaporation">;
  readonly is: "evaporation" | "condensation";
  /** The limit for concrete in the units of the form, and whether the rate is above it. */
  readonly limit: Quantity<"evaporation">;
  readonly aboveLimit: boolean;
}

interface Weather {
  readonly mortarTemperature: Quantity<"temperature">;
  readonly airTemperature: Quantity<"temperature">;
  readonly humidity: Quantity<"ratio">;
  readonly wind: Quantity<"speed">;
}

/**
 * How fast water leaves fresh mortar, by a form that is named. It is a figure to screen by, made for slabs: on a wall it only
 * ranks how hard the drying is.
 *
 * @example
 * ```ts
 * const drying = evaporation({ mortarTemperature: "87 degF", airTemperature: "80 degF", humidity: "50 %", wind: "12 mph", form: "Menzel" });
 * drying.rate.toString(); // "0.24 lb/ft2/h"
 * drying.aboveLimit; // true
 * ```
 */
export const evaporation = /* @__PURE__ */ composed({
  id: "weather.evaporation",
  title: "Evaporation from fresh mortar",
  given: {
    mortarTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_c", says: "temperature of the mortar at its surface", atLeast: "32 degF", atMost: "140 degF" },
    airTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_a", says: "temperature of the air at the wall", atLeast: "32 degF", atMost: "140 degF" },
    humidity: { is: "ratio", unit: "%", symbol: "r", says: "relative humidity of the air, over water", atLeast: 0, atMost: "100 %" },
    wind: { is: "speed", unit: ["mph", "km/h"], symbol: "V", says: "wind at 20 in (0.5 m) from the surface", atLeast: 0, atMost: "60 mph" },
    form: { oneOf: ["Menzel", "Uno SI", "Uno US"], says: "form of the estimate" },
  },
  cautions: [
    "A figure to screen by, and no promise: the estimate may be off by 40 % either way. It is made for level concrete; on a wall it only ranks how hard the drying is.",
    "The wind is that 20 in (0.5 m) from the face, not that of the weather station.",
  ],
  run: ({ form, ...weather }, work): Evaporation => {
    const exact = rateBy(form, weather, work);
    const unit = form === "Uno SI" ? "kg/m2/h" : "lb/ft2/h";
    const limit = quantity("evaporation", form === "Uno SI" ? "1 kg/m2/h" : "0.2 lb/ft2/h");
    work.stand(evaporationSpread);
    work.stand(evaporationLimits);
    const figure = exact.to(unit);
    return {
      form,
      rate: quantity("evaporation", { value: figure.toSignificantDigits(2).toString(), unit }),
      is: figure.isNegative() && !figure.isZero() ? "condensation" : "evaporation",
      limit,
      aboveLimit: compare(exact, limit) > 0,
    };
  },
});

function rateBy(form: Evaporation["form"], weather: Weather, work: Work): Quantity<"evaporation"> {
  if (form === "Uno SI") return work.part(evaporationUnoSi, weather).answers.rate;
  if (form === "Uno US") return work.part(evaporationUnoUs, weather).answers.rate;
  const { mortarTemperature, airTemperature, humidity, wind } = weather;
  const mortarSaturation = work.part(saturationPressure, { temperature: mortarTemperature }, ["mortarTemperature"]).answers.saturation;
  const airSaturation = work.part(saturationPressure, { temperature: airTemperature }, ["airTemperature"]).answers.saturation;
  return work.part(evaporationMenzel, { mortarSaturation, airSaturation, humidity, wind }).answers.rate;
}
