import type { Line, Solution, Step } from "../core/solution.js";
import { unitSymbol } from "../core/units.js";
import { writeQuantity } from "../core/write-quantity.js";

/** A problem in words: what is given, and what is asked in which unit and with how many digits. */
export function problemWords({ title, given, constants }: Solution, asked: Step, digits: number): string {
  const facts = (lines: readonly Line[]): readonly string[] => lines.map((line) => `- ${line.says}: ${line.symbol} = ${valueText(line)}`);
  const unit = unitSymbol(asked.value.unit);
  return [
    `${title}.`,
    "Given:",
    ...facts(given),
    ...(constants.length === 0 ? [] : ["Constants:", ...facts(constants)]),
    `Find: ${asked.says} (${asked.symbol})${unit === "" ? "" : `, in ${unit}`}, to ${String(digits)} significant digits${asked.value.dimension === "count" ? " or the whole piece" : ""}.`,
  ].join("\n");
}

function valueText({ value }: Line): string {
  if (typeof value !== "object") return String(value);
  const tape = value.unit === "in" ? writeQuantity(value, { as: "tape", tapeParts: 64 }) : undefined;
  return tape?.exact === true ? tape.text : writeQuantity(value, { digits: 8 }).text;
}
