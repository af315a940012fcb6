import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { refuseAll } from "../core/refuse-all.js";
import { nested } from "../schema/nested.js";
import { type Clock, clockAfter, clockText, readClock, troublesIn } from "./clock.js";
import { lifeAtTemperature } from "./life-at-temperature.js";
import { mixClockInput } from "./mix-clock-input.js";
import { mixTimes } from "./mix-times.js";

/** The clock of a batch; times count from the first water on the powder. */
export interface MixClock {
  readonly slakeFrom: Quantity<"time">;
  readonly remixFrom: Quantity<"time">;
  readonly remixBy: Quantity<"time">;
  readonly readyFrom: Quantity<"time">;
  readonly readyBy: Quantity<"time">;
  readonly discard: Quantity<"time">;
  /** Time to use it in, ready at the latest. */
  readonly usable: Quantity<"time">;
  /** The same by the clock on the wall; absent where the first water has no time of day. */
  readonly clock?: Readonly<Record<"slakeFrom" | "remixFrom" | "remixBy" | "readyFrom" | "readyBy" | "discard", string>>;
}

/**
 * The clock of a batch: from when and until when it slakes, when it is mixed again and ready, and when it is thrown away.
 * Times count from the first water on the powder; with a time of day for that, they are told by the clock as well.
 *
 * @example
 * ```ts
 * const clock = mixClock({
 *   mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h", firstWater: "2026-06-01T09:40[America/Chicago]",
 * });
 * clock.remixFrom.toString(); // "8 min"
 * clock.discard.toString(); // "120 min"
 * clock.clock.discard; // "2026-06-01T11:40-05:00[America/Chicago]"
 * ```
 */
export const mixClock = /* @__PURE__ */ composed({
  id: "timing.mix-clock",
  title: "Clock of a batch",
  reads: /* @__PURE__ */ nested(mixClockInput),
  run: ({ firstWater, zone, warmth, life: lifeAtReference, ...times }, work): MixClock => {
    const life = warmth === undefined ? lifeAtReference : work.part(lifeAtTemperature, { lifeAtReference, ...given(warmth) }, ["warmth"]).answers.life;
    const { slakeFrom, remixFrom, remixBy, readyFrom, readyBy, discard, usable } = work.part(mixTimes, { ...times, life }).answers;
    const answers = { slakeFrom, remixFrom, remixBy, readyFrom, readyBy, discard, usable };
    if (firstWater === undefined) return answers;
    const start = readClock(firstWater, { path: ["firstWater"], says: "first water on the powder", zone });
    refuseAll(troublesIn([start]), work);
    const at = (time: Quantity<"time">, way: "up" | "down"): string => clockText(clockAfter(start as Clock, time, way));
    return {
      ...answers,
      clock: {
        slakeFrom: at(slakeFrom, "up"), remixFrom: at(remixFrom, "up"), remixBy: at(remixBy, "down"),
        readyFrom: at(readyFrom, "up"), readyBy: at(readyBy, "up"), discard: at(discard, "down"),
      },
    };
  },
});

/** What was given, without what was left out. */
function given<A, T extends { readonly activation?: A | undefined }>({ activation, ...rest }: T): Omit<T, "activation"> & { readonly activation?: A } {
  return activation === undefined ? rest : { ...rest, activation };
}
