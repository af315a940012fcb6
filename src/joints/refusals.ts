import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

type Profile = "flush" | "concave" | "v" | "raked" | "weathered" | "struck";

/** Words why the functions for joints refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("joints", {
  sharesMake: ({ share }: { share: Quantity }) => sentence`the shares make ${share}`,
  sharesMustMakeAll: () => "they must make 100 %",
  notForProfile: ({ profile }: { profile: Profile }) => sentence`leave it out for a ${profile} joint`,
  profileNeedsIt: ({ profile }: { profile: Profile }) => sentence`a ${profile} joint needs it`,
});
