import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const mortar: SamplesOf<"mortar"> = {
  bedUnderLower: { than: "typical", least: quantity("length", "3/4 in") },
  notForMaterial: { material: "thin-set mortar" },
  sourcesDiffer: { of: ["ASTM C270", "UFGS-04215"] },
  sandByProportion: { most: 3 },
};
