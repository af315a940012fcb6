import type { Scale } from "./scale.js";
import { line, words } from "./svg.js";

/** An upright axis at the left of a chart, with its round numbers, a level line for each, and what it measures. */
export function valueAxis(scale: Scale, { left, right, says }: { readonly left: number; readonly right: number; readonly says: string }): readonly string[] {
  const places = scale.ticks.map(scale.at);
  const [top, bottom] = [Math.min(...places), Math.max(...places)];
  return [
    ...scale.ticks.flatMap((tick, index) => {
      const y = places[index] ?? 0;
      return [line([left - 4, y], [right, y], { "stroke-width": 0.3 }), words(String(tick), [left - 7, y], { size: 11, anchor: "end" })];
    }),
    line([left, top], [left, bottom]),
    words(says, [left - 44, (top + bottom) / 2], { size: 11, turned: true }),
  ];
}
