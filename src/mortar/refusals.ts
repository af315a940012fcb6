import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

type Material = "thin-set mortar" | "coloured joint mortar" | "repointing mortar";

/** Why the functions for mortar refuse, in English. */
export const mortarRefusals = {
  besidesLife: () => "life is that at the temperature of use; leave this out, or give lifeAtReference instead of life",
  lifeAtReferenceNeeds: () => "lifeAtReference needs reference, temperature and rule beside it",
  bedUnderLower: ({ than, least }: { than: "low" | "typical"; least: Quantity }) => sentence`at least the ${than} one, ${least}`,
  notForMaterial: ({ material }: { material: Material }) => sentence`leave it out for ${material}`,
  sourcesDiffer: ({ of }: { of: readonly string[] }) => sentence`sources differ; write one of ${of}`,
  sandByProportion: ({ most }: { most: number }) => sentence`at most ${most} where the mortar is specified by proportion`,
};

/** Words a refusal of this topic. */
export const say = /* @__PURE__ */ wordsFrom("mortar", mortarRefusals);
