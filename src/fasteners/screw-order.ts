import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Screws and boxes to order for the boards that are placed; spare boards take no screws.
 *
 * @example
 * ```ts
 * const order = screwOrder({ boards: 40, screwsPerBoard: 52, waste: "5 %", packCount: 1000 });
 * order.toOrder.toString(); // "2184"
 * order.boxes.toString(); // "3"
 * ```
 */
export const screwOrder = /* @__PURE__ */ calculation({
  id: "fasteners.screw-order",
  title: "Screws to order",
  given: {
    boards: { is: "count", symbol: "B", says: "boards placed on the wall, without spare boards", above: 0 },
    screwsPerBoard: { is: "count", symbol: "n", says: "screws in one board", above: 0, whole: true },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "screws dropped, spun or broken, on top of the net", atLeast: 0, below: 1 },
    packCount: { is: "count", symbol: "p", says: "screws in a box", atLeast: 1, whole: true },
  },
  steps: {
    net: { is: "count", symbol: "N", says: "screws in the wall", formula: "boards * screwsPerBoard", basis: arithmetic },
    withWaste: { is: "count", symbol: "N_w", says: "screws with waste, before rounding", formula: "net * (1 + waste)", basis: arithmetic },
    toOrder: { is: "count", symbol: "N_o", says: "whole screws to order", formula: "ceil(withWaste)", basis: arithmetic },
    boxes: { is: "count", symbol: "b", says: "whole boxes to order", formula: "ceil(withWaste / packCount)", basis: arithmetic },
  },
});
