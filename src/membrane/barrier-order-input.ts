import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";

/** The coating of a barrier and its detail bands. */
export const barrierOrderInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    area: quantityField("area", { says: "barrier with its returns", above: 0 }),
    wetFilm: quantityField("length", { says: "wet film of one coat, unthinned", above: 0 }),
    coats: quantityField("count", { says: "coats", atLeast: "1", whole: true }),
    volumeSolids: quantityField("ratio", { says: "solids by volume, not by weight, from the data sheet", above: 0, atMost: 1 }),
    firstCoatTexture: z.optional(quantityField("length", { says: "wet coating that the texture of the face takes up, spread out even", atLeast: 0 })),
    waste: z.optional(quantityField("ratio", { says: "waste, on top of the net", atLeast: 0, below: 1 })),
    lossShare: z.optional(quantityField("ratio", { says: "share of what is bought that never ends on the wall", atLeast: 0, below: 1 })),
    packVolume: quantityField("volume", { says: "volume of one pack", above: 0 }),
    bands: readOnly(
      telling("detail bands", z.array(
        z.strictObject({
          length: quantityField("length", { says: "length of the band", above: 0 }),
          bandWidth: quantityField("length", { says: "width of the band, both sides of its line", above: 0 }),
          wetFilm: quantityField("length", { says: "wet film of one coat of the band, unthinned", above: 0 }),
          coats: quantityField("count", { says: "coats of the band", atLeast: "1", whole: true }),
        }),
      )),
    ),
    bandsFrom: telling("whether the bands take from the packs of the field or have their own", z.enum(["field packs", "own packs"])),
    bandPackVolume: z.optional(quantityField("volume", { says: "volume of one pack for the bands", above: 0 })),
  }));
