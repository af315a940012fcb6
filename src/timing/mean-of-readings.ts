import { exact, exactArithmetic as arithmetic } from "../core/amount.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";

/** Mean of temperatures, exactly; shown in the unit of the first. */
export function meanOfReadings(temperatures: readonly Quantity<"temperature">[]): Quantity<"temperature"> {
  const [first] = temperatures;
  if (first === undefined) throw new RangeError("there is nothing to take the mean of");
  const total = temperatures.map(amountOf).reduce(arithmetic.add);
  return makeQuantity("temperature", arithmetic.divide(total, exact(BigInt(temperatures.length))), first.unit);
}
