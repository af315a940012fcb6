import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

/** Why columns are refused, in Spanish. */
export const many: RefusalTexts["many"] = {
  columnsOfOneLength: ({ count, other, otherCount }) => sentence`tiene ${count} ${count === 1 ? "número" : "números"} y ${other} tiene ${otherCount}`,
  giveColumns: () => "dé al menos una entrada como { values, unit }",
  giveNumbers: () => "dé en values una lista de números o un Float64Array",
};
