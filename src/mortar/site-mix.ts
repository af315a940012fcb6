import { basisText } from "../core/basis.js";
import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { armyProportions, limeByType, sandByProperty } from "../data/mortar.js";
import { mixByParts } from "./mix-by-parts.js";
import { say } from "./refusals.js";
import { sandPart } from "./sand-part.js";

/**
 * Cement, lime and sand for site-mixed mortar of an ASTM C270 type. How much sand goes to cement and lime, and how much
 * bulk goes into one volume of mortar, is asked for.
 *
 * @example
 * ```ts
 * const mix = siteMix({
 *   type: "N", specification: "proportion", sandRatio: 3, volume: "9 ft3", bulkingFactor: 1.25,
 *   cementDensity: "94 lb/ft3", limeDensity: "40 lb/ft3", sandDensity: "80 lb/ft3", cementBag: "94 lb", limeBag: "50 lb",
 * });
 * mix.cement.toString(); // "1.25 ft3"
 * mix.lime.toString(); // "1.5625 ft3"
 * mix.sand.toString(); // "8.4375 ft3"
 * ```
 */
export const siteMix = /* @__PURE__ */ composed({
  id: "mortar.site-mix",
  title: "Site-mixed mortar by ASTM C270 type",
  given: {
    type: { oneOf: ["M", "S", "N", "O"], says: "mortar type after ASTM C270" },
    specification: { oneOf: ["proportion", "property"], says: "whether the mortar is specified by its proportions or by its properties" },
    sandRatio: { is: "ratio", symbol: "q", says: "sand to cement and lime together, by bulk volume", atLeast: 2.25, atMost: 3.5 },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar wanted, with waste", above: 0 },
    bulkingFactor: { is: "ratio", symbol: "f", says: "bulk volume of cement, lime and sand to one volume of mortar", atLeast: 1, atMost: 2 },
    cementDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_c", says: "bulk density of the cement", above: 0 },
    limeDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_l", says: "bulk density of the lime", above: 0 },
    sandDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_s", says: "mass of dry sand in a volume of damp, loose sand", above: 0 },
    cementBag: { is: "mass", unit: ["lb", "kg"], symbol: "b_c", says: "cement in a bag", above: 0 },
    limeBag: { is: "mass", unit: ["lb", "kg"], symbol: "b_l", says: "lime in a bag", above: 0 },
  },
  cautions: ["Proportions are volumes of materials; strength and bond are proved by tests, and the specification goes before this table.", "Lime and cement burn skin and eyes, wet most of all, and their dust harms the lungs: wear gloves, glasses and a mask."],
  run: ({ type, specification, sandRatio, ...rest }, work) => {
    work.stand(specification === "property" ? sandByProperty : armyProportions);
    if (specification === "proportion" && compare(sandRatio, quantity("ratio", 3)) > 0) {
      work.refuse({ code: "tooHigh", path: ["sandRatio"], given: sandRatio.toString(), wanted: say("sandByProportion", { most: 3 }) });
    }
    const { lime, basis } = limeByType[type];
    work.assume(`Type ${type} taken with ${lime} of lime to 1 of cement: ${basisText(basis)}`);
    work.stand(basis);
    const parts = work.part(sandPart, { limePart: lime, sandRatio }).answers;
    return { type, ...work.part(mixByParts, { cementPart: 1, limePart: lime, ...parts, ...rest }).answers };
  },
});
