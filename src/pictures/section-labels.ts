import type { Quantity } from "../core/quantity.js";
import { unitSystem } from "../core/units.js";
import { writeQuantity } from "../core/write-quantity.js";
import { group } from "./picture.js";
import type { ReadLayer } from "./section-layers.js";
import { spread } from "./spread.js";
import { element, line, words } from "./svg.js";

/** How large labels are written, and how far apart their lines are. */
export const labelSize = 12;
const gap = 18;

/** A layer in words and figures. */
export function labelOf({ name, thickness, weight }: ReadLayer): string {
  return `${name}, ${lengthText(thickness)}${weight === undefined ? "" : `, ${weightText(weight.dry)} dry, ${weightText(weight.wet)} wet`}`;
}

/** A length as the tape reads it where that is exact; a film in its own unit. */
export function lengthText(length: Quantity<"length">): string {
  if (unitSystem(length.unit) === "si") return writeQuantity(length, { digits: 4 }).text;
  const tape = writeQuantity(length, { as: "tape", tapeParts: 64 });
  return tape.exact ? tape.text : writeQuantity(length, { digits: 4 }).text;
}

/** A weight to three digits. */
export const weightText = (weight: Quantity<"arealMass">): string => writeQuantity(weight, { digits: 3 }).text;

/** The labels at the right, each with a line to the middle of its layer, and where the lowest stands. */
export function labelled(texts: readonly string[], middles: readonly number[], x: number, top: number, foot: number): readonly [readonly string[], number] {
  const most = Math.max(foot, top + (texts.length - 1) * gap);
  const places = spread(middles, gap, top, most);
  const parts = texts.flatMap((text, index) => {
    const [at, label] = [middles[index] ?? 0, places[index] ?? 0];
    return [element("circle", { cx: x - 6, cy: at, r: 1.6, fill: "black", stroke: "white", "stroke-width": 0.8 }), line([x - 4, at], [x + 8, at], { "stroke-width": 0.6 }), line([x + 8, at], [x + 26, label], { "stroke-width": 0.6 }), words(text, [x + 30, label], { size: labelSize, anchor: "start" })];
  });
  return [parts, places.at(-1) ?? foot];
}

/** A bar of round length, to measure by. */
export function scaleBar(total: Quantity<"length">, left: number, y: number, scale: number): string {
  const metric = unitSystem(total.unit) === "si";
  const inches = metric ? 100 / 25.4 : total.toNumber("in") > 12 ? 12 : 4;
  const end = left + inches * scale;
  const text = metric ? "100 mm" : `${String(inches)} in`;
  return group("scale", [line([left, y], [end, y], { "stroke-width": 3 }), line([left, y - 4], [left, y + 4]), line([end, y - 4], [end, y + 4]), words(text, [end + 8, y], { size: 11, anchor: "start" })]);
}
