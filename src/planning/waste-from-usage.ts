import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { volumeKept } from "../data/planning.js";

/**
 * Waste that the empty packs prove: what was bought and is not left, over the net, beside the waste that was planned.
 *
 * @example
 * ```ts
 * const stone = wasteFromUsage({ bought: 66, leftOver: 3, netPacks: 60, waste: "10 %" });
 * stone.actualWaste.toString(); // "5 %"
 * stone.overPlanned.toString(); // "-5 %"
 * ```
 */
export const wasteFromUsage = /* @__PURE__ */ calculation({
  id: "planning.waste-from-usage",
  title: "Waste from the packs used",
  given: {
    bought: { is: "count", symbol: "n_b", says: "packs bought", above: 0 },
    leftOver: { is: "count", symbol: "n_l", says: "packs left over, parts of a pack counted", atLeast: 0 },
    netPacks: { is: "count", symbol: "n", says: "packs that the work takes net, before they are rounded up", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w_p", says: "waste that was planned, on top of the net", atLeast: 0, below: 1 },
  },
  steps: {
    packsUsed: { is: "count", symbol: "n_u", says: "packs used", formula: "bought - leftOver", basis: arithmetic, atLeast: 0 },
    actualWaste: { is: "ratio", unit: "%", symbol: "w", says: "waste on top of the net; below nought less was used than the net", formula: "(packsUsed - netPacks) / netPacks", basis: volumeKept },
    overPlanned: { is: "ratio", unit: "%", symbol: "d", says: "waste over the planned one", formula: "actualWaste - waste", basis: arithmetic },
  },
});
