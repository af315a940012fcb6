import { composed } from "../core/composed.js";
import { jointByLength } from "./joint-by-length.js";
import { repointingLayers } from "./repointing-layers.js";
import { roundLength } from "./round-length.js";

/**
 * A round of pointing: the length of joint and the mortar to fill before striking, and how many rounds. Layers are told
 * only where old joints are repointed.
 *
 * @example
 * ```ts
 * const round = pointingRound({
 *   method: "bag-filled", toolingRate: "60 ft/h", toolers: 2, window: "45 min", totalLength: "1220 ft", width: "3/8 in", depth: "1/2 in",
 * });
 * round.length.toString(); // "90 ft"
 * round.rounds.toString(); // "14"
 * round.volume.to("qt").toFixed(2); // "3.51"
 * ```
 */
export const pointingRound = /* @__PURE__ */ composed({
  id: "joints.pointing-round",
  title: "A round of pointing",
  given: {
    method: { oneOf: ["bag-filled", "repointing"], says: "new joints filled from a bag, or old joints raked out and repointed" },
    toolingRate: { is: "speed", unit: ["ft/h", "m/h"], symbol: "R", says: "length of joint one tooler strikes in an hour", above: 0 },
    toolers: { is: "count", symbol: "n", says: "toolers who strike at once", atLeast: 1, whole: true },
    window: { is: "time", unit: "min", symbol: "T", says: "how long the joint stays thumbprint hard, at the temperature of the wall", above: 0 },
    totalLength: { is: "length", unit: ["ft", "m"], symbol: "l_t", says: "length of joint in all", above: 0 },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "mean width of the joints", above: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint to be filled", above: 0 },
  },
  run: ({ method, width, depth, ...pace }, work) => {
    const { length, rounds } = work.part(roundLength, pace).answers;
    const { volume } = work.part(jointByLength, { length, width, depth }).answers;
    const layers = method === "repointing" ? { layers: work.part(repointingLayers, { depth }).answers.layers } : {};
    return { length, volume, rounds, ...layers };
  },
});
