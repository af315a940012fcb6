import { hatched, type Hatch } from "./hatching.js";
import { widthOfWords, words } from "./svg.js";

/** A hatching and what it stands for. */
export interface Key {
  readonly hatch: Hatch;
  readonly says: string;
}

const [size, box, row] = [11, 28, 22];

/** The hatchings of a picture with their meanings, side by side in rows; and where the last row ends. */
export function keysOf(keys: readonly Key[], { left, top, width }: { readonly left: number; readonly top: number; readonly width: number }): { readonly parts: readonly string[]; readonly bottom: number } {
  let [x, y] = [left, top];
  const parts = keys.flatMap(({ hatch, says }) => {
    const long = box + 6 + widthOfWords(says, size) + 18;
    if (x > left && x + long > left + width) [x, y] = [left, y + row];
    const at = x;
    x += long;
    return [hatched({ left: at, right: at + box, top: y - 7, bottom: y + 7 }, hatch, { spacing: 6 }), words(says, [at + box + 6, y], { size, anchor: "start" })];
  });
  return { parts, bottom: y + row / 2 };
}
