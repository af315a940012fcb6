import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { adhesionTable, limitCaution } from "../data/limits.js";
import { adhesionStress } from "./adhesion-stress.js";
import { judge, type Judged } from "./judge.js";
import { say } from "./refusals.js";

/** What an adhesion test gave. */
export interface AdhesionTest {
  readonly test: "shear" | "tension";
  readonly stress: Quantity<"pressure">;
  readonly check: Judged;
}

/**
 * Stress of an adhesion test against the figure of the job, or of a class on file that is tested in the same way. Shear and
 * tension are never compared.
 *
 * @example
 * ```ts
 * const pull = adhesionTest({ test: "tension", load: "628 lbf", area: "4 in2", required: "150 psi", requiredBy: "tension" });
 * pull.check.says; // "stress in tension: 157 psi reaches 150 psi"
 * ```
 */
export const adhesionTest = /* @__PURE__ */ composed({
  id: "limits.adhesion-test",
  title: "Adhesion test",
  cautions: [limitCaution, "Write down where it broke: in the unit, the mortar, the barrier, the board, or between two of them. A figure of a laboratory class is none for the wall; one test tells of one place."],
  given: {
    test: { oneOf: ["shear", "tension"], says: "how the specimen was loaded: along the face or away from it" },
    load: { is: "force", unit: ["lbf", "kN"], symbol: "P", says: "load at which it broke", above: 0 },
    area: { is: "area", unit: ["in2", "mm2"], symbol: "A", says: "area that was loaded, as cut or as glued", above: 0 },
    required: { is: "pressure", unit: ["psi", "MPa"], symbol: "f_r", says: "least stress that the job asks for", above: 0, either: "figure" },
    adhesionClass: { oneOf: ["1970s code", "EN 12004 C1", "EN 12004 C2", "ANSI A118.1", "ANSI A118.4", "ANSI A118.15"], says: "class on file whose least stress is taken", either: "figure" },
    requiredBy: { oneOf: ["shear", "tension"], says: "which of the two the figure of the job is", optional: true },
  },
  run: ({ test, load, area, required, adhesionClass, requiredBy }, work): AdhesionTest => {
    const onFile = adhesionClass === undefined ? undefined : adhesionTable[adhesionClass];
    const wantedBy = onFile?.test ?? requiredBy;
    if (onFile !== undefined && requiredBy !== undefined) work.problem({ code: "refused", path: ["requiredBy"], given: requiredBy, wanted: say("testedIn", { adhesionClass: String(adhesionClass), test: onFile.test }) });
    if (wantedBy === undefined) return work.refuse({ code: "missing", path: ["requiredBy"], given: "", wanted: say("asSpecified") });
    if (wantedBy !== test) work.refuse({ code: "refused", path: ["test"], given: test, wanted: say("figureIsIn", { test: wantedBy }) });
    const { stress } = work.part(adhesionStress, { load, area }).answers;
    const least = onFile ?? { least: required, basis: { kind: "common practice", says: "the figure of the job" } as const };
    return { test, stress, check: judge(`stress in ${test}`, stress, least, work) };
  },
});
