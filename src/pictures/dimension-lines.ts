import { line, widthOfWords, words } from "./svg.js";

/** One place on a chain of dimensions, and the words for the stretch that begins there. */
export interface Stop {
  readonly at: number;
  readonly text: string;
}

const size = 11;
const tick = 4;
/** A stretch that is narrower than its words are high has none. */
const least = size + 1;

/** How much room a chain needs beside the line: for words that are turned, their length. */
export function chainRoom(stops: readonly Stop[]): number {
  const turned = stretches(stops).filter(({ text, from, to }) => !lies(text, from, to)).map(({ text }) => widthOfWords(text, size));
  return Math.ceil(Math.max(14, ...turned)) + 12;
}

/** A chain of dimensions below a drawing, with lines up to it. */
export function chainBelow(stops: readonly Stop[], y: number, drawingEnd: number): string {
  const places = stops.map(({ at }) => line([at, drawingEnd + 4], [at, y + tick]) + line([at - tick, y + tick], [at + tick, y - tick]));
  const texts = stretches(stops).map(({ text, from, to }) => {
    const middle = (from + to) / 2;
    if (lies(text, from, to)) return words(text, [middle, y + 9], { size });
    return to - from < least ? "" : words(text, [middle, y + 5], { size, turned: true, anchor: "end" });
  });
  return chain(places, line([stops[0]?.at ?? 0, y], [stops.at(-1)?.at ?? 0, y]), texts);
}

/** A chain of dimensions to the left of a drawing, with lines across to it; the stops from the foot upward. */
export function chainBeside(stops: readonly Stop[], x: number, drawingEnd: number): string {
  const places = stops.map(({ at }) => line([drawingEnd - 4, at], [x - tick, at]) + line([x - tick, at + tick], [x + tick, at - tick]));
  const texts = stretches(stops).map(({ text, from, to }) => {
    const middle = (from + to) / 2;
    if (lies(text, from, to)) return words(text, [x - 9, middle], { size, turned: true });
    return Math.abs(to - from) < least ? "" : words(text, [x - 5, middle], { size, anchor: "end" });
  });
  return chain(places, line([x, stops[0]?.at ?? 0], [x, stops.at(-1)?.at ?? 0]), texts);
}

function chain(places: readonly string[], along: string, texts: readonly string[]): string {
  return `<g class="dimensions" stroke-width="0.6">${along}${places.join("")}</g>${texts.join("")}`;
}

function stretches(stops: readonly Stop[]): readonly { readonly text: string; readonly from: number; readonly to: number }[] {
  return stops.slice(0, -1).map(({ at, text }, index) => ({ text, from: at, to: stops[index + 1]?.at ?? at }));
}

/** Whether words find room along their stretch. */
function lies(text: string, from: number, to: number): boolean {
  return Math.abs(to - from) >= widthOfWords(text, size) + 6;
}
