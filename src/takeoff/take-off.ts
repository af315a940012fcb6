import { composed } from "../core/composed.js";
import { nested } from "../schema/nested.js";
import { jobSchema } from "./job.js";
import { cautions, takeJob } from "./take-job.js";

/**
 * The order list of a job: for each layer of the wall, from the studs out, what ends on it, what is added, what to
 * order and in how many packs; each line with its worked solution.
 *
 * Bed, back-butter and joint mortar run over the whole stone face, corner cover included; only flat units lose the
 * cover. Screws, tape and spacers are for what is placed, not for what is spare. Where the job asks for them, spare stock,
 * weights, hours, prices and checks come besides.
 *
 * @example
 * ```ts
 * const list = takeOff({
 *   measuredTo: "backing",
 *   elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
 *   layers: [{ kind: "studs", spacing: "16 in" }, { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" }],
 *   packs: { "sheathing screws": { pieces: 1000 } },
 *   allowances: { sheathing: { waste: "10 %" }, "sheathing screws": { waste: "5 %" } },
 * });
 * list.lines[0].toOrder.toString(); // "11"
 * list.lines[1].net.toString(); // "520"
 * ```
 */
export const takeOff = /* @__PURE__ */ composed({
  id: "takeoff.take-off",
  title: "Order list",
  reads: /* @__PURE__ */ nested(jobSchema),
  cautions,
  run: (job, work) => takeJob(job, work),
});
