import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { adjustPractice } from "../data/mortar.js";

/** Whether a unit that has been set may be moved. */
export interface MayMoveUnit {
  readonly mayMove: boolean;
  /** Time left to move it, where it may be moved. */
  readonly left?: Quantity<"time">;
  readonly why: string;
}

/**
 * Whether a unit that has been set may still be slid or turned, or must come off. The clock only ever says no: a bed that has
 * stiffened before its time is set.
 *
 * @example
 * ```ts
 * const early = mayMoveUnit({ sinceSet: "6 min", adjustTime: "10 min", bedState: "soft" });
 * early.mayMove; // true
 * early.left?.toString(); // "4 min"
 * mayMoveUnit({ sinceSet: "12 min", adjustTime: "10 min", bedState: "soft" }).mayMove; // false
 * ```
 */
export const mayMoveUnit = /* @__PURE__ */ composed({
  id: "mortar.may-move-unit",
  title: "Whether a set unit may be moved",
  given: {
    sinceSet: { is: "time", unit: "min", symbol: "T", says: "time since the unit was pressed into its bed", atLeast: 0 },
    adjustTime: { is: "time", unit: "min", symbol: "T_a", says: "adjust time at the temperature of the wall, from the data sheet; commonly 5 to 15 min at 70 degF", above: 0 },
    bedState: { oneOf: ["soft", "stiff"], says: "whether the mortar at the edge of the unit still gives and sticks to a finger" },
  },
  cautions: ["The data sheet goes before this answer. Heat, wind and thirsty stone shorten the adjust time; see timing.life-at-temperature for one told at another temperature."],
  run: ({ sinceSet, adjustTime, bedState }, work): MayMoveUnit => {
    work.stand(adjustPractice);
    const off = "take the unit off, strip the mortar from wall and unit, and set it in fresh mortar";
    if (bedState === "stiff") return { mayMove: false, why: `the bed has stiffened, and a bond that is broken now does not heal: ${off}` };
    if (compare(sinceSet, adjustTime) >= 0) return { mayMove: false, why: `the adjust time of ${adjustTime.toString()} is over, and a bond that is broken now does not heal: ${off}` };
    return { mayMove: true, left: subtract(adjustTime, sinceSet), why: "it is within its adjust time and the bed is soft: slide it, do not pull it off" };
  },
});
