import * as z from "zod/mini";
import type { Work } from "../core/composed.js";
import type { DimensionName } from "../core/dimensions.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";
import { areaLabour } from "./area-labour.js";
import { countLabour } from "./count-labour.js";
import { lengthLabour } from "./length-labour.js";
import { volumeLabour } from "./volume-labour.js";

const rows = <D extends DimensionName>(dimension: D) => ({
  of: z.literal(dimension),
  amount: quantityField(dimension, { says: "how much is to be worked on; the net of an order line may be given", above: 0 }),
  per: quantityField(dimension, { says: "how much the hours are for", above: 0 }),
  hours: quantityField("time", { says: "hours of one person at the tool for that much, from your own records", above: 0, atMost: "100000 h" }),
  factor: z.optional(quantityField("ratio", { says: "how many times as long it takes here as the rate says", above: 0, atMost: 20 })),
});

/** How much is to be worked on, and the user's own rate for it: hours for so much of an area, a length, pieces or a volume. */
export const rateInput = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("of", [z.strictObject(rows("area")), z.strictObject(rows("length")), z.strictObject(rows("count")), z.strictObject(rows("volume"))]));

/** A rate as it has been read. */
export type RateRead = z.output<ReturnType<typeof rateInput>>;

/** Hours of one person at the tool, by the rate. */
export function labourOf(rate: RateRead, work: Work, at: Path): Quantity<"time"> {
  const { hours, factor = 1 } = rate;
  if (rate.factor === undefined) work.assume("work without a factor takes as long as its rate says");
  switch (rate.of) {
    case "area":
      return work.part(areaLabour, { area: rate.amount, perArea: rate.per, hours, factor }, at).answers.labour;
    case "length":
      return work.part(lengthLabour, { length: rate.amount, perLength: rate.per, hours, factor }, at).answers.labour;
    case "count":
      return work.part(countLabour, { count: rate.amount, perCount: rate.per, hours, factor }, at).answers.labour;
    case "volume":
      return work.part(volumeLabour, { volume: rate.amount, perVolume: rate.per, hours, factor }, at).answers.labour;
  }
}
