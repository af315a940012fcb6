import type { Coursing } from "../layout/coursing.js";
import type { RodCourse } from "../layout/story-rod.js";
import { hatched } from "./hatching.js";
import { counted, group, picture, type PictureOptions, underTitle } from "./picture.js";
import { answersOf, having, listOf, lookAt, measured, plain } from "./results.js";
import { spread } from "./spread.js";
import { element, line, widthOfWords, words } from "./svg.js";

/** As many courses stand in one length of the rod; a longer rod is drawn in lengths side by side. */
const inLength = 36;
const [size, gap, rodWidth, reach, numbers] = [11, 15, 54, 22, 68];

/**
 * Draws a story rod as SVG, to scale: the units of each course, the joints between them in black, and on both sides the marks
 * as the tape reads them, at the left the foot of each course and at the right its top.
 *
 * @param coursing - the answers of `coursing`
 * @param options - a title
 * @returns the text of an SVG document, with a title and a description for those who do not see it
 * @example
 * ```ts
 * const courses = coursing({ height: "16 in", unitHeights: ["7-5/8 in"], bedJoint: { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" }, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" });
 * storyRodDrawing(courses).includes(">1 ft 3-5/8 in</text>"); // true
 * ```
 */
export function storyRodDrawing(coursing: Coursing, options: PictureOptions = {}): string {
  lookAt("pictures.story-rod-drawing", coursing, drawnCoursing);
  const { title = "Story rod" } = options;
  const { storyRod } = coursing;
  const lengths = Math.ceil(storyRod.length / inLength);
  const each = Math.ceil(storyRod.length / lengths);
  const stretches = Array.from({ length: lengths }, (_, index) => stretchOf(storyRod.slice(index * each, (index + 1) * each), storyRod[index * each - 1]));
  // One scale for all lengths: the tallest takes a line of words for each of its courses.
  const scale = (each * gap) / Math.max(...stretches.map(({ from, until }) => until - from));
  const label = Math.max(...storyRod.flatMap(({ foot, top }) => [foot.reads, top.reads]).map((text) => widthOfWords(text, size)));
  const width = 2 * (label + reach + 8) + rodWidth + numbers;
  const foot = underTitle + 26 + each * gap;
  const drawn = stretches.map((stretch, index) => rod(stretch, { left: 16 + index * (width + 24) + numbers + label + reach + 8, foot, scale, label }));
  return picture(
    { title, says: described(coursing), width: 16 + lengths * (width + 24), bottom: foot + 30, legend: legendOf(storyRod, lengths) },
    ...drawn,
  );
}

const drawnCoursing = /* @__PURE__ */ (() => {
  const mark = having({ height: measured("length"), mark: measured("length"), reads: plain("string") });
  return answersOf("coursing", { bedJoint: measured("length"), storyRod: listOf(having({ course: plain("number"), unitHeight: measured("length"), cut: plain("boolean"), foot: mark, top: mark }), 1) });
})();

interface Stretch {
  readonly courses: readonly RodCourse[];
  /** Where it begins and ends over the foot of the rod, in inches. */
  readonly from: number;
  readonly until: number;
}

/** A length of the rod: it begins at the top of the course below it. */
function stretchOf(courses: readonly RodCourse[], below: RodCourse | undefined): Stretch {
  return { courses, from: below?.top.height.toNumber("in") ?? 0, until: courses.at(-1)?.top.height.toNumber("in") ?? 0 };
}

interface Place {
  readonly left: number;
  readonly foot: number;
  readonly scale: number;
  /** How wide the longest mark is. */
  readonly label: number;
}

function rod({ courses, from, until }: Stretch, { left, foot, scale, label }: Place): string {
  const right = left + rodWidth;
  const y = (inches: number): number => foot - (inches - from) * scale;
  const top = y(until);
  const units = courses.map(({ foot: low, top: high, cut }) => hatched({ left, right, top: y(high.height.toNumber("in")), bottom: y(low.height.toNumber("in")) }, cut ? "rising lines" : "empty", { spacing: 5 }));
  // From the top of the sheet down, as the labels are spread.
  const down = [...courses].reverse();
  const marks = (side: "foot" | "top"): readonly Mark[] => {
    const places = down.map((course) => y(course[side].height.toNumber("in")));
    const labels = spread(places, gap - 1, top - gap / 2, foot + gap / 2);
    return down.map((course, index) => ({ course, text: course[side].reads, at: places[index] ?? 0, label: labels[index] ?? 0 }));
  };
  const feet = marks("foot");
  const [outer, head] = [left - reach - 3 - label, top - gap / 2 - 16];
  return group("rod", [
    element("rect", { class: "rod-body", x: left, y: top, width: rodWidth, height: foot - top, fill: "black" }),
    group("courses", units),
    group("foot marks", feet.flatMap((mark) => markAt(mark, left, -1))),
    group("top marks", marks("top").flatMap((mark) => markAt(mark, right, 1))),
    group("numbers", feet.map(({ course, label: at }) => words(String(course.course), [outer - 18, at], { size, anchor: "end" }))),
    group("heads", [words("course", [outer - 18, head], { size, anchor: "end" }), words("foot", [left - reach - 3, head], { size, anchor: "end" }), words("top", [right + reach + 3, head], { size, anchor: "start" })]),
  ]);
}

interface Mark {
  readonly course: RodCourse;
  readonly text: string;
  /** Where it lies on the rod, and where its words stand. */
  readonly at: number;
  readonly label: number;
}

/** A mark at an edge of the rod, with a line out to its words. */
function markAt({ text, at, label }: Mark, edge: number, out: 1 | -1): readonly string[] {
  return [
    line([edge, at], [edge + out * 6, at]),
    line([edge + out * 6, at], [edge + out * reach, label], { "stroke-width": 0.6 }),
    words(text, [edge + out * (reach + 3), label], { size, anchor: out === 1 ? "start" : "end" }),
  ];
}

function described({ storyRod, bedJoint }: Coursing): string {
  const cut = storyRod.filter((course) => course.cut).length;
  const courses = storyRod.map((one) => `course ${String(one.course)}${one.cut ? ", cut" : ""}: foot ${one.foot.reads}, top ${one.top.reads}`);
  return `A story rod of ${counted(storyRod.length, "course")}, ${cut === 0 ? "none" : String(cut)} of them cut, with bed joints of ${bedJoint.toString()}. From the foot up: ${courses.join("; ")}.`;
}

function legendOf(storyRod: readonly RodCourse[], lengths: number): readonly string[] {
  return [
    "White: a course. Black: a joint.",
    ...(storyRod.some(({ cut }) => cut) ? ["Rising lines: a course of cut units."] : []),
    "At the left the foot of each course, at the right its top, as the tape reads them from the foot of the rod.",
    ...(lengths > 1 ? ["The rod is drawn in lengths, to one scale: each goes on from the one at its left."] : []),
  ];
}
