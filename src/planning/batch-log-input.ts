import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { clockField, zoneField } from "../timing/clock-field.js";
import { recordInput } from "../timing/record-input.js";

const length = (says: string): ReturnType<typeof quantityField<"length">> => quantityField("length", { says, atLeast: 0, atMost: "10000 ft" });

/** Where a batch went: a part of an elevation by its edges, as one faces it. */
const place = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    elevation: telling("elevation that the batch went on", z.string()),
    left: length("left edge, from the left end of the elevation"),
    right: length("right edge, from the left end of the elevation"),
    bottom: length("lower edge, from the base line"),
    top: length("upper edge, from the base line"),
  }));

const entry = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    batch: telling("name of the batch", z.string()),
    material: telling("material of the batch", z.string()),
    lot: telling("lot, from the bag", z.string()),
    dryMass: quantityField("mass", { says: "dry mix in the batch, weighed", above: 0 }),
    water: quantityField("volume", { says: "all water that went into the batch", above: 0 }),
    firstWater: clockField("first water on the powder"),
    usedUp: z.optional(clockField("when the last of it was on the wall or thrown away")),
    wallTemperature: quantityField("temperature", { says: "temperature of the wall", atLeast: "-20 degF", atMost: "160 degF" }),
    places: readOnly(telling("places where the batch went", z.array(place()))),
    note: z.optional(telling("what else was noted", z.string())),
  }));

/** A log of batches, and the readings of the wall that belong to it. */
export const batchLog = /* @__PURE__ */ atFirstUse(() => ({
  zone: zoneField(),
  batches: readOnly(telling("batches of the log", z.array(entry()))),
  readings: z.optional(telling("record of the temperature of the wall", recordInput())),
}));

/** One batch as it is written down: plain texts, so that any store can keep it. */
export interface BatchEntry {
  readonly batch: string;
  readonly material: string;
  readonly lot: string;
  readonly dryMass: string;
  readonly water: string;
  readonly firstWater: string;
  readonly usedUp?: string;
  readonly wallTemperature: string;
  readonly places: readonly BatchPlace[];
  readonly note?: string;
}

/** Where a batch went, as it is written down. */
export interface BatchPlace {
  readonly elevation: string;
  readonly left: string;
  readonly right: string;
  readonly bottom: string;
  readonly top: string;
}

/** One batch as it has been read. */
export type BatchRead = z.output<ReturnType<typeof entry>>;

/** A place as it has been read. */
export type PlaceRead = z.output<ReturnType<typeof place>>;

/** A log as it has been read. */
export interface BatchLogRead {
  readonly zone?: string | undefined;
  readonly batches: readonly BatchRead[];
  readonly readings?: z.output<ReturnType<typeof recordInput>> | undefined;
}
