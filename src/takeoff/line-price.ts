import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Price of one line of an order list, rounded once to the smallest amount of its currency, halves up. Amounts stand without
 * their currency, which is one for the whole list.
 *
 * @example
 * ```ts
 * linePrice({ packs: 37, packPrice: 84.55, markup: "12.5 %", smallest: 0.01 }).price.toString(); // "3519.39"
 * ```
 */
export const linePrice = /* @__PURE__ */ calculation({
  id: "takeoff.line-price",
  title: "Price of a line",
  given: {
    packs: { is: "count", symbol: "n", says: "packs to order; pieces where there are no packs", atLeast: 0, whole: true },
    packPrice: { is: "ratio", symbol: "p", says: "price of one of them, in the currency of the list", atLeast: 0 },
    markup: { is: "ratio", unit: "%", symbol: "u", says: "markup, on top of the price", atLeast: 0 },
    smallest: { is: "ratio", symbol: "c", says: "smallest amount of the currency, such as 0.01", above: 0 },
  },
  steps: {
    unrounded: { is: "ratio", symbol: "P_u", says: "price with its markup, before rounding", formula: "packs * packPrice * (1 + markup)", basis: arithmetic },
    price: { is: "ratio", symbol: "P", says: "price, rounded once", formula: "round(unrounded / smallest) * smallest", basis: arithmetic },
  },
});
