/** What XML 1.0 has no way to write. */
const unwritable = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

const marks: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "\r": "&#13;" };

/** A text as it stands in XML, between marks or in quotes; what XML cannot hold becomes the sign for a letter lost. */
export function escaped(text: string): string {
  return text.replace(unwritable, "\uFFFD").replace(/[&<>"\r]/g, (mark) => marks[mark] ?? mark);
}

/** The start of every part of a workbook. */
export const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
