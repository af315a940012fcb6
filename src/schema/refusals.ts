import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why nested input is refused; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("schema", {
  mostLetters: ({ most }: { most: number }) => sentence`write at most ${most} letters`,
  writeKind: ({ kind }: { kind: string }) => sentence`write ${kind}`,
  oneThatIsKnown: () => "it must be one that is known",
});
