import { type Basis, basisText } from "../core/basis.js";
import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { beallLife, c270Life, colourPractice, repointingLife, thinSetPractice, ufgsLife } from "../data/mortar.js";
import { say } from "./refusals.js";

const limits = {
  "ASTM C270": { within: "2-1/2 h", allows: "water that has dried out may be made up within 2-1/2 h of the first mixing", basis: c270Life },
  "UFGS-04215": { within: "2-1/4 h", allows: "water that has dried out may be made up, if the mortar is in its place within 2-1/4 h of mixing", basis: ufgsLife },
  "Beall 2004": { within: "1-1/2 h", allows: "water that has dried out may be made up within 1-1/2 h of the first mixing", basis: beallLife },
} as const;

const never = {
  "thin-set mortar": { basis: thinSetPractice, why: "thin-set mortar takes no water once it is mixed; stir it again as it is, and throw it away when that no longer helps or its life is over" },
  "coloured joint mortar": { basis: colourPractice, why: "added water changes the colour of the joint; mix less at a time" },
  "repointing mortar": { basis: repointingLife, why: "repointing mortar is used within about 30 min of the last mixing and is not retempered" },
} as const;

const setAlready = "it has begun to set: throw it away";

/**
 * Whether mortar that has stiffened may get water, why, and on whose word. The rule is named where sources differ.
 *
 * @example
 * ```ts
 * mayAddWater({ material: "thin-set mortar", state: "stiffened", age: "40 min" }).mayAdd; // false
 * mayAddWater({ material: "ASTM C270 mortar", state: "stiffened", age: "2 h", rule: "ASTM C270" }).mayAdd; // true
 * mayAddWater({ material: "ASTM C270 mortar", state: "stiffened", age: "2 h", rule: "Beall 2004" }).mayAdd; // false
 * ```
 */
export const mayAddWater = /* @__PURE__ */ composed({
  id: "mortar.may-add-water",
  title: "Whether stiffened mortar may get water",
  given: {
    material: { oneOf: ["thin-set mortar", "ASTM C270 mortar", "coloured joint mortar", "repointing mortar"], says: "kind of mortar" },
    state: { oneOf: ["stiffened", "set"], says: "stiffened by loss of water, or beginning to set: crumbling and warm" },
    age: { is: "time", unit: "min", symbol: "T", says: "time since the first water", atLeast: 0 },
    rule: { oneOf: ["ASTM C270", "UFGS-04215", "Beall 2004"], says: "whose limit holds for ASTM C270 mortar", optional: true },
  },
  cautions: ["The data sheet and the specification go before this answer."],
  run: ({ material, state, age, rule }, work) => {
    const answer = (mayAdd: boolean, why: string, basis: Basis): { mayAdd: boolean; why: string; source: string } => {
      work.stand(basis);
      return { mayAdd, why, source: basisText(basis) };
    };
    if (material !== "ASTM C270 mortar") {
      if (rule !== undefined) work.refuse({ code: "refused", path: ["rule"], given: "", wanted: say("notForMaterial", { material }) });
      const { why, basis } = never[material];
      return answer(false, state === "set" ? setAlready : why, basis);
    }
    if (rule === undefined) {
      return work.refuse({ code: "missing", path: ["rule"], given: "", wanted: say("sourcesDiffer", { of: Object.keys(limits) }) });
    }
    const { within, allows, basis } = limits[rule];
    if (state === "set") return answer(false, setAlready, basis);
    if (compare(age, quantity("time", within)) > 0) return answer(false, `it is older than ${within}: throw it away`, basis);
    return answer(true, allows, basis);
  },
});
