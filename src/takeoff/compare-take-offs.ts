import * as z from "zod/mini";
import { telling } from "../schema/fields.js";
import { composed } from "../core/composed.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { nested } from "../schema/nested.js";
import { findChanges, type FoundChange, type InputChange, toldChange, withChange } from "./compare-inputs.js";
import { differingLines, type LineChange } from "./compare-lines.js";
import { jobSchema, type ReadJob } from "./job.js";
import type { OrderLine } from "./order-line.js";
import { takeOffOfRead } from "./take-read.js";

const twoJobs = /* @__PURE__ */ atFirstUse(() => z.strictObject({ before: telling("job as it was", jobSchema()), after: telling("job as it has become", jobSchema()) }));

/** A line that is not as it was, and why. */
export interface ExplainedChange extends LineChange {
  /** The inputs that change this line, each by itself; empty where only several together do. */
  readonly because: readonly string[];
}

/**
 * What a change of a job changes: its inputs, the lines of its order list, and for each line the inputs that moved it.
 * An input moves a line where the line differs once that input alone is changed in the earlier job or, where that makes no
 * job, changed back in the later one.
 *
 * @example
 * ```ts
 * const job = {
 *   measuredTo: "backing",
 *   elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
 *   layers: [{ kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft" }],
 *   packs: {},
 *   allowances: { foam: { waste: "10 %" } },
 * } as const;
 * const longer = { ...job, elevations: [{ ...job.elevations[0], shape: { kind: "rectangle", width: "48 ft", height: "96 in" } }] } as const;
 * const order = compareTakeOffs({ before: job, after: longer });
 * order.inputs[0].at; // "elevations.north.shape.width"
 * order.inputs.length; // 1
 * order.lines[0].packsMore.toString(); // "3"
 * order.lines[0].because; // ["elevations.north.shape.width"]
 * ```
 */
export const compareTakeOffs = /* @__PURE__ */ composed({
  id: "takeoff.compare-take-offs",
  title: "What a change order changes",
  reads: /* @__PURE__ */ nested(twoJobs),
  cautions: ["What has been bought or set already is not known here: a line that falls may come too late to save anything."],
  run: ({ before, after }, work) => {
    const takeOff = takeOffOfRead("one job");
    const [was, is] = [work.attempt(takeOff, before, ["before"]), work.attempt(takeOff, after, ["after"])];
    const changes = findChanges(before, after);
    if (was === undefined || is === undefined) return { inputs: changes.map(toldChange), lines: [], unchanged: [] };
    const [earlier, later] = [was.answers, is.answers];
    const moved = changes.map((change) => ({ at: toldChange(change).at, items: movedBy(change, { before, after }, { earlier: earlier.lines, later: later.lines }) }));
    const lines = differingLines(earlier.lines, later.lines).map((line): ExplainedChange => ({ ...line, because: moved.filter(({ items }) => items.has(line.item)).map(({ at }) => at) }));
    const items = new Set(lines.map(({ item }) => item));
    const costs = [earlier.cost?.total, later.cost?.total];
    return {
      inputs: changes.map((change): InputChange => toldChange(change)),
      lines,
      unchanged: later.lines.filter(({ item }) => !items.has(item)).map(({ item }) => item),
      ...(costs[0] === undefined ? {} : { costBefore: costs[0] }),
      ...(costs[1] === undefined ? {} : { costAfter: costs[1] }),
    };
  },
});

/** The items that one change moves by itself. */
function movedBy({ path, before, after }: FoundChange, jobs: { readonly before: ReadJob; readonly after: ReadJob }, lists: { readonly earlier: readonly OrderLine[]; readonly later: readonly OrderLine[] }): ReadonlySet<string> {
  const takeOff = takeOffOfRead("one job");
  const alone = takeOff.try(withChange(jobs.before, path, after));
  if (alone.ok) return new Set(differingLines(lists.earlier, alone.solution.answers.lines).map(({ item }) => item));
  const without = takeOff.try(withChange(jobs.after, path, before));
  return new Set(without.ok ? differingLines(without.solution.answers.lines, lists.later).map(({ item }) => item) : []);
}
