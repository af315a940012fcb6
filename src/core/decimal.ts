import { Decimal as DecimalDefault } from "decimal.js";

/**
 * Our own decimals: 40 digits, plain notation. A private clone of the defaults (rounding half up), so that nobody's
 * `Decimal.set` reaches it and ours reaches nobody's.
 */
export const Decimal = DecimalDefault.clone({
  defaults: true,
  precision: 40,
  toExpNeg: -40,
  toExpPos: 60,
});
export type Decimal = DecimalDefault;
