import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { internalPressureTable, wallCoefficients, wallCoefficientTable, windEditionTable } from "../data/wind.js";
import { allowableWindPressure } from "./allowable-wind-pressure.js";
import { say } from "./refusals.js";
import { wallPressure } from "./wall-pressure.js";
import { wallPressureCoefficient } from "./wall-pressure-coefficient.js";
import { windVelocityPressure } from "./wind-velocity-pressure.js";

/**
 * Wind pressure on wall cladding of a building to 60 ft, by the components and cladding rules of the edition named and
 * at the level asked for. The least pressure of the edition is applied at its own level, before any step to the other.
 *
 * @example
 * ```ts
 * const corner = claddingPressure({
 *   edition: "ASCE 7-16", speed: "105 mph", speedLevel: "strength", exposure: "C", height: "20 ft", topography: 1, directionality: 0.85,
 *   elevationFactor: 0.9644, roofSlope: "20 deg", zone: 5, effectiveArea: "10 ft2", enclosure: "enclosed", sign: "negative", level: "strength",
 * });
 * corner.pressure.to("psf").toFixed(1); // "33.0"
 * ```
 */
export const claddingPressure = /* @__PURE__ */ composed({
  id: "fasteners.cladding-pressure",
  title: "Wind pressure on wall cladding",
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
    roofSlope: { is: "angle", unit: "deg", symbol: "r", says: "slope of the roof", atLeast: 0, atMost: "90 deg" },
    zone: { oneOf: [4, 5], says: "zone of the wall: 5 in the strip at a corner, else 4" },
    effectiveArea: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "effective wind area; of a screw, what it holds", above: 0 },
    enclosure: { oneOf: ["enclosed", "partially enclosed"], says: "enclosure of the building, which sets the internal pressure" },
    sign: { oneOf: ["positive", "negative"], says: "positive where the wind pushes on the wall, negative where it pulls (suction)" },
    level: { oneOf: ["strength", "allowable"], says: "level of the pressure wanted" },
  },
  run: ({ roofSlope, zone, effectiveArea, enclosure, sign, level, ...wind }, work) => {
    const { leastPressure, basis, level: ownLevel } = windEditionTable[wind.edition];
    if (level === "strength" && ownLevel === "allowable") {
      work.problem(refusal(["level"], say("strengthLevelBy", { edition: wind.edition }), say("onlyAllowableLevel")));
    }
    const { velocityPressure } = work.part(windVelocityPressure, wind).answers;
    const ends = wallCoefficientTable[zone][sign];
    const lowRoof = compare(roofSlope, quantity("angle", "10 deg")) <= 0;
    const coefficients = { coefficientAt10: quantity("ratio", ends.small), coefficientAt500: quantity("ratio", ends.large), slopeFactor: quantity("ratio", lowRoof ? "0.9" : "1") };
    const externalCoefficient = work.part(wallPressureCoefficient, { effectiveArea, ...coefficients }).answers.coefficient;
    const internalCoefficient = quantity("ratio", internalPressureTable.rows[enclosure]);
    for (const on of [wallCoefficients, internalPressureTable.basis, basis]) work.stand(on);
    const least = quantity("pressure", leastPressure);
    const wall = work.part(wallPressure, { velocityPressure, externalCoefficient, internalCoefficient, leastPressure: least }).answers;
    const pressure = level === ownLevel ? wall.pressure : work.part(allowableWindPressure, { strengthPressure: wall.pressure }).answers.pressure;
    if (enclosure === "partially enclosed" || compare(wind.topography, quantity("ratio", 1)) > 0) work.caution("Hills and partially enclosed buildings are for a licensed design professional.");
    const governs = compare(wall.calculated, least) < 0 ? "least pressure" : "wind";
    return { pressure, sign, level, governs, velocityPressure, externalCoefficient, internalCoefficient };
  },
});
