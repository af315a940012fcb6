import type { Quantity } from "../core/quantity.js";
import type { ReadCoat, ReadSpot } from "./film-coats.js";
import { hatched } from "./hatching.js";
import { group, underTitle, wrapped } from "./picture.js";
import type { Scale } from "./scale.js";
import { spread } from "./spread.js";
import { element, line, words } from "./svg.js";

type Length = Quantity<"length">;

/** How large words are. */
export const size = 11;
/** How far apart lines of words are. */
export const row = 15;
/** How wide the place of a spot is. */
export const slot = 88;

/** Lengths in the unit of the chart. */
export interface InUnit {
  readonly number: (length: Length) => number;
  readonly text: (length: Length) => string;
  readonly unit: string;
}

/** Where a coat lies on the sheet. */
export interface CoatPlace {
  readonly left: number;
  readonly right: number;
  readonly head: readonly string[];
  readonly scale: Scale;
  readonly inUnit: InUnit;
  readonly rows: { readonly top: number; readonly foot: number; readonly names: number; readonly means: number };
}

/** A level line across the bars of a coat. */
export interface Limit {
  readonly says: string;
  readonly at: Length;
  readonly dashes?: string;
}

/** The level lines of a coat, from the highest down. */
export function limitsOf({ check: { allowedLeast, allowedMost, mean }, expected }: ReadCoat): readonly Limit[] {
  return [
    ...(allowedMost === undefined ? [] : [{ says: "most", at: allowedMost }]),
    { says: "least", at: allowedLeast },
    ...(mean === undefined ? [] : [{ says: "mean of all", at: mean, dashes: "9 3 2 3" }]),
    ...(expected === undefined ? [] : [{ says: "expected", at: expected, dashes: "3 3" }]),
  ].sort((a, b) => b.at.toNumber("mil") - a.at.toNumber("mil"));
}

/** Every length that the chart must hold. */
export function lengthsOf(coat: ReadCoat): readonly Length[] {
  return [...limitsOf(coat).map(({ at }) => at), ...coat.spots.flatMap(({ readings, brackets }) => [...readings, ...brackets.flatMap(({ from, until }) => [from, ...(until === undefined ? [] : [until])])])];
}

/** The bars of a coat, with the level lines across them. */
export function coatShape(coat: ReadCoat, { left, right, head, scale, inUnit, rows }: CoatPlace): string {
  const y = (length: Length): number => scale.at(inUnit.number(length));
  const spots = coat.spots.map((spot, index) => spotShape(spot, left + index * slot + slot / 2, y, inUnit, rows));
  const lines = limitsOf(coat);
  const end = left + coat.spots.length * slot + 8;
  const places = spread(lines.map(({ at }) => y(at)), size + 3, rows.top, rows.foot);
  const limits = lines.flatMap(({ says, at, dashes }, index) => [
    line([left, y(at)], [end, y(at)], { "stroke-width": dashes === undefined ? 2 : 1.2, "stroke-dasharray": dashes }),
    line([end, y(at)], [end + 8, places[index] ?? 0], { "stroke-width": 0.6 }),
    words(`${says} ${inUnit.text(at)}`, [end + 11, places[index] ?? 0], { size, anchor: "start" }),
  ]);
  return group("coat", [
    group("head", head.map((text, index) => words(text, [left + 4, underTitle + index * row], { size: 12, anchor: "start" }))),
    ...spots,
    group("limits", limits),
    line([left, rows.foot], [right, rows.foot]),
    line([right, rows.top], [right, rows.foot], { "stroke-width": 0.6 }),
  ]);
}

function spotShape(spot: ReadSpot, x: number, y: (length: Length) => number, inUnit: InUnit, rows: CoatPlace["rows"]): string {
  const bar = spot.mean === undefined ? "" : hatched({ left: x - 18, right: x + 18, top: y(spot.mean), bottom: rows.foot }, spot.fails.length > 0 ? "crossed lines" : "rising lines", { spacing: 10 });
  const step = spot.readings.length + spot.brackets.length < 2 ? 0 : Math.min(8, 28 / (spot.readings.length + spot.brackets.length - 1));
  const across = (index: number): number => x + (index - (spot.readings.length + spot.brackets.length - 1) / 2) * step;
  const dots = spot.readings.map((reading, index) => element("circle", { class: "reading", cx: across(index), cy: y(reading), r: 3, "stroke-width": 1.4 }));
  const brackets = spot.brackets.map(({ from, until }, index) => {
    const at = across(spot.readings.length + index);
    const foot = line([at - 4, y(from)], [at + 4, y(from)], { "stroke-width": 1.6 });
    // A gauge that is wet to its highest tooth tells no upper end: an arrow.
    if (until === undefined) return foot + line([at, y(from)], [at, y(from) - 16], { "stroke-width": 1.6 }) + line([at - 4, y(from) - 11], [at, y(from) - 16]) + line([at + 4, y(from) - 11], [at, y(from) - 16]);
    return foot + line([at, y(from)], [at, y(until)], { "stroke-width": 1.6 }) + line([at - 4, y(until)], [at + 4, y(until)], { "stroke-width": 1.6 });
  });
  return group("spot", [
    bar,
    ...dots,
    ...brackets,
    group("name", wrapped(spot.name, slot - 8, size).map((text, index) => words(text, [x, rows.names + index * row], { size }))),
    words(spot.mean === undefined ? "none" : inUnit.text(spot.mean), [x, rows.means], { size }),
    words(verdictOf(spot), [x, rows.means + row], { size }),
  ]);
}

/** How a spot came out. */
export function verdictOf({ fails }: ReadSpot): string {
  return fails.length === 0 ? "within" : fails.join(", ");
}
