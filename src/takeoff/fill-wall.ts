import { type Path, pathText, type Problem, problem, shown, type Trouble } from "../core/problems.js";
import { isQuantity } from "../core/quantity.js";
import { isNought } from "../core/quantity-arithmetic.js";
import { say } from "./refusals.js";

/** A place in a wall that is filled from a column of the sheet. */
export interface FromColumn {
  readonly column: string;
}

/** One wall of a job with columns in the place of what differs from row to row. */
export type WallPattern = FromColumn | string | number | boolean | readonly WallPattern[] | { readonly [key: string]: WallPattern };

/** A wall filled from the cells of a row, and from which column each place of it came. */
export interface FilledWall {
  readonly wall: unknown;
  readonly columns: ReadonlyMap<string, string>;
  readonly troubles: readonly Trouble[];
}

/** What stands in the cells of a row, by the names of the columns. */
export type Cells = Readonly<Record<string, unknown>>;

/**
 * Fills a wall from the cells of a row. An entry of a list (openings, corners) whose `count` comes from a column is left
 * out where the cell says 0; an empty cell is a problem, since it may be a figure that was forgotten.
 */
export function fillWall(pattern: WallPattern, cells: Cells): FilledWall {
  const columns = new Map<string, string>();
  const troubles: Trouble[] = [];
  const fill = (part: WallPattern, path: Path): unknown => {
    if (typeof part !== "object") return part;
    if (isList(part)) {
      const kept = part.filter((entry) => !saysNone(entry, cells));
      return kept.map((entry, index) => fill(entry, [...path, index]));
    }
    if (!isFromColumn(part)) return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, fill(inner, [...path, key])]));
    columns.set(pathText(path), part.column);
    const value = Object.hasOwn(cells, part.column) ? cells[part.column] : undefined;
    const trouble = cellTrouble(value, part.column);
    if (trouble !== undefined) troubles.push(trouble);
    return value;
  };
  const wall = fill(pattern, []);
  return { wall, columns, troubles };
}

function isList(part: WallPattern): part is readonly WallPattern[] {
  return Array.isArray(part);
}

function isFromColumn(part: object): part is FromColumn {
  const keys = Object.keys(part);
  return keys.length === 1 && keys[0] === "column";
}

function saysNone(entry: WallPattern, cells: Cells): boolean {
  if (typeof entry !== "object" || !("count" in entry)) return false;
  const { count } = entry;
  if (typeof count !== "object" || !("column" in count) || typeof count.column !== "string" || !Object.hasOwn(cells, count.column)) return false;
  const said = cells[count.column];
  if (isQuantity(said)) return isNought(said);
  return said === 0 || (typeof said === "string" && /^\s*0+\s*$/.test(said));
}

/** What begins as a spreadsheet's formula does, and is no number. */
const formula = /^\s*(?:[=@]|[+-](?!\s*[\d.]))/;

function cellTrouble(value: unknown, column: string): Trouble | undefined {
  if (value === undefined || value === null || (typeof value === "string" && value.trim() === "")) return { code: "missing", path: [column], given: "", wanted: say("emptyCell") };
  if (typeof value === "string" && formula.test(value)) return { code: "refused", path: [column], given: shown(value), wanted: say("formulaInCell") };
  return undefined;
}

/** A problem of a wall as one of its row: under the column it came from, where it came from one. */
export function problemOfRow(row: number, { path, ...rest }: Problem, columns: ReadonlyMap<string, string>): Problem {
  const inWall = path[0] === "elevations" && path[1] === 0 ? path.slice(2) : path;
  for (let length = inWall.length; length > 0; length -= 1) {
    const column = columns.get(pathText(inWall.slice(0, length)));
    if (column !== undefined) return problem({ ...rest, path: ["rows", row, column] });
  }
  return problem({ ...rest, path: ["rows", row, ...path] });
}
