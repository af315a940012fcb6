import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Face and outline of a soffit: an underside that is clad.
 *
 * @example
 * ```ts
 * soffitFace({ length: "12 ft", depth: "18 in" }).area.toString(); // "18 ft2"
 * ```
 */
export const soffitFace = /* @__PURE__ */ calculation({
  id: "takeoff.soffit-face",
  title: "Face of a soffit",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of the soffit along the wall", above: 0 },
    depth: { is: "length", unit: ["ft", "m"], symbol: "d", says: "depth of the soffit", above: 0 },
  },
  steps: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "length * depth", basis: geometry },
    outline: { is: "length", unit: ["ft", "m"], symbol: "p", says: "round the soffit", formula: "2 * (length + depth)", basis: geometry },
  },
  cautions: ["Stone overhead hangs by its bond alone until the mortar has set: ask whether it may be adhered there at all, and prop it."],
});
