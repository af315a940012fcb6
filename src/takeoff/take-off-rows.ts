import { InputError, type Path, type Problem, problem, problemAt, shown } from "../core/problems.js";
import type { Solution } from "../core/solution.js";
import { nested } from "../schema/nested.js";
import { type Assembly, assemblySchema, type ReadAssembly, type ReadJob } from "./job.js";
import { type Cells, cellOf, fillWall, problemOfRow, type WallPattern } from "./rows/fill-wall.js";
import type { Form } from "./rows/form.js";
import { problemOfIssue, readElevation } from "./rows/read-elevation.js";
import { blocksOf, mostRows } from "./rows/row-blocks.js";
import { type RowLine, rowLinesOf } from "./rows/row-line.js";
import { type RowTotals, Totals } from "./rows/row-totals.js";
import { quantitiesAt, traceWall } from "./rows/traced-wall.js";
import { WallColumns } from "./rows/wall-columns.js";
import type { TakeOff } from "./take-job.js";
import { takeOffOfRead } from "./take-read.js";

const readsAssembly = /* @__PURE__ */ (() => nested(assemblySchema))();

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
  | {
      readonly ok: true;
      readonly row: number;
      readonly name: string;
      /** The order list in plain numbers. */
      readonly lines: readonly RowLine[];
      /** The take-off of the wall with its working, as `takeOff` gives it; it is made where it is first asked for. */
      readonly solution: Solution<TakeOff>;
    }
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
  const assembly = readAssembly(options.assembly);
  const totals = new Totals(assembly.prices?.smallest);
  return { totals: () => totals.sofar, [Symbol.asyncIterator]: () => takeAll(rows, assembly, options, totals) };
}

/** A row that has been read, as far as it could be; where its form is known, its place among the rows of that form. */
type ReadRow = { readonly row: number; readonly cells: Cells; readonly form: Form | undefined; readonly at: number } | { readonly row: number; readonly problems: readonly Problem[] };

async function* takeAll(rows: Iterable<WallRow> | AsyncIterable<WallRow>, assembly: ReadAssembly, { wall, progress, signal }: RowOptions, totals: Totals): AsyncGenerator<TakenRow, void, undefined> {
  const columns = new WallColumns(wall, mostRows);
  let [number, since] = [1, Date.now()];
  try {
    for await (const block of blocksOf(rows)) {
      const read = readBlock(block, number, columns);
      for (const one of read) {
        signal?.throwIfAborted();
        number = one.row;
        const taken = "problems" in one ? refused(one.row, one.problems) : takeRow(one, wall, assembly, columns, totals);
        if (!taken.ok) totals.refuse();
        progress?.(totals.counts);
        yield taken;
        if (Date.now() - since < turn) continue;
        await new Promise((resolve) => setTimeout(resolve, 0));
        since = Date.now();
      }
    }
  } catch (error) {
    // A sheet that cannot be read any further ends the rows, and says so as one of them.
    if (!(error instanceof InputError)) throw error;
    totals.refuse();
    yield refused(number + 1, error.problems);
  }
}

/** Reads the rows of a block, and works out those that are like others before them. */
function readBlock(block: readonly unknown[], last: number, columns: WallColumns): readonly ReadRow[] {
  const forms = new Set<Form>();
  let number = last;
  const read = block.map((row): ReadRow => {
    const one = cellsOf(row, number + 1);
    number = one.row;
    if ("problems" in one) return one;
    const { form, at } = columns.read(one.cells, forms) ?? { form: undefined, at: 0 };
    return { ...one, form, at };
  });
  for (const form of forms) form.run();
  return read;
}

function cellsOf(row: unknown, next: number): { readonly row: number; readonly cells: Cells } | { readonly row: number; readonly problems: readonly Problem[] } {
  if (typeof row !== "object" || row === null || Array.isArray(row)) {
    return { row: next, problems: [problem({ code: "wrongKind", path: ["rows", next], given: shown(row), wanted: "write an object: the cells of a row by the names of the columns" })] };
  }
  const { row: number, cells, value = cells, problems } = row as { readonly row?: unknown; readonly cells?: unknown; readonly value?: unknown; readonly problems?: unknown };
  if (typeof number === "number" && Array.isArray(problems)) return { row: number, problems: problems as readonly Problem[] };
  if (typeof number === "number" && typeof value === "object" && value !== null) return { row: number, cells: value as Cells };
  return { row: next, cells: row as Cells };
}

/** Takes off a row in plain numbers where its form is known, else by itself. */
function takeRow({ row, cells, form, at }: Exclude<ReadRow, { readonly problems: unknown }>, pattern: WallPattern, assembly: ReadAssembly, columns: WallColumns, totals: Totals): TakenRow {
  const worked = form?.workedAt(at);
  if (worked === undefined) return takeAlone(row, cells, pattern, assembly, columns, totals, form);
  totals.addTraced(worked.wall, worked.place);
  const { name } = pattern as { readonly name: WallPattern };
  // What the row says now may be written over before its working is asked for.
  const kept = columns.names.map((column) => cellOf(cells, column));
  const solve = (): Solution<TakeOff> => solved(Object.fromEntries(columns.names.map((column, index) => [column, kept[index]])), pattern, assembly);
  return workedRow(row, typeof name === "object" ? (cellOf(cells, (name as { readonly column: string }).column) as string) : String(name), worked.wall.linesAt(worked.place), solve);
}

function workedRow(row: number, name: string, lines: readonly RowLine[], solve: () => Solution<TakeOff>): TakenRow {
  let solution: Solution<TakeOff> | undefined;
  return Object.freeze({
    ok: true,
    row,
    name,
    lines,
    get solution() {
      return (solution ??= solve());
    },
  });
}

function solved(cells: Cells, pattern: WallPattern, assembly: ReadAssembly): Solution<TakeOff> {
  const read = readElevation(fillWall(pattern, cells).wall);
  if ("issues" in read) throw new InputError("takeoff.take-off-rows", read.issues);
  return takeOffOfRead("many walls").solve({ ...assembly, elevations: [read.value] });
}

function takeAlone(row: number, cells: Cells, pattern: WallPattern, assembly: ReadAssembly, columns: WallColumns, totals: Totals, form: Form | undefined): TakenRow {
  const { wall, places, troubles } = fillWall(pattern, cells);
  const lacking = new Set(troubles.map(({ path }) => path[0]));
  const own = troubles.map(({ path, ...rest }) => problem({ ...rest, path: ["rows", row, ...path] }));
  const read = readElevation(wall);
  const inRow = (problems: readonly Problem[]): readonly Problem[] => problems.map((one) => problemOfRow(row, one, places));
  if ("issues" in read || own.length > 0) {
    // What the cell itself says is wrong goes before what its text reads as.
    const others = inRow("issues" in read ? read.issues : []).filter(({ path }) => !lacking.has(path[2] ?? ""));
    return refused(row, [...own, ...others]);
  }
  const job: ReadJob = { ...assembly, elevations: [read.value] };
  const tried = takeOffOfRead("many walls").try(job);
  if (!tried.ok) return refused(row, inRow(tried.problems));
  const { solution } = tried;
  totals.add(solution.answers);
  columns.learn(places, read.value);
  form?.learn(() => traceWall(pattern, assembly, { cells, quantities: quantitiesAt(places, read.value), answers: solution.answers }, form.columns, mostRows));
  return Object.freeze({ ok: true, row, name: read.value.name, lines: rowLinesOf(solution.answers.lines), solution });
}

function refused(row: number, problems: readonly Problem[]): TakenRow {
  return Object.freeze({ ok: false, row, problems: Object.freeze([...problems]) });
}

function readAssembly(given: Assembly): ReadAssembly {
  const at: Path = ["assembly"];
  const read = readsAssembly["~standard"].validate(given);
  if (read instanceof Promise) throw new Error("an assembly is read at once");
  if (read.issues === undefined) return read.value;
  throw new InputError("takeoff.take-off-rows", read.issues.map((issue) => problemAt(at, problemOfIssue(issue))));
}
