import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why the functions for barriers refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("membrane", {
  openingWide: ({ width }: { width: Quantity }) => sentence`an opening ${width} wide`,
  noWallSoWide: ({ widest }: { widest: Quantity }) => sentence`no wall is wider than ${widest}`,
  openingsOf: ({ area }: { area: Quantity }) => sentence`openings of ${area}`,
  wallsHave: ({ area }: { area: Quantity }) => sentence`the walls have no more than ${area}`,
  bandsFromField: () => "the bands come from the field packs; leave it out",
  bandsNeedVolume: () => "bands from packs of their own need the volume of such a pack",
  roundHasNoParts: () => "a round opening has neither sill nor jambs nor head",
  oneDepthAllRound: () => "give one returnDepth for all round",
});
