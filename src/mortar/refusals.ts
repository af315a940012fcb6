import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

type Material = "thin-set mortar" | "coloured joint mortar" | "repointing mortar";

/** Words why the functions for mortar refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("mortar", {
  besidesLife: () => "life is that at the temperature of use; leave this out, or give lifeAtReference instead of life",
  lifeAtReferenceNeeds: () => "lifeAtReference needs reference, temperature and rule beside it",
  bedUnderLower: ({ than, least }: { than: "low" | "typical"; least: Quantity }) => sentence`at least the ${than} one, ${least}`,
  notForMaterial: ({ material }: { material: Material }) => sentence`leave it out for ${material}`,
  sourcesDiffer: ({ of }: { of: readonly string[] }) => sentence`sources differ; write one of ${of}`,
  sandByProportion: ({ most }: { most: number }) => sentence`at most ${most} where the mortar is specified by proportion`,
});
