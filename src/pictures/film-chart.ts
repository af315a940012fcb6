import type { Quantity } from "../core/quantity.js";
import { unitSymbol } from "../core/units.js";
import { writeQuantity } from "../core/write-quantity.js";
import { coatShape, type InUnit, lengthsOf, limitsOf, row, size, slot, verdictOf } from "./film-bars.js";
import { drawnCoats, type FilmRecord, type ReadCoat, readCoats } from "./film-coats.js";
import { keysOf } from "./legend-keys.js";
import { group, leastWidth, picture, type PictureOptions, underTitle, wrapped } from "./picture.js";
import { lookAt } from "./results.js";
import { scaleFor } from "./scale.js";
import { widthOfWords, words } from "./svg.js";
import { valueAxis } from "./value-axis.js";

type Length = Quantity<"length">;

const id = "pictures.film-chart";
const [plotHeight, margin] = [280, 16];

/**
 * Draws films as SVG: for each coat a bar a spot up to the mean of its readings, the readings themselves, and the least and
 * the most that the check allows; bars of spots that fail are crossed.
 *
 * @param film - the coats, each with its check, the readings it was made of, and what it was to come to
 * @param options - a title
 * @returns the text of an SVG document, with a title and a description for those who do not see it
 * @example
 * ```ts
 * const spots = [{ readings: ["16 mil", "18 mil"] }, { readings: ["14 mil"] }];
 * const check = filmReadingCheck({ film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots });
 * filmChart({ coats: [{ name: "first coat", check, spots }] }).includes("spot 2: readings 14 mil, mean 14 mil, under"); // true
 * ```
 */
export function filmChart(film: FilmRecord, options: PictureOptions = {}): string {
  lookAt(id, film, drawnCoats);
  const { title = "Film readings" } = options;
  const coats = readCoats(id, film.coats);
  const unit = (coats[0] as ReadCoat).check.allowedLeast.unit;
  const inUnit: InUnit = { number: (length) => length.toNumber(unitSymbol(unit) as "mil"), text: (length) => writeQuantity(length, { unit, digits: 4 }).number, unit: unitSymbol(unit) };
  const widths = coats.map((coat) => coat.spots.length * slot + Math.max(...limitsOf(coat).map(({ says, at }) => widthOfWords(`${says} ${inUnit.text(at)}`, size))) + 40);
  const heads = coats.map(({ name, check: { film: kind, rule, passes } }, index) => wrapped(`${name}: ${kind} film, ${rule === "band" ? "own band" : rule}; ${passes ? "passes" : "does not pass"}`, (widths[index] ?? slot) - 16, 12));
  const top = underTitle + Math.max(...heads.map(({ length }) => length)) * row + 8;
  const names = coats.flatMap(({ spots }) => spots.map(({ name }) => wrapped(name, slot - 8, size).length));
  const rows = { top, foot: top + plotHeight, names: top + plotHeight + 14, means: top + plotHeight + 14 + Math.max(...names) * row };
  const scale = scaleFor(0, Math.max(...coats.flatMap(lengthsOf).map(inUnit.number)) * 1.02, [rows.foot, top], 8);
  const left = margin + 74;
  const right = left + widths.reduce((total, width) => total + width, 0);
  const keys = keysOf(
    [{ hatch: "rising lines" as const, says: "mean of a spot that does not fail" }, ...(coats.some(({ spots }) => spots.some(({ fails }) => fails.length > 0)) ? [{ hatch: "crossed lines" as const, says: "mean of a spot that fails" }] : [])],
    { left: margin, top: rows.means + 2 * row + 18, width: Math.max(leastWidth, right + margin) - 2 * margin },
  );
  const starts = widths.map((_, index) => left + widths.slice(0, index).reduce((total, width) => total + width, 0));
  return picture(
    { title, says: coats.map((coat) => described(coat, inUnit)).join(" "), width: right + margin, bottom: keys.bottom + 10, legend: legendOf(coats) },
    group("axis", valueAxis(scale, { left, right, says: `film, ${inUnit.unit}` })),
    group("rows", [["spot", rows.names], [`mean, ${inUnit.unit}`, rows.means], ["verdict", rows.means + row]].map(([text, y]) => words(text as string, [left - 10, y as number], { size, anchor: "end" }))),
    ...coats.map((coat, index) => coatShape(coat, { left: starts[index] ?? left, right: (starts[index] ?? left) + (widths[index] ?? 0), head: heads[index] ?? [], scale, inUnit, rows })),
    group("keys", keys.parts),
  );
}

/** A coat in words. */
function described(coat: ReadCoat, { text, unit }: InUnit): string {
  const { name, check, spots } = coat;
  const figure = (length: Length): string => `${text(length)} ${unit}`;
  const told = spots.map((spot) => {
    const brackets = spot.brackets.map(({ from, until }) => (until === undefined ? `at least ${figure(from)}` : `${figure(from)} to ${figure(until)}`));
    const all = [...spot.readings.map(figure), ...brackets].join(", ");
    return `${spot.name}: readings ${all}${spot.mean === undefined ? "" : `, mean ${figure(spot.mean)}`}, ${verdictOf(spot)}`;
  });
  const others = check.fails.filter(({ where }) => !spots.some((spot) => spot.name === where)).map(({ says }) => `${says}.`);
  return `${name}, ${check.film} film by ${check.rule === "band" ? "a band of its own" : check.rule}: ${[...limitsOf(coat)].reverse().map(({ says, at }) => `${says} ${figure(at)}`).join(", ")}. ${told.join("; ")}. ${[...others, check.passes ? "It passes." : "It does not pass."].join(" ")}`;
}

function legendOf(coats: readonly ReadCoat[]): readonly string[] {
  const spots = coats.flatMap((coat) => coat.spots);
  const others = coats.flatMap(({ name, check }) => check.fails.filter(({ where }) => where === "the area" || where === "the readings").map(({ says }) => `${name}, ${says}.`));
  return [
    ...(spots.some(({ readings }) => readings.length > 0) ? ["Circle: one reading."] : []),
    ...(spots.some(({ brackets }) => brackets.length > 0) ? ["Upright bracket: from the last wet tooth to the first dry one."] : []),
    ...(spots.some(({ brackets }) => brackets.some(({ until }) => until === undefined)) ? ["Arrow: all teeth were wet."] : []),
    "Heavy line: the least or the most that the check allows of a spot or a reading.",
    ...(coats.some(({ check }) => check.mean !== undefined) ? ["Dash and dot: the mean of all."] : []),
    ...(coats.some(({ expected }) => expected !== undefined) ? ["Short dashes: what the coat was to come to."] : []),
    ...others,
  ];
}
