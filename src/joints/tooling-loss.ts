import { composed } from "../core/composed.js";
import { quantity } from "../core/read-quantity.js";
import { concaveLoss } from "./concave-loss.js";
import { rakedLoss } from "./raked-loss.js";
import { say } from "./refusals.js";
import { vLoss } from "./v-loss.js";
import { weatheredLoss } from "./weathered-loss.js";

const losses = { v: vLoss, raked: rakedLoss, weathered: weatheredLoss, struck: weatheredLoss };

/**
 * What tooling takes out of a joint, by its profile: the section removed, and its share of the joint that was filled.
 *
 * @example
 * ```ts
 * toolingLoss({ profile: "raked", width: "3/8 in", depth: "3/4 in", profileDepth: "3/16 in" }).share.toString(); // "25 %"
 * toolingLoss({ profile: "flush", width: "3/8 in", depth: "3/4 in" }).share.toString(); // "0 %"
 * ```
 */
export const toolingLoss = /* @__PURE__ */ composed({
  id: "joints.tooling-loss",
  title: "Mortar that tooling takes out of a joint",
  given: {
    profile: { oneOf: ["flush", "concave", "v", "raked", "weathered", "struck"], says: "profile of the tooled joint" },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint that is filled", above: 0 },
    toolRadius: { is: "length", unit: ["in", "mm"], symbol: "r", says: "radius of the jointing tool; for a concave joint", above: 0, optional: true },
    profileDepth: { is: "length", unit: ["in", "mm"], symbol: "h", says: "depth of the profile at its deepest; for a V, raked, weathered or struck joint", above: 0, optional: true },
  },
  run: ({ profile, width, depth, toolRadius, profileDepth }, work) => {
    const wanted = say("notForProfile", { profile });
    if (toolRadius !== undefined && profile !== "concave") work.problem({ code: "refused", path: ["toolRadius"], given: "", wanted });
    if (profileDepth !== undefined && !(profile in losses)) work.problem({ code: "refused", path: ["profileDepth"], given: "", wanted });
    if (profile === "flush") return { profile, removed: quantity("area", "0 in2"), share: quantity("ratio", "0 %") };
    const missing = (name: string): never => work.refuse({ code: "missing", path: [name], given: "", wanted: say("profileNeedsIt", { profile }) });
    const { removed, share } =
      profile === "concave"
        ? work.part(concaveLoss, { width, depth, toolRadius: toolRadius ?? missing("toolRadius") }).answers
        : work.part(losses[profile], { width, depth, profileDepth: profileDepth ?? missing("profileDepth") }).answers;
    return { profile, removed, share };
  },
});
