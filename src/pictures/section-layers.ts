import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity, type Readable } from "../core/read-quantity.js";
import type { AssemblyWeight, WeighedLayer } from "../limits/assembly-weight.js";
import type { Hatch } from "./hatching.js";
import { say } from "./refusals.js";
import { answersOf, having, listOf, type Look, maybe, measured, oneOf, plain, refuse, written } from "./results.js";

/** What a layer is made of, for its hatching: the way it is drawn, and how the legend calls it. */
export const materials = {
  studs: { hatch: "diagonals", says: "stud, cut across" },
  masonry: { hatch: "crossed lines", says: "masonry or concrete backing" },
  sheathing: { hatch: "level lines", says: "wood sheathing" },
  board: { hatch: "dots and triangles", says: "cement or gypsum board" },
  foam: { hatch: "zigzag", says: "foam board" },
  sheet: { hatch: "black", says: "sheet or film" },
  lath: { hatch: "dashes", says: "lath" },
  air: { hatch: "empty", says: "air or drainage space" },
  mortar: { hatch: "dots", says: "mortar" },
  stone: { hatch: "rising lines", says: "stone or brick units" },
} as const satisfies Readonly<Record<string, { readonly hatch: Hatch; readonly says: string }>>;

/** What a layer may be made of. */
export type SectionMaterial = keyof typeof materials;

/** A layer of a wall as a section shows it. */
export type SectionLayer =
  | { readonly name: string; readonly of: Exclude<SectionMaterial, "studs">; readonly thickness: Readable<"length"> }
  /** Studs have their depth, the width of their face, and their spacing. */
  | { readonly name: string; readonly of: "studs"; readonly thickness: Readable<"length">; readonly faceWidth: Readable<"length">; readonly spacing: Readable<"length"> };

/** What a section through a wall is drawn from. */
export interface WallSection {
  /** From the studs, or what stands in their place, outwards. */
  readonly layers: readonly SectionLayer[];
  /** The answers of `assemblyWeight`, by the same names; what has no thickness of its own is told under the section. */
  readonly weight?: AssemblyWeight;
}

/** What a section is drawn from, looked at. */
export const drawnSection = /* @__PURE__ */ ((): Look => {
  const layer: Look = (value, path, problems) => {
    having({ name: plain("string"), of: oneOf(...Object.keys(materials)), thickness: written("length") })(value, path, problems);
    if (typeof value === "object" && value !== null && "of" in value && value.of === "studs") having({ faceWidth: written("length"), spacing: written("length") })(value, path, problems);
  };
  const weighed = having({ name: plain("string"), dry: measured("arealMass"), wet: measured("arealMass") });
  return having({ layers: listOf(layer, 1), weight: maybe(answersOf("assemblyWeight", { layers: listOf(weighed, 1), wet: having({ total: measured("arealMass") }), dry: having({ total: measured("arealMass") }) })) });
})();

/** A layer that has been read, with its weight where it has one. */
export interface ReadLayer {
  readonly name: string;
  readonly of: keyof typeof materials;
  readonly thickness: Quantity<"length">;
  readonly studs?: { readonly faceWidth: Quantity<"length">; readonly spacing: Quantity<"length"> };
  readonly weight?: WeighedLayer;
}

/** Reads the layers; weights of which none belongs to them are refused. */
export function readLayers(id: string, { layers, weight }: WallSection): readonly ReadLayer[] {
  const lost = (weight?.layers ?? []).filter(({ name }) => !layers.some((layer) => layer.name === name));
  if (lost.length > 0 && lost.length === weight?.layers.length) refuse(id, ["weight"], "", say("noLayerOfThatName", { layers: layers.map(({ name }) => name) }));
  const nought = quantity("length", "0 in");
  return layers.map((layer, index) => {
    const { name, of } = layer;
    const thickness = quantity("length", layer.thickness);
    if (compare(thickness, nought) <= 0) refuse(id, ["layers", index, "thickness"], thickness.toString(), say("layerThickerThanNought"));
    const weighed = weight?.layers.find((one) => one.name === name);
    if (layer.of !== "studs") return { name, of, thickness, ...(weighed === undefined ? {} : { weight: weighed }) };
    const studs = { faceWidth: quantity("length", layer.faceWidth), spacing: quantity("length", layer.spacing) };
    if (compare(studs.faceWidth, nought) <= 0 || compare(studs.spacing, studs.faceWidth) <= 0) refuse(id, ["layers", index, "spacing"], studs.spacing.toString(), say("studsFurtherApart", { width: studs.faceWidth }));
    return { name, of, thickness, studs, ...(weighed === undefined ? {} : { weight: weighed }) };
  });
}
