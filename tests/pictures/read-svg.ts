// Reads the pictures back, and tells what is wrong with one whatever it shows.
import { DOMParser, onErrorStopParsing } from "@xmldom/xmldom";

/** An element as it was read. */
export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** The class of the group it stands in. */
  readonly group: string;
  readonly text: string;
}

/** The elements of a document, read by hand; throws where tags do not close in order or text is not escaped. */
export function tagsIn(svg: string): readonly Tag[] {
  const tags: Tag[] = [];
  const open: Tag[] = [];
  for (const part of svg.match(/<[^>]*>|[^<]+/g) ?? []) {
    if (!part.startsWith("<")) {
      if (/&(?!(amp|lt|gt|quot|#39);)|>/.test(part)) throw new Error(`not escaped: ${part}`);
      const last = open.at(-1);
      if (last !== undefined) tags[tags.indexOf(last)] = open[open.length - 1] = { ...last, text: last.text + part };
      continue;
    }
    const closing = /^<\/(\w+)>$/.exec(part);
    if (closing !== null) {
      if (open.pop()?.name !== closing[1]) throw new Error(`${part} closes nothing`);
      continue;
    }
    const [, name, rest, empty] = /^<(\w+)((?: [\w:-]+="[^"<>]*")*)(\/?)>$/.exec(part) ?? [];
    if (name === undefined) throw new Error(`no tag: ${part}`);
    const attributes = Object.fromEntries([...(rest ?? "").matchAll(/ ([\w:-]+)="([^"]*)"/g)].map((one) => [one[1] as string, one[2] as string]));
    const group = [...open].reverse().find((one) => one.name === "g" && one.attributes.class !== undefined)?.attributes.class ?? "";
    const tag = { name, attributes, group, text: "" };
    tags.push(tag);
    if (empty === "") open.push(tag);
  }
  if (open.length > 0) throw new Error("a tag is left open");
  return tags;
}

/** The elements of a name that stand right in a group. */
export const of = (tags: readonly Tag[], group: string, name: string): readonly Tag[] => tags.filter((tag) => tag.group === group && tag.name === name);
/** All numbers of a text, in order. */
export const numbersIn = (text: string): readonly number[] => [...text.matchAll(/-?\d+(?:\.\d+)?/g)].map(([number]) => Number(number));

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The box that words take up: a digit of a common sans-serif font is 0.556 of its size wide and 0.72 high (Helvetica, from
 * memory), which small letters on the whole keep within.
 */
function boxOf({ attributes: { x, y, "font-size": size, "text-anchor": anchor, transform }, text }: Tag): Box {
  const [at, up, high] = [Number(x), Number(y), Number(size)];
  const long = text.replace(/&[#\w]+;/g, "x").length * high * 0.556;
  const start = anchor === "start" ? 0 : anchor === "end" ? -long : -long / 2;
  const half = high * 0.36;
  if (transform === undefined) return { text, left: at + start, right: at + start + long, top: up - half, bottom: up + half };
  return { text, left: at - half, right: at + half, top: up - start - long, bottom: up - start };
}

/** The points that an element has its places at. */
function pointsOf({ name, attributes: a }: Tag): readonly (readonly [number, number])[] {
  const at = (x: string | undefined, y: string | undefined): [number, number] => [Number(x), Number(y)];
  if (name === "line") return [at(a.x1, a.y1), at(a.x2, a.y2)];
  if (name === "rect") return [at(a.x, a.y), [Number(a.x) + Number(a.width), Number(a.y) + Number(a.height)]];
  if (name === "circle") return [at(a.cx, a.cy)];
  const numbers = name === "path" ? numbersIn(a.d ?? "") : name.startsWith("poly") ? numbersIn(a.points ?? "") : [];
  return Array.from({ length: numbers.length / 2 }, (_, index) => [numbers[2 * index] ?? Number.NaN, numbers[2 * index + 1] ?? Number.NaN]);
}

const known = ["svg", "title", "desc", "g", "rect", "line", "polygon", "polyline", "circle", "path", "text"];

/** Whatever no picture may have: broken XML, colours, styles, things off the sheet, words over words, no words at all. */
export function faultsIn(svg: string): readonly string[] {
  new DOMParser({ onError: onErrorStopParsing }).parseFromString(svg, "image/svg+xml");
  const tags = tagsIn(svg);
  const [root] = tags;
  const [minX = 0, minY = 0, width = 0, height = 0] = numbersIn(root?.attributes.viewBox ?? "");
  const within = ([x, y]: readonly [number, number]): boolean => x >= minX - 0.01 && x <= minX + width + 0.01 && y >= minY - 0.01 && y <= minY + height + 0.01;
  const texts = tags.filter(({ name }) => name === "text").map(boxOf);
  const named = (root?.attributes["aria-labelledby"] ?? "").split(" ").map((id) => tags.find(({ attributes }) => attributes.id === id)?.name);
  return [
    ...(root?.attributes.role === "img" && named.join(" ") === "title desc" ? [] : ["it is not named by its title and description"]),
    ...tags.filter(({ name }) => !known.includes(name)).map(({ name }) => `${name} is not allowed`),
    ...tags.flatMap(({ name, attributes }) => Object.keys(attributes).filter((key) => /^(style|on\w+|.*href)$/.test(key)).map((key) => `${name} has ${key}`)),
    ...tags.flatMap(({ attributes: { fill, stroke } }) => [fill, stroke].filter((paint) => ![undefined, "none", "black", "white"].includes(paint)).map((paint) => `${String(paint)} is neither black nor white`)),
    ...tags.flatMap((tag) => pointsOf(tag).filter((point) => !within(point)).map((point) => `${tag.name} at ${point.join(", ")} is off the sheet`)),
    ...texts.filter(({ left, right, top, bottom }) => !within([left, top]) || !within([right, bottom])).map(({ text }) => `"${text}" is off the sheet`),
    ...tags.filter(({ name, text }) => name === "text" && text.trim() === "").map(() => "words without letters"),
    ...texts.flatMap((one, index) => texts.slice(index + 1).filter((other) => overlap(one, other)).map((other) => `"${one.text}" lies on "${other.text}"`)),
    ...(/NaN|Infinity|undefined/.test(svg) ? ["a number is missing"] : []),
  ];
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right - 0.01 && other.left < one.right - 0.01 && one.top < other.bottom - 0.01 && other.top < one.bottom - 0.01;
}

/** The description that is read out. */
export function described(svg: string): string {
  return tagsIn(svg).find(({ name }) => name === "desc")?.text ?? "";
}

/** The legend, as one text. */
export function legendIn(svg: string): string {
  return of(tagsIn(svg), "legend", "text").map(({ text }) => text).join(" ");
}
