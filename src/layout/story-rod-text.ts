import type { RodCourse } from "./story-rod.js";

/**
 * A story rod as a list to be printed and taken to the wall: each course with the marks of its foot and its top, as running
 * heights from the foot of the rod, the top course first, as the rod stands.
 *
 * @param storyRod - the courses, as `coursing` gives them
 * @returns lines of plain text, in columns
 * @example
 * ```ts
 * const { storyRod } = coursing({ height: "16 in", unitHeights: ["7-5/8 in"], bedJoint: { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" }, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" });
 * storyRodText(storyRod).split("\n")[1]; // "     2  8 in  1 ft 3-5/8 in"
 * ```
 */
export function storyRodText(storyRod: readonly RodCourse[]): string {
  const head = ["course", "foot", "top", ""];
  const rows = [...storyRod].reverse().map(({ course, foot, top, cut }) => [String(course), foot.reads, top.reads, cut ? "cut" : ""]);
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column]?.length ?? 0)));
  return [head, ...rows].map((row) => row.map((cell, column) => (column < 3 ? cell.padStart(widths[column] ?? 0) : cell)).join("  ").trimEnd()).join("\n");
}
