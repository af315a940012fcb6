import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Times in the life of a batch, counted from the first water on the powder: when it has slaked, when it is ready, and
 * when it is thrown away. Nothing restarts its life.
 *
 * @example
 * ```ts
 * const batch = mixTimes({ mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" });
 * batch.readyFrom.toString(); // "9 min"
 * batch.usable.toString(); // "109 min"
 * ```
 */
export const mixTimes = /* @__PURE__ */ calculation({
  id: "timing.mix-times",
  title: "Times of a batch after its first water",
  given: {
    mixing: { is: "time", unit: "min", symbol: "t_m", says: "time of the first mixing", above: 0 },
    slakeLow: { is: "time", unit: "min", symbol: "t_l", says: "least time to slake, from the bag", above: 0 },
    slakeHigh: { is: "time", unit: "min", symbol: "t_h", says: "most time to slake, from the bag", above: 0 },
    remixing: { is: "time", unit: "min", symbol: "t_r", says: "time of mixing again, without water", above: 0 },
    life: { is: "time", unit: "min", symbol: "t_d", says: "life of the batch at its temperature, from the first water", above: 0 },
  },
  steps: {
    slakeSpread: { is: "time", unit: "min", symbol: "t_s", says: "between the least and the most time to slake", formula: "slakeHigh - slakeLow", basis: arithmetic, atLeast: 0 },
    slakeFrom: { is: "time", unit: "min", symbol: "T_s", says: "left to slake from", formula: "mixing", basis: arithmetic },
    remixFrom: { is: "time", unit: "min", symbol: "T_l", says: "mixed again no sooner than", formula: "mixing + slakeLow", basis: arithmetic },
    remixBy: { is: "time", unit: "min", symbol: "T_h", says: "mixed again no later than", formula: "mixing + slakeHigh", basis: arithmetic },
    readyFrom: { is: "time", unit: "min", symbol: "T_1", says: "ready at the soonest", formula: "remixFrom + remixing", basis: arithmetic },
    readyBy: { is: "time", unit: "min", symbol: "T_2", says: "ready at the latest", formula: "remixBy + remixing", basis: arithmetic },
    discard: { is: "time", unit: "min", symbol: "T_d", says: "thrown away", formula: "life", basis: arithmetic },
    usable: { is: "time", unit: "min", symbol: "t_u", says: "time to use it in, ready at the latest", formula: "discard - readyBy", basis: arithmetic, above: 0 },
  },
  cautions: [
    "The life of a batch is that of its data sheet at the temperature of the mortar; heat shortens it. Nothing restarts it: not remixing, and never more water.",
    "Stiff before its time is stiff: throw it away.",
  ],
});
