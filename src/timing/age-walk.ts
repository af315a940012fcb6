import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, isNought, subtract, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { intervalAge } from "./interval-age.js";
import type { Interval } from "./intervals.js";
import type { AgeFactors } from "./age-factors.js";
import { timeByAgeFactor } from "./time-by-age-factor.js";
import { unshown } from "./unshown.js";

/** How far a walk over intervals came: the time it took, and what is still lacking where the intervals end first. */
export interface Walk {
  readonly time: Quantity<"time">;
  readonly reached: boolean;
  /** Age that the walk brought. */
  readonly age: Quantity<"time">;
}

/** Walks over intervals in their order until an age is reached, into the middle of an interval where it must. */
export function walkToAge(wanted: Quantity<"time">, intervals: readonly Interval[], ageFactors: AgeFactors, work: Work): Walk {
  let left = wanted;
  let time = subtract(wanted, wanted);
  for (const interval of intervals) {
    const ageFactor = ageFactors(interval.temperature, interval.path);
    const { age } = unshown(intervalAge, { lasts: interval.lasts, ageFactor }, work, interval.path);
    if (!isNought(age) && compare(age, left) >= 0) {
      const last = isNought(left) ? left : work.part(timeByAgeFactor, { timeAtReference: left, ageFactor }, interval.path).answers.time;
      return { time: sum([time, last]), reached: true, age: wanted };
    }
    left = subtract(left, age);
    time = sum([time, interval.lasts]);
  }
  return { time, reached: isNought(left), age: subtract(wanted, left) };
}

/** The age that all of the intervals bring. */
export function ageOver(intervals: readonly Interval[], ageFactors: AgeFactors, work: Work): Quantity<"time"> {
  const ages = intervals.map(({ lasts, temperature, path }) => unshown(intervalAge, { lasts, ageFactor: ageFactors(temperature, path) }, work, path).age);
  return sum([quantity("time", "0 h"), ...ages]);
}
