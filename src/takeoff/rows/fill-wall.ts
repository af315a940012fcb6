import { type Path, type Problem, problem, shown, type Trouble } from "../../core/problems.js";
import { isQuantity } from "../../core/quantity.js";
import { isNought } from "../../core/quantity-arithmetic.js";
import { say } from "../refusals.js";

/** A place in a wall that is filled from a column of the sheet. */
export interface FromColumn {
  readonly column: string;
}

/** One wall of a job with columns in the place of what differs from row to row. */
export type WallPattern = FromColumn | string | number | boolean | readonly WallPattern[] | { readonly [key: string]: WallPattern };

/** A place of a wall that was filled from a column. */
export interface FilledPlace {
  readonly column: string;
  readonly path: Path;
}

/** A wall filled from the cells of a row, and from which column each place of it came. */
export interface FilledWall {
  readonly wall: unknown;
  readonly places: readonly FilledPlace[];
  readonly troubles: readonly Trouble[];
}

/** What stands in the cells of a row, by the names of the columns. */
export type Cells = Readonly<Record<string, unknown>>;

/**
 * Fills a wall from the cells of a row. An entry of a list (openings, corners) whose `count` comes from a column is left
 * out where the cell says 0; an empty cell is a problem, since it may be a figure that was forgotten.
 */
export function fillWall(pattern: WallPattern, cells: Cells): FilledWall {
  const places: FilledPlace[] = [];
  const troubles: Trouble[] = [];
  const fill = (part: WallPattern, path: Path): unknown => {
    if (typeof part !== "object") return part;
    if (isList(part)) {
      const kept = part.filter((entry) => !saysNone(entry, cells));
      return kept.map((entry, index) => fill(entry, [...path, index]));
    }
    if (!isFromColumn(part)) return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, fill(inner, [...path, key])]));
    places.push({ column: part.column, path });
    const value = cellOf(cells, part.column);
    const trouble = cellTrouble(value, part.column);
    if (trouble !== undefined) troubles.push(trouble);
    return value;
  };
  const wall = fill(pattern, []);
  return { wall, places, troubles };
}

/** What stands in a column of a row. */
export function cellOf(cells: Cells, column: string): unknown {
  return Object.hasOwn(cells, column) ? cells[column] : undefined;
}

/** What stands at a place of a wall that was read. */
export function valueAt(path: Path, wall: unknown): unknown {
  return path.reduce((part, key) => (part as Readonly<Record<string | number, unknown>> | undefined)?.[key], wall);
}

/** Whether a part of a wall is a list. */
export function isList(part: WallPattern): part is readonly WallPattern[] {
  return Array.isArray(part);
}

/** Whether a part of a wall is filled from a column. */
export function isFromColumn(part: object): part is FromColumn {
  const keys = Object.keys(part);
  return keys.length === 1 && keys[0] === "column";
}

/** The column that an entry of a list has its count from. */
export function countColumn(entry: WallPattern): string | undefined {
  const { count } = entry as { readonly count?: WallPattern };
  return typeof count === "object" && isFromColumn(count) ? count.column : undefined;
}

/** Whether a cell says that there is none of what it counts. */
export function isNone(said: unknown): boolean {
  if (isQuantity(said)) return isNought(said);
  return said === 0 || (typeof said === "string" && /^\s*0+\s*$/.test(said));
}

function saysNone(entry: WallPattern, cells: Cells): boolean {
  const column = countColumn(entry);
  return column !== undefined && isNone(cellOf(cells, column));
}

/** What begins as a spreadsheet's formula does, and is no number. */
const formula = /^\s*(?:[=@]|[+-](?!\s*[\d.]))/;

/** What is wrong with a cell, whatever is to be read from it. */
export function cellTrouble(value: unknown, column: string): Trouble | undefined {
  if (value === undefined || value === null || (typeof value === "string" && value.trim() === "")) return { code: "missing", path: [column], given: "", wanted: say("emptyCell") };
  if (typeof value === "string" && formula.test(value)) return { code: "refused", path: [column], given: shown(value), wanted: say("formulaInCell") };
  return undefined;
}

/** A problem of a wall as one of its row: under the column it came from, where it came from one. */
export function problemOfRow(row: number, { path, wants: wanted, ...rest }: Problem, places: readonly FilledPlace[]): Problem {
  const inWall = path[0] === "elevations" ? path.slice(2) : path;
  const from = places.find((place) => place.path.every((key, index) => key === inWall[index]));
  return problem({ ...rest, wanted, path: ["rows", row, ...(from === undefined ? path : [from.column])] });
}
