import * as z from "zod/mini";
import { textField } from "../schema/fields.js";
import { example } from "./clock.js";
import { say } from "./refusals.js";

/** A clock time inside nested input; it is read where the zone is known. */
export function clockField(says: string): z.ZodMiniString {
  return textField(says, say("writeDateTimeZone", { example }));
}

/** The zone of clock times that name none. */
export function zoneField(): z.ZodMiniOptional<z.ZodMiniString> {
  return z.optional(textField("time zone of the times that name none", say("writeZone")));
}

/** A day of the calendar inside nested input. */
export function dayField(says: string): z.ZodMiniString {
  return textField(says, say("writeDate"));
}

/** A time of day inside nested input. */
export function timeOfDayField(says: string): z.ZodMiniString {
  return textField(says, say("writeTimeOfDay"));
}
