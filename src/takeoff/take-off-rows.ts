import { InputError, type Path, type Problem, problem, problemAt, shown } from "../core/problems.js";
import type { Solution } from "../core/solution.js";
import type { StandardSchema } from "../core/standard-schema.js";
import { nested } from "../schema/nested.js";
import { type Cells, fillWall, problemOfRow, type WallPattern } from "./fill-wall.js";
import { type Assembly, assemblySchema, type ReadAssembly, type ReadJob } from "./job.js";
import { elevation } from "./job-elevation.js";
import { say } from "./refusals.js";
import { type RowTotals, Totals } from "./row-totals.js";
import type { TakeOff } from "./take-job.js";
import { takeOffOfRead } from "./take-read.js";

const readsAssembly = /* @__PURE__ */ nested(assemblySchema);
const readsElevation = /* @__PURE__ */ nested(elevation);

/** A row: its cells by the names of the columns, or what `readRows` or `readTable` of `settingbed/sheet` gives. */
export type WallRow = Cells | { readonly row: number; readonly cells: Cells } | { readonly row: number; readonly value: Cells } | { readonly row: number; readonly problems: readonly Problem[] };

/** How rows are taken off. */
export interface RowOptions {
  /** How all walls are built and bought; it is read once. */
  readonly assembly: Assembly;
  /** One elevation of a job, with `{ column: "…" }` in the place of what a row says. */
  readonly wall: WallPattern;
  /** Called after every row. */
  readonly progress?: (done: { readonly rows: number; readonly refused: number }) => void;
  /** Ends the work with its reason. */
  readonly signal?: AbortSignal;
}

/** What came of one row: its order list, or everything that is wrong with it. */
export type TakenRow =
  | { readonly ok: true; readonly row: number; readonly name: string; readonly solution: Solution<TakeOff> }
  | { readonly ok: false; readonly row: number; readonly problems: readonly Problem[] };

/** Rows that are taken off as they are asked for, once. */
export interface TakenRows extends AsyncIterable<TakenRow> {
  /** What has come of all rows so far; whole once the last row has come. */
  readonly totals: () => RowTotals;
}

/** For how many milliseconds rows are worked on before others get their turn: a button to stop, a picture of progress. */
const turn = 50;

/**
 * Takes off one wall a row, as the rows come: none is kept. A row that is wrong gives all its problems, each under its
 * row and column, and the others go on. Packs and layers that a wall does not use are no problem here.
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
 * results[0].solution.answers.lines[0].packs.toString(); // "11"
 * results[1].problems[0].path; // ["rows", 3, "width"]
 * taken.totals().refused; // 1
 * ```
 */
export function takeOffRows(rows: Iterable<WallRow> | AsyncIterable<WallRow>, options: RowOptions): TakenRows {
  const assembly = readOrThrow(readsAssembly, options.assembly, ["assembly"]);
  const totals = new Totals(assembly.prices?.smallest);
  return { totals: () => totals.sofar, [Symbol.asyncIterator]: () => takeAll(rows, assembly, options, totals) };
}

async function* takeAll(rows: Iterable<WallRow> | AsyncIterable<WallRow>, assembly: ReadAssembly, { wall, progress, signal }: RowOptions, totals: Totals): AsyncGenerator<TakenRow, void, undefined> {
  let [number, since] = [1, Date.now()];
  try {
    for await (const row of rows) {
      signal?.throwIfAborted();
      const read = cellsOf(row, number + 1);
      number = read.row;
      const taken = "problems" in read ? refused(read.row, read.problems) : takeRow(read.row, read.cells, wall, assembly);
      if (taken.ok) totals.add(taken.solution.answers);
      else totals.refuse();
      progress?.(totals.counts);
      yield taken;
      if (Date.now() - since < turn) continue;
      await new Promise((resolve) => setTimeout(resolve, 0));
      since = Date.now();
    }
  } catch (error) {
    // A sheet that cannot be read any further ends the rows, and says so as one of them.
    if (!(error instanceof InputError)) throw error;
    totals.refuse();
    yield refused(number + 1, error.problems);
  }
}

type ReadRow = { readonly row: number; readonly cells: Cells } | { readonly row: number; readonly problems: readonly Problem[] };

function cellsOf(row: unknown, next: number): ReadRow {
  if (typeof row !== "object" || row === null || Array.isArray(row)) {
    return { row: next, problems: [problem({ code: "wrongKind", path: ["rows", next], given: shown(row), wanted: say("writeARow") })] };
  }
  const { row: number, cells, value = cells, problems } = row as { readonly row?: unknown; readonly cells?: unknown; readonly value?: unknown; readonly problems?: unknown };
  if (typeof number === "number" && Array.isArray(problems)) return { row: number, problems: problems as readonly Problem[] };
  if (typeof number === "number" && typeof value === "object" && value !== null) return { row: number, cells: value as Cells };
  return { row: next, cells: row as Cells };
}

function takeRow(row: number, cells: Cells, pattern: WallPattern, assembly: ReadAssembly): TakenRow {
  const { wall, columns, troubles } = fillWall(pattern, cells);
  const lacking = new Set(troubles.map(({ path }) => path[0]));
  const own = troubles.map(({ path, ...rest }) => problem({ ...rest, path: ["rows", row, ...path] }));
  const read = readsElevation["~standard"].validate(wall);
  const inRow = (problems: readonly Problem[]): readonly Problem[] => problems.map((one) => problemOfRow(row, one, columns));
  if (read instanceof Promise) throw new Error("an elevation is read at once");
  if (read.issues !== undefined || own.length > 0) {
    // What the cell itself says is wrong goes before what its text reads as.
    const others = inRow((read.issues ?? []).map(problemOfIssue)).filter(({ path }) => !lacking.has(path[2] ?? ""));
    return refused(row, [...own, ...others]);
  }
  const job: ReadJob = { ...assembly, elevations: [read.value] };
  const tried = takeOffOfRead("many walls").try(job);
  return tried.ok ? Object.freeze({ ok: true, row, name: read.value.name, solution: tried.solution }) : refused(row, inRow(tried.problems));
}

function refused(row: number, problems: readonly Problem[]): TakenRow {
  return Object.freeze({ ok: false, row, problems: Object.freeze([...problems]) });
}

/** `nested` puts one of our problems into every issue. */
function problemOfIssue(issue: object): Problem {
  return (issue as { readonly params: { readonly problem: Problem } }).params.problem;
}

function readOrThrow<O>(reads: StandardSchema<never, O> | StandardSchema<unknown, O>, value: unknown, at: Path): O {
  const read = reads["~standard"].validate(value);
  if (read instanceof Promise) throw new Error("an assembly is read at once");
  if (read.issues === undefined) return read.value;
  throw new InputError("takeoff.take-off-rows", read.issues.map((issue) => problemAt(at, problemOfIssue(issue))));
}
