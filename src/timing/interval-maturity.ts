import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { coldCountsNothing, saulMaturity } from "../data/timing.js";

/**
 * Maturity of one interval: its time, times how far its temperature is above the datum; below the datum it counts for nothing.
 *
 * @example
 * ```ts
 * intervalMaturity({ lasts: "24 h", temperature: "20 degC", datumTemperature: "-10 degC" }).maturity.toString(); // "720 degC h"
 * ```
 */
export const intervalMaturity = /* @__PURE__ */ calculation({
  id: "timing.interval-maturity",
  title: "Maturity of one interval",
  given: {
    lasts: { is: "time", unit: "h", symbol: "t", says: "how long the interval lasts", atLeast: 0 },
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "mean temperature in it", atLeast: "-60 degF", atMost: "212 degF" },
    datumTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", says: "datum of the rule, below which nothing counts", atLeast: "0 degF", atMost: "50 degF" },
  },
  constants: {
    nothing: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "z", value: "0 degF", says: "what an interval below the datum counts", basis: coldCountsNothing },
  },
  steps: {
    overDatum: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D", says: "temperature over the datum", formula: "temperature - datumTemperature", basis: arithmetic },
    counted: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D_c", says: "what counts of it", formula: "max(overDatum, nothing)", basis: coldCountsNothing },
    maturity: { is: "maturity", unit: ["degFh", "degCh"], symbol: "M", says: "maturity of the interval", formula: "counted * lasts", basis: saulMaturity },
  },
  cautions: ["Maturities over different datums are never compared."],
});
