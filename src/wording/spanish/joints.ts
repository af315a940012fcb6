import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const profiles = { flush: "al ras", concave: "cóncava", v: "en V", raked: "rehundida", weathered: "biselada", struck: "biselada al revés" };

/** Why the functions for joints refuse, in Spanish. */
export const joints: RefusalTexts["joints"] = {
  sharesMake: ({ share }) => sentence`las proporciones suman ${share}`,
  sharesMustMakeAll: () => "deben sumar 100 %",
  notForProfile: ({ profile }) => sentence`no lo escriba para una junta ${profiles[profile]} (${profile})`,
  profileNeedsIt: ({ profile }) => sentence`una junta ${profiles[profile]} (${profile}) lo necesita`,
};
