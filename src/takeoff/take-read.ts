import { composed, type ComposedFrom } from "../core/composed.js";
import type { StandardSchema } from "../core/standard-schema.js";
import type { ReadJob } from "./job.js";
import { cautions, takeJob, type TakeOff } from "./take-job.js";

/** A job that has been read already is taken as it is. */
const asRead: StandardSchema<ReadJob> = { "~standard": { version: 1, vendor: "settingbed", validate: (value) => ({ value: value as ReadJob }) } };

const ofOneJob = /* @__PURE__ */ composed({ id: "takeoff.take-off", title: "Order list", reads: asRead, cautions, run: (job: ReadJob, work) => takeJob(job, work) });

const ofManyWalls = /* @__PURE__ */ composed({ id: "takeoff.take-off", title: "Order list", reads: asRead, cautions, run: (job: ReadJob, work) => takeJob(job, work, true) });

/** The take-off of jobs that have been read already: of one job, or of walls that share their layers and packs. */
export function takeOffOfRead(of: "one job" | "many walls"): ComposedFrom<ReadJob, ReadJob, TakeOff> {
  return of === "one job" ? ofOneJob : ofManyWalls;
}
