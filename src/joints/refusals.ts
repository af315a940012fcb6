import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

type Profile = "flush" | "concave" | "v" | "raked" | "weathered" | "struck";

/** Why the functions for joints refuse, in English. */
export const jointsRefusals = {
  sharesMake: ({ share }: { share: Quantity }) => sentence`the shares make ${share}`,
  sharesMustMakeAll: () => "they must make 100 %",
  notForProfile: ({ profile }: { profile: Profile }) => sentence`leave it out for a ${profile} joint`,
  profileNeedsIt: ({ profile }: { profile: Profile }) => sentence`a ${profile} joint needs it`,
};

/** Words a refusal of this topic. */
export const say = /* @__PURE__ */ wordsFrom("joints", jointsRefusals);
