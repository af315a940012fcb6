import * as z from "zod/mini";
import type { Quantity } from "../core/quantity.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";

const reading = (says: string): ReturnType<typeof quantityField<"length">> => quantityField("length", { says, above: 0 });

/** Readings of a film, spot by spot, and what they are judged by. */
export const filmReadingInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    film: telling("whether the wet film was read or the dry", z.enum(["wet", "dry"])),
    rule: telling("rule by which the readings are judged", z.enum(["SSPC-PA 2 level 1", "SSPC-PA 2 level 3", "SSPC-PA 9 level 1", "SSPC-PA 9 level 3", "SSPC-PA 9 level 4", "ISO 19840", "IMO PSPC", "band"])),
    least: reading("least film specified"),
    most: z.optional(reading("most film specified")),
    spots: readOnly(
      telling("spots that were read", z.array(
        z.strictObject({
          name: z.optional(telling("name of the spot", z.string())),
          readings: z.optional(readOnly(telling("readings at the spot", z.array(reading("film reading"))))),
          teeth: z.optional(
            readOnly(
              telling("readings with a tooth gauge", z.array(
                z.strictObject({
                  lastWetTooth: quantityField("length", { says: "highest tooth that is wet; nought where none is", atLeast: 0 }),
                  firstDryTooth: z.optional(reading("lowest tooth that is dry; left out where the highest is wet")),
                }),
              )),
            ),
          ),
        }),
      )),
    ),
  }));

/** One reading with a tooth gauge. */
export interface Teeth {
  readonly lastWetTooth: Quantity<"length">;
  readonly firstDryTooth?: Quantity<"length"> | undefined;
}

/** The readings of one spot under the name it goes by. */
export interface Spot {
  readonly name: string;
  readonly readings: readonly Quantity<"length">[];
  readonly teeth: readonly Teeth[];
}

/** What the film is judged by. */
export interface Specified {
  readonly least: Quantity<"length">;
  readonly most?: Quantity<"length"> | undefined;
}

/** One thing that fails. */
export interface ReadingFailure {
  /** The spot by its name, `the area`, or `the readings` taken together. */
  readonly where: string;
  /** A tooth gauge that was wet to its highest tooth cannot tell whether a film is over. */
  readonly is: "under" | "over" | "perhaps over";
  readonly says: string;
}

/** How the readings came out. */
export interface ReadingVerdict {
  /** The spots in their order; one read by a tooth gauge alone has no mean. */
  readonly spots: readonly { readonly name: string; readonly mean?: Quantity<"length"> }[];
  /** Mean of the area, or of all readings, where the rule asks for one. */
  readonly mean?: Quantity<"length">;
  /** Least of a spot or a reading, after allowance. */
  readonly allowedLeast: Quantity<"length">;
  /** Most of a spot or a reading, after allowance; absent where there is none. */
  readonly allowedMost?: Quantity<"length">;
  /** What fails and how; empty where nothing does. */
  readonly fails: readonly ReadingFailure[];
}
