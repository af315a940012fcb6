// What can be and what cannot. Humidity is at most 100 %; water for a mix is between its freezing and its boiling point;
// wet things weigh something, moisture may be nought. The ends of the air's range are those of our fits, our decision.
import { describe } from "vitest";
import { dewPoint } from "../../src/weather/dew-point.js";
import { evaporationMenzel } from "../../src/weather/evaporation-menzel.js";
import { evaporationUnoSi } from "../../src/weather/evaporation-uno-si.js";
import { evaporationUnoUs } from "../../src/weather/evaporation-uno-us.js";
import { evaporation } from "../../src/weather/evaporation.js";
import { freshMortarTemperature } from "../../src/weather/fresh-mortar-temperature.js";
import { frostPoint } from "../../src/weather/frost-point.js";
import { mixTemperature } from "../../src/weather/mix-temperature.js";
import { saturationPressure } from "../../src/weather/saturation-pressure.js";
import { standardPressure } from "../../src/weather/standard-pressure.js";
import { surfaceMargin } from "../../src/weather/surface-margin.js";
import { surfaceOverDewPoint } from "../../src/weather/surface-over-dew-point.js";
import { vapourByWetBulb } from "../../src/weather/vapour-by-wet-bulb.js";
import { waterForMortarTemperature } from "../../src/weather/water-for-mortar-temperature.js";
import { wetBulbHumidity } from "../../src/weather/wet-bulb-humidity.js";
import { coatingWeather } from "../../src/weather/coating-weather.js";
import { masonryWeather } from "../../src/weather/masonry-weather.js";
import { weatherDays } from "../../src/weather/weather-days.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(dewPoint, { airTemperature: "from -4 degF, to 140 degF", humidity: "from 1 %, to 100 %" });
  itHoldsTheLimits(evaporationMenzel, { mortarSaturation: "above 0 psi", airSaturation: "above 0 psi", humidity: "from 0 %, to 100 %", wind: "from 0 mph, to 60 mph" });
  itHoldsTheLimits(evaporationUnoSi, { mortarTemperature: "from 0 degC, to 60 degC", airTemperature: "from 0 degC, to 60 degC", humidity: "from 0 %, to 100 %", wind: "from 0 km/h, to 100 km/h" });
  itHoldsTheLimits(evaporationUnoUs, { mortarTemperature: "from 32 degF, to 140 degF", airTemperature: "from 32 degF, to 140 degF", humidity: "from 0 %, to 100 %", wind: "from 0 mph, to 60 mph" });
  itHoldsTheLimits(evaporation, { mortarTemperature: "from 32 degF, to 140 degF", airTemperature: "from 32 degF, to 140 degF", humidity: "from 0 %, to 100 %", wind: "from 0 mph, to 60 mph" });
  itHoldsTheLimits(freshMortarTemperature, { sandMass: "above 0 lb", sandTemperature: "from 32 degF, to 212 degF", moistureMass: "from 0 lb", cementMass: "above 0 lb", cementTemperature: "from -20 degF, to 180 degF", waterMass: "above 0 lb", waterTemperature: "from 32 degF, to 212 degF" });
  itHoldsTheLimits(frostPoint, { dewPoint: "from -76 degF, to 32 degF" });
  itHoldsTheLimits(mixTemperature, { sandMass: "above 0 lb", sandTemperature: "from 32 degF, to 212 degF", moistureMass: "from 0 lb", cementMass: "above 0 lb", cementTemperature: "from -20 degF, to 180 degF", waterMass: "above 0 lb", waterTemperature: "from 32 degF, to 212 degF", mortarTemperature: "from 32 degF, to 120 degF", waterLimit: "above 32 degF, to 212 degF" });
  itHoldsTheLimits(saturationPressure, { temperature: "from 32 degF, to 140 degF" });
  itHoldsTheLimits(standardPressure, { altitude: "from -1000 ft, to 15000 ft" });
  itHoldsTheLimits(surfaceMargin, { surfaceTemperature: "from -4 degF, to 200 degF", airTemperature: "from -4 degF, to 140 degF", humidity: "from 1 %, to 100 %" });
  itHoldsTheLimits(surfaceOverDewPoint, { surfaceTemperature: "from -4 degF, to 200 degF", condensesAt: "any degF", leastMargin: "from 0 degF" });
  itHoldsTheLimits(vapourByWetBulb, { dryBulb: "from 32 degF, to 140 degF", wetBulb: "from 32 degF, to 140 degF", barometer: "from 15 inHg, to 33 inHg", drySaturation: "above 0 inHg", wetSaturation: "above 0 inHg" });
  itHoldsTheLimits(waterForMortarTemperature, { sandMass: "above 0 lb", sandTemperature: "from 32 degF, to 212 degF", moistureMass: "from 0 lb", cementMass: "above 0 lb", cementTemperature: "from -20 degF, to 180 degF", waterMass: "above 0 lb", mortarTemperature: "from 32 degF, to 120 degF" });
  itHoldsTheLimits(wetBulbHumidity, { dryBulb: "from 32 degF, to 140 degF", wetBulb: "from 32 degF, to 140 degF", barometer: "from 15 inHg, to 33 inHg" });

  const readings = ["60 degF", "62 degF", "55 degF", "45 degF", "39 degF"].map((temperature, index) => ({ at: `2026-10-05T${String(10 + 2 * index)}:00`, temperature, wind: "5 mph" }));
  const record = { zone: "America/Chicago", every: "2 h", readings };
  const recordLimits = (at: string): Readonly<Record<string, string>> => ({ [`${at}.every`]: "above 0 h, to 24 h", [`${at}.readings.1.temperature`]: "from -60 degF, to 140 degF", [`${at}.readings.1.wind`]: "from 0 mph, to 150 mph" });
  itHoldsTheLimitsIn(coatingWeather, "a forecast", {
    start: "2026-10-05T10:00", surfaceTemperature: "63 degF", airTemperature: "60 degF", humidity: "65 %", rule: "5 degF", least: "45 degF", most: "90 degF", mostHumidity: "85 %", notBelow: "40 degF", dry: "6 h", forecast: record,
  }, {
    surfaceTemperature: "from -4 degF, to 200 degF", airTemperature: "from -4 degF, to 140 degF", humidity: "from 1 %, to 100 %", least: "from -4 degF, to 140 degF", most: "from -4 degF, to 140 degF",
    mostHumidity: "above 0 %, to 100 %", notBelow: "from -4 degF, to 140 degF", dry: "above 0 d, to 14 d", ...recordLimits("forecast"),
  });
  itHoldsTheLimitsIn(masonryWeather, "a record", { ruleSet: "TMS 602-02", stopBelow: "25 degF", record }, { stopBelow: "from -20 degF, to 50 degF", ...recordLimits("record") });
  itHoldsTheLimitsIn(weatherDays, "days", { shift: { from: "07:00", until: "15:30" }, stopBelow: "25 degF", stopAbove: "100 degF", heatBelow: "40 degF", protection: "24 h", days: [{ date: "2026-12-01", low: "41 degF", high: "50 degF" }] }, {
    protection: "from 0 d, to 7 d", stopBelow: "from -60 degF, to 140 degF", stopAbove: "from -60 degF, to 140 degF", heatBelow: "from -60 degF, to 140 degF",
    "days.0.low": "from -60 degF, to 140 degF", "days.0.high": "from -60 degF, to 140 degF",
  });
});
