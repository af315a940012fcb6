import type { EquivalentAge } from "../timing/equivalent-age.js";
import { writeQuantity } from "../core/write-quantity.js";
import type { ClockScale } from "./clock-axis.js";
import { group } from "./picture.js";
import { scaleFor } from "./scale.js";
import { spread } from "./spread.js";
import { element, line, words } from "./svg.js";
import type { AgeSpell } from "./temperature-record.js";
import { valueAxis } from "./value-axis.js";

/** How high the chart of the age is. */
export const ageHeight = 150;

/** A time in hours, to four digits. */
export function hoursText(time: EquivalentAge["age"]): string {
  return writeQuantity(time, { unit: "h", digits: 4 }).text;
}

/** The age against the clock, and dashed the time that has passed. */
export function agePlot(age: EquivalentAge, spells: readonly AgeSpell[], scale: ClockScale, top: number): string {
  const [first, last] = [spells[0], spells.at(-1)];
  if (first === undefined || last === undefined) return "";
  const elapsed = age.elapsed.toNumber("h");
  const hours = scaleFor(0, Math.max(last.hours, elapsed), [top + ageHeight, top], 5);
  const points = [[scale.x(first.from.at), hours.at(0)] as const, ...spells.map(({ until, hours: at }) => [scale.x(until), hours.at(at)] as const)];
  const end = scale.x(last.until);
  const ends = [{ text: `age ${hoursText(age.age)}`, y: hours.at(last.hours) }, { text: `passed ${hoursText(age.elapsed)}`, y: hours.at(elapsed) }].sort((a, b) => a.y - b.y);
  const labels = spread(ends.map(({ y }) => y), 14, top, top + ageHeight);
  return group("age", [
    ...valueAxis(hours, { left: scale.left, right: scale.right, says: "age, h" }),
    line([scale.x(first.from.at), hours.at(0)], [end, hours.at(elapsed)], { "stroke-dasharray": "6 4" }),
    element("polyline", { points: points.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(" "), fill: "none", "stroke-width": 2.2 }),
    ...ends.flatMap(({ text, y }, index) => [line([end, y], [scale.right + 8, labels[index] ?? y], { "stroke-width": 0.6 }), words(text, [scale.right + 11, labels[index] ?? y], { size: 11, anchor: "start" })]),
  ]);
}
