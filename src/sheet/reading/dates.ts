/** The number formats of a spreadsheet that are days or times, by their number. */
const dateFormats = new Set([14, 15, 16, 17, 18, 19, 20, 21, 22, 45, 46, 47]);

/** A spreadsheet takes no longer code of a number format. */
const longest = 255;

/** Whether a number format shows a day or a time; what stands in quotes or brackets is no part of it. */
export function isDateFormat(id: number, code: string | undefined): boolean {
  if (code === undefined) return dateFormats.has(id);
  return /[dmyhs]/i.test(code.slice(0, longest).replace(/"[^"]*"|\\.|\[(?![hms]+\])[^\]]*\]/gi, "").replace(/general/gi, ""));
}

/**
 * A number that a spreadsheet shows as a day, as text: `2026-06-01T08:00`, without the time where it is midnight sharp.
 * Seconds are kept where there are any; parts of a second are lost to binary numbers and rounded.
 */
export function dateText(serial: number, since1904: boolean): string {
  const start = since1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  const time = new Date(start + Math.round(serial * 86_400) * 1000).toISOString();
  const clock = time.slice(11, 19);
  return clock === "00:00:00" ? time.slice(0, 10) : `${time.slice(0, 10)}T${clock.endsWith(":00") ? clock.slice(0, 5) : clock}`;
}
