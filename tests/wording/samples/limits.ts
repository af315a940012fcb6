import type { SamplesOf } from "./index.js";

export const limits: SamplesOf<"limits"> = {
  testedIn: { adhesionClass: "EN 12004 C1", test: "tension" },
  figureIsIn: { test: "shear" },
};
