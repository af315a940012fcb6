import type { WorkWindow } from "../timing/work-windows.js";
import { type ClockScale, clockOf, timeText } from "./clock-axis.js";
import { hatched } from "./hatching.js";
import { group } from "./picture.js";
import { line, words } from "./svg.js";

/** How much room the row of a hold takes. */
export const holdRow = 46;

/** The holds row by row: hatched while the work waits, then white while it may be done, with its times below. */
export function holdRows(windows: readonly WorkWindow[], scale: ClockScale, top: number): readonly string[] {
  return windows.map((window, index) => {
    const { work, done, earliest, typical, latest } = window;
    const [y, bottom] = [top + index * holdRow, top + index * holdRow + 16];
    const x = (text: string): number => scale.x(clockOf(text).at);
    const wait = hatched({ left: x(done), right: earliest === undefined ? scale.right : x(earliest), top: y, bottom }, "falling lines");
    const open = earliest === undefined ? "" : latest === undefined ? openEnd(x(earliest), scale.right, y, bottom) : hatched({ left: x(earliest), right: x(latest), top: y, bottom }, "empty");
    const usual = typical === undefined ? "" : line([x(typical), y - 3], [x(typical), bottom + 3], { "stroke-width": 3 });
    return group("hold", [wait, open, usual, words(work, [scale.left - 8, y + 8], { size: 12, anchor: "end" }), words(holdTimes(window), [scale.left, bottom + 12], { size: 11, anchor: "start" })]);
  });
}

/** A window without an end: its upper and lower side alone. */
function openEnd(left: number, right: number, top: number, bottom: number): string {
  return line([left, top], [left, bottom]) + line([left, top], [right, top]) + line([left, bottom], [right, bottom]);
}

/** The times of a hold in words. */
export function holdTimes({ done, earliest, typical, latest }: WorkWindow): string {
  const start = clockOf(done);
  const at = (text: string): string => timeText(clockOf(text), start);
  return [
    `done ${timeText(start)}`,
    earliest === undefined ? "earliest after the end of the record" : `earliest ${at(earliest)}`,
    ...(typical === undefined ? [] : [`typical ${at(typical)}`]),
    ...(latest === undefined ? [] : [`latest ${at(latest)}`]),
  ].join(", ");
}
