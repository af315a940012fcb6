import type { SamplesOf } from "./index.js";

export const schema: SamplesOf<"schema"> = {
  mostLetters: { most: 80 },
  writeKind: { kind: "true or false" },
};
