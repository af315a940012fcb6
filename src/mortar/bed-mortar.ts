import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Setting mortar for a face: the bed on the wall and the coat on the backs of the units, with waste, in bags.
 *
 * @example
 * ```ts
 * const order = bedMortar({ area: "480 ft2", bed: "3/8 in", backButter: "1/8 in", butteredShare: "100 %", waste: "10 %", bagYield: "0.5 ft3" });
 * order.net.toString(); // "20 ft3"
 * order.bags.toString(); // "44"
 * ```
 */
export const bedMortar = /* @__PURE__ */ calculation({
  id: "mortar.bed-mortar",
  title: "Setting mortar for a face",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "whole stone face with what corner units cover, openings out", above: 0 },
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean thickness of the bed on the wall", above: 0 },
    backButter: { is: "length", unit: ["in", "mm"], symbol: "b_b", says: "mean thickness of the coat on the backs of the units", atLeast: 0 },
    butteredShare: { is: "ratio", unit: "%", symbol: "f_b", says: "share of the face that is back-buttered: 100 % for the whole, 1 less the joint share for the backs alone", atLeast: 0, atMost: 1 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "mortar dropped, stiffened or left in the pail, on top of the net", atLeast: 0, below: 1 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
  },
  steps: {
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "bed and back-butter together, over the whole face", formula: "bed + butteredShare * backButter", basis: geometry },
    net: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar in the wall", formula: "area * thickness", basis: geometry },
    toOrder: { is: "volume", unit: ["ft3", "L"], symbol: "V_o", says: "mortar with waste", formula: "net * (1 + waste)", basis: arithmetic },
    bags: { is: "count", symbol: "n", says: "whole bags to order", formula: "ceil(toOrder / bagYield)", basis: arithmetic },
  },
  cautions: ["Counted on a flat wall: hollows take more, see mortar.hollow-fill."],
});
