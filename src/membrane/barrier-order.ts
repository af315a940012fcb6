import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import { coatingPacks } from "../film/coating-packs.js";
import { coatingVolume } from "../film/coating-volume.js";
import { dryFilm } from "../film/dry-film.js";
import { packCover } from "../film/pack-cover.js";
import { spreadingRate } from "../film/spreading-rate.js";
import { nested } from "../schema/nested.js";
import { barrierOrderInput } from "./barrier-order-input.js";
import { detailBand } from "./detail-band.js";
import { say } from "./refusals.js";

/** One line of the order: the net on the wall, the same with its allowance, and whole packs. */
export interface PackLine {
  readonly net: Quantity<"volume">;
  readonly toOrder: Quantity<"volume">;
  readonly packs: Quantity<"count">;
}

/** What to order for a barrier, and the film it makes. */
export interface BarrierOrder {
  /** Packs of the field; the bands are among them where they come from the field packs. */
  readonly field: PackLine;
  /** Packs of the bands; absent where there are none or they come from the field packs. */
  readonly bands?: PackLine;
  readonly fieldVolume: Quantity<"volume">;
  /** Coating in all bands; absent where there are none. */
  readonly bandVolume?: Quantity<"volume">;
  readonly wetFilm: Quantity<"length">;
  /** Dry film of one coat. */
  readonly dryFilm: Quantity<"length">;
  /** Dry film of all coats. */
  readonly dryBuild: Quantity<"length">;
  /** Area that one pack covers in the first coat, loss taken off: the test patch. */
  readonly packCovers: Quantity<"area">;
}

/**
 * Coating to order for a barrier with its detail bands. Bands from the field packs share one round-up with the field; bands
 * from packs of their own have their own.
 *
 * @example
 * ```ts
 * const order = barrierOrder({
 *   area: "1155 ft2", wetFilm: "20 mil", coats: 2, volumeSolids: "60 %", lossShare: "10 %", packVolume: "5 gal",
 *   bands: [{ length: "77 ft", bandWidth: "6 in", wetFilm: "40 mil", coats: 1 }], bandsFrom: "field packs",
 * });
 * order.field.net.toString(); // "29.76 gal"
 * order.field.packs.toString(); // "7"
 * order.dryBuild.toString(); // "24 mil"
 * ```
 */
export const barrierOrder = /* @__PURE__ */ composed({
  id: "membrane.barrier-order",
  title: "Coating to order for a barrier",
  reads: /* @__PURE__ */ nested(barrierOrderInput),
  run: (job, work): BarrierOrder => {
    const { area, wetFilm, coats, volumeSolids, firstCoatTexture, packVolume, bands, bandsFrom, bandPackVolume } = job;
    if (bandsFrom === "field packs" && bandPackVolume !== undefined) {
      work.problem({ code: "refused", path: ["bandPackVolume"], given: "", wanted: say("bandsFromField") });
    }
    const allowance = allowanceOf(job, work);
    const texture = firstCoatTexture === undefined ? {} : { firstCoatTexture };
    const film = work.part(dryFilm, { wetFilm, volumeSolids, coats }).answers;
    const fieldVolume = work.part(coatingVolume, { area, wetFilm, coats, ...texture }).answers.net;
    const volumes = bands.map((band, index) => work.part(detailBand, band, ["bands", index]).answers.volume);
    const { firstCoat } = work.part(spreadingRate, { wetFilm, coats, ...texture }).answers;
    const packCovers = work.part(packCover, { packVolume, spreadingRate: firstCoat, ...allowance }).answers.area;

    const line = (net: Quantity<"volume">, size: Quantity<"volume">): PackLine => ({ net, ...work.part(coatingPacks, { net, packVolume: size, ...allowance }).answers });
    const same = { fieldVolume, wetFilm, dryFilm: film.dryFilm, dryBuild: film.dryBuild, packCovers };
    if (bands.length === 0) {
      work.assume("no detail bands are counted, since none are given");
      return { field: line(fieldVolume, packVolume), ...same };
    }
    const bandVolume = sum(volumes);
    if (bandsFrom === "field packs") return { field: line(sum([fieldVolume, bandVolume]), packVolume), ...same, bandVolume };
    if (bandPackVolume === undefined) return work.refuse({ code: "missing", path: ["bandPackVolume"], given: "", wanted: say("bandsNeedVolume") });
    return { field: line(fieldVolume, packVolume), bands: line(bandVolume, bandPackVolume), ...same, bandVolume };
  },
});

type Allowance = { readonly waste: Quantity<"ratio"> } | { readonly lossShare: Quantity<"ratio"> };

function allowanceOf({ waste, lossShare }: { readonly waste?: Quantity<"ratio"> | undefined; readonly lossShare?: Quantity<"ratio"> | undefined }, work: Work): Allowance {
  if (waste !== undefined && lossShare === undefined) return { waste };
  if (lossShare !== undefined && waste === undefined) return { lossShare };
  const given = waste === undefined ? "" : "waste and lossShare";
  return work.refuse({ code: "either", path: ["allowance"], given, wanted: { kind: "exactlyOne", of: ["waste", "lossShare"] } });
}
