import * as z from "zod/mini";

/** A clock time inside nested input; it is read where the zone is known. */
export function clockField(says: string): z.ZodMiniString {
  return z.string().check(z.describe(`${says}; date and time with the zone, such as 2026-06-01T07:30[America/Chicago], or without where zone is given`));
}

/** The zone of clock times that name none. */
export function zoneField(): z.ZodMiniOptional<z.ZodMiniString> {
  return z.optional(z.string().check(z.describe("time zone of the times that name none, such as America/Chicago")));
}

/** A day of the calendar inside nested input. */
export function dayField(says: string): z.ZodMiniString {
  return z.string().check(z.describe(`${says}, such as 2026-06-01`));
}
