import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const joints: SamplesOf<"joints"> = {
  sharesMake: { share: quantity("ratio", "95 %") },
  notForProfile: { profile: "struck" },
  profileNeedsIt: { profile: "raked" },
};
