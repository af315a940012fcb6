import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const film: SamplesOf<"film"> = {
  mostUnderLeast: { least: quantity("length", "15 mil") },
  firstDryUnderLastWet: { lastWetTooth: quantity("length", "14.5 mil") },
  ownRuleNeeds: { names: ["areaSize", "spotsPerArea"] },
  ruleHasItsOwn: { rule: "SSPC-PA 9" },
  ruleOnFileWithoutMost: { rule: "ISO 19840" },
  ruleHasNoMost: { rule: "SSPC-PA 9" },
  spotsJudgedTogether: { rule: "SSPC-PA 2", spots: 5 },
  spotIsMeanOf: { least: 3 },
};
