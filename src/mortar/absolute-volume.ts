import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import { sum } from "../core/quantity-arithmetic.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { mixYield } from "./mix-yield.js";
import { partVolume } from "./part-volume.js";

const reads = /* @__PURE__ */ nested(() =>
  z.strictObject({
    parts: readOnly(
      telling("parts of the mix besides the water", z.array(
        z.strictObject({
          name: telling("name of the part", z.string()),
          mass: quantityField("mass", { says: "mass of the part", above: 0 }),
          relativeDensity: quantityField("ratio", { says: "density of the part to that of water", above: 0, atMost: 12 }),
        }),
      )),
    ),
    water: quantityField("mass", { says: "mass of the mixing water", above: 0 }),
    air: quantityField("ratio", { says: "air in the mortar, by its volume", atLeast: 0, below: "50 %" }),
  }));

/**
 * Yield and density of a mix by absolute volume: each part by its mass and relative density, the water, and the air.
 *
 * @example
 * ```ts
 * const mix = absoluteVolume({
 *   parts: [{ name: "cement", mass: "31.5 kg", relativeDensity: 3.15 }, { name: "sand", mass: "132.5 kg", relativeDensity: 2.65 }],
 *   water: "21 kg",
 *   air: "10 %",
 * });
 * mix.volume.to("L").toString(); // "90"
 * mix.volumes.map(({ volume }) => volume.to("L").toNumber()); // [10, 50, 21]
 * ```
 */
export const absoluteVolume = /* @__PURE__ */ composed({
  id: "mortar.absolute-volume",
  title: "Yield of a mix by absolute volume",
  reads,
  run: ({ parts, water, air }, work) => {
    const all = [...parts.map((part, index) => ({ ...part, at: ["parts", index] })), { name: "water", mass: water, relativeDensity: 1, at: ["water"] }];
    const volumes = all.map(({ name, mass, relativeDensity, at }) => ({ name, volume: work.part(partVolume, { mass, relativeDensity }, at).answers.volume }));
    const partsVolume = sum(volumes.map(({ volume }) => volume));
    const partsMass = sum(all.map(({ mass }) => mass));
    return { volumes, ...work.part(mixYield, { partsVolume, partsMass, air }).answers };
  },
});
