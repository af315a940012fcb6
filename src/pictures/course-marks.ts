import { quantity } from "../core/read-quantity.js";
import type { RodCourse } from "../layout/story-rod.js";
import type { Sheet } from "./sheet.js";
import { line, words } from "./svg.js";
import type { CoursedPanel } from "./coursed-wall.js";

const size = 10;
/** How much room the marks of the courses take beside the wall. */
export const courseMarksRoom = 150;

/** The courses of the panels at the right end, each with the mark of its top; where they lie close, every second, fifth or tenth. */
export function courseMarks(panels: readonly CoursedPanel[], sheet: Sheet, x: number): readonly string[] {
  const rows = new Map<number, CoursedPanel>();
  for (const panel of panels) {
    const y = Math.round(sheet.y(quantity("length", panel.bottom)) * 100);
    const held = rows.get(y);
    if (held === undefined || sheet.x(quantity("length", panel.left)) > sheet.x(quantity("length", held.left))) rows.set(y, panel);
  }
  let last = Number.POSITIVE_INFINITY;
  return [...rows].sort(([one], [other]) => other - one).flatMap(([, { bottom, coursing: { storyRod } }]) => {
    const base = sheet.y(quantity("length", bottom));
    return everyNth(storyRod, sheet).flatMap(({ course, top }) => {
      const y = base - sheet.scaled(top.height);
      if (last - y < size + 3) return [];
      last = y;
      return [line([x - 14, y], [x - 5, y], { "stroke-width": 0.6 }), words(`course ${String(course)}: ${top.reads}`, [x, y], { size, anchor: "start" })];
    });
  });
}

/** As many of the courses as can be labelled. */
function everyNth(storyRod: readonly RodCourse[], sheet: Sheet): readonly RodCourse[] {
  const [first, last] = [storyRod[0], storyRod.at(-1)];
  if (first === undefined || last === undefined) return [];
  const pitch = sheet.scaled(last.top.height) / storyRod.length;
  const step = [1, 2, 5, 10, 20, 50, 100].find((every) => every * pitch >= size + 3) ?? 200;
  return storyRod.filter(({ course }) => course % step === 0 || course === 1);
}
