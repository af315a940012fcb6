import type { DimensionName } from "../../core/dimensions.js";
import { type Problem, problem, shown, type Trouble } from "../../core/problems.js";
import { readQuantity } from "../../core/read-quantity.js";
import { unitSymbol } from "../../core/units.js";
import type { FoundColumn } from "./header.js";
import type { RawCell } from "./raw-row.js";
import { say } from "./refusals.js";

const yes = ["yes", "y", "true", "x", "1"];
const no = ["no", "n", "false", "0"];

/** Reads one cell, or says what is wrong; the unit in the cell goes before that in the heading. */
export function readCell(cell: RawCell, { column, heading, unit }: FoundColumn, row: number, decimalComma: boolean): { readonly value: unknown } | Problem {
  const { is, says } = column;
  const path = ["rows", row, heading];
  const fault = (found: Pick<Trouble, "code" | "given" | "wanted">): Problem => problem({ ...found, path, says });
  if (is === "text") return { value: cell.text };
  if (typeof is !== "string" || is === "yes or no") {
    const word = cell.text.toLowerCase();
    const value = typeof is !== "string" ? is.find((one) => one.toLowerCase() === word) : yes.includes(word) ? true : no.includes(word) ? false : undefined;
    return value === undefined ? fault({ code: "notAChoice", given: shown(cell.text), wanted: { kind: "choice", of: typeof is === "string" ? ["yes", "no"] : is } }) : { value };
  }
  const text = cell.isNumber === true || !decimalComma ? cell.text : withPoint(cell.text);
  if (text === undefined) return fault({ code: "refused", given: shown(cell.text), wanted: say("pointNotComma") });
  return quantityOf(is, text, unit === undefined ? "" : unitSymbol(unit), { path, says });
}

function quantityOf(is: DimensionName, text: string, unit: string, place: { readonly path: readonly (string | number)[]; readonly says: string }): { readonly value: unknown } | Problem {
  const isBare = /^[-+−]?[\d./ -]*\d(e[-+]?\d+)?$/i.test(text);
  const read = readQuantity(is, isBare && unit !== "" ? `${text} ${unit}` : text, place);
  return "code" in read ? problem(read) : { value: read };
}

/** A number with a decimal comma as one with a point: `1.250,5 mm` as `1250.5 mm`; nothing where a point is none of thousands. */
function withPoint(text: string): string | undefined {
  // Nothing longer is a quantity, which the reader says.
  if (text.length > 100) return text;
  const plain = text.replace(/\d{1,3}(\.\d{3})+(?=,\d)/g, (digits) => digits.replaceAll(".", ""));
  return /\d\.\d/.test(plain) ? undefined : plain.replace(/(\d),(\d)/g, "$1.$2");
}
