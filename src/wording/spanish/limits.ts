import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const tests = { shear: "cortante", tension: "tensión" };

/** Why the functions for limits refuse, in Spanish. */
export const limits: RefusalTexts["limits"] = {
  testedIn: ({ adhesionClass, test }) => sentence`no lo escriba: ${adhesionClass} se ensaya a ${tests[test]}`,
  asSpecified: () => "escriba shear (cortante) o tension (tensión), como lo dice la especificación de su valor",
  figureIsIn: ({ test }) => sentence`el valor es a ${tests[test]}; cortante y tensión no se comparan`,
  giveClearances: () => "dé aboveEarth, abovePaving o aboveWalkingSurface, lo que haya",
};
