/**
 * Layout: how many units a face takes, how its courses and bond come out.
 *
 * @packageDocumentation
 */
export { cornerUnits } from "./corner-units.js";
export { unitsForFace } from "./units-for-face.js";
