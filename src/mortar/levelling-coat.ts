import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Mortar for a scratch or levelling coat, with what fills the dimples of screws driven too deep.
 *
 * @example
 * ```ts
 * const coat = levellingCoat({ area: "400 ft2", thickness: "3/8 in", overdriven: 0, dimpleWidth: "1/2 in", dimpleDepth: "1/8 in", waste: "10 %", bagYield: "0.5 ft3" });
 * coat.net.toString(); // "12.5 ft3"
 * coat.bags.toString(); // "28"
 * ```
 */
export const levellingCoat = /* @__PURE__ */ calculation({
  id: "mortar.levelling-coat",
  title: "Scratch or levelling coat",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area to be coated, openings out", above: 0 },
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "mean thickness of the coat", above: 0 },
    overdriven: { is: "count", symbol: "n_d", says: "screws driven too deep", atLeast: 0, whole: true },
    dimpleWidth: { is: "length", unit: ["in", "mm"], symbol: "w_d", says: "width of the dimple over such a screw", above: 0 },
    dimpleDepth: { is: "length", unit: ["in", "mm"], symbol: "d_d", says: "depth of the dimple over such a screw", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "mortar dropped, stiffened or left in the pail, on top of the net", atLeast: 0, below: 1 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
  },
  steps: {
    coat: { is: "volume", unit: ["ft3", "L"], symbol: "V_c", says: "mortar in the coat", formula: "area * thickness", basis: geometry },
    dimples: { is: "volume", unit: ["ft3", "L"], symbol: "V_d", says: "mortar in the dimples, taken as round and flat-bottomed", formula: "overdriven * pi * dimpleWidth ^ 2 / 4 * dimpleDepth", basis: geometry },
    net: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar on the wall", formula: "coat + dimples", basis: arithmetic },
    toOrder: { is: "volume", unit: ["ft3", "L"], symbol: "V_o", says: "mortar with waste", formula: "net * (1 + waste)", basis: arithmetic },
    bags: { is: "count", symbol: "n", says: "whole bags to order", formula: "ceil(toOrder / bagYield)", basis: arithmetic },
  },
  cautions: ["A screw driven through the face of its board holds nothing: set a new one beside it before the coat goes on."],
});
