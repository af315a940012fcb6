import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { threeThreads } from "../data/fasteners.js";

/**
 * Least length of a screw through layers into steel: past the steel it must show three threads, or the least
 * penetration asked for where that is more. A drill point comes on top, since it is no thread.
 *
 * @example
 * ```ts
 * const screw = screwLength({ layers: "5/8 in", steel: "0.0346 in", threadsPerInch: "18 /in", leastPenetration: "3/8 in", pointLength: "0 in" });
 * screw.length.toString(); // "1.0346 in"
 * ```
 */
export const screwLength = /* @__PURE__ */ calculation({
  id: "fasteners.screw-length",
  title: "Least length of a screw into steel",
  given: {
    layers: { is: "length", unit: ["in", "mm"], symbol: "t_l", says: "thickness of all layers between the head and the steel", above: 0 },
    steel: { is: "length", unit: ["in", "mm"], symbol: "t", says: "thickness of the steel, of all plies the screw goes through", above: 0 },
    threadsPerInch: { is: "countPerLength", unit: ["/in", "/mm"], symbol: "n_t", says: "threads of the screw to the inch", above: 0 },
    leastPenetration: { is: "length", unit: ["in", "mm"], symbol: "p", says: "least penetration past the steel that the specification asks for, commonly 3/8 in", atLeast: 0 },
    pointLength: { is: "length", unit: ["in", "mm"], symbol: "l_p", says: "length of the drill point or tip without thread, 0 in where it has none", atLeast: 0 },
  },
  constants: {
    leastThreads: { is: "count", symbol: "n", value: 3, says: "threads that must show past the steel", basis: threeThreads },
  },
  steps: {
    threads: { is: "length", unit: ["in", "mm"], symbol: "l_t", says: "length of these threads", formula: "leastThreads / threadsPerInch", basis: geometry },
    penetration: { is: "length", unit: ["in", "mm"], symbol: "p_l", says: "threaded length past the steel", formula: "max(threads, leastPenetration)", basis: arithmetic },
    length: { is: "length", unit: ["in", "mm"], symbol: "L", says: "least length of the screw under its head", formula: "layers + steel + penetration + pointLength", basis: geometry },
  },
  cautions: [
    "Take the next longer screw that is made; one that is too short shows no thread past the steel.",
    "The rule of three threads is written for steel of 33 mil and thicker.",
    "Look behind the stud for pipes and cables before you take a longer one.",
  ],
});
