import { InputError, type Path, problemAt } from "../core/problems.js";
import { nested } from "../schema/nested.js";
import { type Assembly, assemblySchema, type ReadAssembly } from "./job.js";
import { problemOfIssue } from "./rows/read-elevation.js";
import { blocksOf } from "./rows/row-blocks.js";
import { RowTaking } from "./rows/row-taking.js";
import { Totals } from "./rows/row-totals.js";
import type { RowOptions, TakenRow, TakenRows, WallRow } from "./rows/row-types.js";
import { Unrolled } from "./rows/unrolled.js";

const readsAssembly = /* @__PURE__ */ nested(assemblySchema);

/**
 * Takes off one wall a row, as the rows come: none is kept. A row that is wrong gives all its problems, each under its
 * row and column, and the others go on. Packs and layers that a wall does not use are no problem here.
 *
 * Rows that are alike but for their figures are worked out together, with the counts that each has by itself; `lines` are
 * their order lists in plain numbers. `solution` is the same with its working, and takes its time when it is asked for.
 * Rows at hand are read a few hundred ahead, those that have to be waited for one by one.
 *
 * @param rows - plain objects, or what `readRows` or `readTable` gives; with the header as row 1, the first plain object is row 2
 * @param options - the assembly, where each figure of a wall stands, and how to be told and stopped
 * @returns an async iterable of one result a row, with the totals
 * @throws InputError where the assembly cannot be read
 * @example
 * ```ts
 * const taken = takeOffRows([{ wall: "east", width: "40 ft", height: "8 ft" }, { wall: "west", width: "40", height: "8 ft" }], {
 *   assembly: { measuredTo: "backing", layers: [{ kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft" }], packs: {}, allowances: { foam: { waste: "10 %" } } },
 *   wall: { name: { column: "wall" }, shape: { kind: "rectangle", width: { column: "width" }, height: { column: "height" } }, openings: [], outsideCorners: [] },
 * });
 * const results = [];
 * for await (const one of taken) results.push(one);
 * results[0].lines[0].packs; // 11
 * results[0].solution.answers.lines[0].packs.toString(); // "11"
 * results[1].problems[0].path; // ["rows", 3, "width"]
 * taken.totals().refused; // 1
 * ```
 */
export function takeOffRows(rows: Iterable<WallRow> | AsyncIterable<WallRow>, options: RowOptions): TakenRows {
  const assembly = readAssembly(options.assembly);
  const totals = new Totals(assembly.prices?.smallest);
  return { totals: () => totals.sofar, [Symbol.asyncIterator]: () => new Unrolled(batchesOf(rows, assembly, options, totals)) };
}

async function* batchesOf(rows: Iterable<WallRow> | AsyncIterable<WallRow>, assembly: ReadAssembly, options: RowOptions, totals: Totals): AsyncGenerator<Iterator<TakenRow>, void, undefined> {
  const taking = new RowTaking(assembly, options, totals);
  try {
    for await (const block of blocksOf(rows)) {
      taking.read(block);
      for (;;) {
        yield taking.rows();
        if (taking.isDue) {
          await new Promise((resolve) => setTimeout(resolve, 0));
          taking.goOn();
        }
        if (taking.isDone) break;
      }
    }
  } catch (error) {
    // A sheet that cannot be read any further ends the rows, and says so as one of them.
    if (!(error instanceof InputError)) throw error;
    yield [taking.end(error.problems)][Symbol.iterator]();
  }
}

function readAssembly(given: Assembly): ReadAssembly {
  const at: Path = ["assembly"];
  const read = readsAssembly["~standard"].validate(given);
  if (read instanceof Promise) throw new Error("an assembly is read at once");
  if (read.issues === undefined) return read.value;
  throw new InputError("takeoff.take-off-rows", read.issues.map((issue) => problemAt(at, problemOfIssue(issue))));
}
