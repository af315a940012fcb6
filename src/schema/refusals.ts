import { sentence, wordsFrom } from "../core/refusals.js";

/** Why nested input is refused, in English. */
export const schemaRefusals = {
  mostLetters: ({ most }: { most: number }) => sentence`write at most ${most} letters`,
  writeKind: ({ kind }: { kind: string }) => sentence`write ${kind}`,
  oneThatIsKnown: () => "it must be one that is known",
};

/** Words a refusal of this room. */
export const say = /* @__PURE__ */ wordsFrom("schema", schemaRefusals);
