import type { SamplesOf } from "./index.js";

export const many: SamplesOf<"many"> = {
  columnsOfOneLength: { count: 3, other: "area", otherCount: 4 },
};
