import { InputError, type Problem } from "../../core/problems.js";
import { nested } from "../../schema/nested.js";
import type { ReadJob } from "../job.js";
import { elevation } from "../job-elevation.js";

const reads = /* @__PURE__ */ nested(elevation);

/** Reads one elevation of a job, or says everything that is wrong with it. */
export function readElevation(wall: unknown): { readonly value: ReadJob["elevations"][number] } | { readonly issues: readonly Problem[] } {
  const read = reads["~standard"].validate(wall);
  if (read instanceof Promise) throw new Error("an elevation is read at once");
  return read.issues === undefined ? { value: read.value } : { issues: read.issues.map(problemOfIssue) };
}

/** Reads again what has been read as an elevation before. */
export function readAgain(wall: unknown): ReadJob["elevations"][number] {
  const read = readElevation(wall);
  if ("issues" in read) throw new InputError("takeoff.take-off-rows", read.issues);
  return read.value;
}

/** `nested` puts one of our problems into every issue. */
export function problemOfIssue(issue: object): Problem {
  return (issue as { readonly params: { readonly problem: Problem } }).params.problem;
}
