import { drawn, element, escaped, widthOfWords, words } from "./svg.js";

/** What every picture is told besides the results. */
export interface PictureOptions {
  /** Printed over the picture, and read out for it. */
  readonly title?: string;
}

/** What frames a drawing: its words, and how far it reaches. */
export interface Frame {
  readonly title: string;
  /** The picture in words and figures, for those who do not see it. */
  readonly says: string;
  readonly width: number;
  /** Where the drawing ends below; the legend follows. */
  readonly bottom: number;
  /** What the lines mean, sentence by sentence. */
  readonly legend: readonly string[];
}

/** Where a drawing may begin, below its title. */
export const underTitle = 46;
/** How wide the narrowest sheet is: a legend needs room. */
export const leastWidth = 420;
const margin = 16;
const [titleSize, small] = [16, 11];

/** An SVG document: a white sheet with a title, a drawing, and a legend below it. */
export function picture({ title, says, width: wanted, bottom, legend }: Frame, ...parts: readonly string[]): string {
  const width = Math.max(wanted, leastWidth);
  const room = width - 2 * margin;
  const titles = wrapped(title, room, titleSize);
  const top = (titles.length - 1) * -20;
  const lines = wrapped(legend.join(" "), room, small);
  const height = bottom + 8 + lines.length * 16 - top;
  const id = `picture-${markOf(title + says)}`;
  return element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox: `0 ${drawn(top)} ${drawn(width)} ${drawn(height)}`, role: "img", "aria-labelledby": `${id}-title ${id}-says`, "font-family": "sans-serif", fill: "white", stroke: "black", "stroke-linejoin": "round" },
    element("title", { id: `${id}-title` }, escaped(title)),
    element("desc", { id: `${id}-says` }, escaped(says)),
    element("rect", { x: 0, y: top, width, height, stroke: "none" }),
    group("headline", titles.map((text, index) => words(text, [margin, 22 + top + index * 20], { size: titleSize, anchor: "start" }))),
    ...parts,
    group("legend", lines.map((text, index) => words(text, [margin, bottom + 8 + index * 16], { size: small, anchor: "start" }))),
  );
}

/** Parts under one name; nothing where there are none. */
export function group(name: string, parts: readonly string[], attributes: Readonly<Record<string, string | number>> = {}): string {
  return parts.length === 0 ? "" : element("g", { class: name.replaceAll(" ", "-"), ...attributes }, ...parts);
}

/** Words in lines that are not too wide; a word that is too long by itself is broken. */
export function wrapped(text: string, width: number, size: number): readonly string[] {
  const most = Math.max(1, Math.floor(width / widthOfWords("m", size)));
  // A number stays with its unit.
  const pieces = text.split(/\s+(?!(?:ft|in|mm|mil|um|h|degF|degC)\b)/u).flatMap((word) => [...word.matchAll(new RegExp(`[^]{1,${String(most)}}`, "gu"))].map(([piece]) => piece));
  const lines: string[] = [];
  for (const piece of pieces) {
    const longer = `${lines.at(-1) ?? ""} ${piece}`;
    if (lines.length > 0 && widthOfWords(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(piece);
  }
  return lines;
}

/** A short mark that is the same for the same text: it keeps the names of two pictures on one page apart. */
function markOf(text: string): string {
  let mark = 0x811c9dc5;
  for (const sign of text) mark = Math.imul(mark ^ (sign.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return mark.toString(36);
}

/** `3 boards`, `1 board`, `no boards`. */
export function counted(number: number, what: string): string {
  return `${number === 0 ? "no" : String(number)} ${what}${number === 1 ? "" : "s"}`;
}
