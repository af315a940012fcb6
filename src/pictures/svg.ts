/** What an attribute takes; one that is undefined is left out. */
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** A number as a drawing needs it: hundredths at most. */
export function drawn(number: number): string {
  return String(Math.round(number * 100) / 100 || 0);
}

/** Text made fit for XML: escaped, without the characters that XML has no place for. */
export function escaped(text: string): string {
  const names: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
  return text.replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, "").replace(/[&<>"']/g, (sign) => names[sign] ?? sign);
}

/** An element with its attributes and what is in it, which must be SVG already. */
export function element(name: string, attributes: Attributes, ...inside: readonly string[]): string {
  const written = Object.entries(attributes).flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${typeof value === "number" ? drawn(value) : escaped(value)}"`]));
  const start = `<${name}${written.join("")}`;
  return inside.length === 0 ? `${start}/>` : `${start}>${inside.join("")}</${name}>`;
}

/** A straight line between two points. */
export function line([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number], attributes: Attributes = {}): string {
  return element("line", { x1, y1, x2, y2, ...attributes });
}

/** A closed outline through some points. */
export function outline(points: readonly (readonly [number, number])[], attributes: Attributes = {}): string {
  return element("polygon", { points: points.map(([x, y]) => `${drawn(x)},${drawn(y)}`).join(" "), ...attributes });
}

const rim = { fill: "black", stroke: "white", "stroke-width": 3, "paint-order": "stroke" };

/** Words with their middle at a point, on a white rim so that lines behind do not cross them; turned where asked for. */
export function words(text: string, [x, y]: readonly [number, number], { size = 12, turned = false, anchor = "middle" }: { readonly size?: number; readonly turned?: boolean; readonly anchor?: "start" | "middle" | "end" } = {}): string {
  const turn = turned ? `rotate(-90 ${drawn(x)} ${drawn(y)})` : undefined;
  return element("text", { x, y, dy: "0.35em", "font-size": size, "text-anchor": anchor, transform: turn, ...rim }, escaped(text));
}

/** About how wide words come out, in a font on the wide side. */
export function widthOfWords(text: string, size: number): number {
  return text.length * size * 0.61;
}
