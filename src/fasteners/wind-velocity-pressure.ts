import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { refusal } from "../core/refuse-all.js";
import { windEditionTable } from "../data/wind.js";
import { exposureB } from "./exposure-b.js";
import { exposureC } from "./exposure-c.js";
import { exposureD } from "./exposure-d.js";
import { say } from "./refusals.js";
import { velocityPressure705 } from "./velocity-pressure-7-05.js";
import { velocityPressure710 } from "./velocity-pressure-7-10.js";
import { velocityPressure716 } from "./velocity-pressure-7-16.js";

/**
 * Velocity pressure of the wind at the mean roof height by the edition of ASCE 7 named, the exposure by its formula. A
 * speed from the map of another edition is refused by its level.
 *
 * @example
 * ```ts
 * const open = windVelocityPressure({ edition: "ASCE 7-10", speed: "115 mph", speedLevel: "strength", exposure: "C", height: "20 ft", topography: 1, directionality: 0.85 });
 * open.velocityPressure.to("psf").toFixed(1); // "26.0"
 * ```
 */
export const windVelocityPressure = /* @__PURE__ */ composed({
  id: "fasteners.wind-velocity-pressure",
  title: "Velocity pressure of the wind",
  given: {
    edition: { oneOf: ["ASCE 7-05", "ASCE 7-10", "ASCE 7-16"], says: "edition of the standard; no other is on file" },
    speed: { is: "speed", unit: ["mph", "m/s"], symbol: "V", says: "basic wind speed from the map of that edition", above: 0 },
    speedLevel: { oneOf: ["strength", "allowable"], says: "level of that speed: strength in the maps from ASCE 7-10 on, allowable in older ones" },
    exposure: { oneOf: ["B", "C", "D"], says: "exposure category of the site" },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "mean roof height of the building", above: 0, atMost: "60 ft" },
    topography: { is: "ratio", symbol: "K_zt", says: "topographic factor, 1 on flat ground", atLeast: 1 },
    directionality: { is: "ratio", symbol: "K_d", says: "wind directionality factor", above: 0, atMost: 1 },
    elevationFactor: { is: "ratio", symbol: "K_e", says: "ground elevation factor, for ASCE 7-16 only", above: 0, optional: true },
    importance: { is: "ratio", symbol: "I", says: "importance factor, for ASCE 7-05 only", above: 0, optional: true },
  },
  run: ({ edition, speedLevel, exposure, height, elevationFactor, importance, ...wind }, work) => {
    const { level } = windEditionTable[edition];
    if (speedLevel !== level) work.problem(refusal(["speedLevel"], say("speedAtLevel", { level: speedLevel }), say("mapsGiveLevel", { edition, level })));
    const factor = { elevationFactor, importance };
    if (edition !== "ASCE 7-16") leaveOut(work, factor, "elevationFactor", edition);
    if (edition !== "ASCE 7-05") leaveOut(work, factor, "importance", edition);
    const { coefficient } = work.part({ B: exposureB, C: exposureC, D: exposureD }[exposure], { height }).answers;
    const known = { ...wind, exposureCoefficient: coefficient };
    const worked = {
      "ASCE 7-05": () => work.part(velocityPressure705, { ...known, importance: need(work, factor, "importance", edition) }),
      "ASCE 7-10": () => work.part(velocityPressure710, known),
      "ASCE 7-16": () => work.part(velocityPressure716, { ...known, elevationFactor: need(work, factor, "elevationFactor", edition) }),
    }[edition]();
    return { velocityPressure: worked.answers.velocityPressure, exposureCoefficient: coefficient, level };
  },
});

type Factor = Readonly<Record<"elevationFactor" | "importance", Quantity<"ratio"> | undefined>>;

function leaveOut(work: Work, factor: Factor, name: keyof Factor, edition: string): void {
  const given = factor[name];
  if (given !== undefined) work.problem({ code: "refused", path: [name], given: given.toString(), wanted: say("noSuchFactor", { edition }) });
}

function need(work: Work, factor: Factor, name: keyof Factor, edition: string): Quantity<"ratio"> {
  return factor[name] ?? work.refuse({ code: "missing", path: [name], given: "", wanted: say("hasThisFactor", { edition }) });
}
