import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import type { AssemblyWeight } from "../limits/assembly-weight.js";
import { hatched } from "./hatching.js";
import { keysOf } from "./legend-keys.js";
import { group, leastWidth, picture, type PictureOptions, underTitle } from "./picture.js";
import { lookAt } from "./results.js";
import { labelled, labelOf, labelSize, lengthText, scaleBar, weightText } from "./section-labels.js";
import { drawnSection, materials, type ReadLayer, readLayers, type WallSection } from "./section-layers.js";
import type { Area } from "./sheet.js";
import { line, widthOfWords, words } from "./svg.js";

const id = "pictures.assembly-section";
const [wide, margin] = [460, 16];
/** A layer that comes out thinner is drawn as thick as this, and said not to be to scale. */
const thinnest = 2;

/**
 * Draws a level section through a wall as SVG, to scale, seen from above with the studs at the top and the face at the foot:
 * each layer with its hatching, its thickness, and its weight where weights are given.
 *
 * @param section - the layers from the studs out, and their weights
 * @param options - a title
 * @returns the text of an SVG document, with a title and a description for those who do not see it
 * @example
 * ```ts
 * const section = assemblySection({
 *   layers: [
 *     { name: "studs", of: "studs", thickness: "3-1/2 in", faceWidth: "1-1/2 in", spacing: "16 in" },
 *     { name: "cement board", of: "board", thickness: "1/2 in" },
 *     { name: "setting bed", of: "mortar", thickness: "1/2 in" },
 *     { name: "stone", of: "stone", thickness: "1-1/4 in" },
 *   ],
 * });
 * section.includes("5-3/4 in thick"); // true
 * ```
 */
export function assemblySection(section: WallSection, options: PictureOptions = {}): string {
  lookAt(id, section, drawnSection);
  const { title = "Section through the wall" } = options;
  const layers = readLayers(id, section);
  const total = sum(layers.map(({ thickness }) => thickness));
  const scale = Math.min(300 / total.toNumber("in"), 60);
  const left = margin + 60;
  const placed = stacked(layers, left, underTitle + 20, scale);
  const foot = placed.at(-1)?.area.bottom ?? 0;
  const texts = placed.map((layer, index) => `${String(index + 1)}  ${labelOf(layer)}`);
  const right = left + wide + 36 + Math.max(...texts.map((text) => widthOfWords(text, labelSize))) + margin;
  const [labels, lowest] = labelled(texts, placed.map(({ area }) => (area.top + area.bottom) / 2), left + wide, underTitle + 20, foot);
  const used = [...new Set(layers.map(({ of }) => of))].map((of) => materials[of]);
  const keys = keysOf(used, { left: margin, top: Math.max(foot, lowest) + 64, width: Math.max(right, leastWidth) - 2 * margin });
  const thin = placed.flatMap(({ toScale }, index) => (toScale ? [] : [String(index + 1)]));
  return picture(
    { title, says: described(placed, total, section.weight), width: right, bottom: keys.bottom + 12, legend: legendOf(section, thin) },
    group("layers", placed.map(layerShape)),
    group("dimension", [
      line([left - 20, underTitle + 20], [left - 20, foot], { "stroke-width": 0.6 }),
      ...[underTitle + 20, foot].flatMap((y) => [line([left - 4, y], [left - 26, y], { "stroke-width": 0.6 }), line([left - 24, y + 4], [left - 16, y - 4], { "stroke-width": 0.6 })]),
      words(lengthText(total), [left - 34, (underTitle + 20 + foot) / 2], { turned: true }),
    ]),
    group("sides", [words("inside", [left + wide / 2, underTitle + 8], { size: 11 }), words("outside", [left + wide / 2, foot + 14], { size: 11 })]),
    group("labels", labels),
    scaleBar(total, left, foot + 36, scale),
    group("keys", keys.parts),
  );
}

interface PlacedLayer extends ReadLayer {
  readonly area: Area;
  readonly toScale: boolean;
  /** The studs in the piece of wall that is drawn. */
  readonly pieces: readonly Area[];
}

/** The layers one under another, from the inside out. */
function stacked(layers: readonly ReadLayer[], left: number, top: number, scale: number): readonly PlacedLayer[] {
  let y = top;
  return layers.map((layer) => {
    const drawn = layer.thickness.toNumber("in") * scale;
    const area = { left, right: left + wide, top: y, bottom: y + Math.max(drawn, thinnest) };
    y = area.bottom;
    return { ...layer, area, toScale: drawn >= thinnest, pieces: layer.studs === undefined ? [] : studsIn(area, layer.studs.faceWidth.toNumber("in") * scale, layer.studs.spacing.toNumber("in") * scale) };
  });
}

/** Studs at their spacing, one in the middle; those that are whole in the piece of wall. */
function studsIn({ left, right, top, bottom }: Area, width: number, spacing: number): readonly Area[] {
  const middle = (left + right) / 2;
  const each = Math.floor((right - left) / 2 / spacing);
  const places = Array.from({ length: 2 * each + 1 }, (_, index) => middle + (index - each) * spacing);
  return places.filter((at) => at - width / 2 >= left && at + width / 2 <= right).map((at) => ({ left: at - width / 2, right: at + width / 2, top, bottom }));
}

function layerShape({ area, of, pieces }: PlacedLayer): string {
  if (of !== "studs") return hatched(area, materials[of].hatch);
  return hatched(area, "empty") + pieces.map((piece) => hatched(piece, "diagonals")).join("");
}

function described(layers: readonly PlacedLayer[], total: Quantity<"length">, weight: AssemblyWeight | undefined): string {
  const list = layers.map((layer, index) => `${String(index + 1)} ${labelOf(layer)}${layer.studs === undefined ? "" : `, ${lengthText(layer.studs.faceWidth)} wide every ${lengthText(layer.studs.spacing)}`}`).join("; ");
  return `A wall ${lengthText(total)} thick in ${String(layers.length)} layers, from the inside out: ${list}.${weight === undefined ? "" : ` ${weighs(weight)}`}`;
}

function weighs({ dry, wet }: AssemblyWeight): string {
  return `What is weighed comes to ${weightText(dry.total)} dry and ${weightText(wet.total)} wet.`;
}

function legendOf({ layers, weight }: WallSection, thin: readonly string[]): readonly string[] {
  const others = (weight?.layers ?? []).filter(({ name }) => !layers.some((layer) => layer.name === name));
  return [
    "The thicknesses are to scale.",
    ...(thin.length > 0 ? [`Too thin for the scale, and drawn thicker: ${thin.join(", ")}.`] : []),
    ...(weight === undefined ? [] : [weighs(weight)]),
    ...(others.length > 0 ? [`Weighed and not drawn: ${others.map(({ name, dry, wet }) => `${name}, ${weightText(dry)} dry, ${weightText(wet)} wet`).join("; ")}.`] : []),
  ];
}
