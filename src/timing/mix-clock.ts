import { composed } from "../core/composed.js";
import { mixTimes } from "./mix-times.js";

/**
 * The clock of a batch: from when and until when it slakes, when it is mixed again and ready, and when it is thrown away.
 * Times count from the first water on the powder.
 *
 * @example
 * ```ts
 * const clock = mixClock({ mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" });
 * clock.remixFrom.toString(); // "8 min"
 * clock.discard.toString(); // "120 min"
 * ```
 */
export const mixClock = /* @__PURE__ */ composed({
  id: "timing.mix-clock",
  title: "Clock of a batch",
  given: {
    mixing: { is: "time", unit: "min", symbol: "t_m", says: "time of the first mixing", above: 0 },
    slakeLow: { is: "time", unit: "min", symbol: "t_l", says: "least time to slake, from the bag", above: 0 },
    slakeHigh: { is: "time", unit: "min", symbol: "t_h", says: "most time to slake, from the bag", above: 0 },
    remixing: { is: "time", unit: "min", symbol: "t_r", says: "time of mixing again, without water", above: 0 },
    life: { is: "time", unit: "min", symbol: "t_d", says: "life of the batch at the temperature of its data sheet, from the first water", above: 0 },
  },
  run: (given, work) => {
    const { slakeFrom, remixFrom, remixBy, readyFrom, readyBy, discard, usable } = work.part(mixTimes, given).answers;
    return { slakeFrom, remixFrom, remixBy, readyFrom, readyBy, discard, usable };
  },
});
