import { basisText } from "../core/basis.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { ukFrost, ukHeat, ukRule } from "../data/weather.js";
import type { Asked, Band } from "./tms-bands.js";

/**
 * The state of an hour by the frost rule of the United Kingdom: work stops below 3 degC unless it is rising, from 1 degC on,
 * and is expected to pass 3 degC before it falls again. A first reading has no trend and is taken as falling.
 */
export function ukState(temperatures: readonly Quantity<"temperature">[], index: number): Band {
  const { stopBelow, resumeFrom, expectedAbove, hotAbove } = ukRule;
  const at = temperatures[index];
  if (at === undefined) throw new RangeError("there is no such hour");
  if (compare(at, quantity("temperature", hotAbove)) > 0) return { band: "hot", step: 1, side: "hot" };
  if (compare(at, quantity("temperature", stopBelow)) >= 0) return { band: "normal", step: 0, side: "normal" };
  const before = temperatures[index - 1];
  const rising = before !== undefined && compare(at, before) > 0;
  const passes = rising && compare(at, quantity("temperature", resumeFrom)) >= 0 && risesOver(temperatures.slice(index), quantity("temperature", expectedAbove));
  return passes ? { band: "cold and rising", step: 1, side: "cold" } : { band: "frost stop", step: 2, side: "cold" };
}

/** Whether the temperatures pass a limit before they fall. */
function risesOver([first, ...rest]: readonly Quantity<"temperature">[], limit: Quantity<"temperature">): boolean {
  if (first === undefined) return false;
  if (compare(first, limit) > 0) return true;
  const [next] = rest;
  return next !== undefined && compare(next, first) >= 0 && risesOver(rest, limit);
}

/** What the rule asks in a state. */
export function ukAsks({ side, step }: Band): readonly Asked[] {
  if (side === "hot") return [{ says: "hot-weather precautions are due above 30 degC", clause: basisText(ukHeat) }];
  if (side === "normal") return [];
  return [{ says: step > 1 ? "stop: below 3 degC, and not rising from 1 degC to above 3 degC" : "work may go on: rising from 1 degC, expected above 3 degC", clause: basisText(ukFrost) }];
}
